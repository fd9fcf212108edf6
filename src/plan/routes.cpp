#include "plan/routes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "plan/schedule.h"

namespace plan {
namespace {

/// Millimetres that a thread takes beside itself. From memory, no source: size 8 (125 tex) lies about 42 to the inch; others by the root of
/// their weight, as round threads of one fibre do.
double thickness_mm(const course::Thread& thread) {
  constexpr double known_tex = 125, known_mm = 0.6;
  return known_mm * std::sqrt(course::tex(thread).value_or(known_tex) / known_tex);
}

cutwork::Wish wish_of(const course::Course& course, const course::Part& part) {
  const stitch::CutArea& area = *part.work.cut;
  cutwork::Wish wish{area.wrapped, area.weaves, 0, area.picots, area.fillings};
  const course::Thread* thread = course::find_thread(course, part.thread);
  wish.thickness = thickness_mm(thread ? *thread : course::Thread{}) / cloth::mm(1, course.cloth.count);
  wish.tall = course.cloth.count.tall();
  return wish;
}

/// Where a thread is begun: where no hidden way leads on, and where a length has not enough left for the next item. What is left of a
/// length is used where it is enough, two tails besides.
void begin_threads(const course::Course& course, PartRoute& route) {
  const course::Habits& habits = course.choices.habits;
  const std::string& kind = course.parts[route.part].kind;
  const auto own = habits.length_cm.find(kind);
  const double length_cm = own == habits.length_cm.end() ? habits.working_length_cm : own->second;
  const double mm_a_thread = cloth::mm(1, course.cloth.count) * (1 + habits.take_up);
  const double usable = 10 * (length_cm - 2 * habits.tail_cm) / mm_a_thread, tails = 10 * 2 * habits.tail_cm / mm_a_thread;
  double left = 0;
  for (std::size_t i = 0; i < route.items.size(); ++i) {
    const cutwork::RouteItem& item = route.items[i];
    const bool fresh = i == 0 || item.behind < 0;
    if (fresh) left -= i == 0 ? 0 : tails;
    const bool new_length = i == 0 || left < item.threads;
    if (fresh || new_length) route.starts.push_back(static_cast<int>(i));
    if (new_length) {
      route.lengths.push_back(static_cast<int>(i));
      left = usable;
    }
    left -= item.threads;
  }
}

void tell_not_filled(const course::Course& course, int part, const std::vector<cutwork::NotFilled>& all, std::vector<Finding>& findings) {
  constexpr std::size_t told = 20;
  for (std::size_t i = 0; i < std::min(told, all.size()); ++i) {
    const bool nowhere = all[i].why == cutwork::NotFilled::Why::no_opening;
    findings.push_back({.rule = nowhere ? "filling-nowhere" : "filling-does-not-fit",
                        .stops = false,
                        .part = part,
                        .lesson = 0,
                        .at = all[i].at,
                        .also_at = {},
                        .words = {{"part", course.parts[part].name},
                                  {"filling", std::string(stitch::filling_names()[static_cast<std::size_t>(all[i].kind)])}},
                        .numbers = {{"x", all[i].at.x}, {"y", all[i].at.y}, {"least", cutwork::least_side}, {"most", cutwork::most_side}},
                        .place = place_of(course.parts[part], "fillings")});
  }
}

/// Of first..last, what no section has yet.
std::vector<std::pair<int, int>> free_of(const std::vector<guide::Section>& sections, int first, int last) {
  std::vector<std::pair<int, int>> free;
  int from = first;
  for (const guide::Section& section : sections) {
    if (section.last < from) continue;
    if (section.first > last) break;
    if (section.first > from) free.emplace_back(from, section.first - 1);
    from = std::max(from, section.last + 1);
  }
  if (from <= last) free.emplace_back(from, last);
  return free;
}

Finding finding(const course::Course& course, const course::WorkItem& work, int lesson, std::string rule, int n) {
  return {.rule = std::move(rule), .stops = true, .part = work.part, .lesson = lesson, .at = {}, .also_at = {},
          .words = {{"work", work.text}, {"part", course.parts[work.part].name}}, .numbers = {{"n", n}, {"lesson", lesson}}, .place = work.place};
}

}  // namespace

double PartRoute::threads(int first, int last) const {
  double sum = 0;
  for (int i = first; i <= last; ++i) sum += items[static_cast<std::size_t>(i)].threads;
  return sum;
}

std::vector<PartRoute> routes_of(const course::Course& course, const std::vector<PartCutting>& cuttings, std::vector<Finding>& findings) {
  std::vector<PartRoute> routes;
  for (std::size_t c = 0; c < cuttings.size(); ++c) {
    const int part = cuttings[c].part;
    auto work = cutwork::plan_needlework(cuttings[c].cutting, wish_of(course, course.parts[part]));
    tell_not_filled(course, part, work.not_filled, findings);
    for (const course::Stage stage : {course::Stage::bars, course::Stage::fillings}) {
      PartRoute route{part, static_cast<int>(c), stage, {}, {}, {}, {}, {}};
      route.items = std::move(stage == course::Stage::bars ? work.bars : work.after);
      begin_threads(course, route);
      routes.push_back(std::move(route));
    }
  }
  return routes;
}

void take_route(const course::Course& course, const course::WorkItem& work, int lesson, int& item, PartRoute& route,
                std::vector<Finding>& findings) {
  if (work.part != route.part || (work.stage && *work.stage != route.stage) || route.items.empty()) return;
  const int n = static_cast<int>(route.items.size());
  if (work.last.value_or(n) > n) findings.push_back(finding(course, work, lesson, "stage-beyond", n));
  const int first = work.first.value_or(1) - 1, last = std::min(work.last.value_or(n), n) - 1;
  int kept = 0;
  for (const auto& [from, to] : free_of(route.sections, first, last)) {
    const auto at = std::find_if(route.sections.begin(), route.sections.end(), [from = from](const guide::Section& s) { return s.first > from; });
    const auto k = at - route.sections.begin();
    route.sections.insert(at, {lesson, item++, from, to});
    route.places.insert(route.places.begin() + k, work.place);
    kept += to - from + 1;
  }
  if (const int doubled = last - first + 1 - kept; doubled > 0) findings.push_back(finding(course, work, lesson, "stage-doubled", doubled));
}

std::vector<double> minutes_of(const course::Course& course, const PartRoute& route) {
  const double weave = 1 / speed(course, "bars"), loop = 1 / speed(course, "fillings");
  constexpr int loops = 4, legs_and_rounds = 7;
  std::vector<double> minutes;
  for (const cutwork::RouteItem& item : route.items) {
    double sum = item.weaves * weave;
    for (const bool picot : item.picots) sum += picot ? loop : 0;
    for (const cutwork::FillingWork& filling : item.fillings) sum += loop * (filling.kind == stitch::Filling::wheel ? legs_and_rounds : loops);
    minutes.push_back(sum);
  }
  return minutes;
}

std::string work_text(const course::Course& course, const PartRoute& route, int first, int last) {
  std::string text = course.parts[route.part].name + (route.stage == course::Stage::bars ? " / bars" : " / fillings");
  if (first > 0 || last + 1 < static_cast<int>(route.items.size())) text += fmt::format(" / {}..{}", first + 1, last + 1);
  return text;
}

void withhold_routes(Plan& plan) {
  for (PartRoute& route : plan.routes) {
    if (!plan.cuttings[static_cast<std::size_t>(route.cutting)].cutting.cuts.empty()) continue;
    for (auto* list : {&route.starts, &route.lengths}) list->clear();
    route.items.clear();
  }
}

}  // namespace plan
