// What the user has set for herself, kept between sessions: light or dark, the interface scale, the courses opened lately. Never part of a course.
#pragma once

#include <filesystem>
#include <vector>

#include "app/theme.h"
#include "base/result.h"

namespace app {

struct Settings {
  Light light = Light::light;
  float scale = 1;  ///< on top of the screen's own
  std::vector<std::filesystem::path> recent;  ///< newest first
};

inline constexpr float least_scale = 0.75F, most_scale = 2.5F;

/// One setting a line; what cannot be read is left at its default.
Settings read_settings(const std::filesystem::path& file);
base::Result<void> write_settings(const std::filesystem::path& file, const Settings& settings);

}  // namespace app
