#include "stitch/repeat.h"

#include <algorithm>
#include <cstdlib>
#include <set>
#include <tuple>
#include <unordered_set>

#include "cloth/index.h"

namespace stitch {
namespace {

std::vector<cloth::Turn> mirrors_of(const std::string& mirror) {
  constexpr cloth::Turn as_it_is{0, false}, left_to_right{0, true}, top_to_bottom{2, true}, both{2, false};
  if (mirror == "x") return {as_it_is, left_to_right};
  if (mirror == "y") return {as_it_is, top_to_bottom};
  if (mirror == "xy") return {as_it_is, left_to_right, both, top_to_bottom};
  return {as_it_is};
}

using FeatureKey = std::tuple<Shape, int, cloth::Hole, std::vector<cloth::Stitch>>;

FeatureKey key_of(const Feature& feature) {
  std::vector<cloth::Stitch> stitches;
  for (const cloth::Stitch& stitch : feature.stitches) stitches.push_back(stitch.normal());
  std::sort(stitches.begin(), stitches.end());
  return {feature.shape, feature.row, feature.hole, std::move(stitches)};
}

/// A pass of which some stitches are worked elsewhere: is it still followed by itself?
bool row_parted(const Run& before, const Run& after) {
  return after.stitches.empty() || (before.freedom != Freedom::all_alike && after.stitches.size() < before.stitches.size());
}

/// Begins behind the stretch that is worked elsewhere, so that what is left hangs together.
void begin_behind_gap(Pass& pass, const std::vector<bool>& parted) {
  const std::size_t n = pass.runs.size();
  std::size_t first = 0;
  while (first < n && !(parted[first] && !parted[(first + 1) % n])) ++first;
  if (first == n) return;
  std::rotate(pass.runs.begin(), pass.runs.begin() + static_cast<std::ptrdiff_t>((first + 1) % n), pass.runs.end());
}

/// Of an edge that is no more a circle: begins where the ridge hole before lies farthest off.
void begin_behind_ridge(std::vector<Run>& runs) {
  for (Run& run : runs) {
    const std::size_t n = run.stitches.size();
    std::size_t first = 0;
    std::int64_t farthest = -1;
    for (std::size_t i = 0; i < n; ++i)
      if (const auto far = cloth::squared(run.stitches[i].a, run.stitches[(i + n - 1) % n].a); far > farthest) farthest = far, first = i;
    const auto by = static_cast<std::ptrdiff_t>(first);
    std::rotate(run.stitches.begin(), run.stitches.begin() + by, run.stitches.end());
    std::rotate(run.legs.begin(), run.legs.begin() + by, run.legs.end());
  }
}

class Repeater {
 public:
  Repeater(Work part, const Repeat& repeat) : part_(std::move(part)), repeat_(repeat) {}

  Work all() {
    Work all;
    all.closed = part_.closed;
    all.piece = part_.piece;
    all.doubts = part_.doubts;
    all.cut = part_.cut;
    if (all.cut) {
      all.cut->zones = holes_everywhere(part_.cut->zones);
      for (FillingRule& rule : all.cut->fillings) rule.at = holes_everywhere(rule.at);
    }
    all.places = 0;
    for (const cloth::Turn turn : images_of(repeat_)) add(turn, all);
    all.places = std::max(1, all.places);
    drop_joined_ends(all);
    tell_meetings(all);
    return all;
  }

 private:
  /// Their images, each once.
  std::vector<cloth::Hole> holes_everywhere(const std::vector<cloth::Hole>& holes) const {
    std::vector<cloth::Hole> all;
    for (const cloth::Turn turn : images_of(repeat_))
      for (const cloth::Hole hole : holes)
        if (const cloth::Hole there = image(repeat_, turn, hole); std::find(all.begin(), all.end(), there) == all.end()) all.push_back(there);
    return all;
  }

  cloth::Stitch image_of(cloth::Turn turn, const cloth::Stitch& s) const { return {image(repeat_, turn, s.a), image(repeat_, turn, s.b)}; }

