// Eyelets: legs from a centre hole to holes of an outline, a square (Algerian eye) or a square on its corner (star eyelet, Dillmont fig. 166:
// 16 legs over 8, 6, 4, 6 threads). Every leg goes down in the centre, or, if the teacher will, comes up there; none is worked twice.
#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>

#include "cloth/turn.h"
#include "stitch/item_faults.h"
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int least_size = 2, most_size = 64;

/// The holes of the outline about the origin, clockwise from straight above, so many apart. `half`: from the centre to the outermost hole.
std::vector<cloth::Hole> outline(int half, bool square, int apart) {
  std::vector<cloth::Hole> quarter;  // from straight above to just before the hole straight to the right
  if (square) {
    for (int x = 0; x < half; ++x) quarter.push_back({x, -half});
    for (int y = -half; y < 0; ++y) quarter.push_back({half, y});
  } else {
    for (int x = 0; x < half; ++x) quarter.push_back({x, x - half});
  }
  std::vector<cloth::Hole> holes;
  for (const cloth::Turn turn : cloth::quarter_turns)
    for (std::size_t i = 0; i < quarter.size(); i += static_cast<std::size_t>(apart)) holes.push_back(cloth::apply(turn, quarter[i]));
  return holes;
}

struct Eyelet {
  int size = 0;
  bool square = true;
  int outer_holes() const { return square ? 4 * size : 2 * size; }
};

/// Holes of the outline from leg to leg; 0 where so many legs do not fit.
int apart(const Eyelet& eyelet, const Value& legs) {
  const int* number = std::get_if<int>(&legs);
  if (!number) return 1;
  const int quarter = eyelet.outer_holes() / 4;
  return *number % 4 == 0 && quarter % (*number / 4) == 0 ? quarter / (*number / 4) : 0;
}

std::vector<KeyFault> faults_of(const Values& values, const Eyelet& eyelet) {
  std::vector<KeyFault> faults;
  if (eyelet.size % 2 != 0)
    faults.push_back({"size", 0, 0, fmt::format("the number {}", eyelet.size),
                      fmt::format("an even number of threads, since the centre is a hole: {} or {}", eyelet.size - 1, eyelet.size + 1), ""});
  const Value& legs = values.find("legs")->second;
  if (const int* number = std::get_if<int>(&legs); number && faults.empty() && apart(eyelet, legs) == 0) {
    std::string fitting = fmt::format("\"all\" ({} legs)", eyelet.outer_holes());
    for (const int fit : {16, 8})
      if (fit < eyelet.outer_holes() && apart(eyelet, Value(fit)) > 0) fitting += fmt::format(" or {}", fit);
    faults.push_back({"legs", 0, 0, fmt::format("the number {}", *number), fmt::format("legs that fit the size {}: {}", eyelet.size, fitting), ""});
  }
  const auto& centres = value<std::vector<cloth::Hole>>(values, "centres");
  std::unordered_set<cloth::Hole> seen;
  for (std::size_t i = 0; i < centres.size(); ++i) {
    const cloth::Hole c = centres[i];
    const std::string hole = fmt::format("the hole [{}, {}]", c.x, c.y);
    if (!within_limit(c.x - eyelet.size, c.y - eyelet.size) || !within_limit(c.x + eyelet.size, c.y + eyelet.size))
      faults.push_back({"centres", 0, 0, hole, hole_limit_in_words(), "", static_cast<int>(i)});
    if (!seen.insert(c).second) faults.push_back({"centres", 0, 0, hole + " a second time", "each centre once", "", static_cast<int>(i)});
  }
  if (centres.size() * static_cast<std::size_t>(eyelet.outer_holes()) > stitch_limit)
    faults.push_back({"centres", 0, 0, fmt::format("{} eyelets", centres.size()), stitch_limit_in_words(), ""});
  return faults;
}

/// Legs that an earlier eyelet has worked are left out.
void add_eyelet(Work& work, Pass& pass, cloth::Hole centre, const std::vector<cloth::Hole>& outer, bool down,
                std::unordered_set<cloth::Stitch>& there) {
  Run run{{}, {}, Freedom::ring, DownSide::none};
  Feature feature{Shape::centre, {}, centre, 0, static_cast<int>(work.features.size())};
  for (const cloth::Hole hole : outer) {
    const cloth::Stitch leg = down ? cloth::Stitch{centre + hole, centre} : cloth::Stitch{centre, centre + hole};
    feature.stitches.push_back(leg);
    if (there.insert(leg.normal()).second) run.stitches.push_back(leg);
  }
  run.legs.assign(run.stitches.size(), 0);
  work.stitches.insert(work.stitches.end(), run.stitches.begin(), run.stitches.end());
  work.features.push_back(std::move(feature));
  pass.keep_open.push_back(centre);
  if (!run.stitches.empty()) pass.runs.push_back(std::move(run));
}

Outcome build(const Values& values) {
  const Eyelet eyelet{value<int>(values, "size"), value<std::string>(values, "outline") == "square"};
  if (auto faults = faults_of(values, eyelet); !faults.empty()) return {{}, std::move(faults)};
  const std::vector<cloth::Hole> outer = outline(eyelet.size / 2, eyelet.square, apart(eyelet, values.find("legs")->second));
  const auto needle = values.find("eyelet_needle");
  const bool down = needle == values.end() || needle->second != Value(std::string("up"));
  Work work;
  work.piece = value<bool>(values, "open") ? Piece::open_eyelet : Piece::eyelet;
  Pass pass;
  pass.order = Order::scattered;
  std::unordered_set<cloth::Stitch> there;
  for (const cloth::Hole centre : value<std::vector<cloth::Hole>>(values, "centres")) add_eyelet(work, pass, centre, outer, down, there);
  work.passes.push_back(std::move(pass));
  return {std::move(work), {}};
}

}  // namespace

Kind eyelet_kind() {
  return {.name = "eyelet",
          .keys = {required_holes("centres"), required_whole("size", least_size, most_size), word("outline", "square", {"square", "star"}),
                   whole_or_word("legs", "all", {"all"}, 4, 4 * most_size), flag("open", false)},
          .build = build,
          .stitches_a_minute = 6,  // an assumption, no source
          .needle_in_middle = true};
}

}  // namespace stitch
