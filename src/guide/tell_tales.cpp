#include "guide/tell_tales.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <numeric>
#include <optional>
#include <tuple>
#include <unordered_map>

namespace guide {
namespace {

/// A section of a trail with the place of its first stitch in the order of the whole course.
struct Stretch {
  int trail = 0, section = 0;
  int begin = 0;
};

struct Entry {
  int order = 0;
  int stretch = 0;
  bool end = true;  ///< an end of the stitch is there, else it only lies over the hole
};

/// Holes strictly between the two ends.
std::vector<cloth::Hole> between(cloth::Hole a, cloth::Hole b) {
  const int dx = b.x - a.x, dy = b.y - a.y, n = std::gcd(std::abs(dx), std::abs(dy));
  std::vector<cloth::Hole> holes;
  for (int i = 1; i < n; ++i) holes.push_back({a.x + dx / n * i, a.y + dy / n * i});
  return holes;
}

/// How two stitches touch.
struct Touch {
  bool share = false, over = false;
  bool any() const { return share || over; }
};

class Cloth {
 public:
  explicit Cloth(const std::vector<PlacedTrail>& trails) : trails_(trails) {
    for (std::size_t t = 0; t < trails.size(); ++t)
      for (std::size_t s = 0; s < trails[t].sections.size(); ++s) stretches_.push_back({static_cast<int>(t), static_cast<int>(s), 0});
    std::stable_sort(stretches_.begin(), stretches_.end(), [&](const Stretch& a, const Stretch& b) {
      return std::tuple(section(a).lesson, section(a).item, a.trail) < std::tuple(section(b).lesson, section(b).item, b.trail);
    });
    int order = 0;
    for (std::size_t i = 0; i < stretches_.size(); ++i) {
      stretches_[i].begin = order;
      order += count(stretches_[i]);
      lay(static_cast<int>(i));
    }
  }

  const std::vector<Stretch>& stretches() const { return stretches_; }
  const Section& section(const Stretch& s) const { return trails_[s.trail].sections[s.section]; }
  const PlacedTrail& trail(const Stretch& s) const { return trails_[s.trail]; }
  int count(const Stretch& s) const { return section(s).last - section(s).first + 1; }
  const trail::Worked& worked(const Stretch& s, int i) const { return trail(s).trail.stitches[section(s).first + i]; }
  const std::vector<Entry>* at(cloth::Hole hole) const {
    const auto found = holes_.find(hole);
    return found == holes_.end() ? nullptr : &found->second;
  }
  /// Does it go on where the section before it stopped?
  bool goes_on(const Stretch& s) const { return s.section > 0 && trail(s).sections[s.section - 1].last + 1 == section(s).first; }
  bool is_of(int stretch, const Landmark& landmark) const {
    const PlacedTrail& of = trail(stretches_[stretch]);
    return of.part == landmark.part && of.place == landmark.place;
  }

 private:
  void lay(int stretch) {
    const Stretch& s = stretches_[stretch];
    for (int i = 0; i < count(s); ++i) {
      const trail::Worked& w = worked(s, i);
      for (const cloth::Hole hole : {w.up, w.down}) holes_[hole].push_back({s.begin + i, stretch, true});
      for (const cloth::Hole hole : between(w.up, w.down)) holes_[hole].push_back({s.begin + i, stretch, false});
    }
  }

  const std::vector<PlacedTrail>& trails_;
  std::vector<Stretch> stretches_;
  std::unordered_map<cloth::Hole, std::vector<Entry>> holes_;
};

/// What each stretch hangs on: the one that it goes on from, those in which it is counted from.
class Hanging {
 public:
  Hanging(const Cloth& cloth, const std::vector<CountIn>& count_ins) : on_(cloth.stretches().size()), first_of_(count_ins.size(), 0) {
    std::map<std::pair<int, int>, int> stretch_of;  // trail and section
    for (std::size_t i = 0; i < on_.size(); ++i)
      stretch_of[{cloth.stretches()[i].trail, cloth.stretches()[i].section}] = static_cast<int>(i);
    for (const auto& [of, i] : stretch_of) {
      const auto before = stretch_of.find({of.first, of.second - 1});
      if (before != stretch_of.end() && cloth.goes_on(cloth.stretches()[i])) on_[i].push_back(before->second);
    }
    for (std::size_t c = 0; c < count_ins.size(); ++c) {
      first_of_[c] = stretch_of.at({count_ins[c].trail, count_ins[c].section});
      const Landmark& from = count_ins[c].count.landmark;
      const auto* entries = from.part < 0 ? nullptr : cloth.at(from.hole);
      if (!entries) continue;
      for (const Entry& e : *entries)
        if (e.end && e.stretch < first_of_[c] && cloth.is_of(e.stretch, from)) on_[first_of_[c]].push_back(e.stretch);
    }
  }
  /// The stretches that are wrong with a count-in, in order.
  std::vector<int> wrong_with(int count_in) const {
    std::vector<bool> is(on_.size(), false);
    std::vector<int> all;
    for (std::size_t i = first_of_[count_in]; i < on_.size(); ++i) {
      is[i] = static_cast<int>(i) == first_of_[count_in] || std::any_of(on_[i].begin(), on_[i].end(), [&](int on) { return is[on]; });
      if (is[i]) all.push_back(static_cast<int>(i));
    }
    return all;
  }

