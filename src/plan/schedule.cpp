#include "plan/schedule.h"

#include <fmt/format.h>

#include <algorithm>

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
  const int first = work.first.value_or(1) - 1;
  const int last = std::min(work.last.value_or(pass.stitches), pass.stitches) - 1;
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

}  // namespace

std::vector<PassOf> passes_of(const course::Course& course) {
  std::vector<PassOf> passes;
  for (std::size_t p = 0; p < course.parts.size(); ++p) {
    if (stopped(course.parts[p])) continue;
    const auto& work = course.parts[p].work;
    for (std::size_t k = 0; k < work.passes.size(); ++k)
      if (const int n = stitches_in(work.passes[k]); n > 0)
        passes.push_back({static_cast<int>(p), static_cast<int>(k) + 1, n, {}});
  }
  return passes;
}

void schedule_written(const course::Course& course, std::vector<PassOf>& passes, std::vector<Finding>& findings) {
  std::vector<std::vector<std::size_t>> of_part(course.parts.size());
  for (std::size_t i = 0; i < passes.size(); ++i) of_part[passes[i].part].push_back(i);
  Cursor cursor;
  for (const course::Lesson& lesson : course.lessons) {
    cursor.item = 0;
    for (const course::WorkItem& work : lesson.work) {
      if (work.part < 0) continue;
      for (const std::size_t i : of_part[work.part])
        if (!work.pass || *work.pass == passes[i].pass) take(course, work, passes[i], cursor, findings);
    }
    ++cursor.lesson;
  }
}

std::string work_text(const course::Course& course, const PassOf& pass, const guide::Section& section) {
  const course::Part& part = course.parts[pass.part];
  std::string text = part.name;
  if (part.work.passes.size() > 1) text += fmt::format(" / pass {}", pass.pass);
  if (section.first > 0 || section.last < pass.stitches - 1) text += fmt::format(" / {}..{}", section.first + 1, section.last + 1);
  return text;
}

double speed(const course::Course& course, std::string_view kind) {
  const auto& own = course.choices.habits.stitches_a_minute;
  if (const auto found = own.find(std::string(kind)); found != own.end()) return found->second;
  const stitch::Kind* known = stitch::find_kind(kind);
  return known ? known->stitches_a_minute : stitch::Kind{}.stitches_a_minute;
}

}  // namespace plan
