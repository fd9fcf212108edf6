// What everything on one lesson's pages is made from, and short ways to its words.
#pragma once

#include <string>
#include <string_view>

#include "list/measure.h"
#include "picture/styles.h"
#include "plan/plan.h"
#include "say/say.h"

namespace picture {

struct Sheet {
  const course::Course& course;
  const plan::Plan& plan;
  const plan::LessonPlan& lesson;
  const say::Voice& voice;
  const list::Measure& measure;
  Styles styles;
  PageSize page;

  double margin() const { return 14; }
  double width() const { return page.width - 2 * margin(); }

  std::string say(std::string_view key, const words::Arguments& arguments = {}) const { return voice.phrases.say(key, arguments); }
  /// "three", and figures where the table has no word.
  std::string number(int n) const;
  /// "a, b and c", from the table's own words for it.
  std::string all_of(const std::vector<std::string>& items) const;
  const guide::PlacedTrail& trail(int t) const { return plan.trails[t]; }
  const course::Part& part(int t) const { return course.parts[plan.trails[t].part]; }
  const stitch::Pass& pass(int t) const { return part(t).work.pass(plan.trails[t].pass, plan.trails[t].place); }
  /// What the trail's part is made of, as the phrases are sorted: "blocks", "petals"...
  std::string_view pieces(int t) const;
  bool by_rows(int t) const { return pass(t).order == stitch::Order::turn_about; }
  bool scattered(int t) const { return pass(t).order == stitch::Order::scattered; }
  /// Buttonhole stitches, one caught by the next.
  bool looped(int t) const { return pass(t).order == stitch::Order::looped; }
  /// The row of the part that is row `run` of the trail's pass.
  int row(int t, int run) const { return plan.trails[t].pass - 1 + run; }
};

}  // namespace picture
