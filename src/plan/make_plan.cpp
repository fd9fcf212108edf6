// The order in which everything is worked out: passes, their sections, their starts (each from what is stitched by then), then counts,
// marks, close-ups and lessons.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "plan/checkpoints.h"
#include "plan/cuttings.h"
#include "plan/finishing.h"
#include "plan/guidance.h"
#include "plan/lay_out.h"
#include "plan/lessons.h"
#include "plan/lots.h"
#include "plan/missed.h"
#include "plan/plan.h"
#include "plan/routes.h"
#include "plan/schedule.h"
#include "plan/supplies.h"

namespace plan {
namespace {

class Maker {
 public:
  Maker(const course::Course& course, std::stop_token stop, Lessons lessons) : course_(course), stop_(std::move(stop)), lessons_(lessons) {
    rules_.back_limit = course.choices.habits.back_limit;
    on_cloth_.emplace(course_, std::vector<guide::PlacedTrail>{});
  }

  base::Result<Plan> make() {
    passes_ = passes_of(course_);
    trail_of_.assign(passes_.size(), -1);
    plan_.cuttings = cuttings_of(course_);
    plan_.routes = routes_of(course_, plan_.cuttings, plan_.findings);
    lessons_ == Lessons::split_again || course_.lessons.empty() ? plan_split() : plan_as_written();
    if (stop_.stop_requested()) return base::trouble(base::TroubleKind::cancelled, "planning was stopped");
    order_by_part();
    plan_cuttings(course_, plan_);
    withhold_routes(plan_);
    count_in_all(course_, *on_cloth_, stop_, plan_);
    lessons_of(course_, passes_, plan_);
    plan_.checkpoints = checkpoints(course_, plan_);
    close_up_all(course_, stop_, plan_);
    missed_of(course_, plan_);
    supplies_of(course_, plan_);
    if (stop_.stop_requested()) return base::trouble(base::TroubleKind::cancelled, "planning was stopped");
    return std::move(plan_);
  }

 private:
  const stitch::Pass& pass(const PassOf& of) const { return course_.parts[of.part].work.pass(of.pass, of.place); }

  /// The working length that this part's kind is given, as path (front and back) in threads of the cloth.
  trail::Lengths lengths(const course::Part& part) const {
    const course::Habits& habits = course_.choices.habits;
    const auto own = habits.length_cm.find(part.kind);
    const double length_cm = own == habits.length_cm.end() ? habits.working_length_cm : own->second;
    const double usable_mm = 10 * (length_cm - 2 * habits.tail_cm);
    const double mm_a_thread = cloth::mm(1, course_.cloth.count) * (1 + habits.take_up);
    return {std::max(1.0, usable_mm / mm_a_thread), 10 * std::max(0.0, habits.first_tail_cm - habits.tail_cm) / mm_a_thread,
            course_.cloth.count.tall()};
  }

  /// Puts the start into a pass's round, where its count-in is best then.
  trail::Trail started(const PassOf& of, guide::When now) {
    const course::Part& part = course_.parts[of.part];
    const trail::Round round = trail::plan_round(pass(of), rules_);
    const auto begin_at = of.pass == 1 && of.place == 0 ? part.begin_at : std::nullopt;
    const guide::Start start = guide::choose_start(round, *on_cloth_, now, begin_at);
    if (start.begin_at_missed) begin_missed(of, start);
    return trail::make_trail(round, start.stitch, rules_, lengths(part));
  }

  void begin_missed(const PassOf& of, const guide::Start& start) {
    const course::Part& part = course_.parts[of.part];
    Finding finding{.rule = "begin-at-missed",
                    .stops = false,
                    .part = of.part,
                    .lesson = 0,
                    .at = part.begin_at,
                    .also_at = start.nearest,
                    .words = {{"part", part.name}},
                    .numbers = {},
                    .place = place_of(part, "begin_at")};
    if (start.nearest) finding.numbers = {{"x", start.nearest->x}, {"y", start.nearest->y}};
    plan_.findings.push_back(std::move(finding));
  }

  void keep(std::size_t i, trail::Trail trail) {
    const PassOf& of = passes_[i];
    trail_of_[i] = static_cast<int>(plan_.trails.size());
    plan_.trails.push_back({of.part, of.pass, of.place, std::move(trail), of.sections});
  }

