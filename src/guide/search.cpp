#include "guide/search.h"

#include <algorithm>
#include <tuple>

namespace guide {
namespace {

int across_to(const cloth::Box& box, cloth::Hole hole) { return std::max({0, box.x0 - hole.x, hole.x - box.x1}); }
int down_to(const cloth::Box& box, cloth::Hole hole) { return std::max({0, box.y0 - hole.y, hole.y - box.y1}); }

}  // namespace

bool cheaper(const Priced& a, const Priced& b) {
  const auto key = [](const Priced& p) {
    const Candidate& c = *p.candidate;
    return std::tuple(p.care, c.hole.y, c.hole.x, c.feature, c.spot.stitch, c.spot.end);
  };
  return key(a) < key(b);
}

Search::Search(const Layers<Near>& near, const Costs& costs, cloth::Hole hole, When now, Offer offer, Price price)
    : costs_(costs), hole_(hole), now_(now), offer_(std::move(offer)), price_(std::move(price)) {
  for (const Near& layer : near) push_box(layer, static_cast<int>(layer.levels().size()) - 1, 0);
}

bool Search::later(const Step& a, const Step& b) {
  if (a.bound != b.bound) return a.bound > b.bound;
  if (a.kind != b.kind) return a.kind > b.kind;  // a hole is given only when nothing as cheap can still come up
  return a.kind == Kind::priced && cheaper({b.candidate, b.bound}, {a.candidate, a.bound});
}

void Search::push(const Step& step) {
  heap_.push_back(step);
  std::push_heap(heap_.begin(), heap_.end(), later);
}

void Search::push_box(const Near& near, int level, std::size_t index) {
  const Near::Node& node = near.levels()[level][index];
  if (!(node.first < now_)) return;
  const Care least = costs_.least(across_to(node.box, hole_), down_to(node.box, hole_));
  push({std::max(least, costs_.least_together(node.threads_to(hole_))), Kind::box, level, index, &near, nullptr});
}

void Search::push_feature(const Near& near, std::size_t index) {
  const Standing& standing = near.standing()[index];
  if (!(standing.since < now_)) return;
  const Care least = costs_.least(across_to(standing.box, hole_), down_to(standing.box, hole_));
  push({least, Kind::feature, 0, static_cast<std::size_t>(standing.feature), nullptr, nullptr});
}

void Search::open(const Step& box) {
  ++opened_;
  const std::size_t first = box.index * Near::fan;
  const std::size_t size = box.level == 0 ? box.near->standing().size() : box.near->levels()[box.level - 1].size();
  for (std::size_t i = first; i < std::min(size, first + Near::fan); ++i) {
    if (box.level == 0)
      push_feature(*box.near, i);
    else
      push_box(*box.near, box.level - 1, i);
  }
}

void Search::push_holes(const Step& feature) {
  ++asked_;
  for (const Priced& least : offer_(static_cast<int>(feature.index))) push({least.care, Kind::hole, 0, 0, nullptr, least.candidate});
}

void Search::push_price(const Step& hole) {
  if (const auto care = price_(*hole.candidate)) push({*care, Kind::priced, 0, 0, nullptr, hole.candidate});
}

std::optional<Priced> Search::next(Care enough) {
  while (!heap_.empty() && heap_.front().bound < enough && !cut_short()) {
    std::pop_heap(heap_.begin(), heap_.end(), later);
    const Step step = heap_.back();
    heap_.pop_back();
    switch (step.kind) {
      case Kind::box:
        open(step);
        break;
      case Kind::feature:
        push_holes(step);
        break;
      case Kind::hole:
        push_price(step);
        break;
      case Kind::priced:
        return Priced{step.candidate, step.bound};
    }
  }
  return std::nullopt;
}

std::vector<Priced> Search::rest() {
  std::vector<Priced> all;
  for (const Step& step : heap_)
    if (step.kind == Kind::priced) all.push_back({step.candidate, step.bound});
  heap_.clear();
  return all;
}

}  // namespace guide
