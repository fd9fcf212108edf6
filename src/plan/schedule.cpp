#include "plan/schedule.h"

#include <fmt/format.h>

#include <algorithm>

#include "plan/routes.h"

namespace plan {
namespace {

int stitches_in(const stitch::Pass& pass) {
  int n = 0;
  for (const stitch::Run& run : pass.runs) n += static_cast<int>(run.stitches.size());
  return n;
}

bool stopped(const course::Part& part) {
  return std::any_of(part.work.doubts.begin(), part.work.doubts.end(), [](const stitch::Doubt& d) { return d.stops; });
}

/// The parts of first..last that no section has yet.
std::vector<std::pair<int, int>> free_of(const PassOf& pass, int first, int last) {
  std::vector<std::pair<int, int>> free;
  int from = first;
  for (const guide::Section& section : pass.sections) {
    if (section.last < from) continue;
    if (section.first > last) break;
    if (section.first > from) free.emplace_back(from, section.first - 1);
    from = std::max(from, section.last + 1);
  }
  if (from <= last) free.emplace_back(from, last);
  return free;
}

void insert(PassOf& pass, guide::Section section) {
  const auto place = std::find_if(pass.sections.begin(), pass.sections.end(), [&](const guide::Section& s) { return s.first > section.first; });
  pass.sections.insert(place, section);
}

struct Cursor {
  int lesson = 1;
  int item = 0;
};

void take(const course::Course& course, const course::WorkItem& work, PassOf& pass, Cursor& cursor, std::vector<Finding>& findings) {
  const int first = std::max(0, work.first.value_or(1) - 1 - pass.before);
  const int last = std::min(work.last.value_or(pass.before + pass.stitches) - pass.before, pass.stitches) - 1;
  if (last < first) return;
  const auto free = free_of(pass, first, last);
  int kept = 0;
  for (const auto& [from, to] : free) {
    insert(pass, {cursor.lesson, cursor.item++, from, to});
    kept += to - from + 1;
  }
  const int doubled = last - first + 1 - kept;
  if (doubled <= 0) return;
  Finding finding{.rule = "work-doubled", .stops = true, .part = pass.part, .lesson = cursor.lesson, .at = {}, .also_at = {},
                  .words = {{"work", work.text}, {"part", course.parts[pass.part].name}}, .numbers = {{"n", doubled}}, .place = work.place};
  findings.push_back(std::move(finding));
}

void take_cutting(const course::Course& course, const course::WorkItem& work, PartCutting& cut, Cursor& cursor, std::vector<Finding>& findings) {
  if (cut.lesson == 0) {
    cut.lesson = cursor.lesson;
    cut.item = cursor.item++;
    cut.place = work.place;
    return;
  }
  findings.push_back({.rule = "work-doubled", .stops = true, .part = cut.part, .lesson = cursor.lesson, .at = {}, .also_at = {},
                      .words = {{"work", work.text}, {"part", course.parts[cut.part].name}}, .numbers = {{"n", static_cast<int>(cut.cutting.cuts.size())}},
                      .place = work.place});
}

}  // namespace

std::vector<PassOf> passes_of(const course::Course& course) {
  std::vector<PassOf> passes;
  for (std::size_t p = 0; p < course.parts.size(); ++p) {
    if (stopped(course.parts[p])) continue;
    const auto& work = course.parts[p].work;
    for (int k = 1; k <= work.passes_a_place(); ++k)
      for (int place = 0, before = 0; place < work.places; ++place)
        if (const int n = stitches_in(work.pass(k, place)); n > 0) {
          passes.push_back({static_cast<int>(p), k, place, n, before, {}});
          before += n;
        }
  }
  return passes;
}

void schedule_written(const course::Course& course, std::vector<PassOf>& passes, Plan& plan, Which which) {
  std::vector<std::vector<std::size_t>> of_part(course.parts.size());
  for (std::size_t i = 0; i < passes.size(); ++i) of_part[passes[i].part].push_back(i);
  Cursor cursor;
  for (const course::Lesson& lesson : course.lessons) {
    cursor.item = 0;
    for (const course::WorkItem& work : lesson.work) {
      if (work.part < 0 || (which == Which::locked && !lesson.locked)) continue;
      for (PartCutting& cut : plan.cuttings)
        if (cut.part == work.part && work.stage.value_or(course::Stage::cut) == course::Stage::cut) take_cutting(course, work, cut, cursor, plan.findings);
      for (PartRoute& route : plan.routes) take_route(course, work, cursor.lesson, cursor.item, route, plan.findings);
      for (const std::size_t i : of_part[work.part])
        if (!work.pass || *work.pass == passes[i].pass) take(course, work, passes[i], cursor, plan.findings);
    }
    ++cursor.lesson;
  }
}

namespace {

int all_stitches(const stitch::Work& work, int pass) {
  int n = 0;
  for (int place = 0; place < work.places; ++place) n += stitches_in(work.pass(pass, place));
  return n;
}

}  // namespace

std::string work_text(const course::Course& course, const PassOf& pass, int first, int last) {
  const course::Part& part = course.parts[pass.part];
  std::string text = part.name;
  if (part.work.passes_a_place() > 1) text += fmt::format(" / pass {}", pass.pass);
  if (first > 0 || last < all_stitches(part.work, pass.pass) - 1) text += fmt::format(" / {}..{}", first + 1, last + 1);
  return text;
}

double speed(const course::Course& course, std::string_view kind) {
  const auto& own = course.choices.habits.stitches_a_minute;
  if (const auto found = own.find(std::string(kind)); found != own.end()) return found->second;
  const auto& assumed = course.choices.habits.assumed_speeds;
  if (const auto found = assumed.find(std::string(kind)); found != assumed.end()) return found->second;
  const stitch::Kind* known = stitch::find_kind(kind);
  return known ? known->stitches_a_minute : stitch::Kind{}.stitches_a_minute;
}

}  // namespace plan
