#include "guide/search.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace guide {

bool cheaper(const Priced& a, const Priced& b) {
  const auto key = [](const Priced& p) {
    const Candidate& c = *p.candidate;
    return std::tuple(p.care, c.hole.y, c.hole.x, c.feature, c.spot.stitch, c.spot.end);
  };
  return key(a) < key(b);
}

Care care_of_spot(const Costs& costs, const Candidate& candidate) {
  return candidate.plain ? costs.plain() + costs.counted(candidate.spot.stitch + 1) : 0;
}

Search::Search(const Layers<Near>& near, const Costs& costs, cloth::Hole hole, When now, Price price)
    : costs_(costs), hole_(hole), now_(now), price_(std::move(price)) {
  for (const Near& layer : near) push_node(layer, static_cast<int>(layer.levels().size()) - 1, 0);
}

bool Search::later(const Step& a, const Step& b) {
  if (a.bound != b.bound) return a.bound > b.bound;
  if (a.kind != b.kind) return a.kind > b.kind;  // a hole is given only when nothing as cheap can still come up
  if (a.kind == 0) return false;
  return cheaper({b.candidate, b.bound}, {a.candidate, a.bound});
}

void Search::push(Step step) {
  heap_.push_back(step);
  std::push_heap(heap_.begin(), heap_.end(), later);
}

void Search::push_node(const Near& near, int level, std::size_t index) {
  const Near::Node& node = near.levels()[level][index];
  if (!(node.first < now_)) return;
  const int across = std::max({0, node.box.x0 - hole_.x, hole_.x - node.box.x1});
  const int down = std::max({0, node.box.y0 - hole_.y, hole_.y - node.box.y1});
  push({costs_.least(across, down), 0, &near, level, index, nullptr});
}

void Search::push_candidate(const Near& near, std::size_t index) {
  const Candidate& c = near.candidates()[index];
  if (!(c.since < now_)) return;
  const Care bound = costs_.least(std::abs(c.hole.x - hole_.x), std::abs(c.hole.y - hole_.y)) + care_of_spot(costs_, c);
  push({bound, 1, &near, 0, index, &c});
}

void Search::open(const Step& step) {
  const std::size_t first = step.index * Near::fan;
  const std::size_t size = step.level == 0 ? step.near->candidates().size() : step.near->levels()[step.level - 1].size();
  for (std::size_t i = first; i < std::min(size, first + Near::fan); ++i) {
    if (step.level == 0)
      push_candidate(*step.near, i);
    else
      push_node(*step.near, step.level - 1, i);
  }
}

std::optional<Priced> Search::next(Care enough) {
  while (!heap_.empty() && heap_.front().bound < enough && !cut_short()) {
    std::pop_heap(heap_.begin(), heap_.end(), later);
    Step step = heap_.back();
    heap_.pop_back();
    if (step.kind == 2) return Priced{step.candidate, step.bound};
    if (step.kind == 0) {
      open(step);
      continue;
    }
    ++priced_;
    const auto care = price_(*step.candidate);
    if (!care) continue;
    step.kind = 2;
    step.bound = *care;
    push(step);
  }
  return std::nullopt;
}

std::vector<Priced> Search::rest() {
  std::vector<Priced> all;
  for (const Step& step : heap_)
    if (step.kind == 2) all.push_back({step.candidate, step.bound});
  heap_.clear();
  std::sort(all.begin(), all.end(), cheaper);
  return all;
}

}  // namespace guide
