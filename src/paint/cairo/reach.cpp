// Ten metres: no page that can be drawn is as large (cairo takes 32767 dots, 11.6 m at 72 an inch), and cairo's own numbers hold it at 300
// dots an inch and more.
#include "paint/cairo/reach.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

constexpr double farthest = 10'000;  // mm

bool near(double number) { return std::abs(number) <= farthest; }  // false for NaN, too
bool near(const list::Point& p) { return near(p.x) && near(p.y); }
bool near(const std::vector<list::Point>& points) {
  return std::ranges::all_of(points, [](const list::Point& p) { return near(p); });
}
bool near(const list::Rect& r) { return near(r.x) && near(r.y) && near(r.w) && near(r.h); }

struct Near {
  bool operator()(const list::Stroke& s) const { return near(s.points) && near(s.width); }
  bool operator()(const list::Fill& f) const { return near(f.points); }
  bool operator()(const list::Disc& d) const { return near(d.centre) && near(d.radius) && near(d.line); }
  bool operator()(const list::Panel& p) const { return near(p.rect) && near(p.radius) && near(p.line); }
  bool operator()(const list::Text& t) const { return near(t.at); }
  bool operator()(const list::ClipIn& c) const { return near(c.rect) && near(c.radius); }
  bool operator()(const list::ClipOut&) const { return true; }
};

}  // namespace

base::Result<void> check_reach(const list::List& list) {
  const auto far = std::ranges::find_if(list.items, [](const list::Item& item) { return !std::visit(Near{}, item.what); });
  if (far == list.items.end()) return {};
  return base::trouble(base::TroubleKind::output,
                       fmt::format("item {} of the page's {} has a place or measure that cannot be drawn, beyond {} mm",
                                   far - list.items.begin() + 1, list.items.size(), farthest));
}

}  // namespace paint
