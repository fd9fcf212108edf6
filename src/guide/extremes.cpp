#include "guide/extremes.h"

#include <algorithm>

namespace guide {
namespace {

/// How far the box reaches to the side; smaller is further out.
int reach(Side side, const cloth::Box& box) {
  switch (side) {
    case Side::top:
      return box.y0;
    case Side::bottom:
      return -box.y1;
    case Side::left:
      return box.x0;
    case Side::right:
      return -box.x1;
  }
  return 0;
}

}  // namespace

void Extremes::Outermost::take(int place_of, int value) {
  if (value < best) {
    next = best;
    best = value;
    place = place_of;
  } else {
    next = std::min(next, value);
  }
}

bool Extremes::take(Side side, const cloth::Box& box, int place, State& state) const {
  const int value = reach(side, box);
  if (value > state.best) {
    const bool nearer = value < state.next;
    state.next = std::min(state.next, value);
    return nearer;
  }
  if (value < state.best) state = {0, value, state.best, 0, place, {}};
  ++state.alike;
  for (std::size_t i = 0; i < 2; ++i) state.within[i].take(place, reach(sides_across(side)[i], box));
  return true;
}

Extremes::Extremes(std::span<const cloth::Box> boxes) {
  for (const Side side : all_sides) {
    State state;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      if (!take(side, boxes[i], static_cast<int>(i), state)) continue;
      state.since = static_cast<int>(i) + 1;
      history_[static_cast<std::size_t>(side)].push_back(state);
    }
  }
}

const Extremes::State* Extremes::state(Side side, int n) const {
  const auto& history = history_[static_cast<std::size_t>(side)];
  const auto after = std::upper_bound(history.begin(), history.end(), n, [](int count, const State& s) { return count < s.since; });
  return after == history.begin() ? nullptr : &*(after - 1);
}

int Extremes::at(Side side, int n) const {
  const State* s = state(side, n);
  return s && s->alike == 1 && s->next - s->best >= clear_by ? s->place : -1;
}

int Extremes::at(Side side, Side within, int n) const {
  const State* s = state(side, n);
  if (!s || s->alike < 2 || s->next - s->best < clear_by) return -1;
  return s->within[sides_across(side)[0] == within ? 0 : 1].clear();
}

}  // namespace guide
