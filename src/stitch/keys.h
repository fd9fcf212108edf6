// The keys that kinds have in common, each in a few words.
#pragma once

#include <string_view>
#include <vector>

#include "stitch/kind.h"

namespace stitch {

KeySpec required_hole(std::string_view name);
KeySpec required_path(std::string_view name);
KeySpec word(std::string_view name, std::string_view fallback, std::vector<std::string_view> words);
KeySpec required_holes(std::string_view name);
KeySpec required_whole(std::string_view name, int least, int most);
KeySpec required_word(std::string_view name, std::vector<std::string_view> words);
/// A list of whole numbers; where `fallback` is none it must be written.
KeySpec wholes(std::string_view name, std::optional<std::vector<int>> fallback, int least, int most);
KeySpec whole_or_word(std::string_view name, std::string_view fallback, std::vector<std::string_view> words, int least, int most);
KeySpec flag(std::string_view name, bool fallback);
KeySpec whole(std::string_view name, int fallback, int least, int most);

}  // namespace stitch
