// Parts without a path, put and pulled by hand. Sizes are worked out here from the geometry of each kind as its books have it: a square
// eyelet of n threads reaches n/2 out of its middle, a star its reach.
#include "session/placed.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "session/edits.h"
#include "session/value_words.h"

namespace {

session::Shape begun(std::string_view kind, cloth::Hole held) {
  auto shape = session::begin_shape(kind, held);
  REQUIRE(shape);
  return *shape;
}

template <class T>
T value(const session::Shape& shape, const char* key) {
  return std::get<T>(shape.values.at(key));
}

}  // namespace

TEST_CASE("every kind there is can be begun by hand, and what is begun fits or waits to be pulled or named") {
  for (const stitch::Kind* kind : stitch::kinds()) {
    CAPTURE(std::string(kind->name));
    const auto shape = begun(kind->name, {40, 40});
    const auto way = session::by_hand(*kind);
    if (way == session::ByHand::legs) {
      const auto pulled = session::pull(shape, {60, 40});
      REQUIRE(pulled);
      CHECK(!pulled->work.stitches.empty());
    } else if (way == session::ByHand::named) {
      CHECK(session::names_of(session::name_toggled(shape, "ring")) == std::vector<std::string>{"ring"});
    } else {
      CHECK(session::work_of(shape));
      const auto pulled = session::sized(shape, {52, 34}, {});
      REQUIRE(pulled);
      REQUIRE(session::work_of(*pulled));
      CHECK(!session::work_of(*pulled)->stitches.empty());
    }
  }
}

TEST_CASE("a star is pulled to the reach of the pointer, an eyelet to twice it; only even numbers fit") {
  for (int far = 4; far <= 20; ++far) {
    const auto star = session::sized(begun("star", {0, 0}), {far, 1}, {});
    REQUIRE(star);
    CHECK(std::abs(value<int>(*star, "reach") - far) <= 1);
    CHECK(value<int>(*star, "reach") % 2 == 0);
    const auto eyelet = session::sized(begun("eyelet", {0, 0}), {-1, far}, {});
    REQUIRE(eyelet);
    CHECK(value<int>(*eyelet, "size") == 2 * far);
  }
}

TEST_CASE("less than two threads are no pull: the size stays; far out the largest is taken") {
  auto shape = begun("eyelet", {0, 0});
  shape.values["size"] = 6;
  CHECK(value<int>(*session::sized(shape, {1, -1}, {}), "size") == 6);
  const auto star = session::sized(begun("star", {0, 0}), {5000, 0}, {});
  REQUIRE(star);
  CHECK(session::work_of(*star));
}

TEST_CASE("a row of satin stitch fills the box that is pulled, whichever way") {
  for (const cloth::Hole to : {cloth::Hole{8, -4}, {8, 4}, {-8, 4}, {-8, -4}, {4, 8}, {-4, 8}, {4, -8}, {-4, -8}}) {
    const auto row = session::sized(begun("satin", {0, 0}), to, {});
    REQUIRE(row);
    const auto work = session::work_of(*row);
    REQUIRE(work);
    CHECK(work->stitches.size() == 9);
    for (const cloth::Stitch& stitch : work->stitches)
      for (const cloth::Hole hole : {stitch.a, stitch.b}) {
        CHECK(hole.x * to.x >= 0);
        CHECK(hole.y * to.y >= 0);
        CHECK(std::abs(hole.x) <= std::abs(to.x));
        CHECK(std::abs(hole.y) <= std::abs(to.y));
      }
    CHECK(work->stitches.back().b == to);
  }
}

TEST_CASE("a profile that was typed is only turned; a way that was chosen stays") {
  auto shape = begun("satin", {0, 0});
  const std::vector<int> pyramid{2, 3, 4, 5, 4, 3, 2};
  shape.values["over"] = pyramid;
  const auto down = session::sized(shape, {-3, 20}, {});
  REQUIRE(down);
  CHECK(value<std::vector<int>>(*down, "over") == pyramid);
  CHECK(value<std::string>(*down, "along") == "S");
  CHECK(value<std::string>(*down, "toward") == "W");
  auto across = begun("satin", {0, 0});
  across.values["along"] = std::string("E");
  const auto tall = session::sized(across, {4, -8}, {{"along", std::string("E")}});
  REQUIRE(tall);
  CHECK(value<std::string>(*tall, "along") == "E");
  CHECK(value<std::vector<int>>(*tall, "over") == std::vector<int>(5, 8));
}

