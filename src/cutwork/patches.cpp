#include "cutwork/patches.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <unordered_set>

namespace cutwork {
namespace {

/// One row's share of a patch.
struct Piece {
  int from = 0, to = 0;
  Left left = Left::both;
  int box = -1;
};

/// Columns side by side that are taken out in one row.
struct Strip {
  int row = 0, from = 0, to = 0;
};

std::vector<Strip> strips_by_row(const std::vector<Taken>& taken) {
  std::vector<Strip> strips;
  for (const Taken& t : taken) {
    if (t.axis != Axis::v) continue;
    for (int row = t.run->from; row < t.run->to; ++row) strips.push_back({row, t.run->line, t.run->line + 1});
  }
  std::sort(strips.begin(), strips.end(), [](const Strip& a, const Strip& b) { return std::tie(a.row, a.from) < std::tie(b.row, b.from); });
  std::vector<Strip> joined;
  for (const Strip& s : strips) {
    if (!joined.empty() && joined.back().row == s.row && joined.back().to == s.from)
      joined.back().to = s.to;
    else
      joined.push_back(s);
  }
  return joined;
}

class Sweep {
 public:
  Sweep(const Areas& areas, const std::vector<Taken>& taken) : areas_(areas), strips_(strips_by_row(taken)) {
    for (const Taken& t : taken)
      if (t.axis == Axis::h) gone_.insert(t.run);
  }

  Patches patches() {
    for (const Run& run : areas_.runs.rows) {
      if (run.area < 0 || !areas_.chosen[static_cast<std::size_t>(run.area)]) continue;
      if (run.line != row_) next_row(run.line);
      cut_up(run);
    }
    next_row(row_ + 1);
    return gather();
  }

 private:
  void next_row(int line) {
    if (!now_.empty()) meet_above();
    above_ = line == row_ + 1 ? std::move(now_) : std::vector<Piece>{};
    now_.clear();
    row_ = line;
  }

  void cut_up(const Run& run) {
    while (strip_ < strips_.size() && std::tie(strips_[strip_].row, strips_[strip_].from) < std::tie(run.line, run.from)) ++strip_;
    const bool across_gone = gone_.count(&run) > 0;
    int at = run.from;
    const auto add = [&](int to, bool upright_gone) {
      if (at < to)
        now_.push_back({at, to, across_gone ? (upright_gone ? Left::nothing : Left::upright) : upright_gone ? Left::across : Left::both});
      at = to;
    };
    for (; strip_ < strips_.size() && strips_[strip_].row == run.line && strips_[strip_].from < run.to; ++strip_) {
      add(strips_[strip_].from, false);
      add(strips_[strip_].to, true);
    }
    add(run.to, false);
  }

  /// Puts the row's pieces into boxes: a piece just like the one above lengthens its box.
  void meet_above() {
    std::size_t a = 0;
    for (Piece& piece : now_) {
      while (a < above_.size() && above_[a].to <= piece.from) ++a;
      const bool same = a < above_.size() && above_[a].from == piece.from && above_[a].to == piece.to && above_[a].left == piece.left;
      piece.box = same ? above_[a].box : new_box(piece);
      boxes_[static_cast<std::size_t>(piece.box)].y1 = row_ + 1;
      for (std::size_t o = a; o < above_.size() && above_[o].from < piece.to; ++o)
        if (above_[o].box != piece.box) meet(above_[o].box, piece.box, false);
    }
    for (std::size_t i = 1; i < now_.size(); ++i)
      if (now_[i - 1].to == now_[i].from) meet(now_[i - 1].box, now_[i].box, true);
  }

  int new_box(const Piece& piece) {
    boxes_.push_back({piece.from, row_, piece.to, row_ + 1});
    left_.push_back(piece.left);
    return static_cast<int>(boxes_.size()) - 1;
  }

  void meet(int first, int second, bool level) {
    if (met_.empty() || met_.back() != Patches::Beside{first, second, level}) met_.push_back({first, second, level});
  }

  int root(std::vector<int>& parent, int i) {
    while (parent[i] != i) i = parent[i] = parent[parent[i]];
    return i;
  }

  Patches gather() {
    std::vector<int> parent(boxes_.size());
    std::iota(parent.begin(), parent.end(), 0);
    for (const auto& [first, second, level] : met_) {
      const int a = root(parent, first), b = root(parent, second);
      if (left_[first] == left_[second]) parent[std::max(a, b)] = std::min(a, b);
    }
    Patches patches;
    std::vector<int> number(boxes_.size(), -1);
    for (std::size_t i = 0; i < boxes_.size(); ++i) {
      const auto r = static_cast<std::size_t>(root(parent, static_cast<int>(i)));
      if (r == i) {
        number[i] = static_cast<int>(patches.all.size());
        patches.all.push_back({left_[i], {}, boxes_[i]});
      }
      number[i] = number[r];
      Patch& patch = patches.all[number[i]];
      patch.boxes.push_back(boxes_[i]);
      patch.box.grow({boxes_[i].x0, boxes_[i].y0});
      patch.box.grow({boxes_[i].x1, boxes_[i].y1});
    }
    for (const auto& [first, second, level] : met_)
      if (number[first] != number[second]) patches.beside.push_back({number[first], number[second], level});
    std::sort(patches.beside.begin(), patches.beside.end());
    patches.beside.erase(std::unique(patches.beside.begin(), patches.beside.end()), patches.beside.end());
    return patches;
  }

  const Areas& areas_;
  std::vector<Strip> strips_;
  std::unordered_set<const Run*> gone_;
  std::size_t strip_ = 0;
  int row_ = -2000000000;
  std::vector<Piece> now_, above_;
  std::vector<cloth::Box> boxes_;
  std::vector<Left> left_;
  std::vector<Patches::Beside> met_;
};

}  // namespace

Patches find_patches(const Areas& areas, const std::vector<Taken>& taken) { return Sweep(areas, taken).patches(); }

}  // namespace cutwork