  void plan_as_written() {
    schedule_written(course_, passes_, plan_);
    plan_.finishing = finishing_written(course_, false);
    std::vector<std::size_t> order(passes_.size());
    std::iota(order.begin(), order.end(), 0U);
    const auto begins = [&](std::size_t i) {
      const auto& sections = passes_[i].sections;
      return sections.empty() ? guide::When{course::lesson_limit + 1, 0, 0} : guide::When{sections[0].lesson, sections[0].item, 0};
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return begins(a) < begins(b); });
    for (const std::size_t i : order) {
      if (stop_.stop_requested()) return;
      keep(i, started(passes_[i], begins(i)));
      on_cloth_->add(plan_.trails.back());
    }
  }

  /// Trails first, in the craft's order; then their stretches are given to lessons, and what is on the cloth when is put right.
  void plan_split() {
    schedule_written(course_, passes_, plan_, Which::locked);
    LayOut lay_out(course_);
    const Lots lots(course_, passes_, plan_);
    lots.remember(lay_out);
    lots.add_preparing(lay_out);
    const std::vector<std::size_t> order = lots.in_craft_order();
    for (std::size_t n = 0; n < order.size(); ++n) {
      if (stop_.stop_requested()) return;
      const std::size_t lot = order[n];
      lot < passes_.size() ? add_pass(lay_out, lot, static_cast<int>(n)) : lot < first_route() ? add_cutting(lay_out, lot) : add_route(lay_out, lot);
    }
    lots.add_finishing(lay_out);
    lay_out.split();
    plan_.finishing = lots.finishing(lay_out);
    on_cloth_.emplace(course_, std::vector<guide::PlacedTrail>{});
    for (const std::size_t lot : order) put_right(lay_out, lot);
    plan_.split = lay_out.report();
    tell_of_split();
  }

  void add_pass(LayOut& lay_out, std::size_t i, int item) {
    trail::Trail trail = started(passes_[i], {1, item, 0});
    add_free_stretches(lay_out, i, trail);
    keep(i, std::move(trail));
    plan_.trails.back().sections = {{1, item, 0, passes_[i].stitches - 1}};
    on_cloth_->add(plan_.trails.back());
  }

  PartCutting& cutting_of(std::size_t lot) { return plan_.cuttings[lot - passes_.size()]; }

  void add_cutting(LayOut& lay_out, std::size_t lot) {
    const PartCutting& cut = cutting_of(lot);
    if (cut.lesson > 0) return;  // in a locked lesson
    const std::string& kind = course_.parts[cut.part].kind;
    lay_out.between(1, course::lesson_limit + 1);
    lay_out.add_whole(static_cast<int>(lot), static_cast<double>(cut.cutting.cuts.size()) / speed(course_, kind), kind);
  }

  std::size_t first_route() const { return Lots(course_, passes_, plan_).first_route(); }
  PartRoute& route_of(std::size_t lot) { return plan_.routes[lot - first_route()]; }

  /// What no locked lesson has of it.
  void add_route(LayOut& lay_out, std::size_t lot) {
    const PartRoute& route = route_of(lot);
    lay_out.between(1, course::lesson_limit + 1);
    const std::vector<double> minutes = minutes_of(course_, route);
    std::vector<bool> taken(minutes.size(), false);
    for (const guide::Section& section : route.sections) std::fill(taken.begin() + section.first, taken.begin() + section.last + 1, true);
    const std::string name = route.stage == course::Stage::bars ? "bars" : "fillings";
    constexpr std::size_t many = 240;  // of so many, those of one length of thread are not parted: the split stays quick
    int first = 0;
    double together = 0;
    for (std::size_t i = 0; i < minutes.size(); ++i) {
      if (taken[i]) {
        first = static_cast<int>(i) + 1;
        continue;
      }
      together += minutes[i];
      const bool thread_ends = std::binary_search(route.starts.begin(), route.starts.end(), static_cast<int>(i) + 1);
      const bool area_ends = i + 1 == minutes.size() || (thread_ends && route.items[i + 1].behind < 0);
      if (minutes.size() > many && !thread_ends && !area_ends && !taken[i + 1]) continue;
      lay_out.add_steps(static_cast<int>(lot), {first, static_cast<int>(i)}, together, name, area_ends ? Stop::pass : thread_ends ? Stop::leg : Stop::within);
      first = static_cast<int>(i) + 1;
      together = 0;
    }
  }

