// The needle follows the scissors: bars are worked once their openings are cut, fillings once the bars round them are worked, each bar and
// filling once and in the order of the route (common practice, no source).
#include <algorithm>

#include "check/rules.h"

namespace check {
namespace {

using Item = std::pair<int, int>;  ///< lesson, place among its work

Item when(const guide::Section& section) { return {section.lesson, section.item}; }

std::string_view noun(const plan::PartRoute& route) { return route.stage == course::Stage::bars ? "bars" : "fillings"; }

Snag about(const course::Course& course, const plan::PartRoute& route, std::string rule, std::size_t section) {
  const course::Part& part = course.parts[route.part];
  const guide::Section& in = route.sections[section];
  Snag snag{.rule = std::move(rule), .severity = Severity::stop, .place = part.place, .lesson = in.lesson, .part = route.part, .at = {}, .also_at = {},
            .words = {{"part", part.name}}, .numbers = {{"lesson", in.lesson}, {"first", in.first + 1}, {"last", in.last + 1}}};
  if (route.places.size() == route.sections.size()) snag.place = route.places[section];
  if (static_cast<std::size_t>(in.first) < route.items.size()) snag.at = route.items[static_cast<std::size_t>(in.first)].from;
  return snag;
}

/// Bars, or fillings of openings that have none, before the cloth is cut.
void before_cutting(const course::Course& course, const plan::Plan& plan, const plan::PartRoute& route, Snags& snags) {
  const plan::PartCutting& cut = plan.cuttings[static_cast<std::size_t>(route.cutting)];
  if (cut.lesson == 0) return;
  for (std::size_t s = 0; s < route.sections.size(); ++s) {
    if (Item(cut.lesson, cut.item) < when(route.sections[s])) continue;
    Snag snag = about(course, route, std::string(noun(route)) + "-before-cutting", s);
    snag.numbers["before"] = cut.lesson;
    snags.push_back(std::move(snag));
  }
}

/// A later stretch before an earlier one.
void out_of_turn(const course::Course& course, const plan::PartRoute& route, Snags& snags) {
  for (std::size_t s = 1; s < route.sections.size(); ++s) {
    if (when(route.sections[s - 1]) < when(route.sections[s])) continue;
    Snag snag = about(course, route, std::string(noun(route)) + "-out-of-turn", s);
    snag.numbers["before"] = route.sections[s - 1].lesson;
    snags.push_back(std::move(snag));
  }
}

void forgotten(const course::Course& course, const plan::PartRoute& route, Snags& snags) {
  int next = 0;
  for (const guide::Section& section : route.sections) {
    if (section.first > next) break;
    next = std::max(next, section.last + 1);
  }
  const auto n = static_cast<int>(route.items.size());
  if (next >= n) return;
  int last = n - 1;
  for (const guide::Section& section : route.sections)
    if (section.first > next) last = std::min(last, section.first - 1);
  snags.push_back({.rule = std::string(noun(route)) + "-in-no-lesson", .severity = Severity::stop, .place = course.parts[route.part].place, .lesson = 0,
                   .part = route.part, .at = route.items[static_cast<std::size_t>(next)].from, .also_at = {},
                   .words = {{"part", course.parts[route.part].name}}, .numbers = {{"n", last - next + 1}, {"first", next + 1}, {"last", last + 1}}});
}

/// Fillings before one of the bars round their opening.
void before_bars(const course::Course& course, const plan::Plan& plan, const plan::PartRoute& bars, const plan::PartRoute& fillings, Snags& snags) {
  if (bars.items.empty() || fillings.items.empty()) return;
  const auto& all = plan.cuttings[static_cast<std::size_t>(bars.cutting)].cutting.bars;
  std::vector<Item> done(plan.cuttings[static_cast<std::size_t>(bars.cutting)].cutting.openings.size(), Item{0, 0});
  for (const guide::Section& section : bars.sections)
    for (int i = section.first; i <= section.last; ++i)
      for (const int opening : all[static_cast<std::size_t>(bars.items[static_cast<std::size_t>(i)].bar)].openings)
        done[static_cast<std::size_t>(opening)] = std::max(done[static_cast<std::size_t>(opening)], when(section));
  for (std::size_t s = 0; s < fillings.sections.size(); ++s)
    for (int i = fillings.sections[s].first; i <= fillings.sections[s].last; ++i) {
      const auto opening = static_cast<std::size_t>(fillings.items[static_cast<std::size_t>(i)].fillings[0].opening);
      if (done[opening] < when(fillings.sections[s])) continue;
      Snag snag = about(course, fillings, "fillings-before-bars", s);
      snag.at = fillings.items[static_cast<std::size_t>(i)].from;
      snag.numbers["before"] = done[opening].first;
      snags.push_back(std::move(snag));
      break;
    }
}

}  // namespace

void bars_order(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  for (std::size_t r = 0; r < plan.routes.size(); ++r) {
    const plan::PartRoute& route = plan.routes[r];
    before_cutting(course, plan, route, snags);
    out_of_turn(course, route, snags);
    if (!course.lessons.empty() && plan.cuttings[static_cast<std::size_t>(route.cutting)].lesson > 0) forgotten(course, route, snags);
    if (route.stage == course::Stage::fillings && r > 0) before_bars(course, plan, plan.routes[r - 1], route, snags);
  }
}

}  // namespace check
