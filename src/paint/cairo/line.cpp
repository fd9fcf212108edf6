// Laying out one line with pango: no wrapping, no hinting, no rounding, so that a line is as wide at 72 dots an inch as at 1200.
#include "paint/cairo/line.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/require.h"
#include "list/measure.h"
#include "paint/cairo/letters.h"

namespace paint {

namespace {

PangoWeight pango_weight(list::Weight weight) {
  switch (weight) {
    case list::Weight::regular:
      return PANGO_WEIGHT_NORMAL;
    case list::Weight::semibold:
      return PANGO_WEIGHT_SEMIBOLD;
    case list::Weight::bold:
      return PANGO_WEIGHT_BOLD;
  }
  return PANGO_WEIGHT_NORMAL;
}

void equal_figures(PangoLayout* layout) {
  Owned<PangoAttrList, pango_attr_list_unref> attributes(pango_attr_list_new());
  pango_attr_list_insert(attributes.get(), pango_attr_font_features_new("tnum"));
  pango_layout_set_attributes(layout, attributes.get());
}

}  // namespace

Owned<PangoFontDescription, pango_font_description_free> describe(list::TypeStyle style) {
  base::require(std::isfinite(style.size_pt) && style.size_pt > 0 && style.size_pt < 1000, "type has a size");
  Owned<PangoFontDescription, pango_font_description_free> description(pango_font_description_new());
  pango_font_description_set_family_static(description.get(), font_families());
  pango_font_description_set_weight(description.get(), pango_weight(style.weight));
  pango_font_description_set_absolute_size(description.get(), style.size_pt * PANGO_SCALE);
  return description;
}

Line set_line(const Type::Inside& type, std::string_view text, list::TypeStyle style) {
  Line line{.layout = Owned<PangoLayout, g_object_unref>(pango_layout_new(type.context.get()))};
  PangoLayout* layout = line.layout.get();
  Letters letters = read_letters(text);
  std::ranges::replace_if(letters.points, is_control, U' ');
  const std::string one = write_letters(letters.points);
  pango_layout_set_font_description(layout, describe(style).get());
  pango_layout_set_text(layout, one.data(), static_cast<int>(one.size()));
  if (style.figures == list::Figures::tabular) equal_figures(layout);
  PangoRectangle advance;
  pango_layout_line_get_extents(pango_layout_get_line_readonly(layout, 0), nullptr, &advance);
  line.width = advance.width * list::mm_per_pt / PANGO_SCALE;
  line.complete = letters.whole && pango_layout_get_unknown_glyphs_count(layout) == 0;
  return line;
}

void show_line(cairo_t* cr, const Line& line, list::Point left, Lettering lettering) {
  PangoLayoutLine* type = pango_layout_get_line_readonly(line.layout.get(), 0);
  cairo_save(cr);
  cairo_translate(cr, left.x, left.y);
  cairo_scale(cr, list::mm_per_pt, list::mm_per_pt);
  cairo_move_to(cr, 0, 0);
  if (lettering == Lettering::glyphs) {
    pango_cairo_show_layout_line(cr, type);
  } else {
    pango_cairo_layout_line_path(cr, type);
    cairo_fill(cr);
  }
  cairo_restore(cr);
}

}  // namespace paint
