// The needle's walk through a lesson for the review page: every point, its words for both hands, and the cloth round it.
#pragma once

#include <string>
#include <vector>

#include "publish/forms.h"

namespace publish {

/// The holes that the lesson's walk and some cloth round it take.
cloth::Box walk_box(const plan::Plan& plan, const plan::LessonPlan& lesson);
/// Needle points of the lesson: two a stitch, of looped stitches some more.
int walk_points(const plan::Plan& plan, const plan::LessonPlan& lesson);
/// How many points of the lesson's walk come before this stitch of a trail; -1 where it is not in the lesson.
int points_before(const plan::Plan& plan, const plan::LessonPlan& lesson, int trail, int stitch);

/// The lesson as a JSON object: course and lesson, box, sections with their points (holes of the course file, up and down in turn), ways of
/// the back that are not straight, stitches that begin a thread, and for each hand which sentence each point says.
std::string walk_json(const Making& making, const plan::LessonPlan& lesson);

/// Stitches of other lessons as paths of SVG, one unit a thread: stitched before, and (where that is not too much to look at) not yet.
std::string walk_cloth(const Making& making, const plan::LessonPlan& lesson);

}  // namespace publish
