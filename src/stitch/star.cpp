// Stars of satin stitch: petals whose stitches rise from 2 threads, one thread at a time, and fall again (2 3 4 5 6 5 4 3 2: common practice,
// no source). Eight petals lie in pairs along the straight ways and meet their neighbours in shared holes there and on the slants. Four
// petals stand on the sides of an open square, pointing N, E, S and W. Both reach 2 m - 2 threads, where m is the longest stitch.
#include <fmt/format.h>

#include <cstdlib>

#include "cloth/turn.h"
#include "stitch/bundles.h"
#include "stitch/item_faults.h"
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int shortest = 2;  // threads
constexpr int least_reach = 4, most_reach = 2 * longest_satin - 2;

using Stitches = std::vector<cloth::Stitch>;

/// About the origin, above the way to the right: one end on that line while the stitches rise, the other level while they fall.
Stitches slanting_petal(int longest) {
  Stitches petal;
  for (int x = shortest; x <= longest; ++x) petal.push_back({{x, 0}, {x, -x}});
  for (int x = longest + 1; x <= 2 * longest - shortest; ++x) petal.push_back({{x, longest - x}, {x, -longest}});
  return petal;
}

/// About the origin, pointing up: begun on the upper side of the open square.
Stitches upright_petal(int longest) {
  Stitches petal;
  const int half = longest - shortest;
  for (int x = -half; x <= half; ++x) petal.push_back({{x, -half}, {x, -half - longest + std::abs(x)}});
  return petal;
}

Stitches put(const Stitches& petal, cloth::Turn turn, cloth::Hole centre) {
  Stitches there;
  for (const cloth::Stitch& s : petal) there.push_back({centre + cloth::apply(turn, s.a), centre + cloth::apply(turn, s.b)});
  return there;
}

/// All petals, clockwise.
std::vector<Stitches> petals(cloth::Hole centre, int longest, int points) {
  std::vector<Stitches> all;
  const Stitches one = points == 4 ? upright_petal(longest) : slanting_petal(longest);
  for (const cloth::Turn turn : cloth::quarter_turns) {
    all.push_back(put(one, turn, centre));
    if (points != 4) all.push_back(put(one, {(turn.quarters + 2) % 4, true}, centre));
  }
  return all;
}

std::vector<KeyFault> faults_of(cloth::Hole centre, int reach, int points) {
  std::vector<KeyFault> faults;
  if (reach % 2 != 0)
    faults.push_back({"reach", 0, 0, fmt::format("the number {}", reach),
                      fmt::format("an even number of threads, twice the longest stitch less 2: {} or {}", reach - 1, reach + 1), ""});
  if (points != 4 && points != 8) faults.push_back({"points", 0, 0, fmt::format("the number {}", points), "4 or 8", ""});
  if (!within_limit(centre.x - reach, centre.y - reach) || !within_limit(centre.x + reach, centre.y + reach))
    faults.push_back({"centre", 0, 0, fmt::format("a star round the hole [{}, {}]", centre.x, centre.y), hole_limit_in_words(), ""});
  return faults;
}

Outcome build(const Values& values) {
  const cloth::Hole centre = value<cloth::Hole>(values, "centre");
  const int reach = value<int>(values, "reach"), points = value<int>(values, "points");
  if (auto faults = faults_of(centre, reach, points); !faults.empty()) return {{}, std::move(faults)};
  Work work;
  work.piece = Piece::petal;
  work.closed = true;
  Pass pass;
  pass.order = Order::scattered;
  int along = 0;
  for (Stitches& petal : petals(centre, reach / 2 + 1, points)) add_bundle(work, pass, std::move(petal), Shape::petal, along++);
  work.passes.push_back(std::move(pass));
  return {std::move(work), {}};
}

}  // namespace

Kind star_kind() {
  return {.name = "star",
          .keys = {required_hole("centre"), required_whole("reach", least_reach, most_reach), whole("points", 8, 4, 8)},
          .build = build,
          .stitches_a_minute = 6};  // an assumption, no source
}

}  // namespace stitch
