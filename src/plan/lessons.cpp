#include "plan/lessons.h"

#include <algorithm>
#include <cmath>

#include "course/calendar.h"
#include "plan/counts.h"
#include "plan/finishing.h"
#include "plan/lay_out.h"
#include "plan/routes.h"

namespace plan {
namespace {

struct Use {
  int trail, section, item;
};

/// Sections of each lesson in the order of its work.
std::vector<std::vector<Use>> uses_by_lesson(const Plan& plan, int lessons) {
  std::vector<std::vector<Use>> uses(static_cast<std::size_t>(lessons));
  for (std::size_t t = 0; t < plan.trails.size(); ++t)
    for (std::size_t s = 0; s < plan.trails[t].sections.size(); ++s) {
      const guide::Section& section = plan.trails[t].sections[s];
      uses[section.lesson - 1].push_back({static_cast<int>(t), static_cast<int>(s), section.item});
    }
  for (auto& lesson : uses)
    std::stable_sort(lesson.begin(), lesson.end(), [](const Use& a, const Use& b) { return a.item < b.item; });
  return uses;
}

int how_many(const course::Course& course, const Plan& plan) {
  int n = static_cast<int>(course.lessons.size());
  for (const auto& trail : plan.trails)
    for (const auto& section : trail.sections) n = std::max(n, section.lesson);
  for (const PartCutting& cut : plan.cuttings) n = std::max(n, cut.lesson);
  for (const PartRoute& route : plan.routes)
    for (const auto& section : route.sections) n = std::max(n, section.lesson);
  for (const Finishing& step : plan.finishing) n = std::max(n, step.lesson);
  return n;
}

double thread_mm(const course::Course& course, const guide::PlacedTrail& trail, int first, int last) {
  return cloth::mm(trail::thread_of(trail.trail, first, last), course.cloth.count) * (1 + course.choices.habits.take_up);
}

int lengths_in(const std::vector<int>& ends, int first, int last) {
  const auto begun = std::count_if(ends.begin(), ends.end(), [&](int k) { return first <= k && k <= last; });
  const bool goes_on = std::find(ends.begin(), ends.end(), first) == ends.end();
  return static_cast<int>(begun) + (goes_on ? 1 : 0);
}

/// One entry a section; places of a repeated part that follow one another are one.
std::vector<std::string> work_of(const course::Course& course, const std::vector<PassOf>& passes, const Plan& plan, const std::vector<Use>& uses) {
  std::vector<std::string> work;
  const auto first = [&](std::size_t i) { return passes[uses[i].trail].before + plan.trails[uses[i].trail].sections[uses[i].section].first; };
  const auto last = [&](std::size_t i) { return passes[uses[i].trail].before + plan.trails[uses[i].trail].sections[uses[i].section].last; };
  for (std::size_t i = 0, from = 0; i < uses.size(); ++i) {
    const PassOf& pass = passes[uses[i].trail];
    const bool goes_on = i + 1 < uses.size() && passes[uses[i + 1].trail].part == pass.part && passes[uses[i + 1].trail].pass == pass.pass &&
                         passes[uses[i + 1].trail].place != pass.place && first(i + 1) == last(i) + 1;
    if (goes_on) continue;
    work.push_back(work_text(course, pass, first(from), last(i)));
    from = i + 1;
  }
  return work;
}

void add_section(const course::Course& course, const Plan& plan, const Use& use, LessonPlan& lesson) {
  const guide::PlacedTrail& trail = plan.trails[use.trail];
  const guide::Section& section = trail.sections[use.section];
  const course::Part& part = course.parts[trail.part];
  const int n = section.last - section.first + 1;
  lesson.sections.emplace_back(use.trail, use.section);
  lesson.stitches += n;
  lesson.minutes += n / speed(course, part.kind);
  lesson.thread_mm[part.thread] += thread_mm(course, trail, section.first, section.last);
  lesson.lengths[part.thread] += lengths_in(trail.trail.ends, section.first, section.last);
}

void add_cutting(const course::Course& course, const Plan& plan, int c, LessonPlan& lesson) {
  const PartCutting& cut = plan.cuttings[static_cast<std::size_t>(c)];
  const course::Part& part = course.parts[cut.part];
  lesson.work.push_back(part.name + " / cut");
  lesson.cuttings.push_back(c);
  lesson.minutes += static_cast<double>(cut.cutting.cuts.size()) / speed(course, part.kind);
}

void add_route(const course::Course& course, const Plan& plan, std::pair<int, int> where, LessonPlan& lesson) {
  const PartRoute& route = plan.routes[static_cast<std::size_t>(where.first)];
  const guide::Section& section = route.sections[static_cast<std::size_t>(where.second)];
  if (route.items.empty()) return;  // withheld
  const course::Part& part = course.parts[route.part];
  lesson.work.push_back(work_text(course, route, section.first, section.last));
  lesson.routes.push_back(where);
  const auto minutes = minutes_of(course, route);
  for (int i = section.first; i <= section.last; ++i) lesson.minutes += minutes[static_cast<std::size_t>(i)];
  lesson.thread_mm[part.thread] += cloth::mm(route.threads(section.first, section.last), course.cloth.count) * (1 + course.choices.habits.take_up);
  lesson.lengths[part.thread] += lengths_in(route.lengths, section.first, section.last);
}

/// The lesson's stretches of routes, in the order of its work.
std::vector<std::pair<int, int>> routes_in(const Plan& plan, int lesson) {
  std::vector<std::pair<int, std::pair<int, int>>> in;
  for (std::size_t r = 0; r < plan.routes.size(); ++r)
    for (std::size_t s = 0; s < plan.routes[r].sections.size(); ++s)
      if (plan.routes[r].sections[s].lesson == lesson) in.push_back({plan.routes[r].sections[s].item, {static_cast<int>(r), static_cast<int>(s)}});
  std::stable_sort(in.begin(), in.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::pair<int, int>> routes;
  for (const auto& [item, where] : in) routes.push_back(where);
  return routes;
}

void from_written(const course::Course& course, const course::Lesson& written, LessonPlan& lesson) {
  lesson.title = written.title;
  lesson.notes = written.notes;
  lesson.place = written.place;
  if (written.minutes) lesson.minutes_given = *written.minutes;
  lesson.room = room(course, lesson.minutes_given);
}

}  // namespace

void lessons_of(const course::Course& course, const std::vector<PassOf>& passes, Plan& plan) {
  const int n = how_many(course, plan);
  const auto days = course::lesson_days(course, n);
  const auto uses = uses_by_lesson(plan, n);
  for (int i = 0; i < n; ++i) {
    LessonPlan lesson;
    lesson.number = i + 1;
    lesson.date = days[i];
    lesson.start = course.start_time;
    lesson.minutes_given = course.minutes;
    lesson.room = room(course, lesson.minutes_given);
    if (i == 0) lesson.minutes = lesson.prepare_minutes = course.choices.habits.prepare_minutes;
    for (const Use& use : uses[i]) add_section(course, plan, use, lesson);
    lesson.work = work_of(course, passes, plan, uses[i]);
    for (int c = 0; c < static_cast<int>(plan.cuttings.size()); ++c)
      if (plan.cuttings[static_cast<std::size_t>(c)].lesson == i + 1) add_cutting(course, plan, c, lesson);
    for (const auto& where : routes_in(plan, i + 1)) add_route(course, plan, where, lesson);
    for (const Finishing& step : plan.finishing)
      if (step.lesson == i + 1) lesson.work.emplace_back(work_name(step.finish)), lesson.minutes += minutes_of(course, step.finish);
    if (i < static_cast<int>(course.lessons.size())) from_written(course, course.lessons[i], lesson);
    plan.counts.push_back(counts_of(course, plan.trails, lesson.sections));
    plan.lessons.push_back(std::move(lesson));
  }
}

}  // namespace plan
