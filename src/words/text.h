// The text of a phrase cut into what is said as it stands and the arguments that are put in. Braces only; no plurals, no keys.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace words {

struct Piece {
  enum Kind { literal, argument } kind = literal;
  std::string text;  ///< the letters themselves ({{ and }} undone), or the argument's name
  friend bool operator==(const Piece&, const Piece&) = default;
};

/// "From {landmark}." is literal "From ", argument "landmark", literal ".". Trouble on a brace without its fellow and on a name
/// that is not made of a-z, 0-9 and _.
base::Result<std::vector<Piece>> cut(std::string_view text);

/// The text that cut() takes apart into these pieces.
std::string joined(const std::vector<Piece>& pieces);

}  // namespace words
