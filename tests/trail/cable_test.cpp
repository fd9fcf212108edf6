// Two rows worked turn about, against needle points and numbers of the trade.
#include "laws.h"
#include "passes.h"

using namespace passes;

namespace {

constexpr auto octagon = "E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34";

Round planned(const Pass& pass) {
  Round round = trail::plan_round(pass, {});
  CHECK(laws::broken(pass, round) == "");
  return round;
}

/// The needle points from where the first row's needle comes up in the hole `from` on.
std::string points_from(const Round& round, cloth::Hole from, std::size_t count) {
  std::vector<cloth::Hole> all = points(round.stitches), found;
  std::size_t at = 0;
  while (at < round.stitches.size() && !(round.stitches[at].run == 0 && round.stitches[at].up == from)) ++at;
  for (std::size_t k = 0; k < count; ++k) found.push_back(all[(2 * at + k) % all.size()]);
  return text(found);
}

}  // namespace

TEST_CASE("a slanting start (common practice, no source)") {
  CHECK(first_points(planned(cable("SE 20")), 8) == "(0,0) (2,2) (0,2) (2,4) (2,2) (4,4) (2,4) (4,6)");
}

TEST_CASE("a slanting start: front 2 sqrt 2, back 2 each, across and up in turn (common practice, no source)") {
  const Round round = planned(cable("SE 20"));
  for (std::size_t k = 1; k < round.stitches.size(); ++k) {
    CHECK(cloth::squared(round.stitches[k].up, round.stitches[k].down) == 8);
    const cloth::Hole back = round.stitches[k].up - round.stitches[k - 1].down;
    CHECK(back == (k % 2 == 1 ? cloth::Hole{-2, 0} : cloth::Hole{0, -2}));
  }
}

TEST_CASE("a straight start, rows level (common practice, no source)") {
  CHECK(first_points(planned(cable("E 20")), 7) == "(0,0) (2,0) (0,2) (2,2) (2,0) (4,0) (2,2)");
}

TEST_CASE("from the third stitch on the needle comes up where the row's stitch before went down (common practice, no source)") {
  for (const auto* path : {"E 20", "NE 20", "S 8", "SW 30"}) {
    const Round round = planned(cable(path));
    for (std::size_t k = 2; k < round.stitches.size(); ++k) CHECK(round.stitches[k].up == round.stitches[k - 2].down);
  }
}

TEST_CASE("one corner of an octagon, point by point: the end of a slant before a straight side (common practice, no source)") {
  // Clockwise; the corner between the first slant and the straight side going down lies at (46,34).
  const Round round = planned(cable(octagon));
  const cloth::Hole corner{46, 34};
  const std::string wanted = text({corner + cloth::Hole{-2, -2}, corner, corner + cloth::Hole{0, 2}, corner, corner + cloth::Hole{-2, 0},
                                   corner + cloth::Hole{-2, 2}, corner + cloth::Hole{0, 2}, corner + cloth::Hole{0, 4}});
  CHECK(points_from(round, corner + cloth::Hole{-2, -2}, 8) == wanted);
}

TEST_CASE("steps back: octagon 4, square 4, diamond 4, an open run of straight and slanted legs none (geometry)") {
  for (const std::size_t pass : {0U, 1U}) {
    CHECK(steps_back(planned(cable(octagon, 3, "right", pass)).stitches) == 4);
    CHECK(steps_back(planned(cable("E 20, S 20, W 20, N 20", 3, "right", pass)).stitches) == 4);
    CHECK(steps_back(planned(cable("SE 20, SW 20, NW 20, NE 20", 3, "right", pass)).stitches) == 4);
    CHECK(steps_back(planned(cable("E 30, SE 20, E 30, NE 20", 3, "right", pass)).stitches) == 0);
  }
}

TEST_CASE("stitches more in the outer row: square 8, diamond 4, octagon 4 (geometry); all of them are worked over") {
  for (const auto& [path, more] : {std::pair{"E 20, S 20, W 20, N 20", 8}, {"SE 20, SW 20, NW 20, NE 20", 4}, {octagon, 4}}) {
    const Pass pass = cable(path);
    CHECK(static_cast<int>(pass.runs[0].stitches.size() - pass.runs[1].stitches.size()) == more);
    const Round round = planned(pass);
    CHECK(std::count_if(round.stitches.begin(), round.stitches.end(), [](const Worked& w) { return w.over && w.run == 0; }) == more);
    CHECK(std::none_of(round.stitches.begin(), round.stitches.end(), [](const Worked& w) { return w.over && w.run == 1; }));
  }
}

