#include "file/comments.h"

#include <algorithm>
#include <utility>

namespace file {
namespace {

void trim_blanks(CommentLines& lines) {
  while (!lines.empty() && lines.back().empty()) lines.pop_back();
  lines.erase(lines.begin(), std::find_if(lines.begin(), lines.end(), [](const std::string& line) { return !line.empty(); }));
}

void append(CommentLines& to, const CommentLines& more) { to.insert(to.end(), more.begin(), more.end()); }

/// As a group of its own, a blank line between it and what is there.
void append_group(CommentLines& to, CommentLines group) {
  trim_blanks(group);
  if (group.empty()) return;
  if (!to.empty()) to.emplace_back();
  append(to, group);
}

}  // namespace

Comments::Comments(const Outline& outline) {
  owners_.reserve(outline.statements.size() + 1);
  owners_.emplace_back();
  std::size_t table = 0;
  CommentLines waiting;
  bool joined = false;  // the first waiting comment stands right below a statement
  bool blank_before = true;
  for (const Piece& piece : outline.pieces) {
    if (piece.kind == Piece::blank) {
      if (!waiting.empty()) waiting.emplace_back();
    } else if (piece.kind == Piece::comment) {
      if (waiting.empty()) joined = !blank_before;
      waiting.emplace_back(piece.text);
    } else {
      const Statement& s = outline.statements[piece.statement_at];
      settle(waiting, joined, &s, owners_[table]);
      if (s.header) table = owners_.size();
      owners_.push_back({&s, {std::move(waiting), std::string(s.trailing)}, {}});
      for (const std::string_view inner : s.inner) owners_.back().remarks.before.emplace_back(inner);
      waiting.clear();
    }
    blank_before = piece.kind == Piece::blank;
  }
  settle(waiting, joined, nullptr, owners_[table]);
  file_end_ = std::move(waiting);
}

/// Where a table ends (a header or nothing comes next), the comments joined to its last line stay with it, if a blank line parts them from
/// what comes next.
void Comments::settle(CommentLines& waiting, bool joined, const Statement* next, Owner& table) {
  if (waiting.empty() || !joined || (next && !next->header)) return;
  const auto blank = std::find(waiting.begin(), waiting.end(), std::string());
  if (blank == waiting.end() && next) return;
  table.end.assign(waiting.begin(), blank);
  waiting.erase(waiting.begin(), blank == waiting.end() ? blank : std::next(blank));
}

std::size_t Comments::owner_at(int line) const {
  const auto after = std::upper_bound(owners_.begin() + 1, owners_.end(), line,
                                      [](int at, const Owner& owner) { return at < owner.statement->first_line; });
  const auto at = static_cast<std::size_t>(after - owners_.begin()) - 1;
  return at > 0 && line <= owners_[at].statement->last_line ? at : 0;
}

Remarks Comments::take(int line) {
  return std::exchange(owners_[owner_at(line)].remarks, {});
}

CommentLines Comments::take_end(int header_line) {
  return std::exchange(owners_[owner_at(header_line)].end, {});
}

CommentLines Comments::take_rest() {
  CommentLines rest;
  for (Owner& owner : owners_) {
    CommentLines left = std::move(owner.remarks.before);
    if (!owner.remarks.trailing.empty()) left.push_back(std::move(owner.remarks.trailing));
    append(left, owner.end);
    append_group(rest, std::move(left));
    owner = {owner.statement, {}, {}};
  }
  append_group(rest, std::exchange(file_end_, {}));
  return rest;
}

bool Comments::header_at(int line, int segments) const {
  const Statement* s = owners_[owner_at(line)].statement;
  return s && s->header && s->segments == segments;
}

}  // namespace file