 private:
  std::vector<std::vector<int>> on_;
  std::vector<int> first_of_;
};

class Wrong {
 public:
  Wrong(std::size_t of, std::vector<int> all) : is_(of, false), all_(std::move(all)) {
    for (const int i : all_) is_[i] = true;
  }
  bool is(int stretch) const { return is_[stretch]; }
  const std::vector<int>& all() const { return all_; }

 private:
  std::vector<bool> is_;
  std::vector<int> all_;
};

class Search {
 public:
  Search(const Cloth& cloth, const Wrong& wrong, cloth::Hole off) : cloth_(cloth), wrong_(wrong), off_(off) {}

  struct Found {
    int order = 0;  ///< of the stitch that shows it
    int stretch = 0;
    Entry other;
    bool parted = false;
  };
  std::optional<Found> first() {
    for (const int stretch : wrong_.all()) {
      const Stretch& s = cloth_.stretches()[stretch];
      for (int i = 0; i < cloth_.count(s); ++i) {
        if (best_ && s.begin + i >= best_->order) return best_;
        look(stretch, s.begin + i, cloth_.worked(s, i));
      }
    }
    return best_;
  }

 private:
  struct Pair {
    Entry other;
    Touch right, wrong;
  };

  void look(int stretch, int order, const trail::Worked& w) {
    pairs_.clear();
    touching(w, {0, 0}, &Pair::right);
    touching(w, off_, &Pair::wrong);
    for (const Pair& pair : pairs_) {
      const bool parted = pair.right.share && !pair.wrong.share, met = pair.wrong.any() && !pair.right.any();
      if (!parted && !met) continue;
      const bool other_later = pair.other.order > order;
      const Entry self{order, stretch, true};
      const Found found{std::max(order, pair.other.order), other_later ? pair.other.stretch : stretch, other_later ? self : pair.other,
                        parted};
      if (!best_ || std::tuple(found.order, !found.parted) < std::tuple(best_->order, !best_->parted)) best_ = found;
    }
  }

  /// What is right and touches the stitch where it is moved to.
  void touching(const trail::Worked& w, cloth::Hole by, Touch Pair::*world) {
    for (const cloth::Hole end : {w.up, w.down}) add(end + by, true, world);
    for (const cloth::Hole hole : between(w.up, w.down)) add(hole + by, false, world);
  }
  void add(cloth::Hole hole, bool end, Touch Pair::*world) {
    const auto* entries = cloth_.at(hole);
    if (!entries) return;
    for (const Entry& e : *entries) {
      if (wrong_.is(e.stretch) || (!end && !e.end)) continue;
      auto pair = std::find_if(pairs_.begin(), pairs_.end(), [&](const Pair& p) { return p.other.order == e.order; });
      if (pair == pairs_.end()) pair = pairs_.insert(pairs_.end(), {e, {}, {}});
      (end && e.end ? ((*pair).*world).share : ((*pair).*world).over) = true;
    }
  }

  const Cloth& cloth_;
  const Wrong& wrong_;
  const cloth::Hole off_;
  std::optional<Found> best_;
  std::vector<Pair> pairs_;
};

TellTale told(const Cloth& cloth, int count_in, cloth::Way off, const std::optional<Search::Found>& found) {
  TellTale tale;
  tale.count_in = count_in;
  tale.off = off;
  if (!found) return tale;
  const Stretch& s = cloth.stretches()[found->stretch];
  const trail::Worked& w = cloth.worked(s, found->order - s.begin);
  tale.shows = true;
  tale.lesson = cloth.section(s).lesson;
  tale.trail = s.trail;
  tale.stitch = cloth.section(s).first + found->order - s.begin;
  tale.parted = found->parted;
  tale.other_part = cloth.trail(cloth.stretches()[found->other.stretch]).part;
  tale.hole = w.up;
  return tale;
}

}  // namespace

std::vector<TellTale> tell_tales(const std::vector<PlacedTrail>& trails, const std::vector<CountIn>& count_ins) {
  const Cloth cloth(trails);
  const Hanging hanging(cloth, count_ins);
  std::vector<TellTale> tales;
  for (std::size_t c = 0; c < count_ins.size(); ++c) {
    const Wrong wrong(cloth.stretches().size(), hanging.wrong_with(static_cast<int>(c)));
    for (const cloth::Way way : {cloth::Way::N, cloth::Way::E, cloth::Way::S, cloth::Way::W})
      tales.push_back(told(cloth, static_cast<int>(c), way, Search(cloth, wrong, cloth::step(way)).first()));
  }
  return tales;
}

}  // namespace guide