TEST_CASE("a place is added by a click and taken away by another; the last one stays") {
  const auto one = begun("eyelet", {0, 0});
  const auto two = session::place_toggled(one, {12, 0});
  REQUIRE(two);
  CHECK(session::places_of(*two) == std::vector<cloth::Hole>{{0, 0}, {12, 0}});
  CHECK(session::places_of(*session::place_toggled(*two, {0, 0})) == std::vector<cloth::Hole>{{12, 0}});
  CHECK(!session::place_toggled(one, {0, 0}));
  CHECK(!session::place_toggled(begun("star", {0, 0}), {12, 0}));
}

TEST_CASE("handles: each place moves alone, the size's lies where the first one ends; a place on another's hole does not fit") {
  auto shape = *session::place_toggled(begun("eyelet", {0, 0}), {20, 0});
  shape.values["size"] = 6;
  const auto handles = session::handles_of(shape);
  REQUIRE(handles.size() == 3);
  CHECK(handles[2].grip == session::Grip::size);
  CHECK(handles[2].at == cloth::Hole{3, 0});
  const auto moved = session::handle_pulled(shape, handles[1], {20, 8});
  REQUIRE(moved);
  CHECK(session::places_of(*moved) == std::vector<cloth::Hole>{{0, 0}, {20, 8}});
  CHECK(!session::handle_pulled(shape, handles[1], {0, 0}));
  const auto larger = session::handle_pulled(shape, handles[2], {5, 0});
  REQUIRE(larger);
  CHECK(value<int>(*larger, "size") == 10);
  CHECK(session::handles_of(begun("cutwork", {0, 0})).empty());
}

TEST_CASE("the next one of a kind takes after the one before it, but not its place") {
  course::Part like;
  like.kind = "star";
  like.values = {{"centre", cloth::Hole{7, 7}}, {"reach", 14}, {"points", 4}};
  auto shape = begun("star", {0, 0});
  session::take_after(shape, like);
  CHECK(value<int>(shape, "reach") == 14);
  CHECK(value<cloth::Hole>(shape, "centre") == cloth::Hole{0, 0});
  CHECK(value<int>(shape, "points") == 8);  // what has a default keeps it
}

TEST_CASE("values as they are typed: what is written for a value means that value again") {
  for (const stitch::Kind* kind : stitch::kinds())
    for (const stitch::KeySpec& spec : kind->keys) {
      if (!spec.fallback) continue;
      CAPTURE(std::string(spec.name));
      CHECK(session::from_words(spec, session::in_words(*spec.fallback)) == spec.fallback);
    }
  const stitch::Kind& satin = *stitch::find_kind("satin");
  const stitch::KeySpec& over = *session::key_of(satin, stitch::KeyType::wholes);
  CHECK(session::from_words(over, "2, 3 4") == stitch::Value(std::vector{2, 3, 4}));
  CHECK(session::from_words(over, "2 3 x 4 5") == stitch::Value(std::vector{2, 4, 4, 4, 5}));
  CHECK(session::in_words(stitch::Value(std::vector(9, 4))) == "9 x 4");
  for (const char* wrong : {"", "2 three", "x 4", "2 x", "0", "2 -1", "99999999999", "999999999 x 2", "2.5"}) {
    CAPTURE(wrong);
    CHECK(!session::from_words(over, wrong));
  }
  const stitch::KeySpec& centres = *session::key_of(*stitch::find_kind("eyelet"), stitch::KeyType::holes);
  CHECK(session::from_words(centres, "0 0, [8, -8]") == stitch::Value(std::vector<cloth::Hole>{{0, 0}, {8, -8}}));
  CHECK(!session::from_words(centres, "0 0 8"));
}
