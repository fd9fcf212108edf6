// Stitches over what is taken out. One that lies along the cloth goes round the threads square to it, from cut to cut with the cut places
// themselves; one between two threads of its own way needs one of them; a slanted one needs every crossing that it passes over.
#include <algorithm>
#include <cstdlib>
#include <numeric>
#include <unordered_map>

#include "cutwork/search.h"

namespace cutwork {
namespace {

class Gone {
 public:
  explicit Gone(const std::vector<Taken>& taken) {
    for (const Taken& t : taken) (t.axis == Axis::v ? columns_ : rows_)[t.run->line].push_back(t.run);
  }
  const Run* at(Axis axis, int line, int place, bool with_ends) const {
    const auto& lines = axis == Axis::v ? columns_ : rows_;
    const auto found = lines.find(line);
    if (found == lines.end()) return nullptr;
    const auto& runs = found->second;
    auto run = std::partition_point(runs.begin(), runs.end(), [&](const Run* r) { return r->to < place + (with_ends ? 0 : 1); });
    return run != runs.end() && (*run)->from <= place ? *run : nullptr;
  }

 private:
  std::unordered_map<int, std::vector<const Run*>> columns_, rows_;
};

bool straight_over(const Gone& gone, Axis way, int line, int from, int to) {
  const Axis square = way == Axis::v ? Axis::h : Axis::v;
  for (int at = from; at < to; ++at)
    if (gone.at(square, at, line, true) || (gone.at(way, line - 1, at, false) && gone.at(way, line, at, false))) return true;
  return false;
}

/// Visits every crossing inside which the slanted stitch passes.
bool slant_over(const Gone& gone, cloth::Stitch s) {
  if (s.b.x < s.a.x) std::swap(s.a, s.b);
  const std::int64_t dx = s.b.x - s.a.x, dy = s.b.y - s.a.y;
  const auto floor_of = [](std::int64_t a, std::int64_t b) { return static_cast<int>(a >= 0 ? a / b : -((b - 1 - a) / b)); };
  for (int i = 0; i < dx; ++i) {
    const std::int64_t one = dy * i, two = dy * (i + 1), low = std::min(one, two), high = std::max(one, two);
    for (int row = floor_of(low, dx); row < floor_of(high + dx - 1, dx); ++row)
      if (gone.at(Axis::v, s.a.x + i, s.a.y + row, false) || gone.at(Axis::h, s.a.y + row, s.a.x + i, false)) return true;
  }
  return false;
}

bool lies_over(const Gone& gone, const cloth::Stitch& stitch) {
  const cloth::Stitch s = stitch.normal();
  if (s.a.x == s.b.x) return straight_over(gone, Axis::v, s.a.x, s.a.y, s.b.y);
  if (s.a.y == s.b.y) return straight_over(gone, Axis::h, s.a.y, s.a.x, s.b.x);
  return slant_over(gone, s);
}

}  // namespace

Over lying_over(const Request& request, const std::vector<Taken>& taken) {
  const Gone gone(taken);
  Over over;
  for (std::size_t i = 0; i < request.surface.size(); ++i)
    if (lies_over(gone, request.surface[i].stitch)) over.surface.push_back(static_cast<int>(i));
  for (std::size_t b = 0; b < request.blocks.size(); ++b) {
    const auto& stitches = request.blocks[b].stitches;
    if (std::any_of(stitches.begin(), stitches.end(), [&](const auto& s) { return lies_over(gone, s); }))
      over.blocks.push_back(static_cast<int>(b));
  }
  return over;
}

}  // namespace cutwork
