// The project's own source files as text, for tests that hold them against the laws of the house. C++ is read by letters and braces only,
// not understood; what that misses is left to people.
#pragma once

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace house {

struct Source {
  std::string path;  ///< from the top of the project: "src/base/date.h"
  std::string text;
  std::string code;  ///< the text with comments and what is in quotes blanked out, every other letter in its place
};

inline bool word_letter(char c) { return std::isalnum(static_cast<unsigned char>(c)) || c == '_'; }

/// Where the quoted or commented piece that begins at `at` ends (one past it); `at` itself where none begins.
inline std::size_t end_of_quiet(std::string_view text, std::size_t at) {
  const auto past = [&](std::string_view mark, std::size_t from) {
    const std::size_t found = text.find(mark, from);
    return found == std::string_view::npos ? text.size() : found + mark.size();
  };
  const std::string_view rest = text.substr(at);
  if (rest.starts_with("//")) return std::min(text.find('\n', at), text.size());
  if (rest.starts_with("/*")) return past("*/", at + 2);
  if (rest.starts_with("R\"") && (at == 0 || !word_letter(text[at - 1]))) {
    const std::size_t open = text.find('(', at);
    return open == std::string_view::npos ? text.size() : past(")" + std::string(text.substr(at + 2, open - at - 2)) + "\"", open);
  }
  const char quote = rest[0];
  if (quote != '"' && (quote != '\'' || (at > 0 && word_letter(text[at - 1])))) return at;  // 1'000 holds no letter
  std::size_t end = at + 1;
  while (end < text.size() && text[end] != quote && text[end] != '\n') end += text[end] == '\\' ? 2 : 1;
  return std::min(end + 1, text.size());
}

inline std::string code_of(std::string_view text) {
  std::string code(text);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = end_of_quiet(text, at);
    for (std::size_t i = at; i < end; ++i)
      if (code[i] != '\n') code[i] = ' ';
    at = std::max(end, at + 1);
  }
  return code;
}

inline Source source(std::string path, std::string text) {
  std::string code = code_of(text);
  return {std::move(path), std::move(text), std::move(code)};
}

inline std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  std::istringstream stream{std::string(text)};
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

inline int line_at(std::string_view text, std::size_t at) {
  return 1 + static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

inline std::string read_file(const std::filesystem::path& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

/// Every file under these folders of the project with one of the endings, in order of path.
inline std::vector<Source> sources_under(const std::vector<std::string>& folders, const std::set<std::string>& endings) {
  const std::filesystem::path root = TELLEKANT_ROOT;
  std::vector<Source> sources;
  for (const std::string& folder : folders) {
    if (!std::filesystem::exists(root / folder)) continue;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder))
      if (entry.is_regular_file() && endings.contains(entry.path().extension().string()))
        sources.push_back(source(entry.path().lexically_relative(root).generic_string(), read_file(entry.path())));
  }
  std::sort(sources.begin(), sources.end(), [](const Source& a, const Source& b) { return a.path < b.path; });
  return sources;
}

}  // namespace house
