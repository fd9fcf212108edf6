#include "plan/missed.h"

#include <algorithm>

#include "plan/routes.h"
#include "plan/schedule.h"

namespace plan {
namespace {

using Stretch = std::pair<int, int>;

template <class T>
bool has(const std::vector<T>& list, const T& what) {
  return std::find(list.begin(), list.end(), what) != list.end();
}

class Need {
 public:
  Need(const course::Course& course, const Plan& plan, const LessonPlan& lesson)
      : course_(course), plan_(plan), lesson_(lesson), missed_lesson_(plan.lessons[lesson.number - 2]), before_(lesson.number - 1) {}

  Missed find() {
    while (!all_counted()) chosen_.push_back(least(plan_.count_ins[uncounted_]));
    for (std::size_t i = 0; i < chosen_.size();) {  // what a later choice has made needless
      const Stretch tried = chosen_[i];
      chosen_.erase(chosen_.begin() + static_cast<std::ptrdiff_t>(i));
      if (!all_counted()) chosen_.insert(chosen_.begin() + static_cast<std::ptrdiff_t>(i++), tried);
    }
    all_counted();
    count_otherwise();
    add_minutes();
    return std::move(missed_);
  }

 private:
  /// Collects what is needed with the stretches chosen so far. Can every start be counted then?
  bool all_counted() {
    missed_ = {};
    relevant_.clear();
    for (const auto& [t, s] : chosen_) need(t, s);
    if (has<std::string>(lesson_.work, "wash") || has<std::string>(lesson_.work, "cut out")) need_everything();
    for (const auto& [t, s] : lesson_.sections) for_stretch(t, s);
    for (const int c : lesson_.cuttings) for_cutting(c);
    for (const auto& [r, s] : lesson_.routes) for_route(r, s);
    for (std::size_t i = 0; i < missed_.sections.size(); ++i) for_stretch(missed_.sections[i].first, missed_.sections[i].second);  // grows
    for (std::size_t c = 0; c < plan_.count_ins.size(); ++c)
      if (plan_.count_ins[c].lesson == lesson_.number || needed(plan_.count_ins[c].trail, plan_.count_ins[c].section)) relevant_.push_back(static_cast<int>(c));
    const auto without = std::find_if(relevant_.begin(), relevant_.end(), [&](int c) { return !counted(plan_.count_ins[c]); });
    if (without != relevant_.end()) uncounted_ = *without;
    return without == relevant_.end();
  }

  static bool lies_under(const guide::PlacedTrail& one, const guide::PlacedTrail& other) {
    return one.part == other.part && one.place == other.place && one.pass < other.pass;
  }
  const PartRoute& route(int r) const { return plan_.routes[r]; }
  bool needed(int t, int s) const { return has(missed_.sections, Stretch(t, s)); }
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
  void need_cutting(int c) {
    if (plan_.cuttings[c].lesson != before_ || has(missed_.cuttings, c)) return;
    missed_.cuttings.push_back(c);
    for_cutting(c);
  }
  void need_route(int r, int s) {
    if (route(r).sections[s].lesson != before_ || has(missed_.routes, Stretch(r, s)) || !has(missed_lesson_.routes, Stretch(r, s))) return;
    missed_.routes.emplace_back(r, s);
    for_route(r, s);
  }
  void need_everything() {
    for (const auto& [t, s] : missed_lesson_.sections) need(t, s);
    for (const int c : missed_lesson_.cuttings) need_cutting(c);
    for (const auto& [r, s] : missed_lesson_.routes) need_route(r, s);
    const auto washes = [](const LessonPlan& lesson) { return has<std::string>(lesson.work, "wash"); };
    missed_.wash = washes(missed_lesson_) && std::none_of(plan_.lessons.begin(), plan_.lessons.begin() + before_ - 1, washes);
  }

