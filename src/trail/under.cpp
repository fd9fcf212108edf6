// Best-first search by length (fewer holes among equals), the rest of the way guessed as straight.
#include "trail/under.h"

#include <algorithm>
#include <cmath>
#include <queue>
#include <tuple>

namespace trail {
namespace {

constexpr std::int64_t looks_a_stitch = 50;
constexpr std::int64_t looks_at_least = 500000;
constexpr double longest_in_limits = 8;  // a way longer than this many limits costs more thread than two tails: common practice, no source
constexpr double finest = 1e6;

std::int64_t length(cloth::Hole a, cloth::Hole b) { return std::llround(cloth::distance(a, b) * finest); }

}  // namespace

UnderStitches::UnderStitches(std::span<const Worked> stitches, const Clear& clear, double limit)
    : stitches_(stitches),
      clear_(clear),
      limit_(limit),
      side_(static_cast<int>(std::clamp(std::ceil(limit), 4.0, 1024.0))),
      looks_left_(looks_at_least + looks_a_stitch * static_cast<std::int64_t>(stitches.size())) {}

bool UnderStitches::straight(cloth::Hole from, cloth::Hole to) const {
  constexpr double hair = 1e-9;  // a limit like sqrt 17 means what it says
  return from != to && cloth::distance(from, to) <= limit_ + hair && !clear_.crossed(from, to);
}

cloth::Hole UnderStitches::tile_of(cloth::Hole hole) const {
  const auto down = [&](int v) { return v >= 0 ? v / side_ : -((-v + side_ - 1) / side_); };
  return {down(hole.x), down(hole.y)};
}

void UnderStitches::use(cloth::Hole hole, int since) {
  auto& tile = tiles_[tile_of(hole)];
  const bool known = std::any_of(tile.begin(), tile.end(), [&](const Used& used) { return used.hole == hole; });
  if (!known) tile.push_back({hole, since});
}

void UnderStitches::gather() {
  gathered_ = true;
  for (std::size_t k = 0; k < stitches_.size(); ++k)
    for (const cloth::Hole hole : {stitches_[k].up, stitches_[k].down})
      if (!clear_.open(hole)) use(hole, static_cast<int>(k));
}

/// One search.
class Burrow {
 public:
  Burrow(UnderStitches& under, int k)
      : under_(under),
        k_(k),
        from_(under.stitches_[static_cast<std::size_t>(k - 1)].down),
        to_(under.stitches_[static_cast<std::size_t>(k)].up),
        longest_(std::llround(std::min(longest_in_limits * under.limit_, 1e12) * finest)) {}

  std::optional<std::vector<cloth::Hole>> search() {
    reach(from_, 0, from_);
    while (!open_.empty() && under_.looks_left_ > 0) {
      const auto [guess, gone, hole] = open_.top();
      open_.pop();
      if (gone > reached_.at(hole).gone) continue;
      if (hole == to_ && gone > 0) return way();
      look_about(hole, gone);
    }
    return std::nullopt;
  }

 private:
  struct Reached {
    std::int64_t gone;
    cloth::Hole before;
  };

  void reach(cloth::Hole hole, std::int64_t gone, cloth::Hole before) {
    if (gone + length(hole, to_) > longest_) return;
    const auto [known, is_new] = reached_.try_emplace(hole, Reached{gone, before});
    if (!is_new && known->second.gone <= gone) return;
    known->second = {gone, before};
    open_.emplace(gone + length(hole, to_), gone, hole);
  }

  void step(cloth::Hole from, std::int64_t gone, cloth::Hole to) {
    if (under_.straight(from, to)) reach(to, gone + length(from, to) + 1, from);
  }

  void look_about(cloth::Hole hole, std::int64_t gone) {
    step(hole, gone, to_);
    const cloth::Hole tile = under_.tile_of(hole);
    const int reach_in_tiles = static_cast<int>(std::min(std::ceil(under_.limit_ / under_.side_), 4.0));
    for (int y = -reach_in_tiles; y <= reach_in_tiles; ++y)
      for (int x = -reach_in_tiles; x <= reach_in_tiles; ++x) look_in(tile + cloth::Hole{x, y}, hole, gone);
  }

  void look_in(cloth::Hole tile, cloth::Hole hole, std::int64_t gone) {
    const auto found = under_.tiles_.find(tile);
    if (found == under_.tiles_.end()) return;
    under_.looks_left_ -= static_cast<std::int64_t>(found->second.size());
    for (const auto& used : found->second)
      if (used.since < k_) step(hole, gone, used.hole);
  }

  std::vector<cloth::Hole> way() const {
    std::vector<cloth::Hole> via;
    for (cloth::Hole hole = reached_.at(to_).before; hole != from_; hole = reached_.at(hole).before) via.push_back(hole);
    std::reverse(via.begin(), via.end());
    return via;
  }

  using Open = std::tuple<std::int64_t, std::int64_t, cloth::Hole>;  // guessed length, length so far, hole
  UnderStitches& under_;
  int k_;
  cloth::Hole from_, to_;
  std::int64_t longest_;
  std::unordered_map<cloth::Hole, Reached> reached_;
  std::priority_queue<Open, std::vector<Open>, std::greater<>> open_;
};

std::optional<std::vector<cloth::Hole>> UnderStitches::before(int k) {
  const cloth::Hole from = stitches_[static_cast<std::size_t>(k - 1)].down, to = stitches_[static_cast<std::size_t>(k)].up;
  if (straight(from, to)) return std::vector<cloth::Hole>{};
  if (from == to) return std::nullopt;
  if (!gathered_) gather();
  return Burrow(*this, k).search();
}

}  // namespace trail
