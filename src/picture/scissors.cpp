#include "picture/scissors.h"

#include <cmath>

#include "picture/ink.h"

namespace picture {
namespace {

constexpr double ring = 0.62;  // threads

}  // namespace

void draw_scissors(list::List& list, Point tip, Point way, double unit, Blades blades, ScissorsColours colours) {
  for (const double side : {-1.0, 1.0}) {
    const double c = std::cos(side * blades.spread), s = std::sin(side * blades.spread);
    const Point along{way.x * c - way.y * s, way.x * s + way.y * c};
    const Point pivot = minus(tip, times(0.9 * blades.length * unit, way));
    const Point point = plus(pivot, times(blades.length * unit, along)), grip = minus(pivot, times(0.5 * blades.length * unit, along));
    add_line(list, list::Role::caution, point, grip, 0.14 * unit, colours.steel);
    add_disc(list, list::Role::caution, minus(grip, times(ring * unit, along)), ring * unit, colours.within, 0.14 * unit, colours.steel);
  }
}

}  // namespace picture
