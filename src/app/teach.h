// Tooltips that say what a word of the craft means, where it stands on the screen.
#pragma once

#include <string>
#include <string_view>

#include "app/desk.h"

namespace app {

/// The phrase that says what a key of a kind means.
std::string word_of_key(const stitch::Kind& kind, const stitch::KeySpec& spec);

/// While the pointer is on the item drawn last: the words, in a few lines.
void hint(const std::string& text);
/// The same with the phrase of this key. A key without a phrase shows nothing.
void teach(const Desk& desk, std::string_view phrase);

}  // namespace app
