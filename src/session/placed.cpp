#include "session/placed.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <tuple>

#include "cloth/way.h"
#include "session/value_words.h"

namespace session {
namespace {

using stitch::KeySpec;
using stitch::KeyType;

constexpr int least_pull = 2;              // threads
constexpr int usual_size = 8;              // threads, where the kind has no default; ours
constexpr std::size_t usual_stitches = 5;  // over 4 threads, as in a block
constexpr int usual_over = 4;
constexpr std::size_t handle_limit = 64;

int far_apart(cloth::Hole a, cloth::Hole b) { return std::max(std::abs(a.x - b.x), std::abs(a.y - b.y)); }
int dot(cloth::Hole a, cloth::Hole b) { return a.x * b.x + a.y * b.y; }
cloth::Hole step_of(std::string_view way) { return cloth::step(*cloth::parse_way(way)); }

/// A key that says how large it is: required, so no default stands in for it.
const KeySpec* size_key(const stitch::Kind& kind) {
  for (const KeySpec& spec : kind.keys)
    if (spec.type == KeyType::whole && spec.required) return &spec;
  return nullptr;
}

bool is_way(const KeySpec& spec) {
  return spec.type == KeyType::word && !spec.words.empty() &&
         std::all_of(spec.words.begin(), spec.words.end(), [](std::string_view word) { return cloth::parse_way(word).has_value(); });
}

/// The two keys of a row that say where it goes and where its stitches reach.
std::vector<const KeySpec*> way_keys(const stitch::Kind& kind) {
  std::vector<const KeySpec*> keys;
  for (const KeySpec& spec : kind.keys)
    if (is_way(spec)) keys.push_back(&spec);
  return keys;
}

stitch::Value to_begin_with(const KeySpec& spec, const stitch::Kind& kind, cloth::Hole held) {
  switch (spec.type) {
    case KeyType::hole:
      return held - kind.middle_of_first;
    case KeyType::holes:
      return std::vector{held};
    case KeyType::parts:
      return std::vector<std::string>();
    case KeyType::wholes:
      return std::vector(usual_stitches, std::clamp(usual_over, spec.least, spec.most));
    case KeyType::whole:
      return std::clamp(usual_size, spec.least, spec.most);
    case KeyType::fillings:
      return std::vector<stitch::FillingRule>();
    case KeyType::flag:
      return false;
    case KeyType::word:
    case KeyType::whole_or_word:
      return std::string(spec.words.front());
    case KeyType::path:
      return std::string();
  }
  return {};
}

/// Words begin with their first; where that does not fit the others', with the next that does.
void make_fit(Shape& shape) {
  if (work_of(shape)) return;
  for (const KeySpec& spec : shape.kind->keys) {
    if (spec.type != KeyType::word || !spec.required) continue;
    for (const std::string_view word : spec.words) {
      Shape tried = shape;
      tried.values[std::string(spec.name)] = std::string(word);
      if (!work_of(tried)) continue;
      shape = std::move(tried);
      return;
    }
  }
}

/// How far the first place reaches out of its hole; nothing where it does not fit.
std::optional<int> reach_of(Shape shape) {
  const auto places = places_of(shape);
  if (places.empty()) return std::nullopt;
  if (const KeySpec* several = key_of(*shape.kind, KeyType::holes)) shape.values[std::string(several->name)] = std::vector{places.front()};
  const auto work = work_of(shape);
  if (!work) return std::nullopt;
  int reach = 0;
  for (const cloth::Stitch& stitch : work->stitches)
    reach = std::max({reach, far_apart(stitch.a, places.front()), far_apart(stitch.b, places.front())});
  return reach;
}

/// Of the sizes that may reach so far (they may count half of it, or the whole), the one that does, or comes nearest.
std::optional<Shape> sized_out(const Shape& shape, int far) {
  const KeySpec* size = size_key(*shape.kind);
  if (!size) return shape;
  std::optional<Shape> best;
  int off = 0;
  for (const int about : {far, 2 * far})
    for (int number = about - 2; number <= about + 2; ++number) {
      Shape tried = shape;
      tried.values[std::string(size->name)] = std::clamp(number, size->least, size->most);
      const auto reach = reach_of(tried);
      if (!reach || (best && std::abs(*reach - far) >= off)) continue;
      off = std::abs(*reach - far);
      best = std::move(tried);
    }
  return best;
}

/// The row's numbers for a box so many threads long and high: all alike they follow it, else they stay.
std::vector<int> numbers_for(const KeySpec& spec, const std::vector<int>& now, int along, int high) {
  const bool alike = std::all_of(now.begin(), now.end(), [&](int n) { return n == now.front(); });
  if (!alike || now.empty()) return now;
  return std::vector(static_cast<std::size_t>(along) + 1, std::clamp(high > 0 ? high : now.front(), spec.least, spec.most));
}

std::optional<Shape> sized_row(const Shape& shape, cloth::Hole by, const stitch::Values& chosen) {
  const auto ways = way_keys(*shape.kind);
  const KeySpec* list = key_of(*shape.kind, KeyType::wholes);
  if (ways.size() < 2 || !list) return shape;
  const auto now = [&](std::size_t k) { return std::get<std::string>(shape.values.at(std::string(ways[k]->name))); };
  const auto may_be = [&](std::size_t k, std::string_view way) { return !chosen.contains(ways[k]->name) || now(k) == way; };
  std::optional<Shape> best;
  std::tuple<int, int, bool, bool> better{};
  for (const std::string_view along : ways[0]->words)
    for (const std::string_view toward : ways[1]->words) {
      const int n = dot(by, step_of(along)), high = dot(by, step_of(toward));
      const std::tuple tried_is{n, high, now(0) == along, now(1) == toward};
      if (n < 0 || high < 0 || !may_be(0, along) || !may_be(1, toward) || (best && tried_is <= better)) continue;
      Shape tried = shape;
      tried.values[std::string(ways[0]->name)] = std::string(along);
      tried.values[std::string(ways[1]->name)] = std::string(toward);
      tried.values[std::string(list->name)] =
          numbers_for(*list, std::get<std::vector<int>>(shape.values.at(std::string(list->name))), n, high);
      if (!work_of(tried)) continue;
      better = tried_is;
      best = std::move(tried);
    }
  return best;
}

}  // namespace

const KeySpec* key_of(const stitch::Kind& kind, KeyType type) {
  for (const KeySpec& spec : kind.keys)
    if (spec.type == type) return &spec;
  return nullptr;
}

ByHand by_hand(const stitch::Kind& kind) {
  if (key_of(kind, KeyType::path)) return ByHand::legs;
  if (key_of(kind, KeyType::parts)) return ByHand::named;
  if (key_of(kind, KeyType::holes)) return ByHand::places;
  return key_of(kind, KeyType::wholes) ? ByHand::row : ByHand::spot;
}

std::optional<Shape> begin_shape(std::string_view name, cloth::Hole held) {
  const stitch::Kind* kind = stitch::find_kind(name);
  if (!kind) return std::nullopt;
  Shape shape{kind, {}};
  for (const KeySpec& spec : kind->keys) {
    if (spec.fallback)
      shape.values.emplace(spec.name, *spec.fallback);
    else if (spec.required)
      shape.values.emplace(spec.name, to_begin_with(spec, *kind, held));
  }
  make_fit(shape);
  return shape;
}

void take_after(Shape& shape, const course::Part& part) {
  for (const KeySpec& spec : shape.kind->keys) {
    const bool sort = spec.type == KeyType::whole || spec.type == KeyType::word || spec.type == KeyType::wholes;
    if (const auto found = part.values.find(spec.name); sort && spec.required && found != part.values.end())
      shape.values[std::string(spec.name)] = found->second;
  }
}

std::vector<cloth::Hole> places_of(const Shape& shape) {
  if (const KeySpec* several = key_of(*shape.kind, KeyType::holes))
    return std::get<std::vector<cloth::Hole>>(shape.values.at(std::string(several->name)));
  const KeySpec* one = key_of(*shape.kind, KeyType::hole);
  if (!one || !one->required) return {};
  return {std::get<cloth::Hole>(shape.values.at(std::string(one->name)))};
}

std::optional<Shape> place_toggled(const Shape& shape, cloth::Hole at) {
  const KeySpec* several = key_of(*shape.kind, KeyType::holes);
  if (!several) return std::nullopt;
  auto places = places_of(shape);
  if (std::erase(places, at) == 0) places.push_back(at);
  if (places.empty()) return std::nullopt;
  Shape next = shape;
  next.values[std::string(several->name)] = std::move(places);
  return next;
}

std::optional<Shape> sized(const Shape& shape, cloth::Hole to, const stitch::Values& chosen) {
  const auto places = places_of(shape);
  if (places.empty() || far_apart(to, places.front()) < least_pull) return shape;
  return by_hand(*shape.kind) == ByHand::row ? sized_row(shape, to - places.front(), chosen)
                                             : sized_out(shape, far_apart(to, places.front()));
}

std::string size_in_words(const Shape& shape) {
  std::string words;
  const auto add = [&](const KeySpec* spec) {
    if (!spec) return;
    words += (words.empty() ? "" : " · ") + std::string(spec->name) + ' ' + in_words(shape.values.at(std::string(spec->name)));
  };
  if (by_hand(*shape.kind) != ByHand::row)
    add(size_key(*shape.kind));
  else {
    for (const KeySpec* way : way_keys(*shape.kind)) add(way);
    add(key_of(*shape.kind, KeyType::wholes));
  }
  return words;
}

std::vector<std::string> names_of(const Shape& shape) {
  const KeySpec* names = key_of(*shape.kind, KeyType::parts);
  return names ? std::get<std::vector<std::string>>(shape.values.at(std::string(names->name))) : std::vector<std::string>{};
}

Shape name_toggled(const Shape& shape, const std::string& name) {
  auto names = names_of(shape);
  if (std::erase(names, name) == 0) names.push_back(name);
  Shape next = shape;
  if (const KeySpec* key = key_of(*shape.kind, KeyType::parts)) next.values[std::string(key->name)] = std::move(names);
  return next;
}

std::vector<Handle> handles_of_placed(const Shape& shape) {
  std::vector<Handle> handles;
  const auto places = places_of(shape);
  const auto work = places.empty() ? std::nullopt : work_of(shape);
  if (!work || work->stitches.empty() || places.size() > handle_limit) return handles;
  if (by_hand(*shape.kind) == ByHand::places)
    for (std::size_t i = 0; i < places.size(); ++i) handles.push_back({static_cast<int>(i), Grip::place, places[i]});
  if (by_hand(*shape.kind) == ByHand::row)
    handles.push_back({0, Grip::size, work->stitches.back().b});
  else if (const auto reach = reach_of(shape))
    handles.push_back({0, Grip::size, places.front() + cloth::Hole{*reach, 0}});
  return handles;
}

std::optional<Shape> placed_pulled(const Shape& shape, const Handle& handle, cloth::Hole to) {
  if (handle.grip == Grip::size) return sized(shape, to, {});
  auto places = places_of(shape);
  const KeySpec* several = key_of(*shape.kind, KeyType::holes);
  if (!several || handle.item >= static_cast<int>(places.size())) return std::nullopt;
  places[static_cast<std::size_t>(handle.item)] = to;
  Shape next = shape;
  next.values[std::string(several->name)] = std::move(places);
  return work_of(next) ? std::optional(std::move(next)) : std::nullopt;
}

}  // namespace session
