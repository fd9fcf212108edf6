// What is said beside a picture or under a heading, before it is set into lines of any width.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "picture/column.h"

namespace picture {

class Telling {
 public:
  enum class How { heading, accent_heading, strong, paragraph, numbered, ticked };
  struct Piece {
    How how = How::paragraph;
    std::string text;
    int number = 0;
  };

  void heading(std::string text) { pieces_.push_back({How::heading, std::move(text), 0}); }
  void accent_heading(std::string text) { pieces_.push_back({How::accent_heading, std::move(text), 0}); }
  void strong(std::string text) { pieces_.push_back({How::strong, std::move(text), 0}); }
  void paragraph(std::string text) {
    if (!text.empty()) pieces_.push_back({How::paragraph, std::move(text), 0});
  }
  /// With an empty box before it, to be ticked.
  void ticked(std::string text) { pieces_.push_back({How::ticked, std::move(text), 0}); }
  void numbered(int number, std::string text) { pieces_.push_back({How::numbered, std::move(text), number}); }
  void append(const Telling& more) { pieces_.insert(pieces_.end(), more.pieces_.begin(), more.pieces_.end()); }
  /// The pieces before `at` and from it on.
  std::pair<Telling, Telling> parted(std::size_t at) const {
    std::pair<Telling, Telling> two;
    const auto middle = pieces_.begin() + static_cast<std::ptrdiff_t>(at);
    two.first.pieces_.assign(pieces_.begin(), middle);
    two.second.pieces_.assign(middle, pieces_.end());
    return two;
  }
  bool empty() const { return pieces_.empty(); }
  /// What stands before the text: a number, or the box to be ticked (U+25A1); empty where nothing does.
  static std::string mark(const Piece& piece) {
    return piece.how == How::numbered ? std::to_string(piece.number) : piece.how == How::ticked ? "\xE2\x96\xA1" : "";
  }
  const std::vector<Piece>& pieces() const { return pieces_; }

 private:
  std::vector<Piece> pieces_;
};

/// The sentences one after another, with a space between.
std::string sentences(const std::vector<std::string>& all);

Column set(const Telling& telling, double width, const Styles& styles, const list::Measure& measure);

}  // namespace picture
