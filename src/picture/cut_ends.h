// The cuttings of a part as pages need them: block ends with their numbers, what lies opposite, which ends look alike. Coordinates are the
// cloth's.
#pragma once

#include <vector>

#include "picture/sheet.h"

namespace picture {

/// One cutting: threads that run side by side, snipped at one end of one block.
struct CutEnd {
  int number = 0;  ///< of the cutting, from 1
  cutwork::Axis axis = cutwork::Axis::v;
  int first = 0, last = 0;  ///< threads
  int at = 0;               ///< hole row (of upright threads) or column of the block's end
  int to = 0;               ///< the same of the opposite end
  int block = -1, area = 0;
  std::vector<int> opposite;  ///< cuttings that take the same threads at their other ends, rising

  int snips() const { return last - first + 1; }
  int into() const { return to > at ? 1 : -1; }  ///< which way along the threads the cloth to be cut lies
  int length() const { return into() * (to - at); }
  /// The place `along` threads into the cloth (behind the block's end where below 0), `side` threads from the first thread's near side.
  struct Place {
    double x = 0, y = 0;
  };
  Place place(double side, double along) const {
    const double across = first + side, down = at + into() * along;
    return axis == cutwork::Axis::v ? Place{across, down} : Place{down, across};
  }
  double middle() const { return snips() / 2.0; }
  /// The hole at which its first thread leaves the stitches, on the near side.
  cloth::Hole hole() const { return axis == cutwork::Axis::v ? cloth::Hole{first, at} : cloth::Hole{at, first}; }
  /// Holes from `before` threads behind the block's end to `after` in front of it, `aside` to both sides of its threads.
  cloth::Box around(int aside, int before, int after) const;
};

/// Cuttings that are done together: ends with the same threads.
struct CutTogether {
  std::vector<int> numbers;
  int snips = 0, threads = 0;
  int length = 0;  ///< threads from end to end
};

struct CutWork {
  const plan::PartCutting* cut = nullptr;
  std::vector<CutEnd> ends;  ///< by number
  const CutEnd& end(int number) const { return ends[static_cast<std::size_t>(number - 1)]; }
  int areas() const { return ends.empty() ? 0 : ends.back().area + 1; }
};

/// Every part that the lesson cuts and of which the plan has the cutting.
std::vector<CutWork> cut_work(const Sheet& sheet);
std::vector<CutTogether> cut_together(const CutWork& work);

/// For each end the number of the first that looks like it, up to turning and mirroring: same stitches round it, as many threads.
std::vector<int> cut_alike(const Sheet& sheet, const CutWork& work);

/// Are all stitches of the block straight, side by side and equally long?
bool even_block(const cutwork::Bundle& block);
cloth::Box box_of(const cutwork::Bundle& block);

}  // namespace picture
