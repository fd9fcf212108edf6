#include "guide/landmarks.h"

#include <algorithm>
#include <set>

namespace guide {
namespace {

constexpr int bundle_reach = 4;  // threads left free between blocks of a straight row (Archer)
constexpr std::size_t sets_asked = 16;

LandmarkKind kind_of(stitch::Shape shape) {
  switch (shape) {
    case stitch::Shape::bundle:
      return LandmarkKind::bundle;
    case stitch::Shape::corner:
      return LandmarkKind::corner;
    case stitch::Shape::end:
      return LandmarkKind::row_end;
    case stitch::Shape::bar:
      return LandmarkKind::bar;
    case stitch::Shape::petal:
      return LandmarkKind::petal;
    case stitch::Shape::centre:
      return LandmarkKind::centre;
    case stitch::Shape::fan:
      return LandmarkKind::fan;
    case stitch::Shape::notch:
      return LandmarkKind::notch;
  }
  return LandmarkKind::bundle;
}

Care least_to(const Costs& costs, const cloth::Box& box, cloth::Hole hole) {
  return costs.least(std::max({0, box.x0 - hole.x, hole.x - box.x1}), std::max({0, box.y0 - hole.y, hole.y - box.y1}));
}

}  // namespace

void Landmarks::First::take(int of, When when) {
  if (part == of || part == -1) {
    part = of;
    first = std::min(first, when);
  } else if (when < first) {
    first_of_others = first;
    part = of;
    first = when;
  } else {
    first_of_others = std::min(first_of_others, when);
  }
}

Landmarks::Landmarks(const course::Course& course, const Worked& worked) : course_(course), worked_(worked) {
  for (std::size_t p = 0; p < course.parts.size(); ++p) read_part(static_cast<int>(p));
}

const stitch::Feature& Landmarks::feature(int id) const {
  const One& one = all_[id];
  return course_.parts[one.part].work.features[one.feature];
}

void Landmarks::read_part(int index) {
  const stitch::Work& work = course_.parts[index].work;
  first_of_part_.push_back(static_cast<int>(all_.size()));
  std::map<std::pair<LandmarkKind, int>, std::vector<int>> members;
  std::map<LandmarkKind, std::set<int>> rows;
  for (std::size_t f = 0; f < work.features.size(); ++f) {
    const LandmarkKind kind = kind_of(work.features[f].shape);
    const int row = work.features[f].row;
    members[{kind, row}].push_back(static_cast<int>(all_.size()));
    rows[kind].insert(row);
    all_.push_back({.part = index, .feature = static_cast<int>(f), .ready = {never}});
  }
  for (auto& [key, ids] : members) {
    Set set = make_set(index, key.first, key.second, work.closed && work.places == 1, std::move(ids));
    set.name_row = rows[key.first].size() > 1;
    for (std::size_t i = 0; i < set.members.size(); ++i) {
      One& one = all_[set.members[i]];
      one.set = static_cast<int>(sets_.size());
      one.place = static_cast<int>(i);
    }
    sets_.push_back(std::move(set));
  }
  for (const auto& [kind, of_kind] : rows) ++parts_with_[kind];
}

Landmarks::Set Landmarks::make_set(int part, LandmarkKind kind, int row, bool closed, std::vector<int> members) const {
  std::stable_sort(members.begin(), members.end(), [&](int a, int b) { return feature(a).along < feature(b).along; });
  std::vector<cloth::Box> boxes;
  for (const int id : members) boxes.push_back(box_of(feature(id)));
  cloth::Box box = boxes[0];
  for (const cloth::Box& b : boxes) {
    box.grow({b.x0, b.y0});
    box.grow({b.x1, b.y1});
  }
  const bool apart = kind == LandmarkKind::row_end || kind == LandmarkKind::centre;
  const Chain chain = apart ? Chain::none : closed ? Chain::closed : Chain::open;
  return {
      part, row, kind, false, std::move(members), box, Names(std::move(boxes), chain, in_bundle(kind) ? bundle_reach : -1)};
}

std::vector<Candidate> Landmarks::holes(int id) const {
  std::vector<Candidate> holes = spots_of(feature(id), id);
  for (Candidate& hole : holes) hole.plain = hole.plain || on_seam(all_[id].part, hole.stitch);
  return holes;
}

/// Two blocks share the stitch: in a joined row only the ends of the row are seen.
bool Landmarks::on_seam(int part, cloth::Stitch stitch) const {
  const auto& features = course_.parts[part].work.features;
  const auto users = worked_.users(part, stitch);
  return std::count_if(users.begin(), users.end(), [&](int f) { return stitch::side_by_side(features[f].shape); }) > 1;
}

std::vector<Standing> Landmarks::add(int part, const std::vector<std::pair<int, Ready>>& whole) {
  std::vector<Standing> gained;
  std::set<int> changed;
  for (const auto& [feature, ready] : whole) {
    const int id = first_of_part_[part] + feature;
    One& one = all_[id];
    one.ready = ready;
    gained.push_back({box_of(this->feature(id)), id, ready.when});
    changed.insert(one.set);
    firsts_[sets_[one.set].kind].take(part, ready.when);
  }
  for (const int index : changed) {
    Set& set = sets_[index];
    std::vector<When> times;
    for (const int id : set.members) times.push_back(all_[id].ready.when);
    set.names.set_ready(times);
  }
  return gained;
}

const Names::Moment& Landmarks::of_set(int set, Moment& moment) const {
  auto found = moment.sets.find(set);
  if (found == moment.sets.end()) found = moment.sets.emplace(set, sets_[set].names.moment(moment.now)).first;
  return found->second;
}

std::optional<Which> Landmarks::name(int feature, Moment& moment) const {
  const One& one = all_[feature];
  return sets_[one.set].names.name(one.place, of_set(one.set, moment));
}

Care Landmarks::care_of_name(const Costs& costs, const Which& which) {
  const bool of_row = which.form == Which::extreme_of_row || (which.form == Which::after && which.anchor_within);
  return (which.form == Which::after ? costs.counted(which.steps) : 0) + (of_row ? costs.glance() : 0);
}

bool Landmarks::others_stand(int part, LandmarkKind kind, When now) const {
  const auto found = firsts_.find(kind);
  if (found == firsts_.end()) return false;
  return (found->second.part == part ? found->second.first_of_others : found->second.first) < now;
}

Landmark Landmarks::landmark(const Candidate& candidate, const Which& which, When now) const {
  const One& one = all_[candidate.feature];
  const Set& set = sets_[one.set];
  Landmark landmark;
  landmark.kind = set.kind;
  landmark.hole = candidate.hole;
  landmark.part = one.part;
  landmark.pass = one.ready.pass;
  landmark.place = one.ready.place;
  landmark.lesson = one.ready.when.lesson;
  landmark.feature = one.feature;
  landmark.which = which;
  landmark.spot = candidate.spot;
  landmark.row = set.row;
  landmark.name_row = set.name_row;
  // "The outer row" would also be that of a part not yet begun, perhaps the one to be begun now.
  landmark.name_part = others_stand(one.part, set.kind, now) || (set.name_row && parts_with_.at(set.kind) > 1);
  return landmark;
}

std::vector<int> Landmarks::outermost(const Costs& costs, cloth::Hole hole, Moment& moment) const {
  std::vector<std::pair<Care, int>> near;
  for (std::size_t i = 0; i < sets_.size(); ++i)
    if (sets_[i].names.standing(moment.now) > 0) near.emplace_back(least_to(costs, sets_[i].box, hole), static_cast<int>(i));
  const std::size_t asked = std::min(near.size(), sets_asked);
  std::partial_sort(near.begin(), near.begin() + static_cast<std::ptrdiff_t>(asked), near.end());
  std::set<int> found;
  for (std::size_t i = 0; i < asked; ++i)
    for (const int place : of_set(near[i].second, moment).now.outermost)
      if (place >= 0) found.insert(sets_[near[i].second].members[place]);
  return {found.begin(), found.end()};
}

}  // namespace guide
