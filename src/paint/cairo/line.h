// One line of type, laid out once and then both measured and drawn, so that the two cannot differ.
#pragma once

#include <pango/pangocairo.h>

#include <array>
#include <string_view>

#include "list/list.h"
#include "paint/cairo/fonts.h"
#include "paint/cairo/paint.h"

namespace paint {

/// Pango's font map keeps its hold on the font set for ever (pango 1.50) unless the set is taken from it first.
void release_font_map(PangoFontMap* map);

/// Lengths inside pango are points: the context is set to 72 dots an inch, and whoever draws scales by list::mm_per_pt.
struct Type::Inside {
  struct Reach {
    double ascent = 0, descent = 0;  ///< mm for each pt of size
  };
  FontSet set;
  Owned<PangoFontMap, release_font_map> map;
  Owned<PangoContext, g_object_unref> context;
  std::array<Reach, 3> reach;  ///< by list::Weight
};

struct Line {
  Owned<PangoLayout, g_object_unref> layout;
  double width = 0;      ///< mm, advance
  bool complete = true;  ///< no letter is lacking, and the text is whole UTF-8
};

/// Lays the text out in one line. Letters that nobody can see as such (line breaks, tabs, other controls) become spaces; bytes that are not
/// UTF-8 become U+FFFD.
Line set_line(const Type::Inside& type, std::string_view text, list::TypeStyle style);

/// A description of the style in the families of font_families().
Owned<PangoFontDescription, pango_font_description_free> describe(list::TypeStyle style);

/// Cairo sets glyphs on whole pixels, which is quick; on coarse pixels the letters then stand unevenly, and their outlines are better.
enum class Lettering { glyphs, outlines };

/// Draws the line with its left end on the base line at this place (mm); the cairo context's unit is the millimetre, its source is set.
void show_line(cairo_t* cr, const Line& line, list::Point left, Lettering lettering);

}  // namespace paint
