// The fonts opened, and type measured with them.
#include <cairo-ft.h>
#include <pango/pangofc-fontmap.h>

#include "list/measure.h"
#include "paint/cairo/fonts.h"
#include "paint/cairo/line.h"
#include "paint/cairo/paint.h"

namespace paint {

namespace {

void set_plain_rendering(PangoContext* context) {
  Owned<cairo_font_options_t, cairo_font_options_destroy> options(cairo_font_options_create());
  cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
  cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
  pango_cairo_context_set_font_options(context, options.get());
}

/// The language is set because pango would otherwise ask the environment, and choose glyphs by it.
Owned<PangoContext, g_object_unref> make_context(PangoFontMap* map) {
  Owned<PangoContext, g_object_unref> context(pango_font_map_create_context(map));
  pango_context_set_language(context.get(), pango_language_from_string("en"));
  pango_context_set_round_glyph_positions(context.get(), FALSE);
  pango_cairo_context_set_resolution(context.get(), 72);
  set_plain_rendering(context.get());
  return context;
}

/// Read off once, at a size where pango's units are fine enough; without hinting it grows evenly with the size.
Type::Inside::Reach measure_reach(PangoContext* context, list::Weight weight) {
  constexpr double size = 100;
  Owned<PangoFont, g_object_unref> font(pango_context_load_font(context, describe({size, weight}).get()));
  Owned<PangoFontMetrics, pango_font_metrics_unref> metrics(pango_font_get_metrics(font.get(), nullptr));
  constexpr double mm = list::mm_per_pt / PANGO_SCALE / size;
  return {pango_font_metrics_get_ascent(metrics.get()) * mm, pango_font_metrics_get_descent(metrics.get()) * mm};
}

}  // namespace

void release_font_map(PangoFontMap* map) {
  pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map), nullptr);
  g_object_unref(map);
}

Type::Type(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Type::~Type() = default;

base::Result<std::unique_ptr<Type>> Type::open() {
  auto set = make_font_set(font_files());
  if (!set) return tl::make_unexpected(set.error());
  auto inside = std::make_unique<Inside>();
  inside->set = std::move(*set);
  inside->map.reset(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT));
  if (!inside->map) return base::trouble(base::TroubleKind::output, "this pango cannot draw with FreeType fonts");
  pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(inside->map.get()), inside->set.get());
  inside->context = make_context(inside->map.get());
  for (const auto weight : {list::Weight::regular, list::Weight::semibold, list::Weight::bold})
    inside->reach[static_cast<std::size_t>(weight)] = measure_reach(inside->context.get(), weight);
  return std::unique_ptr<Type>(new Type(std::move(inside)));
}

list::TypeSize Type::measure(std::string_view text, list::TypeStyle style) const {
  const Inside::Reach& reach = inside_->reach[static_cast<std::size_t>(style.weight)];
  const Line line = set_line(*inside_, text, style);
  return {.width = line.width, .ascent = reach.ascent * style.size_pt, .descent = reach.descent * style.size_pt, .complete = line.complete};
}

}  // namespace paint
