// The index of a chart: stitches sorted by the tile of their first end.
#include <algorithm>
#include <tuple>

#include "picture/chart.h"

namespace picture {
namespace {

constexpr int tile_side = 32;  // threads

struct FirstWorked {
  int part = 0;
  cloth::Stitch stitch;
  int lesson = 0;
  friend auto operator<=>(const FirstWorked&, const FirstWorked&) = default;
};

/// Every worked stitch with its lesson, the first lesson of each first.
std::vector<FirstWorked> worked(const plan::Plan& plan) {
  std::vector<FirstWorked> all;
  for (const guide::PlacedTrail& trail : plan.trails)
    for (const guide::Section& section : trail.sections)
      for (int k = section.first; k <= section.last; ++k) {
        const trail::Worked& w = trail.trail.stitches[static_cast<std::size_t>(k)];
        all.push_back({trail.part, cloth::Stitch{w.up, w.down}.normal(), section.lesson});
      }
  std::sort(all.begin(), all.end());
  return all;
}

int lesson_of(const std::vector<FirstWorked>& all, int part, const cloth::Stitch& stitch) {
  const auto found = std::lower_bound(all.begin(), all.end(), FirstWorked{part, stitch, 0});
  return found != all.end() && found->part == part && found->stitch == stitch ? found->lesson : 0;
}

}  // namespace

int ChartIndex::tile(int v) { return v >= 0 ? v / tile_side : -((-v + tile_side - 1) / tile_side); }

ChartIndex::ChartIndex(const course::Course& course, const plan::Plan& plan) : middle_(course::middle(course)) {
  const cloth::Hole corner = course::corner(course), size = course::size_threads(course);
  cloth_ = {corner.x, corner.y, corner.x + size.x, corner.y + size.y};
  const std::vector<FirstWorked> all = worked(plan);
  for (std::size_t p = 0; p < course.parts.size(); ++p)
    for (const cloth::Stitch& stitch : course.parts[p].work.stitches) {
      const int part = static_cast<int>(p);
      tiled_.push_back(
          {tile(stitch.a.y), tile(stitch.a.x), {stitch, part, lesson_of(all, part, stitch.normal()), static_cast<int>(tiled_.size())}});
      reach_ = std::max({reach_, std::abs(stitch.a.x - stitch.b.x), std::abs(stitch.a.y - stitch.b.y)});
    }
  std::sort(tiled_.begin(), tiled_.end(), [](const Tiled& s, const Tiled& t) {
    return std::tie(s.row, s.column, s.lying.number) < std::tie(t.row, t.column, t.lying.number);
  });
  if (tiled_.empty()) return;
  first_row_ = tiled_.front().row;
  last_row_ = tiled_.back().row;
}

std::vector<ChartIndex::Tiled>::const_iterator ChartIndex::from(int row, int column) const {
  return std::partition_point(tiled_.begin(), tiled_.end(),
                              [&](const Tiled& t) { return std::tie(t.row, t.column) < std::tie(row, column); });
}

std::vector<ChartIndex::Lying> ChartIndex::in(cloth::Box box) const {
  std::vector<Lying> lying;
  each_in(box, [&](const Lying& s) { lying.push_back(s); });
  std::sort(lying.begin(), lying.end(), [](const Lying& s, const Lying& t) { return s.number < t.number; });
  return lying;
}

}  // namespace picture
