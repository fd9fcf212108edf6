#include "cutwork/openings.h"

#include <algorithm>

#include "stitch/repeat.h"

namespace cutwork {
namespace {

using stitch::Filling;
using stitch::FillingRule;

bool inside(const Opening& opening, cloth::Hole hole) {
  const cloth::Box& b = opening.box;
  if (!(b.x0 < hole.x && hole.x < b.x1 && b.y0 < hole.y && hole.y < b.y1)) return false;
  const auto& corners = opening.outline;
  bool in = false;  // a ray to the left, half a thread above the hole, crosses the outline an odd number of times
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const cloth::Hole a = corners[i], c = corners[(i + 1) % corners.size()];
    if ((a.y >= hole.y) != (c.y >= hole.y) && a.x < hole.x) in = !in;
  }
  return in;
}

/// Openings by turns, from the first of each piece that hangs together by bars.
std::vector<bool> every_second(const Cutting& cutting) {
  std::vector<std::vector<int>> beside(cutting.openings.size());
  for (const Bar& bar : cutting.bars)
    for (const int side : {0, 1}) beside[static_cast<std::size_t>(bar.openings[static_cast<std::size_t>(side)])].push_back(bar.openings[static_cast<std::size_t>(1 - side)]);
  std::vector<int> turn(cutting.openings.size(), -1);
  for (std::size_t first = 0; first < turn.size(); ++first) {
    if (turn[first] >= 0) continue;
    turn[first] = 1;
    std::vector<int> waiting{static_cast<int>(first)};
    for (std::size_t i = 0; i < waiting.size(); ++i)
      for (const int next : beside[static_cast<std::size_t>(waiting[i])])
        if (turn[static_cast<std::size_t>(next)] < 0) {
          turn[static_cast<std::size_t>(next)] = 1 - turn[static_cast<std::size_t>(waiting[i])];
          waiting.push_back(next);
        }
  }
  return {turn.begin(), turn.end()};
}

class Rules {
 public:
  Rules(const Cutting& cutting, std::vector<NotFilled>& not_filled) : cutting_(cutting), not_filled_(not_filled) {
    kinds_.assign(cutting.openings.size(), Filling::none);
  }

  void follow(const FillingRule& rule) {
    if (rule.where == FillingRule::Where::at) return at_holes(rule);
    const std::vector<bool> second = every_second(cutting_);
    for (std::size_t o = 0; o < kinds_.size(); ++o)
      if (rule.where == FillingRule::Where::all || second[o]) kinds_[o] = rule.kind;
  }

  std::vector<Filling> kinds() {
    for (std::size_t o = 0; o < kinds_.size(); ++o) {
      if (kinds_[o] == Filling::none || kinds_[o] == Filling::picots || can_be_filled(cutting_.openings[o])) continue;
      not_filled_.push_back({NotFilled::Why::not_square, kinds_[o], cutting_.openings[o].outline.front()});
      kinds_[o] = Filling::none;
    }
    return kinds_;
  }

 private:
  void at_holes(const FillingRule& rule) {
    const cloth::Box all = box();
    const stitch::Repeat repeat{rule.turn, rule.mirror, {all.x0 + all.x1, all.y0 + all.y1}};
    for (const cloth::Hole hole : rule.at) {
      give(hole, rule.kind, true);
      if (!stitch::fits(repeat)) continue;
      for (const cloth::Turn turn : stitch::images_of(repeat)) give(stitch::image(repeat, turn, hole), rule.kind, false);
    }
  }

  cloth::Box box() const {
    cloth::Box box = cutting_.openings[0].box;
    for (const Opening& opening : cutting_.openings) {
      box.grow({opening.box.x0, opening.box.y0});
      box.grow({opening.box.x1, opening.box.y1});
    }
    return box;
  }

  void give(cloth::Hole hole, Filling kind, bool must_be) {
    for (std::size_t o = 0; o < kinds_.size(); ++o)
      if (inside(cutting_.openings[o], hole)) {
        kinds_[o] = kind;
        return;
      }
    if (must_be) not_filled_.push_back({NotFilled::Why::no_opening, kind, hole});
  }

  const Cutting& cutting_;
  std::vector<NotFilled>& not_filled_;
  std::vector<Filling> kinds_;
};

}  // namespace

std::vector<Sides> sides_of(const Cutting& cutting) {
  std::vector<Sides> sides(cutting.openings.size(), Sides{-1, -1, -1, -1});
  for (std::size_t b = 0; b < cutting.bars.size(); ++b) {
    const Bar& bar = cutting.bars[b];
    for (const std::size_t side : {0U, 1U}) {
      const auto o = static_cast<std::size_t>(bar.openings[side]);
      const cloth::Box& box = cutting.openings[o].box;
      const bool across = bar.axis == Axis::h;
      const int middle = across ? box.x0 + box.x1 : box.y0 + box.y1;
      const int from = across ? bar.box.x0 : bar.box.y0, to = across ? bar.box.x1 : bar.box.y1;
      if (2 * from > middle || middle > 2 * to) continue;
      sides[o][across ? (side == 0 ? 2U : 0U) : (side == 0 ? 1U : 3U)] = static_cast<int>(b);
    }
  }
  return sides;
}

bool can_be_filled(const Opening& opening) {
  const int w = opening.box.width(), h = opening.box.height();
  return opening.outline.size() == 4 && least_side <= std::min(w, h) && std::max(w, h) <= most_side;
}

std::vector<Filling> fillings_of(const Cutting& cutting, const Wish& wish, std::vector<NotFilled>& not_filled) {
  Rules rules(cutting, not_filled);
  for (const FillingRule& rule : wish.rules) rules.follow(rule);
  return rules.kinds();
}

}  // namespace cutwork
