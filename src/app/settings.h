// What the user has set for herself, kept between sessions: light or dark, the interface scale, the courses opened lately. Never part of a course.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "app/theme.h"
#include "base/result.h"

namespace app {

struct Settings {
  Light light = Light::light;
  std::string language;  ///< of the window, as in phrases_in; empty: as the system says
  float scale = 1;  ///< on top of the screen's own
  std::vector<std::filesystem::path> recent;  ///< newest first
};

inline constexpr float least_scale = 0.75F, most_scale = 2.5F;

/// The language that the environment asks for (POSIX: LC_ALL, else LC_MESSAGES, else LANG), where there is a table of it; else English. Norwegian of
/// either form or none is answered in bokmål.
std::string system_language();

/// One setting a line; what cannot be read is left at its default.
Settings read_settings(const std::filesystem::path& file);
base::Result<void> write_settings(const std::filesystem::path& file, const Settings& settings);

}  // namespace app
