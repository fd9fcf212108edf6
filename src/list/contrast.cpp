// Luminance and contrast by the formulas of WCAG 2.2, and the search for colours in a list.
#include "list/contrast.h"

#include <algorithm>
#include <cmath>

namespace list {

namespace {

double linear(std::uint8_t channel) {
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

struct PaintsGrey {
  bool operator()(const Stroke& s) const { return is_grey(s.colour); }
  bool operator()(const Fill& f) const { return is_grey(f.colour); }
  bool operator()(const Text& t) const { return is_grey(t.colour); }
  bool operator()(const Disc& d) const { return is_grey(d.fill) && (d.line <= 0 || is_grey(d.line_colour)); }
  bool operator()(const Panel& p) const { return (!p.filled || is_grey(p.fill)) && (p.line <= 0 || is_grey(p.line_colour)); }
  bool operator()(const ClipIn&) const { return true; }
  bool operator()(const ClipOut&) const { return true; }
};

struct MakeGrey {
  void operator()(Stroke& s) const { s.colour = grey_of(s.colour); }
  void operator()(Fill& f) const { f.colour = grey_of(f.colour); }
  void operator()(Text& t) const { t.colour = grey_of(t.colour); }
  void operator()(Disc& d) const {
    d.fill = grey_of(d.fill);
    d.line_colour = grey_of(d.line_colour);
  }
  void operator()(Panel& p) const {
    p.fill = grey_of(p.fill);
    p.line_colour = grey_of(p.line_colour);
  }
  void operator()(ClipIn&) const {}
  void operator()(ClipOut&) const {}
};

}  // namespace

double luminance(Colour colour) { return 0.2126 * linear(colour.r) + 0.7152 * linear(colour.g) + 0.0722 * linear(colour.b); }

double contrast(Colour one, Colour other) {
  const double a = luminance(one), b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

Colour grey_of(Colour colour) {
  const double y = luminance(colour);
  const double v = y <= 0.0031308 ? 12.92 * y : 1.055 * std::pow(y, 1 / 2.4) - 0.055;
  const auto grey = static_cast<std::uint8_t>(std::lround(255 * std::clamp(v, 0.0, 1.0)));
  return {grey, grey, grey};
}

List in_grey(List list) {
  for (Item& item : list.items) std::visit(MakeGrey{}, item.what);
  return list;
}

bool all_grey(const List& list) {
  return std::ranges::all_of(list.items, [](const Item& item) { return std::visit(PaintsGrey{}, item.what); });
}

}  // namespace list
