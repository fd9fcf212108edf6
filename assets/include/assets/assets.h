// The data tables of assets/, built into the program.
#pragma once

#include <string_view>
#include <vector>

namespace assets {

/// The table's text by its path under assets/, e.g. "phrases/en.toml"; empty where there is none.
std::string_view table(std::string_view path);

/// The paths of the sample courses, by name: "lessons/frost.course.toml" and so on.
std::vector<std::string_view> samples();

/// What the tables of phrases are in, by their files' names: "en", "nb".
std::vector<std::string_view> languages();

}  // namespace assets
