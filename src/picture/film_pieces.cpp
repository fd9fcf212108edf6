#include "picture/film_pieces.h"

#include <algorithm>
#include <utility>

#include "picture/bar_pages.h"
#include "picture/cut_pages.h"

namespace picture {
namespace {

using How = Telling::How;
using Words = FilmPiece::Words;

bool ends_sentence(const std::string& text, std::size_t space) {
  return text[space] == ' ' && space > 2 && (text[space - 1] == '.' || text[space - 1] == '!' || text[space - 1] == '?');
}

/// The text, parted behind full stops, exclamation and question marks. "1. " of a list stays with its sentence.
std::vector<std::string> sentences_of(const std::string& text) {
  std::vector<std::string> all(1);
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (ends_sentence(text, i))
      all.emplace_back();
    else
      all.back() += text[i];
  }
  return all;
}

class Pieces {
 public:
  Pieces(const Sheet& sheet, double width, double height, const Fits& fits) : sheet_(sheet), width_(width), height_(height), fits_(fits) {}

  std::vector<FilmPiece> make() {
    int letters = 0;
    for (const guide::CloseUp& close_up : sheet_.plan.close_ups) letters += close_up.lesson == sheet_.lesson.number ? 1 : 0;
    for (CutPiece& piece : cut_pieces(sheet_, {{width_, height_}, {width_, height_}, width_, height_})) {
      letters += piece.letter.empty() ? 0 : 1;
      add(piece, true, "cutwork");
    }
    for (CutPiece& piece : bar_pieces(sheet_, {width_, width_, height_}, letters)) add(piece, false, "bars");
    return std::move(pieces_);
  }

 private:
  /// Words without a picture are said before the next one.
  void add(CutPiece& piece, bool cutting, const char* kind) {
    if (piece.table) return;
    if (!piece.picture) return said_before_.push_back(std::move(piece.telling));
    FilmPiece made;
    made.letter = piece.letter;
    made.name = piece.letter.empty() ? piece.name : piece.letter;
    made.picture = std::move(*piece.picture);
    made.cutting = cutting;
    made.kind = kind;
    if (!piece.telling.empty()) made.heading = piece.telling.pieces().front().text;
    for (const Telling& before : std::exchange(said_before_, {}))
      if (cutting) say(before, before.pieces().front().text, made);
    say(piece.telling, "", made);
    pieces_.push_back(std::move(made));
  }

  void say(const Telling& telling, std::string strong, FilmPiece& piece) const {
    for (const Telling::Piece& said : telling.pieces()) {
      if (said.how == How::heading || said.how == How::accent_heading) continue;
      if (said.how == How::strong)
        strong = said.text;
      else
        say_text(strong, said.how == How::numbered ? Telling::mark(said) + ". " + said.text : said.text, piece);
    }
  }

  /// As many sentences a still as have room.
  void say_text(const std::string& strong, const std::string& text, FilmPiece& piece) const {
    Words words{strong, ""};
    for (const std::string& sentence : sentences_of(text)) {
      const std::string longer = words.text.empty() ? sentence : words.text + " " + sentence;
      if (words.text.empty() || fits_(piece.picture.width, piece, {strong, longer})) {
        words.text = longer;
        continue;
      }
      piece.said.push_back(std::exchange(words, {strong, sentence}));
    }
    piece.said.push_back(std::move(words));
  }

  const Sheet& sheet_;
  double width_, height_;
  const Fits& fits_;
  std::vector<Telling> said_before_;
  std::vector<FilmPiece> pieces_;
};

}  // namespace

std::vector<FilmPiece> film_pieces(const Sheet& sheet, double width, double height, const Fits& fits) {
  return Pieces(sheet, width, height, fits).make();
}

}  // namespace picture
