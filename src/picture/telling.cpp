#include "picture/telling.h"

namespace picture {

std::string sentences(const std::vector<std::string>& all) {
  std::string text;
  for (const std::string& one : all) {
    if (one.empty()) continue;
    if (!text.empty()) text += ' ';
    text += one;
  }
  return text;
}

Column set(const Telling& telling, double width, const Styles& styles, const list::Measure& measure) {
  Column column(width, styles, measure);
  for (const Telling::Piece& piece : telling.pieces()) {
    switch (piece.how) {
      case Telling::How::heading:
        column.heading(piece.text);
        break;
      case Telling::How::accent_heading:
        column.heading(piece.text, colour::accent);
        break;
      case Telling::How::strong:
        column.strong(piece.text);
        break;
      case Telling::How::paragraph:
        column.paragraph(piece.text);
        break;
      case Telling::How::numbered:
      case Telling::How::ticked:
        column.marked(Telling::mark(piece), piece.text);
        break;
    }
  }
  return column;
}

}  // namespace picture
