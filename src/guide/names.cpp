#include "guide/names.h"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "guide/chain.h"

namespace guide {
namespace {

constexpr int most_steps = 99;  // nobody counts more blocks than that along a ring

}  // namespace

Names::Names(std::vector<cloth::Box> boxes, Chain chain, int reach)
    : boxes_(std::move(boxes)),
      chain_(boxes_.size() < 3 && chain == Chain::closed ? Chain::open : chain),
      linked_(links(boxes_, chain_, reach)),
      turn_(turn_of(boxes_)),
      rank_(boxes_.size(), std::numeric_limits<int>::max()) {}

void Names::set_ready(std::span<const When> ready) {
  order_.clear();
  for (std::size_t i = 0; i < ready.size(); ++i)
    if (ready[i] < never) order_.push_back(static_cast<int>(i));
  std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) { return ready[a] < ready[b]; });
  times_.clear();
  changes_.clear();
  std::vector<cloth::Box> boxes;
  for (std::size_t i = 0; i < order_.size(); ++i) {
    rank_[order_[i]] = static_cast<int>(i);
    boxes.push_back(boxes_[order_[i]]);
    const When when = ready[order_[i]];
    if (i > 0 && std::tie(when.lesson, when.item) != std::tie(times_.back().lesson, times_.back().item))
      changes_.push_back(static_cast<int>(i));
    times_.push_back(when);
  }
  extremes_ = Extremes(boxes);
}

int Names::standing(When now) const { return static_cast<int>(std::lower_bound(times_.begin(), times_.end(), now) - times_.begin()); }

std::optional<Which> Names::name(int feature, When now) const {
  const int n = standing(now);
  if (!stands(feature, n)) return std::nullopt;
  const std::vector<int> earlier = earlier_in_lesson(now.lesson, n);
  if (const auto plain = plain_name(feature, n, earlier)) return plain;
  return counted_name(feature, n, earlier);
}

/// Numbers that stood whenever something was counted earlier in the lesson: at its start and between its items.
std::vector<int> Names::earlier_in_lesson(int lesson, int n) const {
  std::vector<int> earlier;
  const int at_start = standing({lesson, std::numeric_limits<int>::min(), 0});
  if (at_start > 0 && at_start < n) earlier.push_back(at_start);
  for (auto at = std::upper_bound(changes_.begin(), changes_.end(), at_start); at != changes_.end() && *at < n; ++at)
    earlier.push_back(*at);
  return earlier;
}

bool Names::holds(const Which& which, int feature, int n, std::span<const int> earlier) const {
  if (find(which, n) != feature) return false;
  return std::all_of(earlier.begin(), earlier.end(), [&](int then) {
    const int found = find(which, then);
    return found == -1 || found == feature;
  });
}

std::optional<Which> Names::plain_name(int feature, int n, std::span<const int> earlier) const {
  if (const Which only; holds(only, feature, n, earlier)) return only;
  for (const Side side : all_sides) {
    Which which{.form = Which::extreme};
    which.side = side;
    if (holds(which, feature, n, earlier)) return which;
  }
  for (const Side side : all_sides) {
    for (const Side within : sides_across(side)) {
      Which which{.form = Which::extreme_of_row};
      which.side = side;
      which.within = within;
      if (holds(which, feature, n, earlier)) return which;
    }
  }
  return std::nullopt;
}

std::optional<Which> Names::counted_name(int feature, int n, std::span<const int> earlier) const {
  if (chain_ == Chain::none) return std::nullopt;
  std::vector<Which> forms = counted_forms(feature, n);
  std::stable_sort(forms.begin(), forms.end(), [](const Which& a, const Which& b) { return a.steps < b.steps; });
  for (const Which& which : forms)
    if (holds(which, feature, n, earlier)) return which;
  return std::nullopt;
}

/// Every extreme as an anchor, counted from both ways round.
std::vector<Which> Names::counted_forms(int feature, int n) const {
  std::vector<Which> forms;
  for (const bool of_row : {false, true}) {
    for (const Side side : all_sides) {
      for (const Side within : sides_across(side)) {
        Which which{.form = Which::after};
        which.side = side;
        which.anchor_within = of_row;
        if (of_row) which.within = within;
        count_from(which, anchor(which, n), feature, n, forms);
        if (!of_row) break;
      }
    }
  }
  return forms;
}

void Names::count_from(const Which& named, int from, int feature, int n, std::vector<Which>& forms) const {
  if (from == -1 || from == feature) return;
  const int size = static_cast<int>(boxes_.size());
  for (const int direction : {turn_ < 0 ? -1 : 1, turn_ < 0 ? 1 : -1}) {
    int steps = direction * (feature - from);
    if (steps < 0 && chain_ == Chain::closed) steps += size;
    if (steps <= 0 || steps > most_steps) continue;
    Which which = named;
    which.steps = steps;
    which.open = !whole(n);
    if (!which.open) {
      which.clockwise = direction == turn_;
    } else if (const auto way = first_way(from, direction, n)) {
      which.towards = *way;
    } else {
      continue;
    }
    forms.push_back(which);
  }
}

int Names::anchor(const Which& which, int n) const {
  const bool of_row = which.form == Which::extreme_of_row || (which.form == Which::after && which.anchor_within);
  const int place = of_row ? extremes_.at(which.side, which.within, n) : extremes_.at(which.side, n);
  return place < 0 ? -1 : order_[place];
}

int Names::find(const Which& which, int n) const {
  if (which.form == Which::only) return n == 1 ? order_[0] : -1;
  const int from = anchor(which, n);
  if (which.form != Which::after || from == -1) return from;
  if (which.open == whole(n)) return -1;
  if (!which.open) return walk(from, which.clockwise ? turn_ : -turn_, which.steps, n);
  for (const int direction : {1, -1})
    if (first_way(from, direction, n) == which.towards) return walk(from, direction, which.steps, n);
  return -1;
}

/// The next one of the chain that way, if it stands and can be seen to be the next.
int Names::neighbour(int feature, int direction, int n) const {
  const int size = static_cast<int>(boxes_.size());
  const int next = chain_ == Chain::closed ? (feature + direction + size) % size : feature + direction;
  if (next < 0 || next >= size || !stands(next, n)) return -1;
  return linked_[direction > 0 ? feature : next] ? next : -1;
}

int Names::walk(int from, int direction, int steps, int n) const {
  int at = from;
  for (int i = 0; i < steps && at != -1; ++i) {
    at = neighbour(at, direction, n);
    if (at == from) return -1;
  }
  return at;
}

/// The way of the first step along the chain, if the step in the other direction goes clearly another way.
std::optional<cloth::Way> Names::first_way(int from, int direction, int n) const {
  const int next = neighbour(from, direction, n), other = neighbour(from, -direction, n);
  if (next == -1) return std::nullopt;
  const auto way = way_of_step(boxes_[from], boxes_[next]);
  if (other != -1 && !clearly_apart(boxes_[from], boxes_[next], boxes_[other])) return std::nullopt;
  return way;
}

std::vector<int> Names::outermost(int n) const {
  std::vector<int> found;
  const auto take = [&](int place) {
    if (place >= 0) found.push_back(order_[place]);
  };
  for (const Side side : all_sides) {
    take(extremes_.at(side, n));
    for (const Side within : sides_across(side)) take(extremes_.at(side, within, n));
  }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

}  // namespace guide
