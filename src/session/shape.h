// A part's shape while it is drawn or changed by hand: legs and sizes tried out by asking the kind itself, so only what fits is ever offered.
// Knows the types of keys and paths, not kinds.
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

/// How a part is put on the cloth by hand. It follows from the keys that its kind takes.
enum class ByHand {
  legs,    ///< a path: pulled leg by leg
  row,     ///< a hole and a list of numbers: a row of stitches, pulled as a box from its first foot
  places,  ///< a list of holes: each click is one more, the first one pulled to its size
  spot,    ///< one hole: pulled from there to its size
  named,   ///< names of other parts: these are clicked
};
ByHand by_hand(const stitch::Kind& kind);
/// The first key of a type; null where there is none.
const stitch::KeySpec* key_of(const stitch::Kind& kind, stitch::KeyType type);

/// A new part of a kind, held by the middle of its first piece. What has no default begins with something that fits; nothing is named yet.
std::optional<Shape> begin_shape(std::string_view kind, cloth::Hole held);
/// What has no default and is no place is taken from another part of the same kind.
void take_after(Shape& shape, const course::Part& part);
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

/// The far end of the last leg of its first row. A kind may work a path from its end: then the end that is not its start.
cloth::Hole far_end(const Shape& shape, const stitch::Work& work);

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
/// Of a closed part of looped stitches the side that puts the ridge outside the ring, unless it is among `chosen`; any other shape as it is.
Shape ridge_outside(const Shape& shape, const stitch::Values& chosen);
/// Without its last leg; nothing where it has only one.
std::optional<Shape> without_last(const Shape& shape);

/// What pulling a handle does.
enum class Grip {
  end,     ///< lengthens a leg
  middle,  ///< moves a leg aside
  place,   ///< moves one of several places
  size,    ///< makes it larger or smaller
};
struct Handle {
  int item = 0;  ///< of the path, or of the places
  Grip grip = Grip::end;
  cloth::Hole at;
};
std::vector<Handle> handles_of(const Shape& shape);
/// The shape with a handle pulled to the hole, as near as fits: a leg lengthened (in a closed path with the leg that answers it), or moved aside while
/// its neighbours give way; a place moved; a size changed. Nothing where nothing fits.
std::optional<Shape> handle_pulled(const Shape& shape, const Handle& handle, cloth::Hole to);

}  // namespace session
