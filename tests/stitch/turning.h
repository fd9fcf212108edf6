// Turned and mirrored parts, and random ones, for the laws that hold for every part.
#pragma once

#include <rapidcheck.h>

#include <algorithm>
#include <cstdlib>
#include <string>
#include <vector>

#include "cloth/turn.h"
#include "cloth/way.h"
#include "stitch/path.h"
#include "stitch/squares.h"

namespace turning {

/// Holds for 200 random cases, the same ones every time unless RC_PARAMS says otherwise.
template <class Property>
bool always(const std::string& what, Property property) {
  static const int fixed = setenv("RC_PARAMS", "seed=1911 max_success=200 max_size=30 max_discard_ratio=50", 0);
  return fixed == 0 && rc::check(what, property);
}

inline cloth::Way apply(cloth::Turn turn, cloth::Way way) { return *cloth::way_between({0, 0}, cloth::apply(turn, cloth::step(way))); }
inline cloth::Stitch apply(cloth::Turn turn, cloth::Stitch s) { return {cloth::apply(turn, s.a), cloth::apply(turn, s.b)}; }

using Items = std::vector<stitch::PathItem>;

inline std::string text(const Items& items) {
  std::string all;
  for (const stitch::PathItem& item : items) {
    if (!all.empty()) all += ", ";
    all += std::string(cloth::name(item.way)) + " " + std::to_string(item.number) + (item.apart ? " apart" : "");
  }
  return all;
}

inline Items apply(cloth::Turn turn, Items items) {
  for (stitch::PathItem& item : items) item.way = apply(turn, item.way);
  return items;
}

/// Every turn, with and without a mirror.
inline std::vector<cloth::Turn> all_turns() {
  std::vector<cloth::Turn> turns;
  for (const cloth::Turn turn : cloth::quarter_turns)
    for (const bool mirror : {false, true}) turns.push_back({turn.quarters, mirror});
  return turns;
}

inline cloth::Hole random_hole() { return {*rc::gen::inRange(-40, 40), *rc::gen::inRange(-40, 40)}; }

// ---- blocks ---------------------------------------------------------------------------------------------------------

struct BlockPath {
  cloth::Hole start;
  bool upright = true;
  Items items;
};

/// A legal path of blocks; the number of the first item counts the first block as well.
inline BlockPath random_blocks() {
  BlockPath path{random_hole(), *rc::gen::arbitrary<bool>(), {}};
  bool upright = path.upright;
  const int count = *rc::gen::inRange(1, 8);
  for (int i = 0; i < count; ++i) {
    stitch::PathItem item;
    item.number = *rc::gen::inRange(1, 6) + (i == 0 ? 1 : 0);
    std::vector<cloth::Way> ways;  // legal ones, but for straight back
    for (const cloth::Way way : cloth::all_ways) {
      const bool legal = cloth::slanted(way) || (cloth::step(way).y == 0) == upright;
      if (legal && (path.items.empty() || way != cloth::turned(path.items.back().way, 4))) ways.push_back(way);
    }
    item.way = *rc::gen::elementOf(ways);
    const bool slant = cloth::slanted(item.way);
    item.apart = !slant && *rc::gen::inRange(0, 3) == 0;
    if (slant && (item.number - (i == 0 ? 1 : 0)) % 2 != 0) upright = !upright;
    path.items.push_back(item);
  }
  return path;
}

/// A ring: a random path followed by itself turned, twice by halves or four times by quarters, whichever its stitches allow.
inline BlockPath random_ring() {
  BlockPath path = random_blocks();
  Items once = path.items;
  --once.front().number;
  int slants = 0;
  for (const stitch::PathItem& item : once) slants += cloth::slanted(item.way) ? item.number : 0;
  path.items.clear();
  for (const int quarters : slants % 2 == 0 ? std::vector{0, 2} : std::vector{0, 1, 2, 3}) {
    const Items turned = apply(cloth::Turn{quarters, false}, once);
    path.items.insert(path.items.end(), turned.begin(), turned.end());
  }
  ++path.items.front().number;
  return path;
}

inline BlockPath apply(cloth::Turn turn, const BlockPath& path) {
  const cloth::Hole one = cloth::apply(turn, path.start), other = cloth::apply(turn, path.start + cloth::Hole{4, 4});
  return {{std::min(one.x, other.x), std::min(one.y, other.y)}, path.upright == (turn.quarters % 2 == 0), apply(turn, path.items)};
}

// ---- lines ----------------------------------------------------------------------------------------------------------

struct LinePath {
  cloth::Hole start;
  bool right = true;
  int rows = 2;
  Items items;
};

inline Items random_legs() {
  Items items;
  const int count = *rc::gen::inRange(1, 7);
  for (int i = 0; i < count; ++i) {
    const int turn = items.empty() ? *rc::gen::inRange(0, 8) : *rc::gen::inRange(-3, 4);
    stitch::PathItem item;
    item.way = cloth::turned(items.empty() ? cloth::Way::N : items.back().way, turn);
    item.number = 2 * *rc::gen::inRange(1, 10);
    items.push_back(item);
  }
  return items;
}

/// An open line, or a closed one: legs followed by themselves turned.
inline LinePath random_line() {
  LinePath path{random_hole(), *rc::gen::arbitrary<bool>(), *rc::gen::inRange(2, 4), {}};
  const Items once = random_legs();
  const int quarters = *rc::gen::element(0, 1, 2);  // open, four quarters, two halves
  for (int turned = 0; turned < 4; turned += quarters == 0 ? 4 : quarters) {
    const Items next = apply(cloth::Turn{turned, false}, once);
    path.items.insert(path.items.end(), next.begin(), next.end());
  }
  return path;
}

inline LinePath apply(cloth::Turn turn, const LinePath& path) {
  return {cloth::apply(turn, path.start), path.right != turn.mirror, path.rows, apply(turn, path.items)};
}

}  // namespace turning
