// Facts of a plan in words: landmark names, count-ins, snags. All sentences come from the phrase table; for the left hand everything is said as
// seen in a mirror (left for right, anticlockwise for clockwise).
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "check/check.h"
#include "guide/guide.h"
#include "plan/plan.h"
#include "words/phrases.h"

namespace say {

enum class Hand { right, left };

struct Voice {
  const words::Phrases& phrases;
  Hand hand = Hand::right;
  const course::Course& course;
};

/// What a kind of part is called, or a stage of cutwork ("bars", "fillings"), by its name in the course file.
std::string kind_name(const words::Phrases& phrases, std::string_view kind);

/// Where a row of a line lies: closed rows from the outside, open ones as they are worked.
enum class RowPlace { first, second, third, outer, middle, inner };
RowPlace row_place(const course::Course& course, int part, int row);
/// "the outer row", "the first row"
std::string row_name(const Voice& voice, int part, int row);

/// "the upper end of the topmost block's left-hand stitch"
std::string landmark(const Voice& voice, const guide::Landmark& landmark);
/// The whole sentence of the start: "From ... count 10 threads straight up. The needle comes up there: 1."
std::string count_in(const Voice& voice, const guide::CountIn& count_in);
/// "From ...: 14 up, 8 left."
std::string proof(const Voice& voice, const guide::Count& count);
/// "22 threads an inch", as the course writes it; both counts where warp and weft differ.
std::string cloth_count(const Voice& voice);
std::string mark(const Voice& voice, const guide::Mark& mark);
/// Where a start that is one thread off shows first, a sentence for each place; ways that show at the same place are told together.
std::vector<std::string> tell_tales(const Voice& voice, const plan::Plan& plan, const guide::CountIn& count_in);
/// "10 threads straight up", "14 threads up, then 8 to the left"; "" for no legs
std::string legs(const Voice& voice, const std::vector<guide::Leg>& legs);
/// Over a count-in: "Start here", and of what where the lesson has several starts; "Go on here" where an earlier lesson stopped.
std::string start_heading(const Voice& voice, const guide::PlacedTrail& trail, const guide::Section& section, bool several);
/// What a count costs and why, for the teacher: seconds for the threads, the turn, the rest.
std::string why(const Voice& voice, const guide::Count& count);
/// "border cable, second time", "ring, stitches 1 to 70"
std::string section_title(const Voice& voice, const plan::Plan& plan, std::pair<int, int> section);
/// What the lesson works, each piece by name: "border, first time, stitches 1 to 120", "the wash".
std::vector<std::string> lesson_work(const Voice& voice, const plan::Plan& plan, int lesson);
/// The lesson's title as written, else made from its work.
std::string lesson_title(const Voice& voice, const plan::Plan& plan, int lesson);
/// Over what is for a student who missed the lesson before, and what she has to do; "" and nothing for the first lesson.
std::string missed_heading(const Voice& voice, const plan::LessonPlan& lesson);
std::vector<std::string> missed(const Voice& voice, const plan::Plan& plan, const plan::LessonPlan& lesson);
/// What stands wherever cutting is shown: sharp points, the teacher's word, cloth woven in pairs. One sentence or more each.
std::vector<std::string> cutting_cautions(const Voice& voice);
/// The scissors that the course needs: with sharp points where it cuts.
std::string scissors(const Voice& voice, const plan::Plan& plan);
/// "Tuesday 26 January 2027"
std::string date(const Voice& voice, base::Date date);

struct SaidSnag {
  std::string says, does;
};
SaidSnag snag(const Voice& voice, const check::Snag& snag);

}  // namespace say
