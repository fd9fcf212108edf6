// Shapes pulled by hand: only what fits is offered, rings close, legs answer one another. Counts are worked out here from the geometry of the lattice.
#include "session/shape.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

session::Shape drawn(std::string_view kind, cloth::Hole held, const std::string& path) {
  auto shape = session::begin_shape(kind, held);
  REQUIRE(shape);
  shape->values["path"] = path;
  return *shape;
}

session::Handle handle(const session::Shape& shape, int item, session::Grip grip) {
  for (const auto& found : session::handles_of(shape))
    if (found.item == item && found.grip == grip) return found;
  FAIL("no such handle");
  return {};
}

}  // namespace

TEST_CASE("a block is held by its middle, a cable by its hole; of a kind that is not there nothing is begun") {
  CHECK(session::start_of(*session::begin_shape("blocks", {10, 10})) == cloth::Hole{8, 8});
  CHECK(session::start_of(*session::begin_shape("cable", {10, 10})) == cloth::Hole{10, 10});
  CHECK(!session::begin_shape("no such kind", {0, 0}));
}

TEST_CASE("a flight of blocks is pulled to the pointer: n blocks in staircase reach 4n threads both ways") {
  const auto shape = *session::begin_shape("blocks", {2, -2});
  const auto pulled = session::pull(shape, {30, -30});
  REQUIRE(pulled);
  CHECK(pulled->leg.way == cloth::Way::NE);
  CHECK(pulled->work.legs.back().to == cloth::Hole{4 * pulled->leg.number, -4 * pulled->leg.number});
  CHECK(pulled->leg.number == 8);
  CHECK(pulled->work.stitches.size() == 40);
}

TEST_CASE("a ring of blocks closes where it comes back to its beginning") {
  const auto nearly = drawn("blocks", {2, -2}, "NE 4, SE 3, SW 3");
  const auto pulled = session::pull(nearly, {2, -2});
  REQUIRE(pulled);
  CHECK(pulled->closes);
  CHECK(pulled->work.closed);
  CHECK(pulled->work.stitches.size() == 60);  // 20 n - 20 for n = 4
}

TEST_CASE("of a cable's legs only those are offered that a stitch over 2 threads fits") {
  const auto shape = *session::begin_shape("cable", {0, 0});
  for (int x = 5; x < 40; x += 3) {
    const auto pulled = session::pull(shape, {x, 0});
    REQUIRE(pulled);
    CHECK(pulled->leg.number % 2 == 0);
    CHECK(std::abs(pulled->leg.number - x) <= 1);
  }
}

TEST_CASE("lengthening a leg of a closed path lengthens the one that answers it; an open one grows alone") {
  const auto ring = drawn("cable", {0, 0}, "E 20, S 20, W 20, N 20");
  auto longer = session::handle_pulled(ring, handle(ring, 0, session::Grip::end), {26, 0});
  REQUIRE(longer);
  CHECK(session::path_of(*longer) == "E 26, S 20, W 26, N 20");
  const auto open = drawn("cable", {0, 0}, "E 20, S 20");
  longer = session::handle_pulled(open, handle(open, 1, session::Grip::end), {20, 13});
  REQUIRE(longer);
  CHECK((session::path_of(*longer) == "E 20, S 12" || session::path_of(*longer) == "E 20, S 14"));
}

TEST_CASE("a leg moved aside: its neighbours give way and the ring stays closed") {
  const auto ring = drawn("cable", {0, 0}, "E 12, SE 20, S 12, SW 20, W 12, NW 20, N 12, NE 20");
  const auto moved = session::handle_pulled(ring, handle(ring, 2, session::Grip::middle), {42, 26});
  REQUIRE(moved);
  CHECK(session::path_of(*moved) != session::path_of(ring));
  cloth::Hole at{0, 0};
  for (const auto& item : session::items_of(*moved)) at = at + item.number * cloth::step(item.way);
  CHECK(at == cloth::Hole{0, 0});
  CHECK(session::work_of(*moved)->closed);
}

TEST_CASE("the last leg can be taken back; words of a path read as it was written") {
  const auto shape = drawn("blocks", {2, 2}, "E 5 apart, 2 x (NE 2, SE 2)");
  CHECK(session::in_words(session::items_of(shape)) == "E 5 apart, NE 2, SE 2, NE 2, SE 2");
  CHECK(session::path_of(*session::without_last(shape)) == "E 5 apart, NE 2, SE 2, NE 2");
  CHECK(!session::without_last(drawn("blocks", {2, 2}, "E 5")));
}

TEST_CASE("a path goes on from its end, whichever end the kind works it from: an edge with its ridge to the left or right") {
  for (const char* out : {"left", "right"}) {
    CAPTURE(out);
    auto shape = *session::begin_shape("edge", {0, 0});
    shape.values["out"] = std::string(out);
    for (const cloth::Hole to : {cloth::Hole{20, 0}, {20, 16}, {0, 16}, {0, 0}}) {
      const auto pulled = session::pull(shape, to);
      REQUIRE(pulled);
      shape = pulled->shape;
      if (!pulled->closes) CHECK(session::end_of(shape) == to);
    }
    CHECK(session::path_of(shape) == "E 20, S 16, W 20, N 16");
    CHECK(session::work_of(shape)->closed);
    const auto handles = session::handles_of(shape);
    REQUIRE(handles.size() == 8);
    CHECK(handles[0].at == cloth::Hole{20, 0});
    CHECK(handles[2].at == cloth::Hole{20, 16});
  }
}

TEST_CASE("an edge that closes has its ridge outside, whichever way round it was drawn, unless the side was chosen") {
  for (const bool clockwise : {true, false}) {
    auto shape = session::begin_shape("edge", {0, 0});
    REQUIRE(shape);
    shape->values["path"] = std::string(clockwise ? "E 20, S 20, W 20, N 20" : "S 20, E 20, N 20, W 20");
    for (const char* out : {"left", "right"}) {
      shape->values["out"] = std::string(out);
      const auto turned = session::ridge_outside(*shape, {});
      CHECK(std::get<std::string>(turned.values.at("out")) == (clockwise ? "left" : "right"));
      CHECK(session::ridge_outside(*shape, {{"out", std::string(out)}}).values == shape->values);
    }
  }
  auto open = session::begin_shape("edge", {0, 0});
  open->values["path"] = std::string("S 20, E 20");
  CHECK(session::ridge_outside(*open, {}).values == open->values);
}
