// Plays lists into a PDF file: vector, fonts embedded as subsets, text that can be taken out again in the order in which it was drawn.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "base/result.h"
#include "paint/cairo/paint.h"

namespace paint {

/// One page of type on a sheet of paper.
struct PdfPart {
  const list::List* list = nullptr;
  list::Point at;       ///< mm: where its upper left corner lies on the sheet
  std::string scope;    ///< names of places and jumps are those of this scope
  std::string chapter;  ///< not empty: a bookmark of this name leads here
  int order = 0;        ///< bookmarks follow one another in this order, whatever the order of sheets
};

struct PdfSheet {
  double width = 210, height = 297;  ///< mm
  std::string label;                 ///< how the page is called: "2-1"
  std::vector<PdfPart> parts;
};

enum class Duplex { unsaid, short_edge };

struct PdfFacts {
  std::string title, author, subject;  ///< UTF-8; empty ones are left out
  std::string language;                ///< RFC 3066: "en"
  Duplex duplex = Duplex::unsaid;      ///< how the sheets want to be printed on both sides
};

/// The file in memory; the same lists and facts give the same bytes. Every place of a list gets a bookmark under its chapter, every jump
/// whose place is in the file a link. A Trouble: a list out of reach (check_reach), or the libraries' own trouble.
base::Result<std::vector<std::uint8_t>> pdf(std::span<const PdfSheet> sheets, const PdfFacts& facts, const Type& type);

}  // namespace paint
