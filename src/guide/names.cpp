#include "guide/names.h"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "guide/chain.h"

namespace guide {
namespace {

constexpr int most_steps = 99;  // nobody counts more blocks than that along a ring

/// What a place in Stage::outermost is called.
Which outermost_form(std::size_t i) {
  Which which{.form = i % 3 == 0 ? Which::extreme : Which::extreme_of_row};
  which.side = all_sides[i / 3];
  if (i % 3 != 0) which.within = sides_across(which.side)[i % 3 - 1];
  return which;
}

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

Names::Stage Names::stage(int n) const {
  Stage stage{n, {}};
  const auto feature = [&](int place) { return place < 0 ? -1 : order_[place]; };
  for (std::size_t side = 0; side < 4; ++side) {
    stage.outermost[3 * side] = feature(extremes_.at(all_sides[side], n));
    for (std::size_t end = 0; end < 2; ++end)
      stage.outermost[3 * side + 1 + end] = feature(extremes_.at(all_sides[side], sides_across(all_sides[side])[end], n));
  }
  return stage;
}

Names::Moment Names::moment(When now) const {
  Moment moment{stage(standing(now)), {}};
  const int n = moment.now.n, at_start = standing({now.lesson, std::numeric_limits<int>::min(), 0});
  if (at_start > 0 && at_start < n) moment.earlier.push_back(stage(at_start));
  for (auto at = std::upper_bound(changes_.begin(), changes_.end(), at_start); at != changes_.end() && *at < n; ++at)
    moment.earlier.push_back(stage(*at));
  return moment;
}

std::optional<Which> Names::name(int feature, const Moment& moment) const {
  if (!stands(feature, moment.now.n)) return std::nullopt;
  if (moment.now.n == 1) return Which{};
  if (const auto plain = plain_name(feature, moment)) return plain;
  return counted_name(feature, moment);
}

bool Names::holds_earlier(const Which& which, int feature, const Moment& moment) const {
  return std::all_of(moment.earlier.begin(), moment.earlier.end(), [&](const Stage& then) {
    const int found = find(which, then);
    return found == -1 || found == feature;
  });
}

std::optional<Which> Names::plain_name(int feature, const Moment& moment) const {
  for (const bool of_row : {false, true}) {
    for (std::size_t i = 0; i < moment.now.outermost.size(); ++i) {
      if (moment.now.outermost[i] != feature || (i % 3 != 0) != of_row) continue;
      const Which which = outermost_form(i);
      if (holds_earlier(which, feature, moment)) return which;
    }
  }
  return std::nullopt;
}

std::optional<Which> Names::counted_name(int feature, const Moment& moment) const {
  if (chain_ == Chain::none) return std::nullopt;
  std::vector<Steps> ways;
  for (std::size_t i = 0; i < moment.now.outermost.size(); ++i) count_from(i, feature, moment.now, ways);
  std::sort(ways.begin(), ways.end(), [](const Steps& a, const Steps& b) {
    return std::tuple(a.steps, a.from % 3 != 0, a.from) < std::tuple(b.steps, b.from % 3 != 0, b.from);
  });
  for (const Steps& way : ways) {
    const auto which = counted_form(way, moment.now);
    if (which && find(*which, moment.now) == feature && holds_earlier(*which, feature, moment)) return which;
  }
  return std::nullopt;
}

/// Both ways round from one of the outermost.
void Names::count_from(std::size_t anchor, int feature, const Stage& stage, std::vector<Steps>& ways) const {
  const int from = stage.outermost[anchor], size = static_cast<int>(boxes_.size());
  if (from == -1 || from == feature) return;
  for (const int direction : {1, -1}) {
    int steps = direction * (feature - from);
    if (steps < 0 && chain_ == Chain::closed) steps += size;
    if (steps > 0 && steps <= most_steps && steps < stage.n) ways.push_back({steps, direction, anchor});
  }
}

std::optional<Which> Names::counted_form(const Steps& way, const Stage& stage) const {
  Which which = outermost_form(way.from);
  which.anchor_within = which.form == Which::extreme_of_row;
  which.form = Which::after;
  which.steps = way.steps;
  which.open = !whole(stage.n);
  if (!which.open) {
    which.clockwise = way.direction == turn_;
    return which;
  }
  const auto towards = first_way(stage.outermost[way.from], way.direction, stage.n);
  if (!towards) return std::nullopt;
  which.towards = *towards;
  return which;
}

int Names::find(const Which& which, const Stage& stage) const {
  if (which.form == Which::only) return stage.n == 1 ? order_[0] : -1;
  const bool of_row = which.form == Which::extreme_of_row || (which.form == Which::after && which.anchor_within);
  const std::size_t side = 3 * static_cast<std::size_t>(which.side);
  const int from = stage.outermost[!of_row ? side : side + (sides_across(which.side)[0] == which.within ? 1 : 2)];
  if (which.form != Which::after || from == -1) return from;
  if (which.open == whole(stage.n)) return -1;
  if (!which.open) return walk(from, which.clockwise ? turn_ : -turn_, which.steps, stage.n);
  for (const int direction : {1, -1})
    if (first_way(from, direction, stage.n) == which.towards) return walk(from, direction, which.steps, stage.n);
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

}  // namespace guide
