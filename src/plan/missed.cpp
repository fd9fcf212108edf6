#include "plan/missed.h"

#include <algorithm>

#include "plan/schedule.h"

namespace plan {
namespace {

class Need {
 public:
  Need(const course::Course& course, const Plan& plan, const LessonPlan& lesson)
      : course_(course), plan_(plan), lesson_(lesson), before_(lesson.number - 1) {}

  Missed find() {
    for (const auto& [t, s] : lesson_.sections) {
      for (int earlier = 0; earlier < s; ++earlier) need(t, earlier);
      for (std::size_t other = 0; other < plan_.trails.size(); ++other)
        if (lies_under(plan_.trails[other], plan_.trails[t])) need_all(static_cast<int>(other));
    }
    for (const int c : lesson_.cuttings)
      for (const cutwork::Bundle& block : plan_.cuttings[c].blocks) need_part(block.part);
    for (std::size_t c = 0; c < plan_.count_ins.size(); ++c)
      if (plan_.count_ins[c].lesson == lesson_.number) count(static_cast<int>(c));
    for (const auto& [t, s] : plan_.lessons[before_ - 1].sections)
      if (needed(t, s)) missed_.minutes += minutes(t, s);
    return std::move(missed_);
  }

 private:
  static bool lies_under(const guide::PlacedTrail& one, const guide::PlacedTrail& other) {
    return one.part == other.part && one.place == other.place && one.pass < other.pass;
  }
  bool needed(int t, int s) const {
    return std::find(missed_.sections.begin(), missed_.sections.end(), std::pair(t, s)) != missed_.sections.end();
  }
  void need(int t, int s) {
    if (plan_.trails[t].sections[s].lesson == before_ && !needed(t, s)) missed_.sections.emplace_back(t, s);
  }
  void need_all(int t) {
    for (std::size_t s = 0; s < plan_.trails[t].sections.size(); ++s) need(t, static_cast<int>(s));
  }
  void need_part(int part) {
    for (std::size_t t = 0; t < plan_.trails.size(); ++t)
      if (plan_.trails[t].part == part) need_all(static_cast<int>(t));
  }

  double minutes(int t, int s) const {
    const guide::Section& section = plan_.trails[t].sections[s];
    return (section.last - section.first + 1) / speed(course_, course_.parts[plan_.trails[t].part].kind);
  }

  /// The stretch of the missed lesson on which the landmark stands, or {-1, -1}.
  std::pair<int, int> stretch_of(const guide::Landmark& landmark) const {
    if (landmark.part < 0 || landmark.lesson != before_) return {-1, -1};
    for (const auto& [t, s] : plan_.lessons[before_ - 1].sections) {
      const guide::PlacedTrail& trail = plan_.trails[t];
      if (trail.part != landmark.part || trail.place != landmark.place) continue;
      for (int k = trail.sections[s].first; k <= trail.sections[s].last; ++k)
        if (trail.trail.stitches[k].up == landmark.hole || trail.trail.stitches[k].down == landmark.hole) return {t, s};
    }
    return {-1, -1};
  }
  bool stands(const guide::Count& count) const {
    const auto [t, s] = stretch_of(count.landmark);
    return t < 0 || needed(t, s);
  }

  void count(int c) {
    const guide::CountIn& count_in = plan_.count_ins[c];
    if (stands(count_in.count)) return;
    if (count_in.proof && stands(*count_in.proof)) return missed_.instead.push_back({c, *count_in.proof});
    for (const guide::Count& other : count_in.others)
      if (stands(other)) return missed_.instead.push_back({c, other});
    const auto [t, s] = least(count_in);
    need(t, s);
  }

  /// Of the stretches on which a landmark of the start stands, the one that takes least time; the first of equals.
  std::pair<int, int> least(const guide::CountIn& count_in) const {
    std::pair<int, int> best = stretch_of(count_in.count.landmark);
    const auto look = [&](const guide::Count& count) {
      const auto other = stretch_of(count.landmark);
      if (minutes(other.first, other.second) < minutes(best.first, best.second) - 1e-9) best = other;
    };
    if (count_in.proof) look(*count_in.proof);
    for (const guide::Count& other : count_in.others) look(other);
    return best;
  }

  const course::Course& course_;
  const Plan& plan_;
  const LessonPlan& lesson_;
  const int before_;
  Missed missed_;
};

}  // namespace

void missed_of(const course::Course& course, Plan& plan) {
  for (std::size_t i = 1; i < plan.lessons.size(); ++i) plan.lessons[i].missed = Need(course, plan, plan.lessons[i]).find();
}

}  // namespace plan
