#include "picture/cut_out.h"

#include <algorithm>
#include <cmath>

#include "picture/ink.h"
#include "picture/scissors.h"
#include "picture/styles.h"

namespace picture {
namespace {

// In threads of the cloth.
constexpr double outside = 0.75;  // of the ridge
constexpr double hatch = 1.3;     // length of a stroke of the hatch

CutPoint point_at(cloth::Hole hole, double out_x, double out_y) {
  return {hole.x + outside * out_x, hole.y + outside * out_y, out_x, out_y};
}

struct Out {
  double x, y;
};
Out out_of(const trail::Worked& w) {
  const double far = cloth::distance(w.up, w.down);
  return {(w.up.x - w.down.x) / far, (w.up.y - w.down.y) / far};
}

bool is_corner(const trail::Worked& a, const trail::Worked& b, bool inner) { return a.leg != b.leg && (a.up == b.up) == inner; }

Picture picture_at(const Sheet& sheet, int trail, cloth::Hole middle) {
  constexpr int around = 9;
  WindowOrder order;
  order.window = cloth::Box{middle.x, middle.y, middle.x, middle.y}.widened(around);
  order.scale = std::min(3.6, 76.0 / (order.window.width() + 1));
  order.trail = trail;
  order.first = 0;
  order.last = -1;
  order.moment = {sheet.lesson.number, -1, -1, 0};
  order.cut = true;
  order.number = sheet.styles.number;
  return draw_window(sheet, order);
}

}  // namespace

std::vector<CutPoint> cut_line(const trail::Trail& trail) {
  std::vector<CutPoint> line;
  const std::size_t n = trail.stitches.size();
  for (std::size_t k = 0; k < n; ++k) {
    const trail::Worked& w = trail.stitches[k];
    const Out out = out_of(w);
    const bool last = k + 1 == n;
    if (last && !trail.closed) {
      line.push_back(point_at(w.up, out.x, out.y));
      break;
    }
    const trail::Worked& next = trail.stitches[(k + 1) % n];
    const bool shares_before = (k > 0 || trail.closed) && trail.stitches[(k + n - 1) % n].up == w.up;
    if (next.up == w.up) {
      const Out further = out_of(next);
      line.push_back(point_at(w.up, out.x + further.x, out.y + further.y));
    } else if (!shares_before) {
      line.push_back(point_at(w.up, out.x, out.y));
    }
  }
  if (trail.closed && !line.empty()) line.push_back(line.front());
  return line;
}

void draw_cut(list::List& list, const View& view, const trail::Trail& trail) {
  const std::vector<CutPoint> line = cut_line(trail);
  const auto at = [&](const CutPoint& p, double further) { return view.at(p.x + further * p.out_x, p.y + further * p.out_y); };
  const cloth::Box box = view.window.widened(2);
  const auto near = [&](const CutPoint& p) { return box.x0 <= p.x && p.x <= box.x1 && box.y0 <= p.y && p.y <= box.y1; };
  std::vector<std::size_t> seen;
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    if (!near(line[i]) || !near(line[i + 1])) continue;
    const Point a = at(line[i], 0), b = at(line[i + 1], 0);
    add_line(list, list::Role::caution, a, b, 0.16 * view.scale, colour::accent);
    add_line(list, list::Role::caution, at(line[i], 0.15), plus(at(line[i], hatch), times(0.6, minus(b, a))), 0.07 * view.scale,
             colour::accent);
    if (view.window.holds({static_cast<int>(std::lround(line[i].x)), static_cast<int>(std::lround(line[i].y))})) seen.push_back(i);
  }
  if (seen.size() < 4) return;
  const std::size_t i = seen[seen.size() / 4];  // on the side by which the corner is reached
  const Point a = at(line[i], 0), way = minus(at(line[i + 1], 0), a);
  if (length(way) > 0) draw_scissors(list, a, times(1 / length(way), way), view.scale);
}

std::vector<CutOutPicture> cut_out_pictures(const Sheet& sheet) {
  std::vector<CutOutPicture> pictures;
  for (const bool inner : {false, true})
    for (std::size_t t = 0; t < sheet.plan.trails.size(); ++t) {
      const auto& stitches = sheet.plan.trails[t].trail.stitches;
      if (!sheet.looped(static_cast<int>(t)) || stitches.empty()) continue;
      std::size_t k = 1;
      while (k < stitches.size() && !is_corner(stitches[k - 1], stitches[k], inner)) ++k;
      const bool none = k >= stitches.size();
      if (none && (inner || stitches.size() < 2)) continue;
      pictures.push_back({picture_at(sheet, static_cast<int>(t), stitches[none ? stitches.size() / 2 : k].up), inner});
      break;
    }
  return pictures;
}

}  // namespace picture
