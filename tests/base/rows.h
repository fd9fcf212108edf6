// The rows of src/CMakeLists.txt: which folder may include which, and what its library or program links.
#pragma once

#include <algorithm>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "base/pattern.h"

namespace house {

struct Row {
  std::string name;                         ///< "paint_cairo"; a program's own name
  std::string path;                         ///< under src/: "paint/cairo"
  std::vector<std::string> needs;           ///< names of rows
  std::vector<std::string> uses;            ///< targets of libraries
  std::vector<std::string> files;           ///< under src/; empty where the row has all of its folder that no other row names
};

using Rows = std::vector<Row>;

inline std::vector<std::string> words_of(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> words;
  for (std::string word; stream >> word;) words.push_back(word);
  return words;
}

inline Row folder_row(const std::vector<std::string>& words) {
  Row row{words[0], words[0], {}, {}, {}};
  std::string part;
  for (std::size_t i = 1; i < words.size(); ++i) {
    if (words[i] == "PATH" || words[i] == "NEEDS" || words[i] == "USES") part = words[i];
    else if (part == "PATH") row.path = words[i];
    else (part == "NEEDS" ? row.needs : row.uses).push_back(words[i]);
  }
  return row;
}

inline std::string without_remarks(const std::string& cmake) {
  std::string text;
  bool remark = false;
  for (const char c : cmake) {
    remark = c == '#' || (remark && c != '\n');
    if (!remark) text += c;
  }
  return text;
}

/// What target_link_libraries(NAME PRIVATE ...) adds to a row.
inline void add_links(Row& row, const std::string& text, const std::string& target) {
  for (const Match& call : Pattern("target_link_libraries\\(\\s*" + target + "\\s+(PRIVATE|PUBLIC)([^)]*)\\)").all(text))
    for (const std::string& linked : words_of(call.groups[2]))
      linked.starts_with("tk_") ? row.needs.push_back(linked.substr(3)) : row.uses.push_back(linked);
}

/// tellekant_folder(...) rows; then libraries and programs written out: add_library(tk_NAME STATIC ${FOLDER_sources}) or
/// add_executable(NAME ${FOLDER_sources}), or with files by name, each with its target_link_libraries.
inline Rows rows_of(const std::string& cmake) {
  const std::string text = without_remarks(cmake);
  Rows rows;
  for (const Match& call : Pattern("tellekant_folder\\(([^)]*)\\)").all(text)) rows.push_back(folder_row(words_of(call.groups[1])));
  for (const Match& call : Pattern("add_(executable|library)\\(\\s*([[:alnum:]_-]+)\\s+(STATIC\\s+)?([^)]*)\\)").all(text)) {
    const std::string& target = call.groups[2];
    const auto folder = Pattern("^\\$\\{(\\w+)_sources\\}").all(call.groups[4]);
    Row row{target.starts_with("tk_") ? target.substr(3) : target, "", {}, {}, {}};
    if (!folder.empty()) row.path = folder[0].groups[1];
    else row.files = words_of(call.groups[4]);
    if (row.path.empty() && (row.files.empty() || row.files[0].find('/') == std::string::npos)) continue;  // the function's own lines
    if (row.path.empty()) row.path = row.files[0].substr(0, row.files[0].rfind('/'));
    add_links(row, text, target);
    rows.push_back(row);
  }
  return rows;
}

inline const Row* row_named(const Rows& rows, const std::string& name) {
  for (const Row& row : rows)
    if (row.name == name) return &row;
  return nullptr;
}

/// The row and all that it needs, and what those need in turn.
inline std::set<std::string> reach_of(const Rows& rows, const std::string& name) {
  std::set<std::string> reached;
  std::vector<std::string> open{name};
  while (!open.empty()) {
    const std::string next = open.back();
    open.pop_back();
    if (!reached.insert(next).second) continue;
    if (const Row* row = row_named(rows, next)) open.insert(open.end(), row->needs.begin(), row->needs.end());
  }
  return reached;
}

/// Every library that the row links, its own and those of what it needs.
inline std::set<std::string> libraries_of(const Rows& rows, const std::string& name) {
  std::set<std::string> libraries;
  for (const std::string& reached : reach_of(rows, name))
    if (const Row* row = row_named(rows, reached)) libraries.insert(row->uses.begin(), row->uses.end());
  return libraries;
}

/// The row that names the file ("cloth/way.h", a path under src/), else the one whose folder holds it: the longest that fits.
inline const Row* row_of_file(const Rows& rows, const std::string& file) {
  const Row* best = nullptr;
  for (const Row& row : rows) {
    if (std::find(row.files.begin(), row.files.end(), file) != row.files.end()) return &row;
    if (row.files.empty() && file.starts_with(row.path + "/") && (!best || row.path.size() > best->path.size())) best = &row;
  }
  return best;
}

}  // namespace house