  void for_stretch(int t, int s) {
    for (int earlier = 0; earlier < s; ++earlier) need(t, earlier);
    for (std::size_t other = 0; other < plan_.trails.size(); ++other)
      if (lies_under(plan_.trails[other], plan_.trails[t])) need_all(static_cast<int>(other));
  }
  void for_cutting(int c) {
    for (const cutwork::Bundle& block : plan_.cuttings[c].blocks) need_part(block.part);
  }
  void for_route(int r, int s) {
    need_cutting(route(r).cutting);
    for (int earlier = 0; earlier < s; ++earlier) need_route(r, earlier);
    if (route(r).stage != course::Stage::fillings) return;
    for (std::size_t other = 0; other < plan_.routes.size(); ++other)
      if (route(static_cast<int>(other)).cutting == route(r).cutting && route(static_cast<int>(other)).stage == course::Stage::bars)
        need_bars_round(static_cast<int>(other), r, s);
  }
  /// The stretches of bars of which any lies at an opening that is filled.
  void need_bars_round(int bars, int fillings, int stretch) {
    const cutwork::Cutting& cut = plan_.cuttings[route(bars).cutting].cutting;
    std::vector<int> filled;
    for (int i = route(fillings).sections[stretch].first; i <= route(fillings).sections[stretch].last; ++i)
      for (const cutwork::FillingWork& filling : route(fillings).items[i].fillings) filled.push_back(filling.opening);
    for (std::size_t s = 0; s < route(bars).sections.size(); ++s)
      for (int i = route(bars).sections[s].first; i <= route(bars).sections[s].last; ++i)
        for (const int opening : cut.bars[route(bars).items[i].bar].openings)
          if (has(filled, opening)) need_route(bars, static_cast<int>(s));
  }

  double minutes(int t, int s) const {
    const guide::Section& section = plan_.trails[t].sections[s];
    return (section.last - section.first + 1) / speed(course_, course_.parts[plan_.trails[t].part].kind);
  }

  /// The stretch of the missed lesson on which the landmark stands, or {-1, -1}.
  Stretch stretch_of(const guide::Landmark& landmark) const {
    if (landmark.part < 0 || landmark.lesson != before_) return {-1, -1};
    for (const auto& [t, s] : missed_lesson_.sections) {
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

  /// Of the start's landmarks, the first that stands, one that is counted before one that is measured; nullptr: none does.
  const guide::Count* counted(const guide::CountIn& count_in) const {
    const bool by_ruler = count_in.proof && count_in.proof->landmark.kind == guide::LandmarkKind::cloth_edges;
    if (stands(count_in.count)) return &count_in.count;
    if (count_in.proof && !by_ruler && stands(*count_in.proof)) return &*count_in.proof;
    for (const guide::Count& other : count_in.others)
      if (stands(other)) return &other;
    return by_ruler ? &*count_in.proof : nullptr;
  }
  void count_otherwise() {
    for (const int c : relevant_)
      if (const guide::Count* from = counted(plan_.count_ins[c]); from && from != &plan_.count_ins[c].count) missed_.instead.push_back({c, *from});
  }
  void add_minutes() {
    for (const auto& [t, s] : missed_.sections) missed_.minutes += minutes(t, s);
    for (const int c : missed_.cuttings)
      missed_.minutes += static_cast<double>(plan_.cuttings[c].cutting.cuts.size()) / speed(course_, course_.parts[plan_.cuttings[c].part].kind);
    for (const auto& [r, s] : missed_.routes) {
      const std::vector<double> each = minutes_of(course_, route(r));
      for (int i = route(r).sections[s].first; i <= route(r).sections[s].last; ++i) missed_.minutes += each[i];
    }
    std::sort(missed_.sections.begin(), missed_.sections.end(), [&](const Stretch& a, const Stretch& b) { return in_lesson(a) < in_lesson(b); });
    std::sort(missed_.routes.begin(), missed_.routes.end());
  }
  /// Its place among the missed lesson's work.
  int in_lesson(const Stretch& stretch) const {
    return static_cast<int>(std::find(missed_lesson_.sections.begin(), missed_lesson_.sections.end(), stretch) - missed_lesson_.sections.begin());
  }

  /// Of the stretches on which a landmark of the start stands, the one that takes least time; the first of equals.
  Stretch least(const guide::CountIn& count_in) const {
    Stretch best = stretch_of(count_in.count.landmark);
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
  const LessonPlan& missed_lesson_;
  const int before_;
  std::vector<Stretch> chosen_;  ///< needed for a landmark alone
  std::vector<int> relevant_;    ///< starts that are to be counted
  int uncounted_ = 0;            ///< one of them that cannot be
  Missed missed_;
};

}  // namespace

void missed_of(const course::Course& course, Plan& plan) {
  for (std::size_t i = 1; i < plan.lessons.size(); ++i) plan.lessons[i].missed = Need(course, plan, plan.lessons[i]).find();
}

}  // namespace plan
