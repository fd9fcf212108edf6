// The cloth from far away: squares of about two pixels, each with the most important of what lies in it. Squares are counted from hole 0 of
// the cloth, so that they do not flicker while the cloth is moved.
#pragma once

#include <cstdint>
#include <vector>

#include "list/list.h"
#include "picture/chart.h"

namespace picture {

class FarCells {
 public:
  static constexpr std::uint8_t picked = 4;  ///< the highest rank; 0 is empty

  explicit FarCells(const ChartView& view);
  /// From one end of a stitch to the other, in threads from the view's corner; what lies outside the view is left out.
  void mark(list::Point a, list::Point b, std::uint8_t rank);

  /// Level runs of one rank, row by row, cut to the view.
  template <class Tell>
  void each_run(const Tell& tell) const {
    for (int row = 0; row < rows_; ++row)
      for (int from = 0, to = 0; from < columns_; from = to) {
        const std::uint8_t rank = at(row, from);
        for (to = from + 1; to < columns_ && at(row, to) == rank;) ++to;
        if (rank != 0) tell(list::Rect{x_ + from * side_, y_ + row * side_, (to - from) * side_, side_}, rank);
      }
  }

 private:
  std::uint8_t at(int row, int column) const {
    return ranks_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(column)];
  }
  double side_ = 1;       ///< threads
  double x_ = 0, y_ = 0;  ///< of the first square, in threads from the view's corner; not above 0
  int columns_ = 0, rows_ = 0;
  std::vector<std::uint8_t> ranks_;
};

}  // namespace picture
