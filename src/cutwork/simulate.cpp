// Each thread is a list of snips; between two of them lies a piece. A piece that stays must be held at each snip: two block stitches side
// by side along the thread, one on either side of it, both ending in the snip's holes and lying over the piece. A stitch stands on the
// threads it goes round: it is followed hole line by hole line, and what it needs there must still be cloth.
#include "cutwork/simulate.h"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

namespace cutwork {
namespace {

using Key = std::pair<Axis, int>;  // a thread

struct Piece {
  int from = 0, to = 0;
};

class Cloth {
 public:
  Cloth(const std::vector<Cut>& cuts, const std::vector<Span>& withdrawn) {
    for (const Cut& cut : cuts) snips_[{cut.axis, cut.thread}].insert(cut.axis == Axis::v ? cut.at.y : cut.at.x);
    for (const Span& span : withdrawn) {
      out_[{span.axis, span.thread}].push_back({span.from, span.to});
      if (!whole_piece(span)) not_free_.push_back(span);
    }
    for (auto& [thread, pieces] : out_)
      std::sort(pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) { return a.from < b.from; });
  }

  const std::map<Key, std::set<int>>& snips() const { return snips_; }
  const std::vector<Span>& not_free() const { return not_free_; }
  /// Is there thread between hole lines `at` and `at` + 1?
  bool thread_at(Axis axis, int thread, int at) const { return !taken(axis, thread, at, at + 1); }
  /// Is there thread on hole line `at`, uncut?
  bool thread_on(Axis axis, int thread, int at) const {
    if (taken(axis, thread, at - 1, at) || taken(axis, thread, at, at + 1)) return false;
    const auto found = snips_.find({axis, thread});
    return found == snips_.end() || found->second.count(at) == 0;
  }

 private:
  bool whole_piece(const Span& span) const {
    const auto found = snips_.find({span.axis, span.thread});
    if (found == snips_.end()) return false;
    const auto from = found->second.find(span.from);
    return from != found->second.end() && std::next(from) != found->second.end() && *std::next(from) == span.to;
  }
  bool taken(Axis axis, int thread, int from, int to) const {
    const auto found = out_.find({axis, thread});
    if (found == out_.end()) return false;
    const auto after =
        std::upper_bound(found->second.begin(), found->second.end(), from, [](int at, const Piece& p) { return at < p.from; });
    return after != found->second.begin() && std::prev(after)->to >= to;
  }

  std::map<Key, std::set<int>> snips_;
  std::map<Key, std::vector<Piece>> out_;
  std::vector<Span> not_free_;
};

/// Block stitches by the hole they end in.
class Holders {
 public:
  explicit Holders(const std::vector<Bundle>& blocks) {
    for (std::size_t b = 0; b < blocks.size(); ++b)
      for (const cloth::Stitch& s : blocks[b].stitches) {
        ends_[s.a].push_back({s.b - s.a, static_cast<int>(b)});
        ends_[s.b].push_back({s.a - s.b, static_cast<int>(b)});
      }
  }
  /// Do stitches of one block go from both holes along the axis, towards larger (1) or smaller (-1) places?
  bool from(cloth::Hole one, cloth::Hole other, Axis axis, int sense) const {
    const auto first = ends_.find(one), second = ends_.find(other);
    if (first == ends_.end() || second == ends_.end()) return false;
    const auto along = [&](const End& end) {
      const int ahead = axis == Axis::v ? end.way.y : end.way.x, aside = axis == Axis::v ? end.way.x : end.way.y;
      return aside == 0 && ahead * sense > 0;
    };
    return std::any_of(first->second.begin(), first->second.end(), [&](const End& a) {
      return along(a) &&
             std::any_of(second->second.begin(), second->second.end(), [&](const End& b) { return along(b) && a.block == b.block; });
    });
  }

