#include "plan/counts.h"

#include <algorithm>

namespace plan {
namespace {

/// A stretch of a trail on one leg.
struct Stretch {
  bool slant = false;
  int leg = 0;
  std::vector<int> numbers;  ///< stitches a row, or blocks
};

const stitch::Pass& pass_of(const course::Course& course, const guide::PlacedTrail& trail) {
  return course.parts[trail.part].work.pass(trail.pass, trail.place);
}

std::vector<Stretch> row_stretches(const guide::PlacedTrail& trail, const guide::Section& section) {
  std::vector<Stretch> stretches;
  for (int k = section.first; k <= section.last; ++k) {
    const trail::Worked& w = trail.trail.stitches[k];
    if (stretches.empty() || stretches.back().leg != w.leg)
      stretches.push_back({w.up.x != w.down.x && w.up.y != w.down.y, w.leg, {0, 0}});
    ++stretches.back().numbers[w.run == 0 ? 0 : 1];
  }
  return stretches;
}

int blocks_in(const guide::PlacedTrail& trail, const guide::Section& section) {
  int blocks = 0, run = -1;
  for (int k = section.first; k <= section.last; ++k)
    if (trail.trail.stitches[k].run != run) {
      run = trail.trail.stitches[k].run;
      ++blocks;
    }
  return blocks;
}

/// Stretches with equal numbers become one line; the line says whether they are all of their sort.
void add_grouped(CountLine::What what, int trail, const std::vector<std::vector<int>>& all, std::vector<CountLine>& lines) {
  std::vector<CountLine> grouped;
  for (const auto& numbers : all) {
    const auto same = std::find_if(grouped.begin(), grouped.end(), [&](const CountLine& l) { return l.numbers == numbers; });
    if (same == grouped.end())
      grouped.push_back({what, trail, numbers, 1, true});
    else
      ++same->legs;
  }
  for (CountLine& line : grouped) line.each = grouped.size() == 1;
  lines.insert(lines.end(), grouped.begin(), grouped.end());
}

void rows(const std::vector<guide::PlacedTrail>& trails, int t, int s, std::vector<CountLine>& lines) {
  const guide::PlacedTrail& trail = trails[t];
  const guide::Section& section = trail.sections[s];
  const std::vector<Stretch> stretches = row_stretches(trail, section);
  const bool whole = section.first == 0 && section.last == static_cast<int>(trail.trail.stitches.size()) - 1;
  const bool round = whole && trail.trail.closed && stretches.size() > 1;
  std::vector<int> total{0, 0};
  std::vector<std::vector<int>> straight, slant;
  for (std::size_t i = 0; i < stretches.size(); ++i) {
    for (int row : {0, 1}) total[row] += stretches[i].numbers[row];
    const bool first = i == 0 && (round || section.first > 0), last = i + 1 == stretches.size() && (round || !whole);
    if (first && stretches.size() > 1)
      lines.push_back({CountLine::to_first_corner, t, stretches[i].numbers, 1, true});
    else if (!last)
      (stretches[i].slant ? slant : straight).push_back(stretches[i].numbers);
  }
  add_grouped(CountLine::straight_side, t, straight, lines);
  add_grouped(CountLine::slant, t, slant, lines);
  if (round || (!whole && stretches.size() > 1))
    lines.push_back({round ? CountLine::last_to_start : CountLine::after_last_corner, t, stretches.back().numbers, 1, true});
  const bool alone = lines.size() == 1 && lines[0].legs == 1;
  if (!alone || !whole)
    lines.push_back({round ? CountLine::whole_round : whole ? CountLine::whole_run : CountLine::section_total, t, total, 1, true});
}

/// Stitches fanned at each outer corner, beside those of the sides.
void fans(const trail::Trail& trail, int t, std::vector<CountLine>& lines) {
  std::vector<std::vector<int>> all;
  for (std::size_t k = 0; k < trail.stitches.size(); ++k) {
    if (!trail.stitches[k].over) continue;
    if (k == 0 || !trail.stitches[k - 1].over) all.push_back({0});
    ++all.back()[0];
  }
  add_grouped(CountLine::fanned, t, all, lines);
}

void blocks(const course::Course& course, const std::vector<guide::PlacedTrail>& trails, int t, int s, std::vector<CountLine>& lines) {
  const guide::PlacedTrail& trail = trails[t];
  const guide::Section& section = trail.sections[s];
  const bool whole = section.first == 0 && section.last == static_cast<int>(trail.trail.stitches.size()) - 1;
  const bool looped = trail.trail.order == stitch::Order::looped;
  const bool by_stitch = looped || stitch::stitch_by_stitch(course.parts[trail.part].work.pass(trail.pass, trail.place));  // stitches are counted
  if (whole) {
    std::vector<std::vector<int>> flights;
    for (const stitch::Leg& leg : course.parts[trail.part].work.legs)
      if (leg.place == trail.place) flights.push_back({leg.blocks > 0 ? leg.blocks : leg.stitches});
    if (flights.size() > 1) add_grouped(CountLine::flight, t, flights, lines);
    if (looped && flights.size() > 1) fans(trail.trail, t, lines);
  }
  lines.push_back({!whole ? CountLine::section_total : trail.trail.closed ? CountLine::whole_round : CountLine::whole_run, t,
                   {by_stitch ? section.last - section.first + 1 : blocks_in(trail, section)}, 1, true});
}

}  // namespace

std::vector<CountLine> counts_of(const course::Course& course, const std::vector<guide::PlacedTrail>& trails,
                                 const std::vector<std::pair<int, int>>& sections) {
  std::vector<CountLine> all;
  for (const auto& [t, s] : sections) {
    std::vector<CountLine> lines;
    if (pass_of(course, trails[t]).order == stitch::Order::turn_about)
      rows(trails, t, s, lines);
    else
      blocks(course, trails, t, s, lines);
    all.insert(all.end(), lines.begin(), lines.end());
  }
  return all;
}

}  // namespace plan
