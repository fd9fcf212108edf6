// What a film shows of cutting, bars and fillings: the pictures of the pages, each with its words in pieces short enough to be read beside
// it.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "picture/sheet.h"
#include "picture/window.h"

namespace picture {

struct FilmPiece {
  std::string name;    ///< the picture's letter; of a map its name
  std::string letter;  ///< "" for a map
  std::string heading;
  Picture picture;
  struct Words {
    std::string strong, text;  ///< strong: what stands over it, or ""
  };
  std::vector<Words> said;  ///< a still each
  bool cutting = false;     ///< every still of it needs a caution
  std::string kind;         ///< whose speed its steps have: "cutwork", "bars" or "fillings"
};

/// In the order of the pages. `fits`: whether the words have room beside a picture of that width, mm; longer ones are parted between
/// sentences.
using Fits = std::function<bool(double width, const FilmPiece& piece, const FilmPiece::Words& words)>;
std::vector<FilmPiece> film_pieces(const Sheet& sheet, double width, double height, const Fits& fits);

}  // namespace picture
