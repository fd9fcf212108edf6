// Handles of a drawn path. Where each item ends is asked of the kind, which is given the path up to there; what a pull means is solved over
// whole numbers along the legs' ways, and only what the kind can build is taken.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <limits>

#include "session/placed.h"

namespace session {
namespace {

constexpr std::size_t handle_limit = 64;  // items beyond which a path has no handles: it is changed by typing

using Items = std::vector<stitch::PathItem>;

Shape with(const Shape& shape, const Items& items) {
  Shape next = shape;
  next.values["path"] = in_words(items);
  return next;
}

std::int64_t apart_by(cloth::Hole a, cloth::Hole b) {
  const std::int64_t dx = a.x - b.x, dy = a.y - b.y;
  return dx * dx + dy * dy;
}

/// Where each item ends; shorter where a beginning of the path does not fit by itself.
std::vector<cloth::Hole> ends_of(const Shape& shape, const Items& items) {
  std::vector<cloth::Hole> ends;
  for (std::size_t n = 1; n <= items.size(); ++n) {
    const Shape so_far = with(shape, {items.begin(), items.begin() + static_cast<std::ptrdiff_t>(n)});
    const auto work = work_of(so_far);
    if (!work || work->legs.empty()) break;
    ends.push_back(work->closed ? work->legs.front().from : far_end(so_far, *work));
  }
  return ends;
}

/// The item that answers a change of item `i` in a closed path: it goes the opposite way; of several the farthest from it. Or none.
std::optional<std::size_t> answering(const Items& items, std::size_t i) {
  std::optional<std::size_t> best;
  std::size_t best_far = 0;
  for (std::size_t k = 0; k < items.size(); ++k) {
    if (items[k].way != cloth::turned(items[i].way, 4)) continue;
    const std::size_t between = k > i ? k - i : i - k, far = std::min(between, items.size() - between);
    if (!best || far > best_far) best = k, best_far = far;
  }
  return best;
}

/// Adds to an item's number; false where nothing would be left of it.
bool add(stitch::PathItem& item, int more) {
  item.number += more;
  return item.number >= 1;
}

std::optional<Items> lengthened(const Items& items, std::size_t i, int more, bool closed) {
  Items next = items;
  if (!add(next[i], more)) return std::nullopt;
  if (!closed) return next;
  const auto other = answering(items, i);
  if (!other || !add(next[*other], more)) return std::nullopt;
  return next;
}

/// How items a and b must change so that a * way_a + b * way_b is the hole; nothing where the ways are parallel or a part of a number comes
/// out.
std::optional<std::array<int, 2>> solved(cloth::Way a, cloth::Way b, cloth::Hole sum) {
  const cloth::Hole p = cloth::step(a), q = cloth::step(b);
  const int det = p.x * q.y - p.y * q.x;
  if (det == 0) return std::nullopt;
  const int na = sum.x * q.y - sum.y * q.x, nb = p.x * sum.y - p.y * sum.x;
  if (na % det != 0 || nb % det != 0) return std::nullopt;
  return std::array<int, 2>{na / det, nb / det};
}

/// Item i moved aside: the one before it grows by `more`, itself and the one after it give way.
std::optional<Items> moved_aside(const Items& items, std::size_t i, int more, bool closed) {
  const std::size_t n = items.size();
  if (n < 3 || (!closed && (i == 0 || i + 1 == n))) return std::nullopt;
  const std::size_t before = (i + n - 1) % n, after = (i + 1) % n;
  const cloth::Hole way = cloth::step(items[before].way);
  const auto others = solved(items[i].way, items[after].way, {-more * way.x, -more * way.y});
  if (!others) return std::nullopt;
  Items next = items;
  if (!add(next[before], more) || !add(next[i], (*others)[0]) || !add(next[after], (*others)[1])) return std::nullopt;
  return next;
}

cloth::Hole middle(cloth::Hole a, cloth::Hole b) { return {(a.x + b.x) / 2, (a.y + b.y) / 2}; }

/// The handle's place in the changed shape.
std::optional<cloth::Hole> place_of(const Shape& shape, const Handle& handle) {
  for (const Handle& other : handles_of(shape))
    if (other.item == handle.item && other.grip == handle.grip) return other.at;
  return std::nullopt;
}

}  // namespace

std::vector<Handle> handles_of(const Shape& shape) {
  if (!has_path(shape)) return handles_of_placed(shape);
  const Items items = items_of(shape);
  std::vector<Handle> handles;
  if (items.empty() || items.size() > handle_limit) return handles;
  const auto ends = ends_of(shape, items);
  cloth::Hole before = start_of(shape) + shape.kind->middle_of_first;
  for (std::size_t i = 0; i < ends.size(); ++i) {
    handles.push_back({static_cast<int>(i), Grip::end, ends[i]});
    if (items.size() > 2) handles.push_back({static_cast<int>(i), Grip::middle, middle(before, ends[i])});
    before = ends[i];
  }
  return handles;
}

std::optional<Shape> handle_pulled(const Shape& shape, const Handle& handle, cloth::Hole to) {
  if (!has_path(shape)) return placed_pulled(shape, handle, to);
  const Items items = items_of(shape);
  const auto work = work_of(shape);
  const auto i = static_cast<std::size_t>(handle.item);
  if (!work || i >= items.size()) return std::nullopt;
  const bool end = handle.grip == Grip::end;
  const std::size_t pulling = end ? i : (i + items.size() - 1) % items.size();
  const cloth::Hole way = cloth::step(items[pulling].way);
  const int along = ((to.x - handle.at.x) * way.x + (to.y - handle.at.y) * way.y) / (cloth::slanted(items[pulling].way) ? 2 : 1);
  std::optional<Shape> best;
  std::int64_t nearest = std::numeric_limits<std::int64_t>::max();
  for (const int unit : {1, 2, 4}) {
    for (int more = along / unit - 2; more <= along / unit + 2; ++more) {
      const auto changed = end ? lengthened(items, i, more, work->closed) : moved_aside(items, i, more, work->closed);
      if (!changed) continue;
      const Shape tried = with(shape, *changed);
      const auto made = work_of(tried);
      if (!made || made->closed != work->closed) continue;
      const auto at = place_of(tried, handle);
      if (!at || apart_by(*at, to) >= nearest) continue;
      nearest = apart_by(*at, to);
      best = tried;
    }
  }
  return best;
}

}  // namespace session
