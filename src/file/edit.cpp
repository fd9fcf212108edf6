#include "file/edit.h"

#include <fmt/format.h>

#include <algorithm>

#include "file/course_file.h"
#include "file/outline.h"

namespace file {
namespace {

/// The text in blocks: what stands before the first header, then each table with the comments right above it.
class Blocks {
 public:
  explicit Blocks(std::string_view text) : text_(tidy(text)) { part(); }

  std::string joined() const {
    std::string all;
    for (const std::string& block : blocks_) {
      if (!all.empty() && !all.ends_with("\n\n")) all += '\n';
      all += block;
    }
    return tidy(all);
  }

  /// Index of the block of a table; nothing where it is not there.
  std::optional<std::size_t> find(const TableName& table) const {
    int n = 0;
    const bool list = is_list(table.name);
    for (std::size_t i = 0; i < blocks_.size(); ++i)
      if (names_[i] == table.name && (!list || n++ == table.number)) return i;
    return std::nullopt;
  }
  std::size_t count(std::string_view name) const { return static_cast<std::size_t>(std::count(names_.begin(), names_.end(), name)); }
  std::size_t behind_last(std::string_view name) const {
    for (std::size_t i = blocks_.size(); i-- > 0;)
      if (names_[i] == name) return i + 1;
    return blocks_.size();
  }

  void insert(std::size_t at, std::string name, std::string block) {
    blocks_.insert(blocks_.begin() + static_cast<std::ptrdiff_t>(at), std::move(block));
    names_.insert(names_.begin() + static_cast<std::ptrdiff_t>(at), std::move(name));
  }
  std::string take(std::size_t at) {
    std::string block = std::move(blocks_[at]);
    blocks_.erase(blocks_.begin() + static_cast<std::ptrdiff_t>(at));
    names_.erase(names_.begin() + static_cast<std::ptrdiff_t>(at));
    return block;
  }
  std::string& block(std::size_t at) { return blocks_[at]; }

  static bool is_list(std::string_view name) { return name == "part" || name == "lesson" || name == "student"; }

 private:
  /// Where the comments above the header begin.
  static std::size_t with_comments(std::string_view text, std::size_t header) {
    std::size_t begin = header;
    while (begin > 0) {
      const std::size_t before = begin >= 2 ? text.rfind('\n', begin - 2) : std::string_view::npos;
      const std::size_t line = before == std::string_view::npos ? 0 : before + 1;
      if (text[line] != '#') break;
      begin = line;
    }
    return begin;
  }

  static std::string name_of(std::string_view header) {
    std::string name(header.substr(0, header.find(']')));
    std::erase_if(name, [](char c) { return c == '[' || c == ' ' || c == '"'; });
    return name;
  }

  void part() {
    const Outline shape = outline(text_);
    std::vector<std::pair<std::size_t, std::string>> begins{{0, ""}};
    for (const Statement& statement : shape.statements)
      if (statement.header)
        begins.emplace_back(with_comments(text_, statement.begin), name_of(std::string_view(text_).substr(statement.begin)));
    for (std::size_t i = 0; i < begins.size(); ++i) {
      const std::size_t end = i + 1 < begins.size() ? begins[i + 1].first : text_.size();
      blocks_.push_back(text_.substr(begins[i].first, end - begins[i].first));
      names_.push_back(begins[i].second);
    }
  }

