// Shapes of kinds without a path: pulled from a hole to a size, put at several places, or made of other parts' names. What a key means is
// told by its type alone; whether a value fits, by the kind.
#pragma once

#include "session/shape.h"

namespace session {

/// Its holes: of a kind with several places all of them, else the one; none of a kind made of names.
std::vector<cloth::Hole> places_of(const Shape& shape);
/// With one place more, or, where it has that one, without it; nothing where none would be left, or the kind has but one.
std::optional<Shape> place_toggled(const Shape& shape, cloth::Hole at);
/// The shape pulled from its hole (the first, of several) to another: a size that reaches so far out, or a row of stitches that fills the
/// box. A row whose stitches differ keeps them and is only turned. Words that are `chosen` stay. Less than two threads are no pull: then it
/// stays as it is.
std::optional<Shape> sized(const Shape& shape, cloth::Hole to, const stitch::Values& chosen);
/// Those of its keys that a pull changes, each as "key value".
std::string size_in_words(const Shape& shape);

/// Names of other parts that it is made of.
std::vector<std::string> names_of(const Shape& shape);
/// With that name, or, where it has it, without.
Shape name_toggled(const Shape& shape, const std::string& name);

std::vector<Handle> handles_of_placed(const Shape& shape);
std::optional<Shape> placed_pulled(const Shape& shape, const Handle& handle, cloth::Hole to);

}  // namespace session
