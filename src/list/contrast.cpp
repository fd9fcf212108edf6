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

}  // namespace

double luminance(Colour colour) { return 0.2126 * linear(colour.r) + 0.7152 * linear(colour.g) + 0.0722 * linear(colour.b); }

double contrast(Colour one, Colour other) {
  const double a = luminance(one), b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

bool all_grey(const List& list) {
  return std::ranges::all_of(list.items, [](const Item& item) { return std::visit(PaintsGrey{}, item.what); });
}

}  // namespace list
