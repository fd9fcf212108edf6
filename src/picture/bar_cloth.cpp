#include "picture/bar_cloth.h"

#include <algorithm>
#include <cmath>

#include "picture/grid.h"
#include "picture/ink.h"

namespace picture {
namespace {

bool apart(const cloth::Box& a, const cloth::Box& b) { return a.x1 < b.x0 || b.x1 < a.x0 || a.y1 < b.y0 || b.y1 < a.y0; }

}  // namespace

std::vector<BarWork> bar_work(const Sheet& sheet) {
  std::vector<BarWork> all;
  for (const auto& [r, s] : sheet.lesson.routes) {
    const plan::PartRoute& route = sheet.plan.routes[static_cast<std::size_t>(r)];
    if (route.items.empty()) continue;
    const guide::Section& section = route.sections[static_cast<std::size_t>(s)];
    all.push_back({&route, &sheet.plan.cuttings[static_cast<std::size_t>(route.cutting)], section.first, section.last,
                   sheet.course.parts[static_cast<std::size_t>(route.part)].work.cut->wrapped});
  }
  return all;
}

void BarCloth::draw(Picture& picture) const {
  list::List& list = picture.list;
  add_panel(list, list::Role::ground, rect(), 1.6, colour::white, 0, {});
  clip_in(list, rect(), 1.6);
  list::List grid;
  draw_grid(grid, view_, sheet_.course.choices.line, grid_origin(sheet_.course));
  put(list, grid, at_);
  for (const cutwork::Opening& opening : work_.cut->cutting.openings) {
    if (apart(opening.box, view_.window.widened(1))) continue;
    std::vector<Point> outline;
    for (const cloth::Hole h : opening.outline) outline.push_back(at(h.x, h.y));
    add_fill(list, list::Role::ground, outline, colour::gone);
    picture.uses.marks.insert(Mark::gone);
  }
  for (const cutwork::Bar& bar : work_.cut->cutting.bars)
    if (!apart(bar.box, view_.window.widened(1))) draw_threads(list, bar);
  for (const Seen& s : stitches_in(sheet_.course, sheet_.plan, view_.window.widened(1), {sheet_.lesson.number, 1 << 20, -1, 0})) {
    if (s.stage == Stage::later || s.ridge) continue;
    draw_stitch(list, at(s.stitch.a.x, s.stitch.a.y), at(s.stitch.b.x, s.stitch.b.y), s.width * unit(), ratio::gap * unit(), Stage::before, false);
    picture.uses.marks.insert(Mark::before);
  }
}

void BarCloth::close(Picture& picture) const {
  clip_out(picture.list);
  add_frame(picture.list, list::Role::frame, rect(), 1.6, 0.35, colour::ink);
}

void BarCloth::draw_threads(list::List& list, const cutwork::Bar& bar) const {
  const cloth::Box& b = bar.box;
  const bool across = bar.axis == cutwork::Axis::h;
  const Point a = at(b.x0, b.y0), c = at(b.x1, b.y1);
  add_panel(list, list::Role::ground, {std::min(a.x, c.x), std::min(a.y, c.y), std::abs(c.x - a.x), std::abs(c.y - a.y)}, 0, colour::white, 0, {});
  for (int i = 0; i < (across ? b.height() : b.width()); ++i)
    across ? draw_cloth_thread(list, at(b.x0, b.y0 + i + 0.5), at(b.x1, b.y0 + i + 0.5), unit())
           : draw_cloth_thread(list, at(b.x0 + i + 0.5, b.y0), at(b.x0 + i + 0.5, b.y1), unit());
}

void BarCloth::draw_done_bar(list::List& list, int number, double from, double to) const {
  const cutwork::Bar& bar = work_.bar(number);
  const cloth::Box& b = bar.box;
  const bool across = bar.axis == cutwork::Axis::h;
  const double length = across ? b.width() : b.height(), wide = across ? b.height() : b.width(), step = 0.44;
  const auto place = [&](double along, double aside) { return across ? at(b.x0 + along, b.y0 + aside) : at(b.x0 + aside, b.y0 + along); };
  for (double t = from * length + step / 2; t < to * length; t += step) {
    if (work_.wrapped) {
      draw_done(list, place(t - step / 3, 0.1), place(t + step / 3, wide - 0.1), unit());
      continue;
    }
    draw_done(list, place(t - step / 4, 0.1), place(t, wide / 2 - 0.12), unit());
    draw_done(list, place(t, wide / 2 + 0.12), place(t + step / 4, wide - 0.1), unit());
  }
}

}  // namespace picture
