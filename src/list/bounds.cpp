// Bounds of items. Known limit: a flat-capped line counts as if its ends were round, up to half its width too large.
#include "list/bounds.h"

#include <algorithm>

namespace list {

namespace {

Rect grown(Rect r, double by) { return {r.x - by, r.y - by, r.w + 2 * by, r.h + 2 * by}; }

Rect round_points(const std::vector<Point>& points) {
  const auto [left, right] = std::ranges::minmax(points, {}, &Point::x);
  const auto [top, bottom] = std::ranges::minmax(points, {}, &Point::y);
  return {left.x, top.y, right.x - left.x, bottom.y - top.y};
}

struct Bounds {
  const Measure& measure;

  Rect operator()(const Stroke& s) const { return s.points.empty() || s.width <= 0 ? Rect{} : grown(round_points(s.points), s.width / 2); }
  Rect operator()(const Fill& f) const { return f.points.empty() ? Rect{} : round_points(f.points); }
  Rect operator()(const Disc& d) const { return grown({d.centre.x, d.centre.y, 0, 0}, d.radius + std::max(0.0, d.line) / 2); }
  Rect operator()(const Panel& p) const { return p.filled || p.line > 0 ? grown(p.rect, std::max(0.0, p.line) / 2) : Rect{}; }
  Rect operator()(const Text& t) const {
    if (t.text.empty()) return {};
    const TypeSize size = measure.measure(t.text, t.style);
    return {left_end(t, size.width), t.at.y - size.ascent, size.width, size.ascent + size.descent};
  }
  Rect operator()(const ClipIn& c) const { return c.rect; }
  Rect operator()(const ClipOut&) const { return {}; }
};

bool empty(const Rect& r) { return r.w <= 0 && r.h <= 0; }

}  // namespace

Rect bounds(const Item& item, const Measure& measure) { return std::visit(Bounds{measure}, item.what); }

Rect join(const Rect& one, const Rect& other) {
  if (empty(one)) return other;
  if (empty(other)) return one;
  const double x = std::min(one.x, other.x), y = std::min(one.y, other.y);
  return {x, y, std::max(one.x + one.w, other.x + other.w) - x, std::max(one.y + one.h, other.y + other.h) - y};
}

bool contains(const Rect& rect, Point point) {
  return point.x >= rect.x && point.x <= rect.x + rect.w && point.y >= rect.y && point.y <= rect.y + rect.h;
}

bool overlap(const Rect& one, const Rect& other) {
  return one.x < other.x + other.w && other.x < one.x + one.w && one.y < other.y + other.h && other.y < one.y + one.h;
}

}  // namespace list
