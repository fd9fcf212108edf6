#include "publish/languages.h"

#include <map>
#include <mutex>
#include <string>

#include "assets/assets.h"
#include "base/require.h"

namespace publish {
namespace {

words::Phrases table_of(std::string_view language) {
  const std::string path = "phrases/" + std::string(language) + ".toml";
  auto table = words::Phrases::read(assets::table(path), path);
  base::require(table.has_value(), table ? "" : table.error().what);
  return std::move(*table);
}

}  // namespace

std::vector<std::string_view> languages() { return assets::languages(); }

const words::Phrases& phrases_in(std::string_view language) {
  static const words::Phrases english = table_of("en");
  if (language == english.language() || assets::table("phrases/" + std::string(language) + ".toml").empty()) return english;
  static std::mutex one_at_a_time;
  static std::map<std::string, words::Phrases, std::less<>> others;
  const std::lock_guard lock(one_at_a_time);
  const auto known = others.find(language);
  return known != others.end() ? known->second : others.emplace(language, table_of(language).completed_by(english)).first->second;
}

}  // namespace publish