  void add(cloth::Turn turn, Work& all) {
    std::vector<cloth::Stitch> fresh;
    for (const cloth::Stitch& stitch : part_.stitches) {
      const cloth::Stitch there = image_of(turn, stitch);
      if (stitched_.count(there.normal()) == 0) fresh.push_back(there);
    }
    if (fresh.empty()) return;
    const int place = all.places++;
    for (const Pass& pass : part_.passes) all.passes.push_back(image_of(turn, pass, place));
    for (const cloth::Stitch& stitch : fresh) {
      stitched_.insert(stitch.normal());
      all.stitches.push_back(stitch);
      place_of_.push_back(place);
    }
    add_features(turn, place, all);
    for (const Corner& corner : part_.corners)
      if (const Corner there{image(repeat_, turn, corner.hole), place}; marked_.insert(there.hole).second) all.corners.push_back(there);
    for (Leg leg : part_.legs) {
      leg.from = image(repeat_, turn, leg.from);
      leg.to = image(repeat_, turn, leg.to);
      leg.place = place;
      if (turn.mirror && part_.piece == Piece::edge) {
        leg.number = leg_worked_back(leg.number);
        std::swap(leg.from, leg.to);
      }
      all.legs.push_back(leg);
    }
  }

  /// The stitches of a pass that no earlier place has. A stitch that lies double in two passes of one place (a lapped row) stays in both.
  Pass image_of(cloth::Turn turn, const Pass& pass, int place) const {
    Pass there{.runs = {}, .order = pass.order, .closed = pass.closed, .place = place, .keep_open = {}, .spare = pass.spare};
    for (const cloth::Hole hole : pass.keep_open) there.keep_open.push_back(image(repeat_, turn, hole));
    std::vector<bool> parted;
    for (const Run& written : pass.runs) {
      const Run run = pass.order == Order::looped && turn.mirror ? worked_back(written) : written;
      Run kept{.stitches = {}, .legs = {}, .freedom = run.freedom, .down = run.down};
      for (std::size_t i = 0; i < run.stitches.size(); ++i) {
        const cloth::Stitch stitch = image_of(turn, run.stitches[i]);
        if (stitched_.count(stitch.normal()) > 0) continue;
        kept.stitches.push_back(stitch);
        if (i < run.legs.size()) kept.legs.push_back(run.legs[i]);
      }
      parted.push_back(row_parted(run, kept));
      there.runs.push_back(std::move(kept));
    }
    settle(there, parted);
    return there;
  }

  /// The ridge of a mirrored edge would lie to the left of the way: it is gone the other way round, legs numbered anew.
  Run worked_back(Run run) const {
    std::reverse(run.stitches.begin(), run.stitches.end());
    std::reverse(run.legs.begin(), run.legs.end());
    for (int& leg : run.legs) leg = leg_worked_back(leg);
    return run;
  }
  int leg_worked_back(int leg) const { return static_cast<int>(part_.legs.size()) - 1 - leg; }

  static void settle(Pass& pass, const std::vector<bool>& parted) {
    const bool gap = std::find(parted.begin(), parted.end(), true) != parted.end();
    if (pass.closed && gap) {
      pass.closed = false;
      if (pass.order == Order::looped) begin_behind_ridge(pass.runs);
      if (pass.order == Order::in_turn) begin_behind_gap(pass, parted);
    }
    std::erase_if(pass.runs, [](const Run& run) { return run.stitches.empty(); });
    if (pass.runs.size() < 2 && pass.order == Order::turn_about) pass.order = Order::in_turn;
  }

  void add_features(cloth::Turn turn, int place, Work& all) {
    int most = 0;
    for (const Feature& feature : part_.features) most = std::max(most, feature.along + 1);
    for (const Feature& feature : part_.features) {
      Feature there{feature.shape, {}, image(repeat_, turn, feature.hole), feature.row, place * most + feature.along};
      for (const cloth::Stitch& stitch : feature.stitches) there.stitches.push_back(image_of(turn, stitch));
      if (side_by_side(feature.shape)) there.hole = upper_left(there.stitches);
      if (featured_.insert(key_of(there)).second) all.features.push_back(std::move(there));
    }
  }

