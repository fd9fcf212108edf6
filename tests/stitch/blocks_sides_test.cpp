// On which side the stitches of blocks go down: towards what will be cut in a ring, to the right of the way in an open chain.
// Reference: even-odd by asking every side of the polygon through the blocks' middles.
#include <doctest/doctest.h>

#include <map>
#include <optional>
#include <string>

#include "parts.h"
#include "turning.h"

using namespace stitch;
using parts::blocks;
using parts::work;

namespace {

cloth::Hole middle(const Feature& block) { return block.hole + cloth::Hole{2, 2}; }

/// Is the hole inside the polygon, by the even-odd rule? Nothing where it lies on a side.
std::optional<bool> inside(const std::vector<cloth::Hole>& corners, cloth::Hole h) {
  bool in = false;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const cloth::Hole a = corners[i], b = corners[(i + 1) % corners.size()];
    const int cross = (b.x - a.x) * (h.y - a.y) - (b.y - a.y) * (h.x - a.x);
    if (cross == 0 && std::min(a.x, b.x) <= h.x && h.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= h.y && h.y <= std::max(a.y, b.y))
      return std::nullopt;
    if ((a.y > h.y) != (b.y > h.y) && (cross < 0) == (b.y < a.y)) in = !in;
  }
  return in;
}

DownSide by_polygon(const std::vector<cloth::Hole>& corners, cloth::Hole at, cloth::Stitch stitch, int beyond) {
  const bool upright = stitch.a.x == stitch.b.x;
  const cloth::Hole way = upright ? cloth::Hole{0, 2 + beyond} : cloth::Hole{2 + beyond, 0};
  const auto a = inside(corners, at - way), b = inside(corners, at + way);
  if (!a || !b || *a == *b) return DownSide::none;
  return *a ? DownSide::a : DownSide::b;
}

/// Holes where two stitches of different blocks end: how many where both go down, and where both come up.
std::pair<int, int> shared(const Work& made) {
  std::map<cloth::Hole, std::pair<int, int>> ends;  // downs, ups
  for (const Run& run : made.passes.at(0).runs)
    for (const cloth::Stitch& stitch : run.stitches) {
      ++ends[run.down == DownSide::a ? stitch.a : stitch.b].first;
      ++ends[run.down == DownSide::a ? stitch.b : stitch.a].second;
    }
  std::pair<int, int> counts;
  for (const auto& [hole, end] : ends) {
    counts.first += end.first == 2;
    counts.second += end.second == 2;
  }
  return counts;
}

/// Sides of an open chain, block by block.
std::string sides(const Work& made) {
  std::string all;
  for (const Run& run : made.passes.at(0).runs) all += run.down == DownSide::a ? 'a' : run.down == DownSide::b ? 'b' : '-';
  return all;
}

}  // namespace

TEST_CASE("in a diamond of n blocks a side 2n corner holes take two downs and 2n-4 two ups (geometry)") {
  for (int n = 2; n <= 30; n += 2) {
    CAPTURE(n);
    const std::string n0 = std::to_string(n), n1 = std::to_string(n - 1);
    const Work made = work(blocks({0, 0}, "NE " + n0 + ", SE " + n1 + ", SW " + n1 + ", NW " + n1, "across"));
    CHECK(shared(made) == std::pair{2 * n, 2 * n - 4});
    for (const Run& run : made.passes[0].runs) CHECK(run.down != DownSide::none);
  }
}

TEST_CASE("either way round a ring the stitches go down inside it") {
  CHECK(sides(work(blocks({0, 0}, "NE 2, SE 1, SW 1", "across"))) == "bbaa");
  CHECK(sides(work(blocks({0, 0}, "SE 2, NE 1, NW 1", "across"))) == "baab");
}

TEST_CASE("random rings, crossing themselves or not, agree with the polygon asked side by side") {
  CHECK(turning::always("inside", [] {
    const turning::BlockPath path = turning::random_ring();
    const Work made = work(blocks(path.start, turning::text(path.items), path.upright ? "upright" : "across"));
    RC_PRE(made.closed);
    RC_PRE(made.doubts.empty());
    RC_PRE(made.passes[0].runs.size() == made.features.size());  // no block is left without stitches, so each has its run
    std::vector<cloth::Hole> corners;
    for (const Feature& block : made.features) corners.push_back(middle(block));
    RC_PRE(made.features.back().along + 1 == static_cast<int>(corners.size()));  // and none is there twice
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const cloth::Stitch any = made.features[i].stitches[0];
      RC_ASSERT(made.passes[0].runs[i].down == by_polygon(corners, corners[i], any, -1));
      // two threads beyond the end, too, unless another block's middle lies there
      const cloth::Hole way = any.a.x == any.b.x ? cloth::Hole{0, 4} : cloth::Hole{4, 0};
      if (inside(corners, corners[i] - way) && inside(corners, corners[i] + way)) {
        RC_ASSERT(made.passes[0].runs[i].down == by_polygon(corners, corners[i], any, 2));
      }
    }
  }));
}

TEST_CASE("in an open chain the stitches go down on the right of the way") {
  CHECK(sides(work(blocks({0, 0}, "E 3"))) == "bbb");
  CHECK(sides(work(blocks({0, 0}, "W 3"))) == "aaa");
  CHECK(sides(work(blocks({0, 0}, "N 3", "across"))) == "bbb");
  CHECK(sides(work(blocks({0, 0}, "S 3 apart", "across"))) == "aaa");
  CHECK(sides(work(blocks({0, 0}, "NE 4", "across"))) == "bbbb");  // to the south-east: right ends, lower ends
  CHECK(sides(work(blocks({0, 0}, "SW 4", "across"))) == "aaaa");
  CHECK(sides(work(blocks({0, 0}, "NW 4", "across"))) == "baba");  // to the north-east: right ends, upper ends
  CHECK(sides(work(blocks({0, 0}, "NE 4, SE 3", "across"))) == "bbbbaba");
  CHECK(sides(work(blocks({0, 0}, "NE 3, SE 2", "across"))) == "bb-ba");  // the apex runs across: both its ends lie on the left
  CHECK(sides(work(blocks({0, 0}, "N 1"))) == "-");
}
