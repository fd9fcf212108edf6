#include "guide/chain.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "guide/names.h"

namespace guide {
namespace {

/// Twice the middle, so that it is whole.
cloth::Hole middle(const cloth::Box& box) { return {box.x0 + box.x1, box.y0 + box.y1}; }

int gap(const cloth::Box& a, const cloth::Box& b) { return std::max({a.x0 - b.x1, b.x0 - a.x1, a.y0 - b.y1, b.y0 - a.y1}); }

int size(const cloth::Box& box) { return std::max(box.width(), box.height()); }

}  // namespace

std::vector<bool> links(const std::vector<cloth::Box>& boxes, Chain chain, int reach) {
  std::vector<bool> linked(boxes.size(), false);
  if (chain == Chain::none) return linked;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    if (i + 1 == boxes.size() && chain != Chain::closed) break;
    const cloth::Box& next = boxes[(i + 1) % boxes.size()];
    linked[i] = reach < 0 || gap(boxes[i], next) <= std::max({reach, size(boxes[i]), size(next)});
  }
  return linked;
}

int turn_of(const std::vector<cloth::Box>& boxes) {
  std::uint64_t sum = 0;  // may run round on the way; the area itself has room in 63 bits
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    const cloth::Hole a = middle(boxes[i]), b = middle(boxes[(i + 1) % boxes.size()]);
    sum += static_cast<std::uint64_t>(static_cast<std::int64_t>(a.x) * b.y - static_cast<std::int64_t>(b.x) * a.y);
  }
  const auto area = static_cast<std::int64_t>(sum);  // y runs down: positive is clockwise on the chart
  return (area > 0) - (area < 0);
}

std::optional<cloth::Way> way_of_step(const cloth::Box& from, const cloth::Box& to) {
  constexpr double slope = 0.41421356237309503;  // tan 22.5 degrees
  const cloth::Hole d = middle(to) - middle(from);
  if (d == cloth::Hole{}) return std::nullopt;
  const bool level = std::abs(d.y) < slope * std::abs(d.x), steep = std::abs(d.x) < slope * std::abs(d.y);
  return cloth::way_between({0, 0}, {steep ? 0 : (d.x > 0) - (d.x < 0), level ? 0 : (d.y > 0) - (d.y < 0)});
}

bool clearly_apart(const cloth::Box& from, const cloth::Box& a, const cloth::Box& b) {
  const auto way_a = way_of_step(from, a), way_b = way_of_step(from, b);
  if (!way_a || !way_b || way_a == way_b) return false;
  const cloth::Hole d = middle(a) - middle(from), e = middle(b) - middle(from);
  const double along = static_cast<double>(d.x) * e.x + static_cast<double>(d.y) * e.y;
  constexpr double cosine = 0.8660254037844386;  // of 30 degrees
  return along <= cosine * cloth::distance({}, d) * cloth::distance({}, e);
}

}  // namespace guide
