#include "plan/cuttings.h"

#include <algorithm>

#include "plan/ready.h"
#include "plan/together.h"

namespace plan {
namespace {

bool contains(const std::vector<std::string>& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

cutwork::Request request_of(const course::Course& course, int cut_part) {
  const stitch::CutArea& area = *course.parts[cut_part].work.cut;
  cutwork::Request request;
  request.leave = area.leave;
  request.bar_threads = area.bar_threads;
  request.zones = area.zones;
  for (int p = 0; p < static_cast<int>(course.parts.size()); ++p) {
    const course::Part& part = course.parts[p];
    if (!contains(area.within, part.name)) {
      for (const cloth::Stitch& stitch : part.work.stitches) request.surface.push_back({stitch, p});
      continue;
    }
    for (const stitch::Feature& feature : part.work.features)
      if (stitch::holds_cuts(feature.shape)) request.blocks.push_back({feature.stitches, p});
  }
  return request;
}

std::optional<cloth::Box> box_of(const cutwork::Cutting& cutting) {
  std::optional<cloth::Box> box;
  for (const cutwork::Span& span : cutting.withdrawn)
    for (const int at : {span.from, span.to})
      for (const int line : {span.thread, span.thread + 1}) {
        const cloth::Hole hole = span.axis == cutwork::Axis::v ? cloth::Hole{line, at} : cloth::Hole{at, line};
        if (!box) box = cloth::Box{hole.x, hole.y, hole.x, hole.y};
        box->grow(hole);
      }
  return box;
}

class Held {
 public:
  Held(const course::Course& course, const Plan& plan) : course_(course), plan_(plan) {}

  void look(PartCutting& cut) const {
    const auto box = box_of(cut.cutting);
    const stitch::CutArea& area = *course_.parts[cut.part].work.cut;
    for (int p = 0; p < static_cast<int>(course_.parts.size()); ++p) {
      const course::Part& part = course_.parts[p];
      const bool holds = contains(area.within, part.name);
      if (holds && stopped(p)) cut.cutting = withheld(cut.cutting);
      if (part.work.stitches.empty() || !(holds || (box && lies_in(part, box->widened(near_by))))) continue;
      late(cut, p);
    }
    if (cut.lesson == 0 || !cut.late.empty()) cut.cutting = withheld(cut.cutting);
  }

 private:
  static bool lies_in(const course::Part& part, const cloth::Box& box) {
    return std::any_of(part.work.stitches.begin(), part.work.stitches.end(), [&](const auto& s) { return cloth::touches(s, box); });
  }

  static cutwork::Cutting withheld(const cutwork::Cutting& cutting) {
    cutwork::Cutting none;
    none.problems = cutting.problems;
    none.areas = cutting.areas;
    return none;
  }

  /// Does a stop stand against the part?
  bool stopped(int p) const {
    const auto& doubts = course_.parts[p].work.doubts;
    const auto& findings = plan_.findings;
    return std::any_of(doubts.begin(), doubts.end(), [](const auto& d) { return d.stops; }) ||
           std::any_of(findings.begin(), findings.end(), [&](const auto& f) { return f.stops && f.part == p; });
  }

  /// Adds the part's first stretch of work that does not come before the cutting, in its own order.
  void late(PartCutting& cut, int p) const {
    const guide::When when{cut.lesson, cut.item, 0};
    bool any = false;
    for (const guide::PlacedTrail& trail : plan_.trails) {
      if (trail.part != p) continue;
      any = true;
      int next = 0;
      for (const guide::Section& section : trail.sections) {
        const bool before = guide::When{section.lesson, section.item, 0} < when;
        if (section.first != next || !before) return tell(cut, p, before ? 0 : section.lesson, trail, std::min(next, section.first));
        next = section.last + 1;
      }
      if (next < static_cast<int>(trail.trail.stitches.size())) return tell(cut, p, 0, trail, next);
    }
    if (!any) cut.late.push_back({p, 0, course_.parts[p].work.stitches[0].a});
  }

  static void tell(PartCutting& cut, int p, int lesson, const guide::PlacedTrail& trail, int stitch) {
    cut.late.push_back({p, lesson, trail.trail.stitches[stitch].up});
  }

  const course::Course& course_;
  const Plan& plan_;
};

}  // namespace

std::vector<PartCutting> cuttings_of(const course::Course& course) {
  std::vector<PartCutting> cuttings;
  std::vector<cutwork::Request> requests;
  for (int p = 0; p < static_cast<int>(course.parts.size()); ++p)
    if (course.parts[p].work.cut) {
      PartCutting cut;
      cut.part = p;
      cut.place = course.parts[p].place;
      requests.push_back(request_of(course, p));
      cut.cutting = cutwork::plan_cutting(requests.back());
      cut.blocks = requests.back().blocks;
      cuttings.push_back(std::move(cut));
    }
  hold_together(requests, cuttings);
  return cuttings;
}

void plan_cuttings(const course::Course& course, Plan& plan) {
  const Held held(course, plan);
  for (PartCutting& cut : plan.cuttings) {
    held.look(cut);
    cut.ready = ready_to_cut(course, plan, cut);
  }
}

}  // namespace plan