  /// What no locked lesson has, each stretch between the locked work of its part before and after it.
  void add_free_stretches(LayOut& lay_out, std::size_t i, const trail::Trail& trail) const {
    const std::string& kind = course_.parts[passes_[i].part].kind;
    const auto& locked = passes_[i].sections;
    int first = 0;
    for (std::size_t s = 0; s <= locked.size(); ++s) {
      const int last = s < locked.size() ? locked[s].first - 1 : passes_[i].stitches - 1;
      if (first <= last) {
        const auto [earliest, latest] = locked_round(i, first);
        lay_out.between(earliest, latest);
        lay_out.add(static_cast<int>(i), trail, pass(passes_[i]), kind, {first, last});
      }
      if (s < locked.size()) first = locked[s].last + 1;
    }
  }

  std::pair<int, int> locked_round(std::size_t i, int stitch) const {
    int earliest = 1, latest = course::lesson_limit + 1;
    if (course_.lessons.empty()) return {earliest, latest};
    for (const PassOf& other : passes_) {
      if (other.part != passes_[i].part || other.place != passes_[i].place) continue;
      for (const guide::Section& section : other.sections) {
        const bool before = std::pair(other.pass, section.first) < std::pair(passes_[i].pass, stitch);
        before ? earliest = std::max(earliest, section.lesson) : latest = std::min(latest, section.lesson);
      }
    }
    return {earliest, latest};
  }

  void put_right(const LayOut& lay_out, std::size_t i) {
    if (i >= first_route()) return add_sections(lay_out, i, route_of(i).sections);
    if (i >= passes_.size()) {
      PartCutting& cut = cutting_of(i);
      if (cut.lesson > 0) return;
      const guide::When when = lay_out.when(static_cast<int>(i));
      cut.lesson = when.lesson;
      cut.item = when.item;
      return;
    }
    auto& sections = passes_[i].sections;
    add_sections(lay_out, i, sections);
    guide::PlacedTrail& trail = plan_.trails[trail_of_[i]];
    trail.sections = sections;
    on_cloth_->add(trail);
  }

  static void add_sections(const LayOut& lay_out, std::size_t lot, std::vector<guide::Section>& sections) {
    const auto free = lay_out.sections(static_cast<int>(lot));
    sections.insert(sections.end(), free.begin(), free.end());
    std::sort(sections.begin(), sections.end(), [](const guide::Section& a, const guide::Section& b) { return a.first < b.first; });
  }

  void tell_of_split() {
    if (plan_.split.over <= 0) return;
    const SplitReport& s = plan_.split;
    const bool limit = !course_.lessons_wanted && s.lessons >= course::lesson_limit;
    plan_.findings.push_back({.rule = limit ? "too-many-lessons" : s.more_lessons == 0 ? "split-lesson-short" : "split-impossible",
                              .stops = false,
                              .part = -1,
                              .lesson = 0,
                              .at = {},
                              .also_at = {},
                              .words = {},
                              .numbers = {{"limit", course::lesson_limit},
                                          {"lessons", s.lessons},
                                          {"n", static_cast<std::int64_t>(std::ceil(s.over))},
                                          {"more_lessons", s.more_lessons},
                                          {"more_minutes", s.more_minutes},
                                          {"home", course_.home_minutes + s.more_home}},
                              .place = {}});
  }

  /// Trails were planned in the order of the work; the plan lists them by part and pass.
  void order_by_part() {
    std::vector<guide::PlacedTrail> ordered;
    for (std::size_t i = 0; i < passes_.size(); ++i)
      if (trail_of_[i] >= 0) ordered.push_back(std::move(plan_.trails[trail_of_[i]]));
    plan_.trails = std::move(ordered);
  }

  const course::Course& course_;
  std::stop_token stop_;
  Lessons lessons_;
  trail::Rules rules_;
  std::vector<PassOf> passes_;
  std::vector<int> trail_of_;
  std::optional<guide::OnCloth> on_cloth_;
  Plan plan_;
};

}  // namespace

base::Result<Plan> make_plan(const course::Course& course, std::stop_token stop, Lessons lessons) {
  return Maker(course, std::move(stop), lessons).make();
}

}  // namespace plan
