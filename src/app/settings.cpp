#include "app/settings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <string>

#include "base/whole_file.h"
#include "publish/languages.h"

namespace app {
namespace {

bool known(std::string_view language) {
  const auto languages = publish::languages();
  return std::find(languages.begin(), languages.end(), language) != languages.end();
}

}  // namespace

std::string system_language() {
  for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) {
    const char* value = std::getenv(name);
    if (!value || !*value) continue;
    const std::string_view asked(value);
    const std::string language(asked.substr(0, asked.find_first_of("_.@")));
    if (language == "no" || language == "nn") return known("nb") ? "nb" : "en";
    return known(language) ? language : "en";
  }
  return "en";
}

Settings read_settings(const std::filesystem::path& file) {
  Settings settings;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    if (line == "dark") settings.light = Light::dark;
    if (line.starts_with("scale ")) {
      const int percent = std::atoi(line.c_str() + 6);
      if (percent > 0) settings.scale = std::clamp(static_cast<float>(percent) / 100, least_scale, most_scale);
    }
    if (line.starts_with("language ") && known(line.substr(9))) settings.language = line.substr(9);
    if (line.starts_with("recent ")) settings.recent.emplace_back(line.substr(7));
  }
  return settings;
}

base::Result<void> write_settings(const std::filesystem::path& file, const Settings& settings) {
  std::string text = fmt::format("{}\nscale {}\n", settings.light == Light::dark ? "dark" : "light", static_cast<int>(settings.scale * 100 + 0.5F));
  if (!settings.language.empty()) text += fmt::format("language {}\n", settings.language);
  for (const std::filesystem::path& path : settings.recent)
    if (path.string().find('\n') == std::string::npos) text += fmt::format("recent {}\n", path.string());
  return base::write_whole(file, text);
}

}  // namespace app
