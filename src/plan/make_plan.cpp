// The order in which everything is worked out: passes, their sections, their starts (each from what is stitched by then), then counts, marks,
// close-ups and lessons.
#include <algorithm>
#include <numeric>

#include "plan/cuttings.h"
#include "plan/lay_out.h"
#include "plan/lessons.h"
#include "plan/plan.h"
#include "plan/schedule.h"
#include "plan/supplies.h"

namespace plan {
namespace {

class Maker {
 public:
  Maker(const course::Course& course, std::stop_token stop) : course_(course), stop_(std::move(stop)) {
    rules_.back_limit = course.choices.habits.back_limit;
  }

  base::Result<Plan> make() {
    passes_ = passes_of(course_);
    trail_of_.assign(passes_.size(), -1);
    plan_.cuttings = cuttings_of(course_);
    course_.lessons.empty() ? plan_laid_out() : plan_as_written();
    if (stop_.stop_requested()) return base::trouble(base::TroubleKind::cancelled, "planning was stopped");
    order_by_part();
    plan_cuttings(course_, plan_);
    count_in_all();
    lessons_of(course_, passes_, plan_);
    close_up_all();
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
    return {std::max(1.0, usable_mm / mm_a_thread), 10 * std::max(0.0, habits.first_tail_cm - habits.tail_cm) / mm_a_thread};
  }

  /// Puts the start into a pass's round, where its count-in is best then.
  trail::Trail started(const PassOf& of, guide::When now) {
    const course::Part& part = course_.parts[of.part];
    const trail::Round round = trail::plan_round(pass(of), rules_);
    const auto begin_at = of.pass == 1 && of.place == 0 ? part.begin_at : std::nullopt;
    const guide::Start start = guide::choose_start(round, on_cloth_, now, begin_at);
    if (start.begin_at_missed) begin_missed(of, start);
    return trail::make_trail(round, start.stitch, rules_, lengths(part));
  }

  void begin_missed(const PassOf& of, const guide::Start& start) {
    const course::Part& part = course_.parts[of.part];
    Finding finding{.rule = "begin-at-missed", .stops = false, .part = of.part, .lesson = 0, .at = part.begin_at, .also_at = start.nearest,
                    .words = {{"part", part.name}}, .numbers = {}, .place = place_of(part, "begin_at")};
    if (start.nearest) finding.numbers = {{"x", start.nearest->x}, {"y", start.nearest->y}};
    plan_.findings.push_back(std::move(finding));
  }

  static course::Place place_of(const course::Part& part, std::string_view key) {
    const auto found = part.key_places.find(key);
    return found == part.key_places.end() ? part.place : found->second;
  }

  void keep(std::size_t i, trail::Trail trail) {
    const PassOf& of = passes_[i];
    trail_of_[i] = static_cast<int>(plan_.trails.size());
    plan_.trails.push_back({of.part, of.pass, of.place, std::move(trail), of.sections});
    on_cloth_.add(plan_.trails.back());
  }

  void plan_as_written() {
    schedule_written(course_, passes_, plan_.cuttings, plan_.findings);
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
    }
  }

  void plan_laid_out() {
    double minutes = 0;
    for (const PassOf& of : passes_) minutes += of.stitches / speed(course_, course_.parts[of.part].kind);
    LayOut lay_out(course_, minutes);
    std::vector<std::vector<std::size_t>> of_part(course_.parts.size());
    for (std::size_t i = 0; i < passes_.size(); ++i) of_part[passes_[i].part].push_back(i);
    for (const int part : craft_order(course_)) {
      for (const std::size_t i : of_part[part]) {
        if (stop_.stop_requested()) return;
        trail::Trail trail = started(passes_[i], lay_out.next());
        passes_[i].sections = lay_out.place(trail, pass(passes_[i]), speed(course_, course_.parts[part].kind));
        keep(i, std::move(trail));
      }
    }
    for (PartCutting& cut : plan_.cuttings) {
      const auto snips = static_cast<double>(cut.cutting.cuts.size());
      const guide::When when = lay_out.place_whole(snips / speed(course_, course_.parts[cut.part].kind));
      cut.lesson = when.lesson;
      cut.item = when.item;
    }
    if (lay_out.overflowed())
      plan_.findings.push_back({.rule = "too-many-lessons", .stops = false, .part = -1, .lesson = course::lesson_limit, .at = {}, .also_at = {},
                                .words = {}, .numbers = {{"limit", course::lesson_limit}}, .place = {}});
  }

