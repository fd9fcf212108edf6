// The words of a path: letters, numbers, commas, brackets. Blanks part them and are dropped; nothing is judged here.
#pragma once

#include <string>
#include <string_view>

namespace stitch {

enum class TokenKind { word, number, comma, open, close, other, end };

struct Token {
  TokenKind kind = TokenKind::end;
  std::string_view text;
  std::size_t offset = 0;  ///< bytes
  std::size_t end() const { return offset + text.size(); }
};

/// Reads one token after another; a copy looks further ahead without moving this one.
class Tokens {
 public:
  explicit Tokens(std::string_view text) : text_(text) { read(); }
  const Token& peek() const { return next_; }
  Token take();
  /// The token after the next one.
  Token after() const;

 private:
  void read();
  std::string_view text_;
  std::size_t at_ = 0;
  Token next_;
};

/// The token in words, for an error: `the number 33`, `the word "NWE"`, `a comma`. Long ones are cut short.
std::string in_words(const Token& token);

}  // namespace stitch
