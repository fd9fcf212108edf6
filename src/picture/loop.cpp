#include "picture/loop.h"

#include <cmath>

#include "picture/ink.h"
#include "picture/styles.h"

namespace picture {
namespace {

// In threads of the cloth.
constexpr double beyond_ridge = 1.5, beyond_inner = 2.0;  // how far point and eye stand out of the cloth
constexpr double needle = 0.26, halo = 0.5;
constexpr double swing = 1.9;  // of the loop, ahead of the needle
constexpr int pieces = 16;

/// A smooth line from a to d, its ends drawn towards b and c.
void bend(std::vector<Point>& line, Point a, Point b, Point c, Point d) {
  for (int i = line.empty() ? 0 : 1; i <= pieces; ++i) {
    const double t = static_cast<double>(i) / pieces;
    line.push_back(between(between(between(a, b, t), between(b, c, t), t), between(between(b, c, t), between(c, d, t), t), t));
  }
}

}  // namespace

Loop::Loop(const View& view, cloth::Hole last, cloth::Hole down, cloth::Hole up, cloth::Hole next)
    : unit_(view.scale), down_(view.at(down)), up_(view.at(up)) {
  const Point way = minus(up_, down_), out = times(1 / length(way), way);
  const Point from = view.at(last), along = last == up ? minus(view.at(next), up_) : minus(up_, from);
  const double step = length(along);
  Point ahead = step > 0 ? times(1 / step, along) : Point{-out.y, out.x};
  eye_ = minus(down_, times(beyond_inner * unit_, out));
  tip_ = plus(up_, times(beyond_ridge * unit_, out));
  const Point under = plus(up_, times(0.75 * unit_, out));  // where the thread lies under the point
  const Point far = plus(between(up_, down_, 0.45), times(swing * unit_, ahead));
  bend(thread_, from, plus(from, times(0.5 * unit_, out)), minus(under, times(0.7 * unit_, ahead)), under);
  bend(thread_, under, plus(under, times(1.2 * unit_, ahead)), plus(far, times(1.4 * unit_, out)), far);
  bend(thread_, far, minus(far, times(1.6 * unit_, out)), plus(eye_, times(1.0 * unit_, ahead)), eye_);
}

void Loop::draw(list::List& list, double width) const {
  add_stroke(list, list::Role::stitch_now, thread_, width, colour::now);
  add_stroke(list, list::Role::back_thread, {down_, up_}, 0.5 * needle * unit_, colour::ink, list::Dash::back, list::Cap::flat);
  for (const auto& [a, b] : {std::pair{eye_, down_}, std::pair{up_, tip_}}) {
    add_stroke(list, list::Role::key_mark, {a, b}, halo * unit_, colour::white, list::Dash::none, list::Cap::flat);
    add_stroke(list, list::Role::key_mark, {a, b}, needle * unit_, colour::ink);
  }
  const Point towards = times(1 / length(minus(down_, eye_)), minus(down_, eye_));
  add_stroke(list, list::Role::key_mark, {plus(eye_, times(0.1 * unit_, towards)), plus(eye_, times(0.55 * unit_, towards))}, 0.08 * unit_,
             colour::white);
}

std::vector<Capsule> Loop::room() const {
  std::vector<Capsule> room{{eye_, tip_, halo * unit_ / 2}};
  for (std::size_t i = 1; i < thread_.size(); ++i) room.push_back({thread_[i - 1], thread_[i], 0.25 * unit_});
  return room;
}

}  // namespace picture
