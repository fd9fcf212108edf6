// What a kind of part is: the keys it takes from the course file, and how it turns them into work. Everything above reads only the work.
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "cloth/hole.h"

namespace stitch {

// ---- what is written ------------------------------------------------------------------------------------------------

enum class KeyType {
  hole,
  whole,
  flag,
  word,
  path,
  whole_or_word,  ///< one of `words`, or a whole number within the bounds
  holes,          ///< a list of holes, one at least
  parts,          ///< a list of names of other parts
  wholes,         ///< a list of whole numbers, each within the bounds; one at least
  fillings,       ///< a list of rules: which openings are filled with what
};

/// What is worked into an opening.
enum class Filling { none, doves_eye, square_filet, wheel, picots };
/// As a course file names them, in the order of the enum.
std::vector<std::string_view> filling_names();

/// Of several rules for one opening the last holds.
struct FillingRule {
  enum class Where { all, every_second, at };  ///< every second: the first of each piece that hangs together, and no two side by side
  Filling kind = Filling::none;
  Where where = Where::all;
  std::vector<cloth::Hole> at;  ///< a hole in each opening that is meant
  int turn = 1;                 ///< `at` comes again: 2 or 4 images about the middle of the openings
  std::string mirror;           ///< likewise: "", "x", "y" or "xy"
  friend bool operator==(const FillingRule&, const FillingRule&) = default;
};

using Value = std::variant<cloth::Hole, int, bool, std::string, std::vector<cloth::Hole>, std::vector<int>, std::vector<std::string>, std::vector<FillingRule>>;

/// One key that a kind takes. `words` are the allowed values of a `word`; `least` and `most` bound a `whole`, or each of several.
struct KeySpec {
  std::string_view name;
  KeyType type = KeyType::hole;
  bool required = false;
  std::optional<Value> fallback;
  std::vector<std::string_view> words;
  int least = 0, most = 0;
};

using Values = std::map<std::string, Value, std::less<>>;  ///< every key of the kind, defaults filled in

/// What is wrong with a key's value. For a text, `offset` and `length` mark the bytes within it that are meant; of a list, `item` (from 0) may be.
struct KeyFault {
  std::string key;
  std::size_t offset = 0, length = 0;
  std::string found, expected, suggestion;
  int item = -1;
};

// ---- the work -------------------------------------------------------------------------------------------------------

/// How the stitches of a run may be turned.
enum class Freedom {
  each_way,   ///< each by itself; against the run's own way it is a step back (rows of a cable)
  fixed,      ///< as listed, each up at a and down at b, first to last (squares of four-sided stitch)
  ring,       ///< each up at a and down at b, but begun anywhere and gone round either way (the legs of an eyelet)
  all_alike,  ///< all of them the same way, either way, and the run from either end (the stitches of a block)
};

/// Which end of the run's stitches lies on the side that will be cut, or on the right of the way of going.
enum class DownSide { none, a, b };

/// Stitches in craft order, each from a to b in the run's own way.
struct Run {
  std::vector<cloth::Stitch> stitches;
  std::vector<int> legs;  ///< leg number of each stitch, never falling; a corner lies between two legs
  Freedom freedom = Freedom::each_way;
  DownSide down = DownSide::none;
};

enum class Order {
  in_turn,     ///< one run after another, as listed
  turn_about,  ///< two runs: a stitch of the first, one of the second
  scattered,   ///< runs in whatever order is the shortest on the back (eyelets, petals)
  looped,      ///< one run of buttonhole stitches, each from the ridge (a) to its inner hole (b), caught one by the next: worked as listed,
               ///< the ridge to the right of the way; a closed one is begun anywhere
};

/// What a student calls one of the part's runs.
enum class Piece {
  block,
  bar,     ///< of satin stitch
  petal,   ///< of a star
  eyelet,
  open_eyelet,  ///< whose centre is pulled open
  square,  ///< of four-sided stitch
  side,    ///< of a line of backstitch
  side_there_and_back,  ///< of a line in double running
  edge,    ///< of buttonhole stitch
};

/// Of rows worked turn about: where on a slant the stitch that one row has more is worked, since there two pairings are level.
enum class Spare { at_end, at_start };

/// What is worked in one going with one thread.
struct Pass {
  std::vector<Run> runs;
  Order order = Order::in_turn;
  bool closed = false;  ///< the last run (or each row's last stitch) is followed by the first again
  int place = 0;        ///< of a repeated part: at which of its places
  std::vector<cloth::Hole> keep_open{};  ///< holes that thread on the back never passes over (the centres of eyelets)
  Spare spare = Spare::at_end;
};

/// Is it a single row, worked stitch by stitch along its line?
inline bool stitch_by_stitch(const Pass& pass) {
  return pass.order == Order::in_turn && !pass.runs.empty() && pass.runs.front().freedom == Freedom::each_way;
}

/// What a student can find by eye once it is stitched.
enum class Shape {
  bundle,  ///< stitches side by side, all parallel (a block): its stitch ends
  corner,  ///< a corner hole of a row
  end,     ///< a free end of a row
  bar,     ///< like a bundle: satin stitch
  petal,   ///< like a bundle: of a star
  centre,  ///< the hole in the middle of an eyelet
  fan,     ///< an outer corner of an edge: the inner hole that its stitches share
  notch,   ///< an inner corner of an edge: the ridge hole that two stitches at right angles share
};
/// Is such a feature a bundle of parallel stitches?
constexpr bool side_by_side(Shape shape) { return shape == Shape::bundle || shape == Shape::bar || shape == Shape::petal; }
/// Can its stitches hold threads that are cut at their ends?
constexpr bool holds_cuts(Shape shape) { return shape == Shape::bundle || shape == Shape::bar; }
struct Feature {
  Shape shape = Shape::bundle;
  std::vector<cloth::Stitch> stitches;  ///< a bundle's stitches, side by side in order; a corner's or end's one or two stitches
  cloth::Hole hole;                     ///< a corner's or end's hole; a bundle's upper left hole
  int row = 0;                          ///< 0 for the first row
  int along = 0;                        ///< place in the part's own order, from 0
};

/// A corner of a line's first row, to be marked with a tacking thread beforehand.
struct Corner {
  cloth::Hole hole;
  int place = 0;
};

/// Something questionable found while the part was worked out.
struct Doubt {
  std::string rule;  ///< permanent id, e.g. "row-shrinks"
  bool stops = false;
  cloth::Hole at;
  std::optional<cloth::Hole> also_at;
  std::map<std::string, int> numbers;  ///< arguments for its sentence, e.g. row, leg
};

/// One line of the counts to be sure: a leg of a row, or a flight of blocks.
struct Leg {
  int row = 0;      ///< 0 for the first row
  int number = 0;   ///< in path order
  bool slant = false;
  int stitches = 0; ///< for rows: stitches; for blocks 0
  int blocks = 0;   ///< for blocks: blocks of the flight, shared corner blocks counted in both
  cloth::Hole from, to;
  int place = 0;
};

/// An area to be cut open: what it needs beside the stitches of the parts that hold it.
struct CutArea {
  std::vector<std::string> within;  ///< the parts whose bundles hold it
  int leave = 0;                    ///< 0: every thread held is cut; 4: cut four, leave four along joined rows
  int bar_threads = 4;
  std::vector<cloth::Hole> zones;  ///< only the areas round these holes, one a place; empty: every area
  bool wrapped = false;            ///< bars are wrapped, else woven
  int weaves = 0;                  ///< figures of eight on each bar, or turns round it; 0: as many as fit
  bool picots = false;             ///< on both sides of every bar
  std::vector<FillingRule> fillings;
};

struct Work {
  std::vector<cloth::Stitch> stitches;  ///< every front stitch once
  std::vector<Pass> passes;  ///< place by place, as many at each; one that adds nothing at its place has no runs
  std::vector<Feature> features;
  std::vector<Corner> corners;
  std::vector<Leg> legs;
  std::vector<Doubt> doubts;
  bool closed = false;       ///< its line is, at each place
  bool up_on_cut_side = false;  ///< of blocks: the needle comes up on the side that will be cut, else it goes down there
  std::optional<CutArea> cut;  ///< cloth that is cut; such a part has no stitches of its own
  int places = 1;            ///< of a part repeated by turns and mirrors (see repeat.h), else 1

