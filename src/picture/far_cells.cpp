#include "picture/far_cells.h"

#include <algorithm>
#include <cmath>

namespace picture {
namespace {

constexpr double wanted_pixels = 2;

double first_of(double corner, double side) { return std::floor(corner / side) * side - corner; }

}  // namespace

FarCells::FarCells(const ChartView& view)
    : side_(std::max(1.0, std::ceil(wanted_pixels / view.pixels))),
      x_(first_of(view.x, side_)),
      y_(first_of(view.y, side_)),
      columns_(static_cast<int>(std::ceil((view.width - x_) / side_))),
      rows_(static_cast<int>(std::ceil((view.height - y_) / side_))),
      ranks_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_)) {}

void FarCells::mark(list::Point a, list::Point b, std::uint8_t rank) {
  constexpr double inwards = 0.02;  // of the way: an end that lies on the line between two squares belongs to the stitch's own
  const double dx = b.x - a.x, dy = b.y - a.y;
  const int steps = 1 + static_cast<int>(std::max(std::abs(dx), std::abs(dy)) / side_);
  for (int i = 0; i <= steps; ++i) {
    const double t = inwards + (1 - 2 * inwards) * i / steps;
    const int column = static_cast<int>(std::floor((a.x + t * dx - x_) / side_)),
              row = static_cast<int>(std::floor((a.y + t * dy - y_) / side_));
    if (column < 0 || row < 0 || column >= columns_ || row >= rows_) continue;
    std::uint8_t& here = ranks_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(column)];
    here = std::max(here, rank);
  }
}

}  // namespace picture
