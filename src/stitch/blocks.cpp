// Blocks (kloster blocks): 5 satin stitches side by side over 4 threads, in straight rows that share their end stitch or leave four threads
// free, and in staircases whose neighbours turn and share one corner hole (Archer). All blocks of a part lie on one
// lattice of 4 threads, so two of them either keep clear of each other, share an end stitch, are the same, or lie square across one
// another.
#include <algorithm>
#include <array>
#include <unordered_map>

#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/ring_side.h"
#include "stitch/squares.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr std::size_t doubt_limit = 100;  // further places of one doubt are not told

using Stitches = std::array<cloth::Stitch, block_stitches>;

/// From left to right, or from top to bottom; each stitch from its upper or left end.
Stitches stitches_of(const Square& square) {
  const bool upright = square.grain == Grain::upright;
  const cloth::Hole along = upright ? cloth::Hole{0, block_side} : cloth::Hole{block_side, 0};
  const cloth::Hole aside = upright ? cloth::Hole{1, 0} : cloth::Hole{0, 1};
  Stitches stitches;
  for (int i = 0; i < block_stitches; ++i) stitches[static_cast<std::size_t>(i)] = {square.at + i * aside, square.at + i * aside + along};
  return stitches;
}

/// What the blocks before this one have of its stitches.
class Taken {
 public:
  explicit Taken(std::size_t blocks) {
    for (auto& squares : squares_) squares.reserve(blocks);
  }
  /// The stitches that are left: none, or one run of them from first to last.
  struct Left {
    int first = 0, last = block_stitches - 1;
    int same = -1;    ///< the earlier block that is this one
    int across = -1;  ///< the earlier block on the same square with its stitches the other way
  };
  Left add(const Square& square, int number) {
    Left left;
    const cloth::Hole side = square.grain == Grain::upright ? cloth::Hole{block_side, 0} : cloth::Hole{0, block_side};
    if (find(square.grain, square.at - side) >= 0) ++left.first;
    if (find(square.grain, square.at + side) >= 0) --left.last;
    left.same = find(square.grain, square.at);
    left.across = find(square.grain == Grain::upright ? Grain::across : Grain::upright, square.at);
    if (left.same >= 0) left.last = left.first - 1;
    of(square.grain).try_emplace(square.at, number);
    return left;
  }

 private:
  std::unordered_map<cloth::Hole, int>& of(Grain grain) { return squares_[static_cast<std::size_t>(grain)]; }
  int find(Grain grain, cloth::Hole at) {
    const auto found = of(grain).find(at);
    return found == of(grain).end() ? -1 : found->second;
  }
  std::array<std::unordered_map<cloth::Hole, int>, 2> squares_;
};

/// Steps that go on the same way.
struct Flight {
  Step step;
  std::size_t first = 0, last = 0;  ///< squares; `last` may lie beyond the end of a ring, which begins again there
};

class Blocks {
 public:
  Blocks(const Chain& chain, bool up_on_cut_side) : chain_(chain), size_(chain.squares.size()) { work_.up_on_cut_side = up_on_cut_side; }

  Work work(cloth::Way lone_way) {
    work_.closed = chain_.closed;
    find_flights();
    find_down_sides();
    lay_stitches();
    count_flights(lone_way);
    return std::move(work_);
  }

 private:
  const Step* into(std::size_t square) const {
    if (square > 0) return &chain_.steps[square - 1];
    return chain_.closed ? &chain_.steps.back() : nullptr;
  }
  const Step* out_of(std::size_t square) const { return square < chain_.steps.size() ? &chain_.steps[square] : nullptr; }

