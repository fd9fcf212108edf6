// Steps of blocks: what is allowed, where they lead, and when the last one closes a ring.
#include "stitch/squares.h"

#include <fmt/format.h>

#include <cstdlib>
#include <optional>

namespace stitch {
namespace {

Grain turned(Grain grain) { return grain == Grain::upright ? Grain::across : Grain::upright; }
Spacing spacing_of(const PathItem& item) { return item.apart ? Spacing::apart : Spacing::joined; }
int threads(Spacing spacing) { return spacing == Spacing::apart ? 2 * block_side : block_side; }

/// Does the straight way run along the stitches?
bool along(cloth::Way way, Grain grain) { return (cloth::step(way).x == 0) == (grain == Grain::upright); }

std::string right_steps(Grain grain) {
  const bool upright = grain == Grain::upright;
  return fmt::format("{} or a slanted step, since the stitches run {} there", upright ? "E or W" : "N or S",
                     upright ? "upright" : "across");
}

/// Goes over the items without laying anything out.
class Walk {
 public:
  Walk(cloth::Hole start, Grain first, ItemFaults& faults) : x_(start.x), y_(start.y), grain_(first), faults_(faults) {}

  void item(const PathItem& item, int steps) {
    const bool slant = cloth::slanted(item.way);
    if (slant && item.apart) {
      faults_.at_item(item, "a slanted step apart",
                      fmt::format("a slanted step without \"apart\", or {} apart", grain_ == Grain::upright ? "E or W" : "N or S"));
    } else if (!slant && steps > 0 && along(item.way, grain_)) {
      faults_.at_item(item, "a straight step along the stitches", right_steps(grain_));
    }
    const int size = slant ? block_side : threads(spacing_of(item));
    x_ += std::int64_t{cloth::step(item.way).x} * steps * size;
    y_ += std::int64_t{cloth::step(item.way).y} * steps * size;
    stitches_ += std::int64_t{steps} * (slant || item.apart ? block_stitches : block_stitches - 1);
    if (slant && steps % 2 != 0) grain_ = turned(grain_);
    limits(item);
  }

 private:
  void limits(const PathItem& item) {
    if (beyond_) return;
    if (stitches_ > stitch_limit) {
      beyond_ = true;
      faults_.at_item(item, fmt::format("by which there are {} stitches", stitches_), stitch_limit_in_words());
    } else if (!within_limit(x_, y_) || !within_limit(x_ + block_side, y_ + block_side)) {
      beyond_ = true;
      faults_.at_item(item, fmt::format("which leads to the hole [{}, {}]", x_, y_), hole_limit_in_words());
    }
  }

  std::int64_t x_, y_, stitches_ = block_stitches;
  Grain grain_;
  ItemFaults& faults_;
  bool beyond_ = false;  // told once; what follows lies beyond as well
};

Square stepped(Square from, Step step) {
  const int size = cloth::slanted(step.way) ? block_side : threads(step.spacing);
  return {from.at + size * cloth::step(step.way), cloth::slanted(step.way) ? turned(from.grain) : from.grain};
}

/// The legal step that leads from one square to the other, if one does.
std::optional<Step> legal_step(Square from, Square to) {
  const auto way = cloth::way_between(from.at, to.at);
  if (!way) return std::nullopt;
  if (!cloth::slanted(*way) && along(*way, from.grain)) return std::nullopt;
  for (const Spacing spacing : {Spacing::joined, Spacing::apart}) {
    const Square there = stepped(from, {*way, spacing});
    if (there.at == to.at && there.grain == to.grain) return Step{*way, cloth::slanted(*way) ? Spacing::joined : spacing};
  }
  return std::nullopt;
}

bool straight_back(Step one, Step next) { return next.way == cloth::turned(one.way, 4); }

void close(Chain& chain, const PathItem& last_item, ItemFaults& faults) {
  std::vector<Square>& squares = chain.squares;
  if (squares.size() < 2) return;
  if (squares.back().at == squares.front().at) {
    if (squares.back().grain != squares.front().grain) {
      faults.at_item(last_item, "which ends on the first block with its stitches square to it",
                     "a ring with an even number of slanted steps");
    } else if (!straight_back(chain.steps.back(), chain.steps.front())) {
      squares.pop_back();
      chain.closed = true;
    }
    return;
  }
  constexpr std::size_t fewest = 4;  // with less it is an arch over four free threads
  if (squares.size() < fewest) return;
  const auto step = legal_step(squares.back(), squares.front());
  if (!step || straight_back(chain.steps.back(), *step) || straight_back(*step, chain.steps.front())) return;
  chain.steps.push_back(*step);
  chain.closed = true;
}

}  // namespace

Chain lay_squares(cloth::Hole start, Grain first, const std::vector<PathItem>& items, ItemFaults& faults) {
  const auto steps_of = [&](const PathItem& item) {
    return &item == &items.front() ? item.number - 1 : item.number;
  };  // the first counts the first block
  Walk walk(start, first, faults);
  for (const PathItem& item : items) walk.item(item, steps_of(item));
  if (faults.any()) return {};
  Chain chain;
  chain.squares.push_back({start, first});
  for (const PathItem& item : items) {
    const Step step{item.way, spacing_of(item)};
    for (int i = 0; i < steps_of(item); ++i) {
      chain.squares.push_back(stepped(chain.squares.back(), step));
      chain.steps.push_back(step);
    }
  }
  close(chain, items.back(), faults);
  return faults.any() ? Chain{} : chain;
}

}  // namespace stitch
