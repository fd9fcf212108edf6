// A part written turned or mirrored is the same part turned or mirrored: random parts, every turn of the cloth.
#include <doctest/doctest.h>

#include "parts.h"
#include "turning.h"

using namespace stitch;
using parts::work;

namespace {

std::vector<cloth::Stitch> turned(cloth::Turn turn, const std::vector<cloth::Stitch>& stitches) {
  std::vector<cloth::Stitch> all;
  for (const cloth::Stitch& stitch : stitches) all.push_back(turning::apply(turn, stitch));
  return all;
}

std::vector<cloth::Stitch> normal(std::vector<cloth::Stitch> stitches) {
  for (cloth::Stitch& stitch : stitches) stitch = stitch.normal();
  return stitches;
}

/// The holes where a run's stitches go down.
std::vector<cloth::Hole> downs(const Run& run) {
  std::vector<cloth::Hole> all;
  for (const cloth::Stitch& stitch : run.stitches)
    if (run.down != DownSide::none) all.push_back(run.down == DownSide::a ? stitch.a : stitch.b);
  return all;
}

std::vector<cloth::Hole> ups(Run run) {
  if (run.down != DownSide::none) run.down = run.down == DownSide::a ? DownSide::b : DownSide::a;
  return downs(run);
}

std::vector<cloth::Hole> turned(cloth::Turn turn, std::vector<cloth::Hole> holes) {
  for (cloth::Hole& hole : holes) hole = cloth::apply(turn, hole);
  return holes;
}

Work made(const turning::BlockPath& path) {
  return work(parts::blocks(path.start, turning::text(path.items), path.upright ? "upright" : "across"));
}
Work made(const turning::LinePath& path) {
  return work(parts::cable(path.start, turning::text(path.items), path.rows, path.right ? "right" : "left"));
}

bool same_counts(const Work& one, const Work& other) {
  const auto same = [](const Leg& a, const Leg& b) {
    return a.row == b.row && a.number == b.number && a.slant == b.slant && a.stitches == b.stitches && a.blocks == b.blocks;
  };
  return std::equal(one.legs.begin(), one.legs.end(), other.legs.begin(), other.legs.end(), same);
}

void same_blocks(cloth::Turn turn, const Work& one, const Work& other) {
  RC_ASSERT(one.closed == other.closed);
  RC_ASSERT(parts::normal_set(turned(turn, one.stitches)) == parts::normal_set(other.stitches));
  RC_ASSERT(one.doubts.size() == other.doubts.size());
  RC_ASSERT(same_counts(one, other));
  const auto& runs = one.passes[0].runs;
  const auto& others = other.passes[0].runs;
  RC_ASSERT(runs.size() == others.size());
  for (std::size_t i = 0; i < runs.size(); ++i) {
    RC_ASSERT(runs[i].legs == others[i].legs);
    RC_ASSERT(runs.size() == 1 || normal(turned(turn, runs[i].stitches)) == normal(others[i].stitches));
    // The right of the way is the left in a mirror; the inside of a ring is the inside.
    const bool other_side = turn.mirror && !one.closed;
    RC_ASSERT(runs.size() == 1 || turned(turn, other_side ? ups(runs[i]) : downs(runs[i])) == downs(others[i]));
  }
}

void same_cable(cloth::Turn turn, const Work& one, const Work& other) {
  RC_ASSERT(one.closed == other.closed);
  RC_ASSERT(turned(turn, one.stitches) == other.stitches);
  RC_ASSERT(same_counts(one, other));
  RC_ASSERT(one.passes.size() == other.passes.size());
  for (std::size_t k = 0; k < one.passes.size(); ++k)
    for (std::size_t r = 0; r < 2; ++r) {
      RC_ASSERT(turned(turn, one.passes[k].runs[r].stitches) == other.passes[k].runs[r].stitches);
      RC_ASSERT(one.passes[k].runs[r].legs == other.passes[k].runs[r].legs);
    }
  RC_ASSERT(one.features.size() == other.features.size());
  for (std::size_t i = 0; i < one.features.size(); ++i) {
    RC_ASSERT(cloth::apply(turn, one.features[i].hole) == other.features[i].hole);
    RC_ASSERT(turned(turn, one.features[i].stitches) == other.features[i].stitches);
  }
  RC_ASSERT(one.doubts.size() == other.doubts.size());
  for (std::size_t i = 0; i < one.doubts.size(); ++i) {
    RC_ASSERT(one.doubts[i].numbers == other.doubts[i].numbers);
    RC_ASSERT(cloth::apply(turn, one.doubts[i].at) == other.doubts[i].at);
  }
}

}  // namespace

TEST_CASE("chains of blocks, turned and mirrored") {
  CHECK(turning::always("chains", [] {
    const turning::BlockPath path = turning::random_blocks();
    for (const cloth::Turn turn : turning::all_turns()) same_blocks(turn, made(path), made(turning::apply(turn, path)));
  }));
}

TEST_CASE("rings of blocks, turned and mirrored") {
  CHECK(turning::always("rings", [] {
    const turning::BlockPath path = turning::random_ring();
    for (const cloth::Turn turn : turning::all_turns()) same_blocks(turn, made(path), made(turning::apply(turn, path)));
  }));
}

TEST_CASE("cables, turned and mirrored, their rows on the same side of the way as seen") {
  CHECK(turning::always("cables", [] {
    const turning::LinePath path = turning::random_line();
    const Outcome first = parts::cable(path.start, turning::text(path.items), path.rows, path.right ? "right" : "left");
    RC_PRE(first.faults.empty());
    // The free end of a slant moves straight up or down with its leg (the course file's description), so it is not like itself a quarter
    // on.
    const bool free_slant = !first.work.closed && (cloth::slanted(path.items.front().way) || cloth::slanted(path.items.back().way));
    for (const cloth::Turn turn : turning::all_turns()) {
      if (free_slant && turn.quarters % 2 != 0) continue;
      same_cable(turn, first.work, made(turning::apply(turn, path)));
    }
  }));
}
