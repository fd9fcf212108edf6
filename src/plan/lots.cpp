#include "plan/lots.h"

#include <algorithm>

#include "plan/finishing.h"

namespace plan {
namespace {

std::vector<int> lessons_of_items(const std::vector<guide::Section>& sections, int items) {
  std::vector<int> lesson(static_cast<std::size_t>(items), 0);
  for (const guide::Section& section : sections) std::fill(lesson.begin() + section.first, lesson.begin() + section.last + 1, section.lesson);
  return lesson;
}

}  // namespace

std::vector<std::size_t> Lots::in_craft_order() const {
  std::vector<std::vector<std::size_t>> of_part(course_.parts.size());
  for (std::size_t i = 0; i < passes_.size(); ++i) of_part[passes_[i].part].push_back(i);
  for (std::size_t c = 0; c < plan_.cuttings.size(); ++c) of_part[plan_.cuttings[c].part].push_back(passes_.size() + c);
  for (std::size_t r = 0; r < plan_.routes.size(); ++r) of_part[plan_.routes[r].part].push_back(first_route() + r);
  std::vector<std::size_t> order;
  for (const int part : craft_order(course_)) order.insert(order.end(), of_part[part].begin(), of_part[part].end());
  return order;
}

void Lots::remember(LayOut& lay_out) const {
  if (course_.lessons.empty()) return;
  std::vector<PassOf> before = passes_of(course_);
  Plan written;
  written.cuttings = plan_.cuttings;
  written.routes = plan_.routes;
  for (PartCutting& cut : written.cuttings) cut.lesson = 0;
  for (PartRoute& route : written.routes) route.sections.clear(), route.places.clear();
  schedule_written(course_, before, written);
  for (std::size_t i = 0; i < before.size(); ++i) lay_out.remember(static_cast<int>(i), lessons_of_items(before[i].sections, before[i].stitches));
  for (std::size_t c = 0; c < written.cuttings.size(); ++c) lay_out.remember(static_cast<int>(before.size() + c), {written.cuttings[c].lesson});
  for (std::size_t r = 0; r < written.routes.size(); ++r)
    lay_out.remember(static_cast<int>(first_route() + r), lessons_of_items(written.routes[r].sections, static_cast<int>(written.routes[r].items.size())));
  for (const Finishing& step : finishing_written(course_, false)) lay_out.remember(lot_of(step.finish), {step.lesson});
}

void Lots::add_preparing(LayOut& lay_out) const {
  const bool locked = !course_.lessons.empty() && course_.lessons.front().locked;
  if (course_.choices.habits.prepare_minutes <= 0 || locked) return;
  lay_out.between(1, 1);
  lay_out.add_step(lot_of_preparing(), course_.choices.habits.prepare_minutes);
  lay_out.between(1, course::lesson_limit + 1);
}

std::vector<Finish> Lots::free_finishing() const {
  std::vector<Finish> free;
  const auto locked = finishing_written(course_, true);
  for (const Finish finish : {Finish::wash, Finish::cut_out})
    if (finishing_wanted(course_, finish) && std::none_of(locked.begin(), locked.end(), [&](const Finishing& f) { return f.finish == finish; }))
      free.push_back(finish);
  return free;
}

/// So far only what is locked has lessons.
int Lots::last_locked_work() const {
  int last = 1;
  const auto look = [&](const std::vector<guide::Section>& sections) {
    for (const guide::Section& section : sections) last = std::max(last, section.lesson);
  };
  for (const PassOf& pass : passes_) look(pass.sections);
  for (const PartRoute& route : plan_.routes) look(route.sections);
  for (const PartCutting& cut : plan_.cuttings) last = std::max(last, cut.lesson);
  return last;
}

void Lots::add_finishing(LayOut& lay_out) const {
  const int last = last_locked_work();
  for (const Finish finish : free_finishing()) {
    lay_out.between(last, course::lesson_limit + 1);
    lay_out.add_step(lot_of(finish), minutes_of(course_, finish));
  }
}

std::vector<Finishing> Lots::finishing(const LayOut& lay_out) const {
  std::vector<Finishing> all = finishing_written(course_, true);
  for (const Finish finish : free_finishing()) {
    const guide::When when = lay_out.when(lot_of(finish));
    all.push_back({finish, when.lesson, when.item});
  }
  std::stable_sort(all.begin(), all.end(), [](const Finishing& a, const Finishing& b) { return std::pair(a.lesson, a.item) < std::pair(b.lesson, b.item); });
  return all;
}

}  // namespace plan