 private:
  struct End {
    cloth::Hole way;
    int block = 0;
  };
  std::unordered_map<cloth::Hole, std::vector<End>> ends_;
};

bool held(const Holders& holders, Key thread, int at, int sense) {
  const auto hole = [&](int line) { return thread.first == Axis::v ? cloth::Hole{line, at} : cloth::Hole{at, line}; };
  return holders.from(hole(thread.second), hole(thread.second + 1), thread.first, sense);
}

/// A stitch along the cloth: round each thread square to it, and between two of its own way.
bool straight_stands(const Cloth& cloth, Axis way, int line, int from, int to) {
  const Axis square = way == Axis::v ? Axis::h : Axis::v;
  for (int at = from; at < to; ++at) {
    if (!cloth.thread_on(square, at, line)) return false;
    if (!cloth.thread_at(way, line - 1, at) && !cloth.thread_at(way, line, at)) return false;
  }
  return true;
}

/// Does the slanted stitch pass inside the crossing of column x and row y? By the sides on which the crossing's corners lie.
bool passes(cloth::Stitch s, int x, int y) {
  bool left = false, right = false;
  for (const cloth::Hole corner : {cloth::Hole{x, y}, {x + 1, y}, {x, y + 1}, {x + 1, y + 1}}) {
    const std::int64_t turn = std::int64_t{s.b.x - s.a.x} * (corner.y - s.a.y) - std::int64_t{s.b.y - s.a.y} * (corner.x - s.a.x);
    left = left || turn < 0;
    right = right || turn > 0;
  }
  return left && right;
}

bool slant_stands(const Cloth& cloth, cloth::Stitch s) {
  for (int x = std::min(s.a.x, s.b.x); x < std::max(s.a.x, s.b.x); ++x)
    for (int y = std::min(s.a.y, s.b.y); y < std::max(s.a.y, s.b.y); ++y)
      if (passes(s, x, y) && (!cloth.thread_at(Axis::v, x, y) || !cloth.thread_at(Axis::h, y, x))) return false;
  return true;
}

bool stands(const Cloth& cloth, cloth::Stitch stitch) {
  const cloth::Stitch s = stitch.normal();
  if (s.a.x == s.b.x) return straight_stands(cloth, Axis::v, s.a.x, s.a.y, s.b.y);
  if (s.a.y == s.b.y) return straight_stands(cloth, Axis::h, s.a.y, s.a.x, s.b.x);
  return slant_stands(cloth, s);
}

void look_at_ends(const Cloth& cloth, const Holders& holders, Simulated& seen) {
  for (const auto& [thread, places] : cloth.snips())
    for (auto place = places.begin(); place != places.end(); ++place) {
      const int at = *place;
      bool last_held = true;
      for (const int sense : {-1, 1}) {
        if (!cloth.thread_at(thread.first, thread.second, sense < 0 ? at - 1 : at)) continue;
        last_held = held(holders, thread, at, sense);
        if (!last_held) seen.loose.push_back({thread.first, thread.second, at});
      }
      const auto next = std::next(place);
      if (next == places.end() || last_held || !cloth.thread_at(thread.first, thread.second, at)) continue;
      if (!held(holders, thread, *next, -1))
        seen.hanging.push_back(thread.first == Axis::v ? cloth::Hole{thread.second, at} : cloth::Hole{at, thread.second});
    }
}

}  // namespace

Simulated simulate(const Request& request, const std::vector<Cut>& cuts, const std::vector<Span>& withdrawn) {
  const Cloth cloth(cuts, withdrawn);
  const Holders holders(request.blocks);
  Simulated seen;
  look_at_ends(cloth, holders, seen);
  std::sort(seen.loose.begin(), seen.loose.end());
  seen.not_free = cloth.not_free();
  for (std::size_t i = 0; i < request.surface.size(); ++i)
    if (!stands(cloth, request.surface[i].stitch)) seen.without_ground.push_back(static_cast<int>(i));
  for (std::size_t b = 0; b < request.blocks.size(); ++b)
    if (std::any_of(request.blocks[b].stitches.begin(), request.blocks[b].stitches.end(), [&](const auto& s) { return !stands(cloth, s); }))
      seen.blocks_harmed.push_back(static_cast<int>(b));
  return seen;
}

}  // namespace cutwork
