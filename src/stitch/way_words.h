// What a teacher may have meant by a word that is no direction.
#pragma once

#include <string>
#include <string_view>

namespace stitch {

/// "NE" for "ne", "NWE", "northeast"; "" where nothing is near.
std::string nearest_way(std::string_view word);

}  // namespace stitch
