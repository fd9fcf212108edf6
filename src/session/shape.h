// A part's shape while it is drawn or changed by hand: legs tried out by asking the kind itself, so only what fits is ever offered. Knows keys and
// paths, not kinds.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cloth/hole.h"
#include "course/course.h"
#include "stitch/kind.h"
#include "stitch/path.h"

namespace session {

struct Shape {
  const stitch::Kind* kind = nullptr;
  stitch::Values values;  ///< every key of the kind; `path` may be empty: nothing is drawn yet
};

/// A new part of a kind that has `start` and `path`, held by the middle of its first piece; nothing for other kinds.
std::optional<Shape> begin_shape(std::string_view kind, cloth::Hole held);
Shape shape_of(const course::Part& part);
/// What the kind makes of it; nothing where it does not fit.
std::optional<stitch::Work> work_of(const Shape& shape);
bool has_path(const Shape& shape);
std::string path_of(const Shape& shape);
cloth::Hole start_of(const Shape& shape);
/// The items of its path, groups written out.
std::vector<stitch::PathItem> items_of(const Shape& shape);
/// "NE 8, SE 7, E 5 apart"; neighbours that go the same way are one item where they may be.
std::string in_words(const std::vector<stitch::PathItem>& items);

/// The far end of the last leg of its first row.
cloth::Hole far_end(const stitch::Work& work);

/// A further leg pulled out of the end of a shape.
struct Pulled {
  Shape shape;          ///< with the leg
  stitch::Work work;
  stitch::PathItem leg;
  bool closes = false;  ///< the ring is closed with it
};
/// Where its path ends now, as it would be held: the far end of its last leg, or the middle of its last piece.
cloth::Hole end_of(const Shape& shape);
/// Of all legs that fit, in eight ways, the one that ends nearest to the hole; a leg that closes the ring wins where the hole is near the beginning.
std::optional<Pulled> pull(const Shape& shape, cloth::Hole to);
/// Without its last leg; nothing where it has only one.
std::optional<Shape> without_last(const Shape& shape);

/// A handle of a drawn path: the end of an item, or its middle.
struct Handle {
  int item = 0;
  bool end = true;  ///< lengthens the leg; else moves it aside
  cloth::Hole at;
};
std::vector<Handle> handles_of(const Shape& shape);
/// The shape with a handle pulled to the hole, as near as fits: a leg lengthened (in a closed path with the leg that answers it), or moved aside while
/// its neighbours give way. Nothing where nothing fits.
std::optional<Shape> handle_pulled(const Shape& shape, const Handle& handle, cloth::Hole to);

}  // namespace session
