#include "picture/grid.h"

#include "picture/ink.h"
#include "picture/styles.h"

namespace picture {
namespace {

bool fourth(int i, int origin) { return ((i - origin) % 4 + 4) % 4 == 0; }

void draw_line(list::List& list, Point a, Point b, bool heavy) {
  add_line(list, list::Role::grid, a, b, heavy ? 0.24 : 0.14, heavy ? colour::grid_fourth : colour::grid, list::Cap::flat);
}

/// Light lines first, so that the heavier ones are not cut by them.
void draw_lines(list::List& list, const View& view, bool heavy, double aside, cloth::Hole origin) {
  const cloth::Box& w = view.window;
  for (int x = w.x0; x <= w.x1; ++x) {
    const double at = view.at(x + aside, 0).x;
    if (fourth(x, origin.x) == heavy && at < view.width() - 0.01) draw_line(list, {at, 0}, {at, view.height()}, heavy);
  }
  for (int y = w.y0; y <= w.y1; ++y) {
    const double at = view.at(0, y + aside).y;
    if (fourth(y, origin.y) == heavy && at < view.height() - 0.01) draw_line(list, {0, at}, {view.width(), at}, heavy);
  }
}

}  // namespace

void draw_grid(list::List& list, const View& view, course::Line line, cloth::Hole origin) {
  const double aside = line == course::Line::thread ? 0.5 : 0;
  for (const bool heavy : {false, true}) draw_lines(list, view, heavy, aside, origin);
}

}  // namespace picture
