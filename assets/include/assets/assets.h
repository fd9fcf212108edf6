// The data tables of assets/, built into the program.
#pragma once

#include <string_view>

namespace assets {

/// The table's text by its path under assets/, e.g. "phrases/en.toml"; empty where there is none.
std::string_view table(std::string_view path);

}  // namespace assets
