// Stitches of one part over those of another: told once for each pair of parts, at the first place. What only touches in a hole is fine.
#include <map>

#include "check/rules.h"
#include "cloth/index.h"

namespace check {
namespace {

struct Meeting {
  cloth::Hole at, also_at;
  int stitches = 0;
};

}  // namespace

void lies_over(const course::Course& course, const plan::Plan&, Snags& snags) {
  cloth::Index index;
  std::vector<int> owner;
  std::map<std::pair<int, int>, Meeting> meetings;
  for (std::size_t p = 0; p < course.parts.size(); ++p) {
    const auto& stitches = course.parts[p].work.stitches;
    for (const cloth::Stitch& stitch : stitches) {
      bool counted = false;
      for (const int other : owner.empty() ? std::vector<int>{} : index.meeting(stitch)) {
        Meeting& meeting = meetings[{owner[other], static_cast<int>(p)}];
        if (meeting.stitches == 0) meeting = {stitch.a, index.stitch(other).a, 0};
        if (!counted) ++meeting.stitches;
        counted = true;
      }
    }
    for (const cloth::Stitch& stitch : stitches) {
      index.add(stitch, static_cast<int>(owner.size()));
      owner.push_back(static_cast<int>(p));
    }
  }
  for (const auto& [parts, meeting] : meetings) {
    const course::Part& upper = course.parts[parts.second];
    snags.push_back({.rule = "lies-over", .severity = Severity::ask, .place = place_of(upper, "start"), .lesson = 0, .part = parts.second,
                     .at = meeting.at, .also_at = meeting.also_at,
                     .words = {{"part", upper.name}, {"other", course.parts[parts.first].name}},
                     .numbers = {{"n", meeting.stitches}, {"x", meeting.at.x}, {"y", meeting.at.y}}});
  }
}

}  // namespace check
