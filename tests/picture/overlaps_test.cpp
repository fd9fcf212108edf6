// The overseer of pages is overseen: each fault is put on a page by hand and must be told.
#include "picture/overlaps.h"

#include <doctest/doctest.h>

#include "picture/ink.h"

namespace {

using list::Role;

class PlainType : public list::Measure {
 public:
  list::TypeSize measure(std::string_view text, list::TypeStyle style) const override {
    const double em = style.size_pt * list::mm_per_pt;
    return {0.6 * em * static_cast<double>(text.size()), 0.97 * em, 0.24 * em, true};
  }
};

const list::TypeStyle type{12, list::Weight::regular};
const list::Colour ink{0, 0, 0};

/// A picture with a stitch, a hole, and a number that stands at `at`.
list::List picture_with(list::Point at, Role role = Role::number) {
  list::List list;
  picture::clip_in(list, {20, 20, 60, 60}, 0);
  picture::add_line(list, Role::stitch_now, {30, 40}, {50, 40}, 1.4, ink);
  picture::add_line(list, Role::stitch_before, {30, 60}, {50, 60}, 1.4, ink);
  picture::add_line(list, Role::stitch_later, {30, 70}, {50, 70}, 0.4, ink);
  picture::add_disc(list, Role::hole_up, {60, 40}, 1, ink);
  picture::add_line(list, Role::ruler, {70, 30}, {70, 70}, 0.4, ink);
  picture::add_text(list, role, at, "12", type, ink);
  picture::clip_out(list);
  return list;
}

std::size_t faults(const list::List& list) { return picture::overlaps(list, PlainType()).size(); }

}  // namespace

TEST_CASE("a number on a stitch, a hole, a ruler, outside its picture") {
  CHECK(faults(picture_with({30, 35})) == 0);
  CHECK(faults(picture_with({35, 41})) == 1);
  CHECK(faults(picture_with({35, 61})) == 1);
  CHECK(faults(picture_with({35, 71})) == 1);
  CHECK(faults(picture_with({58, 41})) == 1);
  CHECK(faults(picture_with({68, 50})) == 1);
  CHECK(faults(picture_with({78, 50})) == 1);
  CHECK(faults(picture_with({35, 71}, Role::map_mark)) == 0);  // on the map, over what is not yet stitched
}

TEST_CASE("numbers on one another and on a leader; a ruler on a stitch") {
  list::List list = picture_with({30, 35});
  picture::clip_in(list, {20, 90, 60, 60}, 0);
  picture::add_text(list, Role::number, {30, 110}, "5", type, ink);
  picture::add_text(list, Role::ruler_number, {31, 110}, "6", type, ink);
  CHECK(faults(list) == 1);
  picture::add_line(list, Role::leader, {20, 109}, {60, 109}, 0.2, ink);
  CHECK(faults(list) == 3);
  picture::add_line(list, Role::stitch_before, {30, 130}, {50, 130}, 1, ink);
  picture::add_line(list, Role::ruler, {40, 120}, {40, 140}, 0.4, ink);
  CHECK(faults(list) == 4);
  picture::clip_out(list);
}

TEST_CASE("lines of type on one another, on a picture, over the edge") {
  list::List list = picture_with({30, 35});
  picture::add_text(list, Role::text, {100, 100}, "first line", type, ink);
  picture::add_text(list, Role::text, {100, 106}, "second line", type, ink);
  CHECK(faults(list) == 0);
  picture::add_text(list, Role::heading, {110, 108}, "third", type, ink);
  CHECK(faults(list) == 1);
  picture::add_text(list, Role::text, {70, 30}, "on the picture", type, ink);
  CHECK(faults(list) == 2);
  picture::add_text(list, Role::text, {190, 200}, "over the edge", type, ink);
  CHECK(faults(list) == 3);
}
