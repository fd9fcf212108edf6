#include "picture/sheet.h"

namespace picture {

std::string Sheet::number(int n) const {
  const std::string key = "number." + std::to_string(n);
  return voice.phrases.has(key) ? say(key) : std::to_string(n);
}

std::string Sheet::all_of(const std::vector<std::string>& items) const {
  std::string text;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i == 0)
      text = items[0];
    else
      text = say(i + 1 == items.size() ? "list.and" : "list.comma", {{"first", text}, {"second", items[i]}});
  }
  return text;
}

std::string_view Sheet::pieces(int t) const {
  switch (part(t).work.piece) {
    case stitch::Piece::block: return "blocks";
    case stitch::Piece::bar: return "bars";
    case stitch::Piece::petal: return "petals";
    case stitch::Piece::eyelet:
    case stitch::Piece::open_eyelet: return "eyelets";
    case stitch::Piece::square: return "squares";
    case stitch::Piece::side:
    case stitch::Piece::side_there_and_back: return "sides";
    case stitch::Piece::edge: return "edges";
  }
  return "blocks";
}

}  // namespace picture
