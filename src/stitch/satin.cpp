// Satin stitch of any profile: a row of straight stitches one thread apart, each over its own number of threads and begun further along or
// less far than the one before it. Bars, pyramids, hearts and leaves are profiles.
#include <fmt/format.h>

#include "cloth/way.h"
#include "stitch/bundles.h"
#include "stitch/item_faults.h"
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int largest_step = 40;  // threads

cloth::Way straight(const Values& values, std::string_view key) {
  const auto way = cloth::parse_way(value<std::string>(values, key));
  base::require(way && !cloth::slanted(*way), "a straight way that is none of its words");
  return *way;
}

/// Threads that each stitch begins further along `toward` than the one before it; the first, than the start.
std::vector<int> steps_of(const Values& values, std::size_t stitches) {
  std::vector<int> steps = value<std::vector<int>>(values, "step");
  if (steps.size() != 1) return steps;
  steps.resize(stitches, steps[0]);
  steps[0] = 0;
  return steps;
}

std::vector<KeyFault> faults_of(const Values& values) {
  std::vector<KeyFault> faults;
  const std::size_t stitches = value<std::vector<int>>(values, "over").size(), steps = value<std::vector<int>>(values, "step").size();
  const std::string& along = value<std::string>(values, "along");
  const std::string& toward = value<std::string>(values, "toward");
  const bool upright = along == "E" || along == "W";
  if (upright == (toward == "E" || toward == "W"))
    faults.push_back({"toward", 0, 0, fmt::format("\"{}\", the line of the row itself", toward),
                      fmt::format("a way square to along = \"{}\": {}", along, upright ? "\"N\" or \"S\"" : "\"E\" or \"W\""), ""});
  if (steps != 1 && steps != stitches)
    faults.push_back({"step", 0, 0, fmt::format("a list of {}", steps),
                      fmt::format("{} numbers, one for each stitch of over (the first counted from start), or one for all", stitches), ""});
  return faults;
}

Outcome build(const Values& values) {
  if (auto faults = faults_of(values); !faults.empty()) return {{}, std::move(faults)};
  const std::vector<int>& over = value<std::vector<int>>(values, "over");
  const std::vector<int> steps = steps_of(values, over.size());
  const cloth::Hole along = cloth::step(straight(values, "along")), toward = cloth::step(straight(values, "toward"));
  cloth::Hole at = value<cloth::Hole>(values, "start");
  std::vector<cloth::Stitch> stitches;
  for (std::size_t i = 0; i < over.size(); ++i) {
    at = at + steps[i] * toward + (i > 0 ? along : cloth::Hole{});
    const cloth::Stitch stitch{at, at + over[i] * toward};
    for (const cloth::Hole hole : {stitch.a, stitch.b})
      if (!within_limit(hole.x, hole.y))
        return {{}, {{"over", 0, 0, fmt::format("a stitch that reaches the hole [{}, {}]", hole.x, hole.y), hole_limit_in_words(), "", static_cast<int>(i)}}};
    stitches.push_back(stitch);
  }
  Work work;
  work.piece = Piece::bar;
  Pass pass;
  add_bundle(work, pass, std::move(stitches), Shape::bar, 0);
  work.passes.push_back(std::move(pass));
  return {std::move(work), {}};
}

}  // namespace

Kind satin_kind() {
  return {.name = "satin",
          .keys = {required_hole("start"), required_word("along", {"N", "E", "S", "W"}), required_word("toward", {"N", "E", "S", "W"}),
                   wholes("over", std::nullopt, 1, longest_satin), wholes("step", std::vector{0}, -largest_step, largest_step)},
          .build = build,
          .stitches_a_minute = 6};  // an assumption, no source
}

}  // namespace stitch