  std::string text_;
  std::vector<std::string> blocks_, names_;
};

/// The bytes of a key's value within a block, without its trailing comment.
std::optional<std::pair<std::size_t, std::size_t>> value_of(std::string_view block, std::string_view key) {
  const Outline shape = outline(block);
  for (std::size_t s = 0; s < shape.statements.size(); ++s) {
    const Statement& statement = shape.statements[s];
    if (statement.header || block.substr(statement.begin, key.size()) != key) continue;
    const std::size_t equals = block.find_first_not_of(' ', statement.begin + key.size());
    if (equals == std::string_view::npos || block[equals] != '=') continue;
    std::size_t end = statement.begin;
    for (int line = statement.first_line; line < statement.last_line; ++line) end = block.find('\n', end) + 1;
    end = std::min(block.find('\n', end), block.size());
    if (!statement.trailing.empty()) end = static_cast<std::size_t>(statement.trailing.data() - block.data());
    const std::size_t begin = block.find_first_not_of(' ', equals + 1);
    end = block.find_last_not_of(' ', end - 1) + 1;
    return std::pair(begin, end);
  }
  return std::nullopt;
}

std::string block_text(const TableName& table, const std::vector<Pair>& pairs) {
  std::string text = Blocks::is_list(table.name) ? fmt::format("[[{}]]\n", table.name) : fmt::format("[{}]\n", table.name);
  for (const Pair& pair : pairs) text += fmt::format("{} = {}\n", pair.key, pair.value);
  return text;
}

}  // namespace

std::string in_toml(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    if (c == '\n') out += "\\n";
    else if (c == '\t') out += "\\t";
    else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) out += fmt::format("\\u{:04X}", static_cast<unsigned>(c));
    else out += c;
  }
  return out + '"';
}

std::string in_toml(cloth::Hole hole) { return fmt::format("[{}, {}]", hole.x, hole.y); }

std::string in_toml_halves(cloth::Hole twice) { return fmt::format("[{}, {}]", twice.x / 2.0, twice.y / 2.0); }

std::string in_toml(const std::vector<std::string>& texts) {
  std::string out = "[";
  for (const std::string& text : texts) out += (out.size() > 1 ? ", " : "") + in_toml(text);
  return out + "]";
}

std::optional<std::string> with_key(std::string_view text, const TableName& table, const Pair& pair) {
  Blocks blocks(text);
  const auto at = blocks.find(table);
  if (!at) return std::nullopt;
  std::string& block = blocks.block(*at);
  if (const auto value = value_of(block, pair.key)) {
    block.replace(value->first, value->second - value->first, pair.value);
  } else {
    const std::size_t last = block.find_last_not_of('\n');
    block.insert(last == std::string::npos ? 0 : last + 1, fmt::format("\n{} = {}", pair.key, pair.value));
  }
  return blocks.joined();
}

std::optional<std::string> without_key(std::string_view text, const TableName& table, std::string_view key) {
  Blocks blocks(text);
  const auto at = blocks.find(table);
  if (!at) return std::nullopt;
  std::string& block = blocks.block(*at);
  const auto value = value_of(block, key);
  if (!value) return std::nullopt;
  const std::size_t line = block.rfind('\n', value->first);
  const std::size_t begin = line == std::string::npos ? 0 : line + 1, end = std::min(block.find('\n', value->second), block.size() - 1) + 1;
  block.erase(begin, end - begin);
  return blocks.joined();
}

std::optional<std::string> with_table(std::string_view text, const TableName& before, const std::vector<Pair>& pairs) {
  Blocks blocks(text);
  const auto at = Blocks::is_list(before.name) ? blocks.find(before) : std::nullopt;
  if (!Blocks::is_list(before.name) && blocks.find(before)) return std::nullopt;
  blocks.insert(at.value_or(blocks.behind_last(before.name)), before.name, block_text(before, pairs));
  return blocks.joined();
}

std::optional<std::string> without_table(std::string_view text, const TableName& table) {
  Blocks blocks(text);
  const auto at = blocks.find(table);
  if (!at) return std::nullopt;
  blocks.take(*at);
  return blocks.joined();
}

std::optional<std::string> with_table_moved(std::string_view text, const TableName& table, int to) {
  Blocks blocks(text);
  const auto from = blocks.find(table);
  if (!from || to < 0 || to >= static_cast<int>(blocks.count(table.name))) return std::nullopt;
  std::string block = blocks.take(*from);
  const auto at = blocks.find({table.name, to});
  blocks.insert(at.value_or(blocks.behind_last(table.name)), table.name, std::move(block));
  return blocks.joined();
}

}  // namespace file
