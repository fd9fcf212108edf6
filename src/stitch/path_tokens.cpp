// Bytes to tokens. A byte beyond ASCII counts as a letter, so that a character of several bytes is never cut in two.
#include "stitch/path_tokens.h"

#include <fmt/format.h>

namespace stitch {
namespace {

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80; }
bool in_number(char c) { return is_digit(c) || c == '.'; }

std::size_t run(std::string_view text, std::size_t from, bool (*belongs)(char)) {
  while (from < text.size() && belongs(text[from])) ++from;
  return from;
}

/// The text, or its first 40 bytes up to a whole character.
std::string shortened(std::string_view text) {
  std::size_t room = 40;
  if (text.size() <= room) return std::string(text);
  while (room > 0 && (static_cast<unsigned char>(text[room]) & 0xC0) == 0x80) --room;
  return std::string(text.substr(0, room)) + "...";
}

}  // namespace

void Tokens::read() {
  at_ = run(text_, at_, is_blank);
  next_ = {TokenKind::end, {}, at_};
  if (at_ >= text_.size()) return;
  const char c = text_[at_];
  const bool sign = (c == '-' || c == '+') && at_ + 1 < text_.size() && is_digit(text_[at_ + 1]);
  std::size_t end = at_ + 1;
  if (is_letter(c)) {
    next_.kind = TokenKind::word;
    end = run(text_, at_, is_letter);
  } else if (is_digit(c) || sign) {
    next_.kind = TokenKind::number;
    end = run(text_, at_ + 1, in_number);
  } else {
    next_.kind = c == ',' ? TokenKind::comma : c == '(' ? TokenKind::open : c == ')' ? TokenKind::close : TokenKind::other;
  }
  next_.text = text_.substr(at_, end - at_);
  at_ = end;
}

Token Tokens::take() {
  const Token taken = next_;
  if (taken.kind != TokenKind::end) read();
  return taken;
}

Token Tokens::after() const {
  Tokens ahead = *this;
  ahead.take();
  return ahead.peek();
}

std::string in_words(const Token& token) {
  switch (token.kind) {
    case TokenKind::word:
      return fmt::format("the word \"{}\"", shortened(token.text));
    case TokenKind::number:
      return fmt::format("the number {}", shortened(token.text));
    case TokenKind::comma:
      return "a comma";
    case TokenKind::open:
      return "an opening bracket";
    case TokenKind::close:
      return "a closing bracket";
    case TokenKind::other:
      return static_cast<unsigned char>(token.text[0]) < ' ' ? "a control character" : fmt::format("the sign \"{}\"", token.text);
    case TokenKind::end:
      break;
  }
  return "the end of the path";
}

}  // namespace stitch