TEST_CASE("a straight corner: two stitches over, the first of the next side worked backwards (geometry)") {
  const Round round = planned(cable("E 20, S 20, W 20, N 20"));
  CHECK(points_from(round, {18, 0}, 8) == "(18,0) (20,0) (20,2) (20,0) (20,2) (20,4) (18,2) (18,4)");
}

TEST_CASE("each step back touches its corner") {
  for (const auto* path : {octagon, "E 20, S 20, W 20, N 20", "SE 20, SW 20, NW 20, NE 20", "E 24, SE 8, NE 8, E 24, S 20, W 64, N 20"}) {
    for (const auto* lie : {"right", "left"}) {
      const Pass pass = cable(path, 2, lie);
      const laws::Rows rows(pass);
      for (const laws::Needle& n : laws::order_of(planned(pass)))
        if (n.backward) CHECK(rows.from_corner(n) == 0);
    }
  }
}

TEST_CASE("at a free end the stitch over itself is the step back") {
  const Round round = planned(cable("E 12, SW 12, E 12, SW 12", 2, "left"));
  CHECK(round.stitches.back().backward);
  CHECK(round.stitches.back().over);
  CHECK_FALSE(round.stitches[round.stitches.size() - 2].backward);
}

TEST_CASE("a circle may begin at level pairs that have two others of their leg on either side") {
  const Round round = planned(cable(octagon));
  REQUIRE(!round.starts.empty());
  CHECK(std::is_sorted(round.starts.begin(), round.starts.end()));
  for (const int start : round.starts) {
    for (int k = start - 4; k < start + 6; ++k) {
      const Worked& w = round.stitches[static_cast<std::size_t>(k)];
      CHECK(w.leg == round.stitches[static_cast<std::size_t>(start)].leg);
      CHECK(w.run == (k - start + 4) % 2);
      CHECK_FALSE(w.over);
    }
  }
  CHECK(planned(cable("E 20")).starts == std::vector{0});
}

TEST_CASE("legs of three or four pairs: a pair between two others") {
  for (const auto* path : {"SE 8, SW 8, NW 8, NE 8", "E 10, S 10, W 10, N 10"}) {
    const Round round = planned(cable(path, 2, "left"));
    REQUIRE(!round.starts.empty());
    for (const int start : round.starts)
      for (int k = start - 2; k < start + 4; ++k)
        CHECK(round.stitches[static_cast<std::size_t>(k)].leg == round.stitches[static_cast<std::size_t>(start)].leg);
  }
}

TEST_CASE("short legs: any level pair, at last the first stitch") {
  for (const auto* path : {"E 2, SE 2, S 2, SW 2, W 2, NW 2, N 2, NE 2", "SE 4, SW 4, NW 4, NE 4", "E 6, S 6, W 6, N 6"}) {
    const Round round = planned(cable(path, 2, "left"));
    REQUIRE(!round.starts.empty());
    for (const int start : round.starts) CHECK(start < static_cast<int>(round.stitches.size()));
  }
}

TEST_CASE("a pass without stitches is an empty round") {
  Pass pass{{stitch::Run{}, stitch::Run{}}, stitch::Order::turn_about, true};
  CHECK(trail::plan_round(pass, {}).stitches.empty());
  pass.order = stitch::Order::in_turn;
  const Round round = trail::plan_round(pass, {});
  CHECK(round.starts.empty());
  CHECK(trail::make_trail(round, 0, {}, {}).ends.empty());
}

TEST_CASE("a row that has no stitch on a leg, or none at all") {
  Pass pass = cable("E 12, S 12, E 12");
  pass.runs[1].stitches.clear();
  pass.runs[1].legs.clear();
  CHECK(laws::broken(pass, trail::plan_round(pass, {})) == "");
  Pass without_second_leg = cable("E 12, S 12, E 12");
  stitch::Run& row = without_second_leg.runs[1];
  for (std::size_t i = row.stitches.size(); i-- > 0;) {
    if (row.legs[i] != 1) continue;
    row.stitches.erase(row.stitches.begin() + static_cast<std::ptrdiff_t>(i));
    row.legs.erase(row.legs.begin() + static_cast<std::ptrdiff_t>(i));
  }
  CHECK(laws::broken(without_second_leg, trail::plan_round(without_second_leg, {})) == "");
}