  void find_flights() {
    const std::vector<Step>& steps = chain_.steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      if (flights_.empty() || flights_.back().step != steps[i]) flights_.push_back({steps[i], i, i});
      flights_.back().last = i + 1;
    }
    if (!chain_.closed || flights_.size() < 2 || flights_.front().step != flights_.back().step) return;
    flights_.front().first = flights_.back().first;  // a start in the middle of a flight is no corner
    flights_.front().last += size_;
    flights_.pop_back();
  }

  /// Every block belongs to the flight that leads to it.
  std::vector<int> flight_numbers() const {
    std::vector<int> numbers(size_, 0);
    for (std::size_t f = 0; f < flights_.size(); ++f)
      for (std::size_t square = flights_[f].first + 1; square <= flights_[f].last; ++square) {
        if (square != size_ || f == 0) numbers[square % size_] = static_cast<int>(f);  // a ring's first block opens its first flight
      }
    return numbers;
  }

  void find_down_sides() {
    down_.assign(size_, DownSide::none);
    std::vector<cloth::Hole> middles;
    for (const Square& square : chain_.squares) middles.push_back(square.at + cloth::Hole{block_side / 2, block_side / 2});
    const RingInside inside(chain_.closed ? middles : std::vector<cloth::Hole>{middles.front()}, block_side);
    for (std::size_t i = 0; i < size_; ++i) {
      const Step* in = into(i) ? into(i) : out_of(i);
      const Step* out = out_of(i) ? out_of(i) : in;
      if (!in) continue;
      const auto looked_for = [&](cloth::Way end) {
        return chain_.closed ? inside.holds(middles[i], end) : on_right(in->way, out->way, end);
      };
      const bool upright = chain_.squares[i].grain == Grain::upright;
      const bool a = looked_for(upright ? cloth::Way::N : cloth::Way::W), b = looked_for(upright ? cloth::Way::S : cloth::Way::E);
      if (a != b) down_[i] = a != work_.up_on_cut_side ? DownSide::a : DownSide::b;
    }
  }

  void lay_stitches() {
    const std::vector<int> flights = flight_numbers();
    Taken taken(size_);
    Pass pass{{}, Order::in_turn, chain_.closed};
    work_.stitches.reserve(size_ * block_stitches);
    for (std::size_t i = 0; i < size_; ++i) {
      const Square& square = chain_.squares[i];
      const Stitches all = stitches_of(square);
      const Taken::Left left = taken.add(square, static_cast<int>(i));
      if (left.across >= 0) doubt_overlap(i, left.across);
      if (left.same < 0) work_.features.push_back({Shape::bundle, {all.begin(), all.end()}, square.at, 0, static_cast<int>(i)});
      if (left.first > left.last) continue;
      Run run{{all.begin() + left.first, all.begin() + left.last + 1}, {}, Freedom::all_alike, down_[i]};
      work_.stitches.insert(work_.stitches.end(), run.stitches.begin(), run.stitches.end());
      if (backwards(i)) std::reverse(run.stitches.begin(), run.stitches.end());
      run.legs.assign(run.stitches.size(), flights[i]);
      pass.runs.push_back(std::move(run));
    }
    work_.passes.push_back(std::move(pass));
  }

  /// Does the way lead from the block's right to its left, or from its bottom to its top? Where the way in and the way out differ, the way
  /// in counts.
  bool backwards(std::size_t square) const {
    const Step* step = into(square) ? into(square) : out_of(square);
    if (!step) return false;
    const cloth::Hole way = cloth::step(step->way);
    return (chain_.squares[square].grain == Grain::upright ? way.x : way.y) < 0;
  }

  void doubt_overlap(std::size_t block, int other) {
    if (work_.doubts.size() >= doubt_limit) return;
    work_.doubts.push_back({"blocks-overlap",
                            true,
                            chain_.squares[block].at,
                            chain_.squares[static_cast<std::size_t>(other)].at,
                            {{"block", static_cast<int>(block) + 1}, {"other", other + 1}}});
  }

  /// The corner of a block that lies foremost along the way; of a straight one's two, that on the side where its stitches go down.
  cloth::Hole foremost(std::size_t square, cloth::Way way) const {
    cloth::Hole aim = cloth::step(way);
    if (!cloth::slanted(way)) {
      const int side = down_[square] == DownSide::a ? -1 : 1;
      (chain_.squares[square].grain == Grain::upright ? aim.y : aim.x) += side;
    }
    return chain_.squares[square].at + cloth::Hole{aim.x > 0 ? block_side : 0, aim.y > 0 ? block_side : 0};
  }

  void count_flights(cloth::Way lone_way) {
    const auto add = [&](cloth::Way way, std::size_t first, std::size_t last) {
      Leg leg{0, static_cast<int>(work_.legs.size()), cloth::slanted(way), 0, static_cast<int>(last - first) + 1, {}, {}};
      leg.from = foremost(first % size_, cloth::turned(way, 4));
      leg.to = foremost(last % size_, way);
      work_.legs.push_back(leg);
    };
    for (const Flight& flight : flights_) add(flight.step.way, flight.first, flight.last);
    if (flights_.empty()) add(lone_way, 0, 0);
  }

  const Chain& chain_;
  std::size_t size_;
  std::vector<Flight> flights_;
  std::vector<DownSide> down_;
  Work work_;
};

Outcome build(const Values& values) {
  const std::string& path = value<std::string>(values, "path");
  const std::string& first = value<std::string>(values, "first");
  const cloth::Hole start = value<cloth::Hole>(values, "start");
  base::require(first == "upright" || first == "across", "a way for the first block's stitches that is none of its words");
  ParsedPath parsed = parse_path("path", path, Apart::allowed);
  if (!within_limit(start.x, start.y)) parsed.faults.insert(parsed.faults.begin(), start_beyond_limit(start));
  if (!parsed.faults.empty()) return {{}, std::move(parsed.faults)};
  ItemFaults faults(path);
  const Chain chain = lay_squares(start, first == "upright" ? Grain::upright : Grain::across, parsed.items, faults);
  if (faults.any()) return {{}, faults.take()};
  return {Blocks(chain, value<std::string>(values, "cut_side") == "up").work(parsed.items.front().way), {}};
}

}  // namespace

Kind blocks_kind() {
  return {.name = "blocks",
          .keys = {required_hole("start"), word("first", "upright", {"across", "upright"}), required_path("path"),
                   word("cut_side", "down", {"down", "up"})},
          .build = build,
          .craft_rank = 0,
          .stitches_a_minute = 6,  // an assumption, no source
          .middle_of_first = {block_side / 2, block_side / 2}};
}

}  // namespace stitch
