// The cutting plan of an area held by blocks: which threads are cut, where, in which order, what is withdrawn and what is left. Worked out
// from stitches alone, by two methods that share no code: one looks from block end to block end along each enclosed thread, the other
// simulates the cut cloth. Where either finds a thread or a stitch without its hold, nothing is planned as cut.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "cloth/hole.h"

namespace cutwork {

/// Which way a thread runs: vertical thread i lies between hole columns i and i + 1, horizontal thread j between hole rows j and j + 1.
enum class Axis { v, h };

inline constexpr int four = 4;  ///< threads enclosed by a block's five stitches, and cut at one go (Archer p. 191)

/// Stitches side by side, one thread apart, all upright or all across; others are taken as holding nothing.
struct Bundle {
  std::vector<cloth::Stitch> stitches;
  int part = -1;
};

/// A stitch that must keep its ground.
struct Surface {
  cloth::Stitch stitch;
  int part = -1;
};

struct Request {
  std::vector<Bundle> blocks;       ///< what holds the area
  std::vector<Surface> surface;     ///< every other stitch of the design that may lie near
  int leave = 0;                    ///< 0: every thread held is cut; n: cut four, leave n along joined rows
  int bar_threads = four;           ///< threads that a bar must have
  std::vector<cloth::Hole> zones;  ///< only the areas round these holes; empty: every enclosed area
};

/// One snip. `order` is its own; the snips of one block end, four at the most, share a `cutting`. Both count from 1, area by area.
struct Cut {
  Axis axis = Axis::v;
  int thread = 0;
  cloth::Hole at;  ///< the hole at the stitches' end to the left of the thread, or above it
  int order = 0, cutting = 0;
  int block = -1;  ///< index in the request: whose end it is
  int area = 0;    ///< from 0: which of the areas that are cut
  friend bool operator==(const Cut&, const Cut&) = default;
};

/// A stretch of thread taken out, from hole to hole along it.
struct Span {
  Axis axis = Axis::v;
  int thread = 0, from = 0, to = 0;
  friend auto operator<=>(const Span&, const Span&) = default;
};

struct Opening {
  cloth::Box box;
  std::vector<cloth::Hole> outline;  ///< its corner holes in clockwise order from the topmost left
};

/// Threads left between two openings. Axis::h: they run across, with an opening above and one below.
struct Bar {
  Axis axis = Axis::v;
  cloth::Box box;
  std::array<int, 2> openings{-1, -1};  ///< left and right, or above and below
  std::array<int, 2> crossings{-1, -1};  ///< at its ends, left and right or above and below; -1: a block
};

/// A square where threads of both ways are left, at the end of at least one bar.
struct Crossing {
  cloth::Box box;
};

enum class Trouble {
  no_area,         ///< blocks that enclose nothing
  ring_open,       ///< two blocks that should touch
  zone_outside,    ///< a zone lies in no enclosed area
  no_partner,      ///< no block faces this one
  off_partner,     ///< the facing block stands some threads aside
  along_side,      ///< the threads would be cut along a block's side
  one_end,         ///< threads held at one end only
  row_uneven,      ///< a joined row that "cut four, leave so many" does not fit
  surface_over,    ///< a stitch over what would be withdrawn
  bar_width,       ///< a bar of another number of threads
  bar_alone,       ///< a bar without an opening on both sides
  crossing_hangs,  ///< threads left that nothing holds
  cut_twice,       ///< threads that another cutting takes out as well: told by who plans several
  methods_differ,  ///< the two methods do not agree: a bug of the program
};

struct Problem {
  Trouble what = Trouble::no_area;
  cloth::Hole at;
  std::optional<cloth::Hole> also_at;
  int part = -1, other_part = -1;  ///< whose stitches lie there
  int n = 0;                       ///< threads or stitches meant
};

struct Cutting {
  std::vector<Cut> cuts;        ///< by order
  std::vector<Span> withdrawn;  ///< by axis, thread, place
  std::vector<Opening> openings;
  std::vector<Bar> bars;
  std::vector<Crossing> crossings;
  std::vector<Problem> problems;
  int areas = 0;
};

/// The proven plan. With a problem everything but `problems` and `areas` is empty. Time grows with the blocks and with what is withdrawn.
[[nodiscard]] Cutting plan_cutting(const Request& request);

}  // namespace cutwork
