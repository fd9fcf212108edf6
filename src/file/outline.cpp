#include "file/outline.h"

#include <algorithm>
#include <string>

namespace file {
namespace {

constexpr std::string_view not_bare = " \t\r\n,[]{}#=\"'";

std::string_view trimmed_end(std::string_view text) {
  const std::size_t last = text.find_last_not_of(" \t\r");
  return last == std::string_view::npos ? std::string_view{} : text.substr(0, last + 1);
}

class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  Outline run() {
    while (at_ < text_.size()) line();
    return std::move(result_);
  }

 private:
  char now() const { return at_ < text_.size() ? text_[at_] : '\n'; }
  bool ends() const { return at_ >= text_.size(); }

  void line() {
    at_ = std::min(text_.find_first_not_of(" \t\r", at_), text_.size());
    if (ends()) return;
    if (now() == '\n') {
      end_line();
      if (result_.pieces.empty() || result_.pieces.back().kind != Piece::blank) result_.pieces.push_back({Piece::blank, {}, 0});
    } else if (now() == '#') {
      const std::string_view text = comment();
      result_.pieces.push_back({Piece::comment, text, 0});
      end_line();
    } else {
      statement();
    }
  }

  void end_line() {
    if (!ends() && now() == '\n') ++at_;
    ++line_;
  }

  std::string_view comment() {
    const std::size_t begin = at_;
    at_ = std::min(text_.find('\n', at_), text_.size());
    return trimmed_end(text_.substr(begin, at_ - begin));
  }

  void statement() {
    Statement s;
    s.header = now() == '[';
    s.begin = at_;
    s.first_line = line_;
    in_key_ = true;
    key_dots_ = 0;
    brackets_.clear();
    while (!ends() && !(now() == '\n' && (brackets_.empty() || s.header))) step(s);
    s.last_line = line_;
    end_line();
    if (s.header) s.nameless = nameless(s.begin);
    result_.pieces.push_back({Piece::statement, {}, result_.statements.size()});
    result_.statements.push_back(std::move(s));
  }

  /// What stands in place of a header's name; nothing where a name begins, or where the name or its line is missing altogether.
  std::optional<std::size_t> nameless(std::size_t begin) const {
    constexpr std::string_view begins_name = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_\"'";
    const bool many = text_.substr(begin, 2) == "[[";
    const std::size_t at = std::min(text_.find_first_not_of(" \t", begin + (many ? 2 : 1)), text_.size());
    const bool fine =
        at == text_.size() || begins_name.find(text_[at]) != std::string_view::npos || text_[at] == ']' || (text_[at] == '[' && !many);
    return fine ? std::nullopt : std::optional(at);
  }

  void step(Statement& s) {
    switch (now()) {
      case '\n': end_line(); break;
      case ' ': case '\t': case '\r': ++at_; break;
      case '#': remark(s); break;
      case '"': case '\'': text(); break;
      case '[': case '{': open(s); break;
      case ']': case '}': close(s); break;
      case ',': in_key_ = !brackets_.empty() && text_[brackets_.back()] == '{'; key_dots_ = 0; ++at_; break;
      case '=': in_key_ = false; ++at_; break;
      default: word(s);
    }
  }

  void remark(Statement& s) {
    const bool within = !brackets_.empty() && !s.header;
    const std::string_view text = comment();
    if (within) s.inner.push_back(text);
    else s.trailing = text;
  }

  void open(Statement& s) {
    brackets_.push_back(at_);
    s.depth = std::max(s.depth, static_cast<int>(brackets_.size()));
    in_key_ = s.header || now() == '{';
    key_dots_ = 0;
    ++at_;
  }

  bool in_list() const { return !brackets_.empty() && text_[brackets_.back()] == '['; }

  void close(Statement& s) {
    if (in_list() && now() == '}' && !s.header && !s.no_value) s.no_value = at_;
    if (!brackets_.empty()) brackets_.pop_back();
    in_key_ = false;
    ++at_;
  }

  void word(Statement& s) {
    const std::size_t begin = at_;
    at_ = std::min(text_.find_first_of(not_bare, at_), text_.size());
    if (!in_key_) {
      if (at_ - begin > word_limit && !s.long_word) s.long_word = begin;
      if (follows_date(begin) && !s.after_date) s.after_date = begin;
      last_word_ = begin;
      if (in_list() && !s.no_value) s.no_value = odd_break(begin);
      return;
    }
    const auto dots = static_cast<int>(std::count(text_.begin() + begin, text_.begin() + at_, '.'));
    key_dots_ += dots;
    s.dots += dots;
    s.most_dots = std::max(s.most_dots, key_dots_);
    if (s.header || brackets_.empty()) s.segments += dots;
  }

  /// Is the word that ends here one digit, one blank behind something in the form of a date?
  bool follows_date(std::size_t begin) const {
    constexpr std::size_t date_length = 10;
    if (at_ != begin + 1 || text_[begin] < '0' || text_[begin] > '9' || last_word_ + date_length >= begin || text_[begin - 1] != ' ')
      return false;
    std::string date(text_.substr(last_word_, begin - 1 - last_word_));
    std::erase(date, '_');
    return date.size() == date_length && date[4] == '-' && date[7] == '-';
  }

  /// The first U+0085, U+2028 or U+2029 of the word that ends here.
  std::optional<std::size_t> odd_break(std::size_t begin) const {
    const std::string_view word = text_.substr(begin, at_ - begin);
    const std::size_t first = std::min({word.find("\u0085"), word.find("\u2028"), word.find("\u2029")});
    return first == std::string_view::npos ? std::nullopt : std::optional(begin + first);
  }

  /// A text in quotation marks, one line or several; one that is never closed ends with its line, or with the file.
  void text() {
    const std::string quote(3, now());
    const bool many_lines = text_.substr(at_, 3) == quote;
    const char mark = now();
    at_ += many_lines ? 3 : 1;
    while (!ends()) {
      if (now() == '\n') {
        if (!many_lines) return;
        end_line();
      } else if (now() == '\\' && mark == '"') {
        escape();
      } else if (now() != mark) {
        ++at_;
      } else if (!many_lines) {
        ++at_;
        return;
      } else if (text_.substr(at_, 3) == quote) {
        for (int n = 0; n < 5 && now() == mark; ++n) ++at_;  // up to two marks may belong to the text itself
        return;
      } else {
        ++at_;
      }
    }
  }

  /// A backslash and what it protects; a line end is counted by the caller.
  void escape() {
    ++at_;
    if (!ends() && now() != '\n') ++at_;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  int line_ = 1;
  bool in_key_ = true;
  int key_dots_ = 0;
  std::size_t last_word_ = 0;  // where the last value without quotation marks began
  std::vector<std::size_t> brackets_;  // bytes of the open ones
  Outline result_;
};

}  // namespace

Outline outline(std::string_view text) { return Scanner(text).run(); }

}  // namespace file
