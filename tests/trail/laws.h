// The laws of two rows worked turn about, told a second time and in another form than the planner's: as what a finished order must look
// like. Empty text: kept. Knows nothing of how an order is found.
#pragma once

#include <cstdlib>
#include <set>
#include <string>
#include <vector>

#include "trail/trail.h"

namespace laws {

struct Needle {
  int row = 0, place = 0;
  bool backward = false;
};

class Rows {
 public:
  explicit Rows(const stitch::Pass& pass) : pass_(pass) {}

  cloth::Hole up(const Needle& n) const { return n.backward ? stitch(n).b : stitch(n).a; }
  cloth::Hole down(const Needle& n) const { return n.backward ? stitch(n).a : stitch(n).b; }
  int leg(const Needle& n) const { return row(n.row).legs[static_cast<std::size_t>(n.place)]; }
  const stitch::Run& row(int r) const { return pass_.runs[static_cast<std::size_t>(r)]; }
  bool closed() const { return pass_.closed; }

  /// Law 1, and each row in its own order.
  bool each_once_in_order(const std::vector<Needle>& order) const {
    std::size_t next[2] = {0, 0};
    for (const Needle& n : order)
      if (static_cast<std::size_t>(n.place) != next[n.row]++) return false;
    return next[0] == row(0).stitches.size() && next[1] == row(1).stitches.size();
  }

  /// Law 2.
  bool never_up_where_just_down(const std::vector<Needle>& order) const {
    for (std::size_t k = closed() ? 0 : 1; k < order.size(); ++k)
      if (down(order[(k + order.size() - 1) % order.size()]) == up(order[k])) return false;
    return true;
  }

  /// Laws 5 and 6, for the whole order: `over` gets what lies outside of the rhythm, as places in the order.
  bool level(const std::vector<Needle>& order, std::set<std::size_t>& over) const {
    for (std::size_t from = 0, to = 0; from < order.size(); from = to) {
      while (to < order.size() && leg(order[to]) == leg(order[from])) ++to;
      if (to < order.size() && leg(order[to]) < leg(order[from])) return false;  // back on a leg that was left
      if (!level_on_leg(order, from, to, over)) return false;
    }
    return true;
  }

  /// How many stitches of its row lie between a stitch and the nearest corner or free end; many where there is none.
  int from_corner(const Needle& n) const {
    int nearest = 1000;
    const auto& legs = row(n.row).legs;
    const int size = static_cast<int>(legs.size());
    for (int turn = closed() ? -size : 0; turn <= (closed() ? 2 * size : size); ++turn) {  // the row turns or ends before stitch `turn`
      const auto at = [&](int i) { return legs[static_cast<std::size_t>((i + 2 * size) % size)]; };
      const bool free_end = !closed() && (turn == 0 || turn == size);
      if (free_end || at(turn) != at(turn - 1)) nearest = std::min(nearest, turn <= n.place ? n.place - turn : turn - 1 - n.place);
    }
    return nearest;
  }

 private:
  const cloth::Stitch& stitch(const Needle& n) const { return row(n.row).stitches[static_cast<std::size_t>(n.place)]; }
  cloth::Hole begin(const Needle& n) const { return stitch(n).a; }
  bool side_by_side(const Needle& one, const Needle& other) const {
    const cloth::Hole d = begin(one) - begin(other);
    return std::abs(d.x) + std::abs(d.y) == 2;  // the row distance, along the cloth's threads
  }

  /// The order on one leg as letters: stitches of the first row A, of the second B.
  bool level_on_leg(const std::vector<Needle>& order, std::size_t from, std::size_t to, std::set<std::size_t>& over) const {
    std::vector<Needle> rows[2];
    std::string word;
    for (std::size_t k = from; k < to; ++k) {
      rows[order[k].row].push_back(order[k]);
      word += order[k].row == 0 ? 'A' : 'B';
    }
    std::size_t best = std::string::npos, a = 0, b = 0;
    for (std::size_t i = 0; i < rows[0].size(); ++i)
      for (std::size_t j = 0; j < rows[1].size(); ++j)
        if (side_by_side(rows[0][i], rows[1][j]) && i + j < best) best = i + j, a = i, b = j;
    if (best == std::string::npos) return by_beginning(order, from, to, over);
    std::string wanted = std::string(a, 'A') + std::string(b, 'B');
    for (std::size_t k = 0; k < wanted.size(); ++k) over.insert(from + k);
    const std::size_t pairs = std::min(rows[0].size() - a, rows[1].size() - b);
    for (std::size_t i = 0; i < pairs; ++i) wanted += "AB";
    for (std::size_t k = from + wanted.size(); k < to; ++k) over.insert(k);
    wanted += std::string(rows[0].size() - a - pairs, 'A') + std::string(rows[1].size() - b - pairs, 'B');
    return word == wanted;
  }

  /// Where nothing on the leg is level: by where stitches begin along the leg, the first row first.
  bool by_beginning(const std::vector<Needle>& order, std::size_t from, std::size_t to, std::set<std::size_t>& over) const {
    const cloth::Hole way = stitch(order[from]).b - stitch(order[from]).a;
    const auto along = [&](std::size_t k) { return begin(order[k]).x * way.x + begin(order[k]).y * way.y; };
    for (std::size_t k = from; k < to; ++k) {
      over.insert(k);
      if (k == from) continue;
      if (along(k) < along(k - 1) || (along(k) == along(k - 1) && order[k].row < order[k - 1].row)) return false;
    }
    return true;
  }

  const stitch::Pass& pass_;
};

inline std::vector<Needle> order_of(const trail::Round& round) {
  std::vector<Needle> order;
  for (const trail::Worked& w : round.stitches) order.push_back({w.run, w.place, w.backward});
  return order;
}

/// What a round of two rows breaks, in words.
inline std::string broken(const stitch::Pass& pass, const trail::Round& round) {
  const Rows rows(pass);
  const std::vector<Needle> order = order_of(round);
  if (!rows.each_once_in_order(order)) return "not every stitch once, in its row's order";
  if (!rows.never_up_where_just_down(order)) return "up where just gone down";
  std::set<std::size_t> over;
  if (!rows.level(order, over)) return "rows not level, or the rhythm broken";
  for (std::size_t k = 0; k < order.size(); ++k) {
    const trail::Worked& w = round.stitches[k];
    if (w.up != rows.up(order[k]) || w.down != rows.down(order[k]) || w.leg != rows.leg(order[k])) return "a stitch that is not its run's";
    if (w.over != over.contains(k)) return "stitches over are told wrongly at " + std::to_string(k);
  }
  return "";
}

}  // namespace laws
