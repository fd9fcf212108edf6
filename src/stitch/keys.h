// The keys that kinds have in common, each in a few words.
#pragma once

#include <string_view>
#include <vector>

#include "stitch/kind.h"

namespace stitch {

KeySpec required_hole(std::string_view name);
KeySpec required_path(std::string_view name);
KeySpec word(std::string_view name, std::string_view fallback, std::vector<std::string_view> words);
KeySpec whole(std::string_view name, int fallback, int least, int most);

}  // namespace stitch
