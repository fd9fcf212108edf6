#include "words/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace words {
namespace {

bool name_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; }

void add_letter(std::vector<Piece>& pieces, char c) {
  if (pieces.empty() || pieces.back().kind != Piece::literal) pieces.push_back({});
  pieces.back().text += c;
}

std::string escaped(std::string_view literal) {
  std::string text;
  for (const char c : literal) text.append(c == '{' || c == '}' ? 2 : 1, c);
  return text;
}

}  // namespace

base::Result<std::vector<Piece>> cut(std::string_view text) {
  std::vector<Piece> pieces;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c != '{' && c != '}') {
      add_letter(pieces, c);
    } else if (i + 1 < text.size() && text[i + 1] == c) {
      add_letter(pieces, c);
      ++i;
    } else if (c == '}') {
      return base::trouble(base::TroubleKind::input, "a } without its {");
    } else {
      const std::size_t end = text.find('}', i);
      if (end == std::string_view::npos) return base::trouble(base::TroubleKind::input, "a { without its }");
      const std::string_view name = text.substr(i + 1, end - i - 1);
      if (name.empty() || !std::all_of(name.begin(), name.end(), name_letter))
        return base::trouble(base::TroubleKind::input, fmt::format("the argument {{{}}}", name));
      pieces.push_back({Piece::argument, std::string(name)});
      i = end;
    }
  }
  return pieces;
}

std::string joined(const std::vector<Piece>& pieces) {
  std::string text;
  for (const Piece& piece : pieces) text += piece.kind == Piece::argument ? fmt::format("{{{}}}", piece.text) : escaped(piece.text);
  return text;
}

}  // namespace words
