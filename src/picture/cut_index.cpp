#include "picture/cut_index.h"

#include <limits>
#include <map>
#include <tuple>

#include "base/require.h"
#include "picture/cut_ends.h"

namespace picture {
namespace {

using cutwork::Axis;

bool before(const Strand& strand, const cutwork::Span& span) { return strand.span < span; }

/// A snip of the plan by its thread and the hole along it.
using Key = std::tuple<Axis, int, int>;
Key key_of(const cutwork::Cut& cut) { return {cut.axis, cut.thread, cut.axis == Axis::v ? cut.at.y : cut.at.x}; }

std::map<Key, int> cuts_by_place(const plan::PartCutting& part) {
  std::map<Key, int> places;
  for (std::size_t c = 0; c < part.cutting.cuts.size(); ++c) places.emplace(key_of(part.cutting.cuts[c]), static_cast<int>(c));
  return places;
}

/// Only a stretch that is snipped at both ends comes out. `first`: the rank of the cutting's first snip in its lesson.
void add_strands(const plan::PartCutting& part, int number, int first, std::vector<Strand>& all) {
  const std::map<Key, int> places = cuts_by_place(part);
  for (const cutwork::Span& span : part.cutting.withdrawn) {
    const auto a = places.find({span.axis, span.thread, span.from}), b = places.find({span.axis, span.thread, span.to});
    if (a == places.end() || b == places.end()) continue;
    const auto cut = [&](int c) { return part.cutting.cuts[static_cast<std::size_t>(c)]; };
    all.push_back({span, number, part.lesson, {cut(a->second), cut(b->second)}, {first + a->second, first + b->second}});
  }
}

}  // namespace

Lies lies(const Strand& strand, CutMoment moment) {
  if (strand.lesson == 0 || strand.lesson > moment.lesson) return Lies::whole;
  if (strand.lesson < moment.lesson) return Lies::out;
  const auto made = std::count_if(strand.ranks.begin(), strand.ranks.end(), [&](int rank) { return rank < moment.snips; });
  return made == 0 ? Lies::whole : made == 1 ? Lies::by_one_end : Lies::out;
}

CutIndex::CutIndex(const plan::Plan& plan) {
  std::vector<int> first(plan.cuttings.size(), 0);
  snips_.resize(plan.lessons.size());
  for (std::size_t n = 0; n < plan.lessons.size(); ++n) {
    std::size_t snips = 0;
    for (const int c : plan.lessons[n].cuttings) {
      first[static_cast<std::size_t>(c)] = static_cast<int>(snips);
      snips += plan.cuttings[static_cast<std::size_t>(c)].cutting.cuts.size();
    }
    snips_[n].resize(snips);
  }
  for (std::size_t c = 0; c < plan.cuttings.size(); ++c) add_strands(plan.cuttings[c], static_cast<int>(c), first[c], strands_);
  std::size_t ends = 0, snips = 0;
  for (const Strand& strand : strands_) ends += strand.lesson > 0 ? 2 : 0;
  for (const auto& lesson : snips_) snips += lesson.size();
  base::require(ends == snips, "every snip is an end of one stretch of thread");
  std::sort(strands_.begin(), strands_.end(), [](const Strand& a, const Strand& b) { return a.span < b.span; });
  for (std::size_t s = 0; s < strands_.size(); ++s)
    for (const int end : {0, 1})
      if (const Strand& strand = strands_[s]; strand.lesson > 0)
        snips_[static_cast<std::size_t>(strand.lesson - 1)][static_cast<std::size_t>(strand.ranks[static_cast<std::size_t>(end)])] = {
            static_cast<int>(s), end};
}

int CutIndex::snips(int lesson) const {
  return lesson < 1 || lesson > static_cast<int>(snips_.size()) ? 0 : static_cast<int>(snips_[static_cast<std::size_t>(lesson - 1)].size());
}

bool CutIndex::any_until(int lesson) const {
  for (int n = 1; n <= lesson; ++n)
    if (snips(n) > 0) return true;
  return false;
}

CutIndex::Snip CutIndex::snip(int lesson, int number) const {
  const Place place = snips_[static_cast<std::size_t>(lesson - 1)][static_cast<std::size_t>(number)];
  return {&strands_[static_cast<std::size_t>(place.strand)], place.end};
}

std::vector<Strand>::const_iterator CutIndex::from(Axis axis, int thread) const {
  return std::lower_bound(strands_.begin(), strands_.end(), cutwork::Span{axis, thread, std::numeric_limits<int>::min(), 0}, before);
}

const Strand* CutIndex::at(Axis axis, int thread, int along) const {
  auto found = std::upper_bound(strands_.begin(), strands_.end(), cutwork::Span{axis, thread, along, std::numeric_limits<int>::max()},
                                [](const cutwork::Span& span, const Strand& strand) { return span < strand.span; });
  if (found == strands_.begin()) return nullptr;
  --found;
  const cutwork::Span& span = found->span;
  return span.axis == axis && span.thread == thread && span.from <= along && along < span.to ? &*found : nullptr;
}

// ---- what holds a thread ----

namespace {

bool covers(const cloth::Box& box, cloth::Hole square) {
  return box.x0 <= square.x && square.x < box.x1 && box.y0 <= square.y && square.y < box.y1;
}

/// The cutting whose cut or left threads lie at the square; -1: none.
int cutting_at(const plan::Plan& plan, const CutIndex& index, cloth::Hole square) {
  if (const Strand* strand = index.at(Axis::v, square.x, square.y)) return strand->cutting;
  if (const Strand* strand = index.at(Axis::h, square.y, square.x)) return strand->cutting;
  for (std::size_t c = 0; c < plan.cuttings.size(); ++c)
    for (const cutwork::Crossing& crossing : plan.cuttings[c].cutting.crossings)
      if (covers(crossing.box, square)) return static_cast<int>(c);
  return -1;
}

/// The nearest blocks under which the thread goes on, both ways from the square.
void find_blocks(const plan::PartCutting& part, HeldThread& held, int along) {
  const bool v = held.axis == Axis::v;
  held.from = std::numeric_limits<int>::min();
  held.to = std::numeric_limits<int>::max();
  for (std::size_t b = 0; b < part.blocks.size(); ++b) {
    if (part.blocks[b].stitches.empty()) continue;
    const cloth::Box box = box_of(part.blocks[b]);
    if (held.thread < (v ? box.x0 : box.y0) || held.thread >= (v ? box.x1 : box.y1)) continue;
    const int low = v ? box.y0 : box.x0, high = v ? box.y1 : box.x1;
    if (high <= along && high > held.from) held.from = high, held.blocks[0] = static_cast<int>(b);
    if (low > along && low < held.to) held.to = low, held.blocks[1] = static_cast<int>(b);
  }
}

}  // namespace

std::vector<HeldThread> held_at(const plan::Plan& plan, const CutIndex& index, cloth::Hole square) {
  const int cutting = cutting_at(plan, index, square);
  if (cutting < 0) return {};
  std::vector<HeldThread> both;
  for (const Axis axis : {Axis::v, Axis::h}) {
    const int thread = axis == Axis::v ? square.x : square.y, along = axis == Axis::v ? square.y : square.x;
    HeldThread held{axis, thread, cutting, index.at(axis, thread, along)};
    if (held.strand) {
      held.from = held.strand->span.from;
      held.to = held.strand->span.to;
      held.blocks = {held.strand->cuts[0].block, held.strand->cuts[1].block};
    } else {
      find_blocks(plan.cuttings[static_cast<std::size_t>(cutting)], held, along);
    }
    both.push_back(held);
  }
  return both;
}

}  // namespace picture
