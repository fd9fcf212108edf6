// The needle's order through one pass: every stitch once, by the laws. Knows runs, not kinds.
//
// Laws: 1 every stitch exactly once; 2 never up in the hole just gone down in; 3 back thread never crosses what must stay clear; 4 back
// travel within the limit, else under stitches already worked, else the thread ends and starts anew; 5 rows worked turn about stay level
// (begin side by side) and both finish a leg before either goes on; 6 on each leg the rhythm begins with the first level pair and holds until
// a row has none left there; the rest is worked at the corner (of a pass that spares at the start: begins so that it holds to the last level
// pair, the rest before it). Then, in this order: fewest steps back, each touching its corner; stitches going
// down on the side that will be cut; least thread on the back.
//
// Looped stitches (buttonhole) are more than two points. Stitch k is the front thread between its ridge hole (`up`) and its inner hole
// (`down`). The needle goes down in `down` and comes up in `up`, over its own thread, which it holds there; then the thread lies along the
// ridge to the next `up`. Only with the first stitch on each thread does the needle come up in `up` beforehand as well. `under` says so: before
// stitch k the thread goes from the last `down` on the back to the last `up`, then along the ridge; the way back behind the last stitch on a
// thread is counted with its tail. The laws for such a pass: 1 each stitch once; 2 holds by itself, after `down` comes the stitch's own `up`;
// 3 thread on the back lies under its own stitch, never beside it; 4 it is as long as the stitch, whatever the limit, and where the ridge
// cannot go on (a stretch is worked elsewhere) the thread ends and starts anew; 5 and 6 have no meaning. None is a step back: a loop cannot
// be worked backwards, so the way round is given with the pass.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "cloth/hole.h"
#include "stitch/kind.h"

namespace trail {

struct Worked {
  cloth::Hole up, down;
  bool backward = false;  ///< a step back: worked against its row's way
  int run = 0;            ///< run of the pass (row, block)
  int place = 0;          ///< stitch of the run
  int leg = 0;
  bool over = false;      ///< worked at a corner because the other row has none to offer there; of looped stitches: fanned at an outer corner
};

/// A pass planned, as a circle (closed) or a line.
struct Round {
  bool closed = false;
  stitch::Order order = stitch::Order::in_turn;
  std::vector<Worked> stitches;
  std::vector<int> starts;  ///< indices at which a trail may begin, rising: level pairs clear of corners, first stitches of blocks
  std::vector<cloth::Hole> keep_open{};  ///< holes that thread on the back never passes over
};

struct Rules {
  double back_limit = 12;                ///< threads
  std::vector<cloth::Box> keep_clear;    ///< what back thread must not cross: openings, present or to be cut
};

/// Plans one pass in time linear in its stitches. Exact: the order of rows follows from the laws, their stitches' ways and those of blocks from
/// dynamic programming over the way of the last one. Two runs for turn about, their stitches free each way. Where law 2 cannot be kept (both
/// ends of the way on lie in one hole) make_trail parts the thread there.
///
/// Scattered runs (eyelets, petals) are put in the order and each worked the way that leave the least thread on the back: exactly up to eight of
/// them; of more, from the nearest to the nearest, then improved until no swap or reversal among near neighbours of the order shortens the back.
Round plan_round(const stitch::Pass& pass, const Rules& rules);

/// Thread on the back that is not straight: from the last hole over `via`, each leg under stitches worked before.
struct Under {
  int stitch = 0;
  std::vector<cloth::Hole> via;
};

/// A round with its start put in, and its thread worked out.
struct Trail {
  bool closed = false;
  stitch::Order order = stitch::Order::in_turn;
  std::vector<Worked> stitches;
  std::vector<Under> under;
  std::vector<int> ends;        ///< stitches with which a new thread starts, rising; 0 is always there
  double tall = 1;              ///< a thread down, in threads across: all lengths are in the latter
  double front_threads = 0;     ///< in threads across
  double back_threads = 0;      ///< along `via` where given, so of looped stitches with the ridge; a change of thread counts nothing
};

/// How long a thread is, and what is lost of it.
struct Lengths {
  double usable_threads = 300;    ///< path (front and back) that one length gives, in threads across
  double first_less_threads = 0;  ///< so much less in the very first one, whose tail is longer
  double tall = 1;                ///< a thread down, in threads across
};

/// The trail that begins with stitch `start` of the round (0 for a line). Back travel beyond the limit is led under stitches worked before
/// or parted; then working lengths are laid out: as few as will do, never ending within two stitches of a corner, at the end of a block where
/// that costs little.
Trail make_trail(const Round& round, int start, const Rules& rules, const Lengths& lengths);

/// Corners of the trail in needle order: between which stitches the leg changes, and what is worked over there. Every step back belongs to the
/// nearest corner; one that is nearer to a free end to none.
struct Turning {
  int before = 0;               ///< last stitch of the rhythm before the corner
  int after = 0;                ///< first stitch of the rhythm after it
  std::vector<int> steps_back;  ///< stitches worked backwards here
};
std::vector<Turning> turnings(const Trail& trail);

/// Threads used on front and back by stitches first..last of the trail, each with the back thread that leads to it: so the stretches of a
/// trail add up to the whole.
double thread_of(const Trail& trail, int first, int last);

}  // namespace trail
