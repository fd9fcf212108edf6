#include "plan/mistake.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <numeric>
#include <set>
#include <tuple>
#include <unordered_map>

#include "plan/cuttings.h"

namespace plan {
namespace {

std::vector<cloth::Hole> between(const trail::Worked& w) {
  const int dx = w.down.x - w.up.x, dy = w.down.y - w.up.y, n = std::gcd(std::abs(dx), std::abs(dy));
  std::vector<cloth::Hole> holes;
  for (int i = 1; i < n; ++i) holes.push_back({w.up.x + dx / n * i, w.up.y + dy / n * i});
  return holes;
}

using Which = std::pair<int, int>;  // trail and stitch

/// All stitches that stand right, by their holes.
class Right {
 public:
  Right(const Plan& plan, const Mistake& mistake) {
    for (int t = 0; t < static_cast<int>(plan.trails.size()); ++t)
      for (int k = 0; k < static_cast<int>(plan.trails[t].trail.stitches.size()); ++k) {
        if (t == mistake.trail && mistake.first <= k && k <= mistake.last) continue;
        const trail::Worked& w = plan.trails[t].trail.stitches[k];
        for (const cloth::Hole hole : {w.up, w.down}) ends_[hole].push_back({t, k});
        for (const cloth::Hole hole : between(w)) under_[hole].push_back({t, k});
      }
  }
  /// Those that share a hole with the stitch, and those that touch it, where it stands `off` from its place.
  struct Touched {
    std::set<Which> share, any;
  };
  Touched touched(const trail::Worked& w, cloth::Hole off) const {
    Touched touched;
    for (const cloth::Hole hole : {w.up + off, w.down + off}) {
      add(ends_, hole, touched.share);
      add(under_, hole, touched.any);
    }
    for (const cloth::Hole hole : between(w)) add(ends_, hole + off, touched.any);
    touched.any.insert(touched.share.begin(), touched.share.end());
    return touched;
  }

 private:
  using Index = std::unordered_map<cloth::Hole, std::vector<Which>>;
  static void add(const Index& index, cloth::Hole hole, std::set<Which>& to) {
    if (const auto found = index.find(hole); found != index.end()) to.insert(found->second.begin(), found->second.end());
  }
  Index ends_, under_;
};

class Taking {
 public:
  Taking(const course::Course& course, const Plan& plan, const Mistake& mistake)
      : course_(course), plan_(plan), mistake_(mistake), wrong_(plan.trails[mistake.trail]) {}

  TakenIn made() {
    taken_.to_unpick = mistake_.last - mistake_.first + 1;
    if (mistake_.off == cloth::Hole{0, 0}) return {};
    misfits();
    count_ins();
    cuttings();
    return std::move(taken_);
  }

 private:
  const trail::Worked& at(int k) const { return wrong_.trail.stitches[k]; }

  int lesson_of(Which which) const {
    for (const guide::Section& section : plan_.trails[which.first].sections)
      if (section.first <= which.second && which.second <= section.last) return section.lesson;
    return 0;
  }

  void misfits() {
    const Right right(plan_, mistake_);
    for (int k = mistake_.first; k <= mistake_.last; ++k) {
      const Right::Touched should = right.touched(at(k), {0, 0}), does = right.touched(at(k), mistake_.off);
      for (const Which& other : should.share)
        if (!does.share.contains(other)) add(k, other, true);
      for (const Which& other : does.any)
        if (!should.any.contains(other)) add(k, other, false);
    }
  }
  void add(int stitch, Which other, bool parted) {
    taken_.misfits.push_back({stitch, other.first, other.second, lesson_of(other), parted});
  }

  void count_ins() {
    std::set<cloth::Hole> holes;
    for (int k = mistake_.first; k <= mistake_.last; ++k) holes.insert({at(k).up, at(k).down});
    const int since = lesson_of({mistake_.trail, mistake_.first});
    for (int c = 0; c < static_cast<int>(plan_.count_ins.size()); ++c) {
      const guide::CountIn& in = plan_.count_ins[c];
      const guide::Landmark& from = in.count.landmark;
      const bool own_before = in.trail == mistake_.trail && in.stitch <= mistake_.first;
      if (from.part == wrong_.part && from.place == wrong_.place && holes.contains(from.hole) && in.lesson >= since && !own_before)
        taken_.count_ins.push_back(c);
    }
  }

  /// The course as it would be if it had been drawn with the mistake in it.
  course::Course drawn_wrong() const {
    std::set<cloth::Stitch> wrong;
    for (int k = mistake_.first; k <= mistake_.last; ++k) wrong.insert(cloth::Stitch{at(k).up, at(k).down}.normal());
    course::Course moved = course_;
    const auto move = [&](cloth::Stitch& s) {
      if (wrong.contains(s.normal())) s = {s.a + mistake_.off, s.b + mistake_.off};
    };
    stitch::Work& work = moved.parts[wrong_.part].work;
    for (cloth::Stitch& s : work.stitches) move(s);
    for (stitch::Feature& feature : work.features)
      for (cloth::Stitch& s : feature.stitches) move(s);
    return moved;
  }

  void cuttings() {
    if (plan_.cuttings.empty()) return;
    const std::vector<PartCutting> before = cuttings_of(course_), after = cuttings_of(drawn_wrong());
    for (std::size_t c = 0; c < before.size(); ++c) {
      CutChange change{static_cast<int>(c), CutNow::not_touched, after[c].cutting.problems};
      if (!before[c].cutting.problems.empty()) continue;  // it was not to be cut anyhow
      if (!change.problems.empty())
        change.now = CutNow::forbidden;
      else if (after[c].cutting.cuts != before[c].cutting.cuts)
        change.now = CutNow::elsewhere;
      if (change.now != CutNow::not_touched) taken_.cuttings.push_back(std::move(change));
    }
  }

  const course::Course& course_;
  const Plan& plan_;
  const Mistake& mistake_;
  const guide::PlacedTrail& wrong_;
  TakenIn taken_;
};

}  // namespace

bool TakenIn::matters() const { return !misfits.empty() || !cuttings.empty(); }

base::Result<TakenIn> take_in(const course::Course& course, const Plan& plan, const Mistake& mistake) {
  const bool there = mistake.trail >= 0 && mistake.trail < static_cast<int>(plan.trails.size());
  const int n = there ? static_cast<int>(plan.trails[mistake.trail].trail.stitches.size()) : 0;
  if (!there || mistake.first < 0 || mistake.last < mistake.first || mistake.last >= n)
    return base::trouble(base::TroubleKind::input, "there are no such stitches");
  return Taking(course, plan, mistake).made();
}

}  // namespace plan