  int passes_a_place() const { return static_cast<int>(passes.size()) / places; }
  /// `number` from 1, `place` from 0; both must be there.
  const Pass& pass(int number, int place) const { return passes[static_cast<std::size_t>(place * passes_a_place() + number - 1)]; }
  Piece piece = Piece::block;
};

struct Outcome {
  Work work;
  std::vector<KeyFault> faults;  ///< where there is one, the work is not to be used
};

struct Kind {
  std::string_view name;
  std::vector<KeySpec> keys;
  Outcome (*build)(const Values& values) = nullptr;
  int craft_rank = 1;  ///< place in the craft's order where no lesson is written: 0 blocks, 1 surface stitches, 2 cutting
  bool by_edge_habit = false;  ///< it comes after all surface stitches: before what is cut or after it, as the teacher's habit `edge` says
  double stitches_a_minute = 6;  ///< or snips; teacher's own setting; this default is an assumption, no source
  cloth::Hole middle_of_first{};  ///< from the start hole to where a hand would hold the first piece of it
  bool needle_in_middle = false;  ///< takes the teacher's habit `eyelet_needle` as the value of that name: "down" or "up"
};

const Kind* find_kind(std::string_view name);
std::vector<const Kind*> kinds();

// ---- limits ---------------------------------------------------------------------------------------------------------

inline constexpr int coordinate_limit = 100000;
inline constexpr int stitch_limit = 2000000;
inline constexpr int group_depth_limit = 8;

}  // namespace stitch
