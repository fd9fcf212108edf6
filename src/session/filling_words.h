// Rules of fillings as a teacher types them: "dove's eye all; wheel every second; none 14 2, 22 2 turn 4".
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "stitch/kind.h"

namespace session {

std::string fillings_in_words(const std::vector<stitch::FillingRule>& rules);
std::optional<std::vector<stitch::FillingRule>> fillings_from_words(std::string_view words);

}  // namespace session
