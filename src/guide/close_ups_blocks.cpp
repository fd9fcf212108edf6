// Bends and steps of blocks. A flight's way is read off the middles of its blocks, not off leg numbers: in a ring the block that both
// begins and ends it belongs to one flight by number, but it is a bend like others.
#include "guide/close_ups_blocks.h"

#include <algorithm>

namespace guide {
namespace {

constexpr int beside = 2;           // stitches of the neighbouring block
constexpr int whole = 8;            // a block of more stitches is not shown whole,
constexpr int whole_at_start = 24;  // unless it is the first
constexpr int two_at_start = 12;    // stitches in which both of the first two are shown whole: two of five (common practice), and some more
constexpr int at_end = 4;

/// Twice the middle of the block's holes.
cloth::Hole middle(const Needle& needle, const Span& block) {
  const cloth::Hole first = needle.at(block.first).up;
  cloth::Box box{first.x, first.y, first.x, first.y};
  for (int k = block.first; k <= block.last; ++k) {
    box.grow(needle.at(k).up);
    box.grow(needle.at(k).down);
  }
  return {box.x0 + box.x1, box.y0 + box.y1};
}

cloth::Way way(const Needle& needle, const Span& from, const Span& to) { return nearest_way(middle(needle, to) - middle(needle, from)); }

std::vector<Span> blocks(const Needle& needle, const Span& within) {
  std::vector<Span> blocks;
  for (int k = within.first; k <= within.last; k = blocks.back().last + 1) blocks.push_back(needle.block(k));
  return blocks;
}

Corner corner_of(const Span& before, const Span& core, const Span& after) {
  const int first = std::max(before.first, before.last - beside + 1), last = std::min(after.last, after.first + beside - 1);
  return {after.first, core, {std::min(first, core.first), std::max(last, core.last)}};
}

}  // namespace

std::vector<Corner> bends(const Needle& needle, const Span& within) {
  const std::vector<Span> all = blocks(needle, within);
  std::vector<Corner> corners;
  for (std::size_t i = 1; i + 1 < all.size(); ++i)
    if (way(needle, all[i - 1], all[i]) != way(needle, all[i], all[i + 1])) corners.push_back(corner_of(all[i - 1], all[i], all[i + 1]));
  return corners;
}

std::vector<Corner> steps(const Needle& needle, const Span& within) {
  const std::vector<Span> all = blocks(needle, within);
  std::vector<Corner> corners;
  for (std::size_t i = 1; i < all.size(); ++i) corners.push_back(corner_of(all[i - 1], {all[i - 1].last, all[i].first}, all[i]));
  return corners;
}

cloth::Hole block_corner_hole(const Needle& needle, const Corner& corner) {
  const auto near = [&](const Span& block) { return common(block, {corner.turn - whole, corner.turn + whole - 1}); };
  const Span after = near(needle.block(corner.turn)), here = near(needle.block(corner.turn - 1));
  for (int k = after.first; k <= after.last; ++k)
    for (int i = here.last; i >= here.first; --i)
      for (const cloth::Hole hole : {needle.at(k).up, needle.at(k).down})
        if (hole == needle.at(i).up || hole == needle.at(i).down) return hole;
  return needle.at(corner.turn).up;
}

Span first_blocks(const Needle& needle, const Span& section) {
  const int first = section.first;
  const Span one = needle.block(first);
  if (one.last - first >= whole_at_start) return common({first, first + whole - 1}, section);
  if (one.last - first >= whole) return common({first, one.last}, section);
  if (one.last >= section.last) return {first, section.last};
  const Span two = needle.block(one.last + 1);
  if (two.count() > whole) return common({first, two.first + whole - 1}, section);
  if (two.last - first >= two_at_start) return common({first, one.last + beside}, section);
  return common({first, two.last + 1}, section);  // with the first stitch of the third, so that both steps are seen
}

Span last_block(const Needle& needle, const Span& section) {
  const Span block = common(needle.block(section.last), section);
  return block.count() <= whole ? block : common({section.last - at_end + 1, section.last}, section);
}

void tell_block_corner(const Needle& needle, const Corner& corner, CloseUp& close_up) {
  const Span after = needle.block(corner.turn), here = needle.block(corner.turn - 1);
  const cloth::Way out = way(needle, here, after);
  const bool bend = corner.core == here && here.first > 0;
  const cloth::Way in = bend ? way(needle, needle.block(here.first - 1), here) : out;
  close_up.from_slant = cloth::slanted(in);
  close_up.to_slant = cloth::slanted(out);
  close_up.turn_eighths = turn_eighths(in, out);
}

}  // namespace guide