  static cloth::Hole upper_left(const std::vector<cloth::Stitch>& stitches) {
    cloth::Box box{stitches[0].a.x, stitches[0].a.y, stitches[0].a.x, stitches[0].a.y};
    for (const cloth::Stitch& stitch : stitches) {
      box.grow(stitch.a);
      box.grow(stitch.b);
    }
    return {box.x0, box.y0};
  }

  /// Where rows of two places meet end to end the line goes on: no free end is seen there.
  static void drop_joined_ends(Work& all) {
    std::multiset<cloth::Hole> ends;
    for (const Feature& feature : all.features)
      if (feature.shape == Shape::end) ends.insert(feature.hole);
    std::erase_if(all.features, [&](const Feature& f) { return f.shape == Shape::end && ends.count(f.hole) > 1; });
  }

  void tell_meetings(Work& all) const {
    cloth::Index index;
    for (std::size_t i = 0; i < all.stitches.size(); ++i) index.add(all.stitches[i], static_cast<int>(i));
    Doubt doubt{.rule = "image-lies-over", .stops = false, .at = {}, .also_at = {}, .numbers = {}};
    int meetings = 0;
    for (std::size_t i = 0; i < all.stitches.size(); ++i)
      for (const int other : index.meeting(all.stitches[i])) {
        if (place_of_[static_cast<std::size_t>(other)] >= place_of_[i]) continue;
        if (meetings++ == 0) {
          doubt.at = all.stitches[i].a;
          doubt.also_at = all.stitches[static_cast<std::size_t>(other)].a;
        }
        break;
      }
    doubt.numbers["n"] = meetings;
    if (meetings > 0) all.doubts.push_back(std::move(doubt));
  }

  Work part_;
  const Repeat& repeat_;
  std::unordered_set<cloth::Stitch> stitched_;  ///< normal
  std::vector<int> place_of_;                   ///< of each stitch of the work
  std::set<FeatureKey> featured_;
  std::set<cloth::Hole> marked_;
};

}  // namespace

std::vector<cloth::Turn> images_of(const Repeat& repeat) {
  std::vector<cloth::Turn> images;
  for (int quarters = 0; quarters < 4; quarters += 4 / repeat.turn)
    for (const cloth::Turn mirror : mirrors_of(repeat.mirror)) {
      const cloth::Turn turn{(quarters + mirror.quarters) % 4, mirror.mirror};
      if (std::find(images.begin(), images.end(), turn) == images.end()) images.push_back(turn);
    }
  return images;
}

bool fits(const Repeat& repeat) { return repeat.turn < 4 || (repeat.about_twice.x - repeat.about_twice.y) % 2 == 0; }

cloth::Hole image(const Repeat& repeat, cloth::Turn turn, cloth::Hole hole) {
  const cloth::Hole twice = repeat.about_twice + cloth::apply(turn, 2 * hole - repeat.about_twice);
  return {twice.x / 2, twice.y / 2};
}

bool within_limit(const Work& part, const Repeat& repeat) {
  const auto within = [&](cloth::Turn turn, cloth::Hole hole) {
    const cloth::Hole there = image(repeat, turn, hole);
    return std::abs(there.x) <= coordinate_limit && std::abs(there.y) <= coordinate_limit;
  };
  const std::vector<cloth::Turn> images = images_of(repeat);
  return std::all_of(images.begin(), images.end(), [&](cloth::Turn turn) {
    return std::all_of(part.stitches.begin(), part.stitches.end(),
                       [&](const cloth::Stitch& s) { return within(turn, s.a) && within(turn, s.b); });
  });
}

Work repeated(Work part, const Repeat& repeat) { return Repeater(std::move(part), repeat).all(); }

}  // namespace stitch
