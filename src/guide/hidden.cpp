#include "guide/hidden.h"

#include <algorithm>
#include <limits>

#include "base/require.h"

namespace guide {
namespace {

/// Longer stretches are kept in pieces, so that a search need never look back further than this.
constexpr int piece = 16;
constexpr int longest_of_bundle = 64;
constexpr int longest_leg = 256;

void put(std::vector<Stretch>& into, int line, int from, int to, When when) {
  for (int at = from; at < to; at += piece) into.push_back({line, at, std::min(at + piece, to), when});
}

/// A straight stitch seen along its own line: the line it lies on, and from where to where.
struct Straight {
  int line, from, to;
};

std::vector<Straight> side_by_side(const stitch::Feature& feature, bool upright) {
  std::vector<Straight> all;
  for (const cloth::Stitch& s : feature.stitches) {
    if (upright ? s.a.x != s.b.x : s.a.y != s.b.y) return {};
    const Straight straight = upright ? Straight{s.a.x, std::min(s.a.y, s.b.y), std::max(s.a.y, s.b.y)}
                                      : Straight{s.a.y, std::min(s.a.x, s.b.x), std::max(s.a.x, s.b.x)};
    if (straight.to - straight.from > longest_of_bundle) return {};
    all.push_back(straight);
  }
  std::sort(all.begin(), all.end(), [](const Straight& a, const Straight& b) { return a.line < b.line; });
  return all;
}

}  // namespace

Stretches::Stretches(std::vector<Stretch> sorted) : sorted_(std::move(sorted)) {
  for (std::size_t i = 0; i < sorted_.size(); ++i)
    if (i == 0 || sorted_[i].line != sorted_[i - 1].line) lines_.emplace_back(sorted_[i].line, i);
  lines_.emplace_back(std::numeric_limits<int>::max(), sorted_.size());
}

void Stretches::collect(int line, int from, int to, When now, std::vector<Stretch>& into) const {
  const auto of = std::lower_bound(lines_.begin(), lines_.end(), line, [](const auto& l, int wanted) { return l.first < wanted; });
  if (of == lines_.end() || of->first != line || of + 1 == lines_.end()) return;
  const auto first = sorted_.begin() + static_cast<std::ptrdiff_t>(of->second);
  const auto last = sorted_.begin() + static_cast<std::ptrdiff_t>((of + 1)->second);
  auto at = std::lower_bound(first, last, from - piece, [](const Stretch& s, int wanted) { return s.from < wanted; });
  for (; at != last && at->from < to; ++at)
    if (at->to > from && at->when < now) into.push_back(*at);
}

void Hidden::gather(cloth::Stitch stitch, When when) {
  const auto [x0, x1] = std::minmax(stitch.a.x, stitch.b.x);
  const auto [y0, y1] = std::minmax(stitch.a.y, stitch.b.y);
  if (x0 == x1) put(new_columns_, x0, y0, y1, when);
  if (y0 == y1) put(new_rows_, y0, x0, x1, when);
}

void Hidden::gather_bundle(const stitch::Feature& feature, When when) {
  if (feature.stitches.empty()) return;
  const bool upright = feature.stitches[0].a.x == feature.stitches[0].b.x;
  const std::vector<Straight> all = side_by_side(feature, upright);
  std::vector<Stretch>& across = upright ? new_rows_ : new_columns_;
  for (std::size_t i = 0; i + 1 < all.size();) {
    std::size_t j = i;  // the run i..j of neighbours one thread apart, from and to alike
    const int from = std::max(all[i].from, all[i + 1].from), to = std::min(all[i].to, all[i + 1].to);
    while (j + 1 < all.size() && all[j + 1].line - all[j].line == 1 && std::max(all[j].from, all[j + 1].from) == from &&
           std::min(all[j].to, all[j + 1].to) == to)
      ++j;
    for (int line = from + 1; line < to; ++line) put(across, line, all[i].line, all[j].line, when);
    i = std::max(j, i + 1);
  }
}

void Hidden::settle() {
  rows_.add(std::exchange(new_rows_, {}));
  columns_.add(std::exchange(new_columns_, {}));
}

int Hidden::threads(cloth::Hole from, cloth::Hole to, When now) const {
  base::require(from.x == to.x || from.y == to.y, "counted along neither a row nor a column of holes");
  const bool down = from.x == to.x;
  const int line = down ? from.x : from.y;
  const int begins = down ? from.y : from.x;
  const int ends = std::clamp(down ? to.y : to.x, begins - longest_leg, begins + longest_leg);
  const auto [low, high] = std::minmax(begins, ends);
  std::vector<Stretch> over;
  for (const Stretches& layer : down ? columns_ : rows_) {
    const auto before = static_cast<std::ptrdiff_t>(over.size());
    layer.collect(line, low, high, now, over);
    std::inplace_merge(over.begin(), over.begin() + before, over.end(), Stretches::before);
  }
  int hidden = 0, seen_to = low;
  for (const Stretch& stretch : over) {
    const int begin = std::max(stretch.from, seen_to), end = std::min<int>(stretch.to, high);
    hidden += std::max(0, end - begin);
    seen_to = std::max(seen_to, end);
  }
  return hidden;
}

}  // namespace guide