  /// Trails were planned in the order of the work; the plan lists them by part and pass.
  void order_by_part() {
    std::vector<guide::PlacedTrail> ordered;
    for (std::size_t i = 0; i < passes_.size(); ++i)
      if (trail_of_[i] >= 0) ordered.push_back(std::move(plan_.trails[trail_of_[i]]));
    plan_.trails = std::move(ordered);
  }

  void count_in_all() {
    // A tail is run under three or four blocks (common practice, no source): 16 threads, or as long as it is.
    constexpr double four_blocks = 16;
    const double tail = std::min(four_blocks, 10 * course_.choices.habits.tail_cm / cloth::mm(1, course_.cloth.count));
    plan_.anchors = guide::all_anchors(course_, plan_.trails, tail);
    for (std::size_t t = 0; t < plan_.trails.size() && !stop_.stop_requested(); ++t) {
      for (std::size_t s = 0; s < plan_.trails[t].sections.size(); ++s) count_in(static_cast<int>(t), static_cast<int>(s));
      if (plan_.trails[t].pass == 1) mark_corners(plan_.trails[t]);
    }
  }

  void count_in(int t, int s) {
    const guide::PlacedTrail& trail = plan_.trails[t];
    const guide::Section& section = trail.sections[s];
    const course::Part& part = course_.parts[trail.part];
    const cloth::Hole hole = trail.trail.stitches[section.first].up;
    const bool very_first = trail.pass == 1 && trail.place == 0 && section.first == 0;
    auto found = on_cloth_.find(hole, {section.lesson, section.item, section.first}, very_first ? part.count_from : std::nullopt);
    if (found.own_landmark_missing)
      plan_.findings.push_back({.rule = "count-from-missing", .stops = false, .part = trail.part, .lesson = section.lesson, .at = part.count_from,
                                .also_at = hole, .words = {{"part", part.name}},
                                .numbers = {{"x", part.count_from->x}, {"y", part.count_from->y}}, .place = place_of(part, "count_from")});
    plan_.count_ins.push_back(
        {t, s, section.lesson, section.first, hole, std::move(found.count), std::move(found.proof), std::move(found.others)});
  }

  void mark_corners(const guide::PlacedTrail& trail) {
    if (trail.sections.empty()) return;
    const guide::Section& section = trail.sections[0];
    for (const stitch::Corner& corner : course_.parts[trail.part].work.corners) {
      if (corner.place != trail.place) continue;
      auto found = on_cloth_.find(corner.hole, {section.lesson, section.item, 0});
      plan_.marks.push_back({trail.part, trail.place, section.lesson, corner.hole, std::move(found.count)});
    }
  }

  void close_up_all() {
    for (std::size_t n = 1; n <= plan_.lessons.size() && !stop_.stop_requested(); ++n) {
      auto windows = guide::close_ups(course_, plan_.trails, static_cast<int>(n), plan_.close_ups);
      for (auto& window : windows) plan_.close_ups.push_back(std::move(window));
    }
  }

  const course::Course& course_;
  std::stop_token stop_;
  trail::Rules rules_;
  std::vector<PassOf> passes_;
  std::vector<int> trail_of_;
  guide::OnCloth on_cloth_{course_, {}};
  Plan plan_;
};

}  // namespace

base::Result<Plan> make_plan(const course::Course& course, std::stop_token stop) { return Maker(course, std::move(stop)).make(); }

}  // namespace plan
