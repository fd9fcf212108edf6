// The thread of a student: front and back from the trails, the take-up, both tails of every length that is begun (a longer one where
// nothing is stitched yet), and a share for waste on top.
#include "plan/supplies.h"

#include <algorithm>
#include <cmath>

namespace plan {
namespace {

double length_mm(const course::Habits& habits, const std::string& kind) {
  const auto own = habits.length_cm.find(kind);
  return 10 * (own == habits.length_cm.end() ? habits.working_length_cm : own->second);
}

/// Where nothing is stitched yet a longer tail is left.
double tails_mm(const course::Habits& habits, const trail::Trail& trail, const std::vector<guide::Anchor>& anchors) {
  const auto waste_tails = std::count_if(anchors.begin(), anchors.end(), [](const guide::Anchor& a) { return a.start && a.later; });
  const double longer = std::max(0.0, habits.first_tail_cm - habits.tail_cm);
  return 10 * (2 * habits.tail_cm * static_cast<double>(trail.ends.size()) + longer * static_cast<double>(waste_tails));
}

void add_trail(const course::Course& course, const Plan& plan, std::size_t t, Supplies::Thread& all) {
  const course::Habits& habits = course.choices.habits;
  const trail::Trail& trail = plan.trails[t].trail;
  const double front = cloth::mm(trail.front_threads, course.cloth.count), back = cloth::mm(trail.back_threads, course.cloth.count);
  all.front_mm += front;
  all.back_mm += back;
  all.take_up_mm += (front + back) * habits.take_up;
  all.tails_mm += tails_mm(habits, trail, plan.anchors[t]);
  all.lengths += static_cast<int>(trail.ends.size());
  all.cut_mm += length_mm(habits, course.parts[plan.trails[t].part].kind) * static_cast<double>(trail.ends.size());
}

/// Bars and fillings: all of the path lies on both faces, and counts as front.
void add_route(const course::Course& course, const PartRoute& route, Supplies::Thread& all) {
  const course::Habits& habits = course.choices.habits;
  if (route.items.empty()) return;
  const double path = cloth::mm(route.threads(0, static_cast<int>(route.items.size()) - 1), course.cloth.count);
  all.front_mm += path;
  all.take_up_mm += path * habits.take_up;
  all.tails_mm += 10 * 2 * habits.tail_cm * static_cast<double>(route.starts.size());
  all.lengths += static_cast<int>(route.lengths.size());
  all.cut_mm += length_mm(habits, course.parts[route.part].kind) * static_cast<double>(route.lengths.size());
}

Supplies::Thread thread_for(const course::Course& course, const Plan& plan, int index) {
  Supplies::Thread all;
  all.names = {course.threads[index].name};
  all.thread = index;
  all.waste = course.choices.habits.waste;
  for (std::size_t t = 0; t < plan.trails.size(); ++t)
    if (course.parts[plan.trails[t].part].thread == course.threads[index].name && !plan.trails[t].trail.stitches.empty())
      add_trail(course, plan, t, all);
  for (const PartRoute& route : plan.routes)
    if (course.parts[route.part].thread == course.threads[index].name) add_route(course, route, all);
  return all;
}

/// The same in the shop.
bool same(const course::Thread& a, const course::Thread& b) {
  return a.pearl == b.pearl && a.tex == b.tex && a.colour == b.colour && course::ball_metres(a) == course::ball_metres(b) &&
         course::form(a) == course::form(b) && a.price == b.price && a.currency == b.currency;
}

void merge(const Supplies::Thread& from, Supplies::Thread& into) {
  into.names.insert(into.names.end(), from.names.begin(), from.names.end());
  into.front_mm += from.front_mm;
  into.back_mm += from.back_mm;
  into.take_up_mm += from.take_up_mm;
  into.tails_mm += from.tails_mm;
  into.lengths += from.lengths;
  into.cut_mm += from.cut_mm;
}

void add_cost(const std::string& price, const std::string& currency, int number, std::map<std::string, base::Exact>& sums) {
  if (const auto one = cost(price, number)) sums[currency] = sums[currency].plus(*one);
}

}  // namespace

void supplies_of(const course::Course& course, Plan& plan) {
  Supplies& supplies = plan.supplies;
  supplies.sets = course.students + course.spares;
  supplies.tacking_thread = !plan.marks.empty();
  for (std::size_t i = 0; i < course.threads.size(); ++i) {
    const Supplies::Thread one = thread_for(course, plan, static_cast<int>(i));
    if (one.lengths == 0) continue;
    supplies.needles.push_back(course::needle_size(course.threads[i]));
    const auto like = std::find_if(supplies.threads.begin(), supplies.threads.end(),
                                   [&](const Supplies::Thread& t) { return same(course.threads[t.thread], course.threads[i]); });
    like == supplies.threads.end() ? supplies.threads.push_back(one) : merge(one, *like);
  }
  auto& needles = supplies.needles;
  std::sort(needles.begin(), needles.end());
  needles.erase(std::unique(needles.begin(), needles.end()), needles.end());
}

std::optional<int> balls(const course::Course& course, const Supplies::Thread& thread, int sets) {
  const auto metres = course::ball_metres(course.threads[thread.thread]);
  if (!metres || *metres <= 0) return std::nullopt;
  constexpr double rounding = 1e-9;  // a sum that is a whole number of balls is not one ball more
  return static_cast<int>(std::ceil(thread.metres_to_buy() * sets / *metres - rounding));
}

std::optional<base::Exact> cost(const std::string& price, int number) {
  const auto one = base::Exact::parse(price);
  return one ? std::optional(one->times(static_cast<unsigned>(number))) : std::nullopt;
}

std::map<std::string, base::Exact> costs(const course::Course& course, const Plan& plan, int sets) {
  std::map<std::string, base::Exact> sums;
  for (const Supplies::Thread& needed : plan.supplies.threads) {
    const course::Thread& thread = course.threads[needed.thread];
    if (const auto number = balls(course, needed, sets)) add_cost(thread.price, thread.currency, *number, sums);
  }
  add_cost(course.cloth.price, course.cloth.currency, sets, sums);
  return sums;
}

}  // namespace plan
