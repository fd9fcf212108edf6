// Values of a kind's keys as a teacher types them: lists of numbers and of holes without brackets, "9 x 4" for nine fours.
#pragma once

#include <optional>
#include <string>

#include "stitch/kind.h"

namespace session {

std::string in_words(const stitch::Value& value);
/// What the words mean for the key; nothing where they are none of its values.
std::optional<stitch::Value> from_words(const stitch::KeySpec& spec, std::string_view words);

}  // namespace session
