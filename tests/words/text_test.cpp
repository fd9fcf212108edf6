// Texts cut at their braces, and put together again.
#include "words/text.h"

#include <doctest/doctest.h>

using words::cut;
using words::Piece;

namespace {

std::string why(std::string_view text) {
  const auto pieces = cut(text);
  return pieces ? "" : pieces.error().what;
}

}  // namespace

TEST_CASE("a text is letters and arguments in turn") {
  const std::vector<Piece> expected{{Piece::literal, "From "}, {Piece::argument, "landmark"}, {Piece::literal, " count "}, {Piece::argument, "n_2"},
                                    {Piece::literal, "."}};
  CHECK(cut("From {landmark} count {n_2}.") == expected);
  CHECK(cut("") == std::vector<Piece>{});
  CHECK(cut("{a}{b}") == std::vector<Piece>{{Piece::argument, "a"}, {Piece::argument, "b"}});
}

TEST_CASE("a brace itself is written twice") {
  CHECK(cut("{{n}}") == std::vector<Piece>{{Piece::literal, "{n}"}});
  CHECK(cut("{{{n}}}") == std::vector<Piece>{{Piece::literal, "{"}, {Piece::argument, "n"}, {Piece::literal, "}"}});
}

TEST_CASE("put together, the pieces are the text again") {
  for (const std::string_view text : {"From {landmark}: {{4}}", "{a}", "", "løkke {n} é", "}}{{{x}"}) CHECK(words::joined(cut(text).value()) == text);
}

TEST_CASE("braces that do not fit are said") {
  CHECK(why("count {n") == "a { without its }");
  CHECK(why("count n}") == "a } without its {");
  CHECK(why("{}") == "the argument {}");
  CHECK(why("{N}") == "the argument {N}");
  CHECK(why("{a b}") == "the argument {a b}");
  CHECK(why("{n:d}") == "the argument {n:d}");
}
