#include "session/shape.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace session {
namespace {

constexpr int near_beginning = 2;  // threads within which a ring is closed rather than left open

std::int64_t apart_by(cloth::Hole a, cloth::Hole b) {
  const std::int64_t dx = a.x - b.x, dy = a.y - b.y;
  return dx * dx + dy * dy;
}

/// Where a hand would hold the end of it: of a kind held by the middle of a piece, the middle of its last piece; else the far end of the last leg.
cloth::Hole held_end(const Shape& shape, const stitch::Work& work) {
  if (shape.kind->middle_of_first == cloth::Hole{} || work.features.empty()) return far_end(shape, work);
  cloth::Hole least = work.features.back().stitches.front().a, most = least;
  for (const cloth::Stitch& stitch : work.features.back().stitches)
    for (const cloth::Hole hole : {stitch.a, stitch.b}) {
      least = {std::min(least.x, hole.x), std::min(least.y, hole.y)};
      most = {std::max(most.x, hole.x), std::max(most.y, hole.y)};
    }
  return {(least.x + most.x) / 2, (least.y + most.y) / 2};
}

Shape with_items(const Shape& shape, const std::vector<stitch::PathItem>& items) {
  Shape next = shape;
  next.values["path"] = in_words(items);
  return next;
}

/// The three ways that point most nearly from one hole to the other, the nearest first.
std::array<cloth::Way, 3> ways_towards(cloth::Hole from, cloth::Hole to) {
  std::array<cloth::Way, 8> all{cloth::Way::N, cloth::Way::NE, cloth::Way::E, cloth::Way::SE,
                                cloth::Way::S, cloth::Way::SW, cloth::Way::W, cloth::Way::NW};
  const double dx = to.x - from.x, dy = to.y - from.y;
  const auto along = [&](cloth::Way way) {
    const cloth::Hole step = cloth::step(way);
    return (dx * step.x + dy * step.y) / (cloth::slanted(way) ? 1.41421356 : 1.0);
  };
  std::stable_sort(all.begin(), all.end(), [&](cloth::Way a, cloth::Way b) { return along(a) > along(b); });
  return {all[0], all[1], all[2]};
}

/// Numbers that may fit a leg of so many threads: the kind counts threads, pairs of them, or pieces of four.
std::vector<int> numbers_for(int threads) {
  std::vector<int> numbers;
  for (const int unit : {1, 2, 4})
    for (int n = threads / unit - 1; n <= threads / unit + 2; ++n)
      if (n >= 1 && std::find(numbers.begin(), numbers.end(), n) == numbers.end()) numbers.push_back(n);
  return numbers;
}

/// Square threads of the box round its stitches.
std::int64_t room_of(const stitch::Work& work) {
  cloth::Box box{work.stitches.front().a.x, work.stitches.front().a.y, work.stitches.front().a.x, work.stitches.front().a.y};
  for (const cloth::Stitch& stitch : work.stitches) box.grow(stitch.a), box.grow(stitch.b);
  return std::int64_t{box.width()} * box.height();
}

}  // namespace

Shape shape_of(const course::Part& part) { return {stitch::find_kind(part.kind), part.values}; }

bool has_path(const Shape& shape) { return shape.values.contains("path") && shape.values.contains("start"); }

std::string path_of(const Shape& shape) { return has_path(shape) ? std::get<std::string>(shape.values.at("path")) : std::string(); }

cloth::Hole start_of(const Shape& shape) { return has_path(shape) ? std::get<cloth::Hole>(shape.values.at("start")) : cloth::Hole{}; }

std::optional<stitch::Work> work_of(const Shape& shape) {
  if (!shape.kind || (has_path(shape) && path_of(shape).empty())) return std::nullopt;
  stitch::Outcome outcome = shape.kind->build(shape.values);
  if (!outcome.faults.empty()) return std::nullopt;
  return std::move(outcome.work);
}

std::vector<stitch::PathItem> items_of(const Shape& shape) {
  return path_of(shape).empty() ? std::vector<stitch::PathItem>{}
                                : stitch::parse_path("path", path_of(shape), stitch::Apart::allowed).items;
}

std::string in_words(const std::vector<stitch::PathItem>& items) {
  std::string words;
  for (const stitch::PathItem& item : items)
    words += fmt::format("{}{} {}{}", words.empty() ? "" : ", ", cloth::name(item.way), item.number, item.apart ? " apart" : "");
  return words;
}

cloth::Hole far_end(const Shape& shape, const stitch::Work& work) {
  const auto of_first_row = [](const stitch::Leg& leg) { return leg.row == 0; };
  const auto last = std::find_if(work.legs.rbegin(), work.legs.rend(), of_first_row);
  if (last == work.legs.rend()) return {};
  const auto first = std::find_if(work.legs.begin(), work.legs.end(), of_first_row);
  return last->to == start_of(shape) ? first->from : last->to;
}

cloth::Hole end_of(const Shape& shape) {
  const auto work = work_of(shape);
  if (!work || work->legs.empty()) return start_of(shape) + (shape.kind ? shape.kind->middle_of_first : cloth::Hole{});
  return held_end(shape, *work);
}

std::optional<Pulled> pull(const Shape& shape, cloth::Hole to) {
  const auto items = items_of(shape);
  const cloth::Hole from = end_of(shape), beginning = start_of(shape) + shape.kind->middle_of_first;
  std::optional<Pulled> best;
  std::int64_t best_distance = 0;
  for (const cloth::Way way : ways_towards(from, to)) {
    for (const int number : numbers_for(std::max(std::abs(to.x - from.x), std::abs(to.y - from.y)))) {
      auto longer = items;
      const bool goes_on = !longer.empty() && longer.back().way == way && !longer.back().apart;
      goes_on ? void(longer.back().number += number) : longer.push_back({.way = way, .number = number});
      Shape tried = with_items(shape, longer);
      auto work = work_of(tried);
      if (!work || work->legs.empty()) continue;
      const bool closes = work->closed && apart_by(to, beginning) <= 4 * (near_beginning + 2) * (near_beginning + 2);
      const std::int64_t distance = work->closed ? (closes ? -1 : apart_by(to, beginning)) : apart_by(to, held_end(tried, *work));
      if (best && distance >= best_distance) continue;
      best_distance = distance;
      best = Pulled{std::move(tried), std::move(*work), longer.back(), closes};
      best->closes = best->work.closed;
    }
  }
  return best;
}

Shape ridge_outside(const Shape& shape, const stitch::Values& chosen) {
  const auto work = work_of(shape);
  if (!work || !work->closed || work->passes.empty() || work->passes.front().order != stitch::Order::looped) return shape;
  Shape best = shape;
  std::int64_t most = room_of(*work);
  for (const stitch::KeySpec& spec : shape.kind->keys) {
    if (spec.type != stitch::KeyType::word || chosen.contains(spec.name)) continue;
    for (const std::string_view word : spec.words) {
      Shape tried = shape;
      tried.values[std::string(spec.name)] = std::string(word);
      const auto with = work_of(tried);
      if (!with || !with->closed || room_of(*with) <= most) continue;
      most = room_of(*with);
      best = std::move(tried);
    }
  }
  return best;
}

std::optional<Shape> without_last(const Shape& shape) {
  auto items = items_of(shape);
  if (items.size() < 2) return std::nullopt;
  items.pop_back();
  return with_items(shape, items);
}

}  // namespace session
