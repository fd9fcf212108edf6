#include "picture/stitches.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "picture/styles.h"

namespace picture {
namespace {

constexpr double ridge_thinner = 0.8;  // so that the holes on it are seen
constexpr double doubled_wider = 1.25;  // two threads side by side in one hole

bool near_to(const cloth::Stitch& s, const cloth::Box& box) {
  return std::max(s.a.x, s.b.x) >= box.x0 && std::min(s.a.x, s.b.x) <= box.x1 && std::max(s.a.y, s.b.y) >= box.y0 &&
         std::min(s.a.y, s.b.y) <= box.y1;
}

Stage stage_of(const Moment& moment, int trail, const guide::Section* section, int k) {
  if (!section || section->lesson > moment.lesson) return Stage::later;
  if (section->lesson < moment.lesson) return Stage::before;
  if (moment.item < 0) return Stage::now;
  if (section->item < moment.item || (section->item == moment.item && trail < moment.trail)) return Stage::before;
  return section->item == moment.item && trail == moment.trail && k <= moment.last ? Stage::now : Stage::later;
}

class Gatherer {
 public:
  Gatherer(const course::Course& course, const cloth::Box& box) : box_(box) {
    for (std::size_t part = 0; part < course.parts.size(); ++part)
      for (const Stage stage : {Stage::later, Stage::before, Stage::now})
        widths_.push_back(thread_width(course, static_cast<int>(part), stage));
  }

  /// Thread from loop to loop of an edge.
  void add_ridge(const cloth::Stitch& between, Stage stage, int part) {
    if (between.a != between.b && near_to(between, box_)) seen_.push_back({between.normal(), stage, false, ridge_thinner * width(part, stage), part, true});
  }

  void add(const cloth::Stitch& stitch, Stage stage, int part) {
    if (!near_to(stitch, box_)) return;
    const cloth::Stitch normal = stitch.normal();
    const auto [found, fresh] = place_.try_emplace(normal, seen_.size());
    if (fresh) {
      seen_.push_back({normal, stage, false, width(part, stage), part});
      return;
    }
    Seen& there = seen_[found->second];
    if (there.stage != Stage::later && stage != Stage::later && !there.doubled) {
      there.doubled = true;
      there.width *= doubled_wider;
    }
    if (stage <= there.stage) return;
    there.stage = stage;
    there.part = part;
    there.width = width(part, stage) * (there.doubled ? doubled_wider : 1);
  }
  /// Rays, many of which meet in one hole, are drawn thinner, so that each is seen.
  std::vector<Seen> take() {
    constexpr int many = 8;
    constexpr double thinner = 0.62;
    std::unordered_map<cloth::Hole, int> ends;  // never walked through
    for (const Seen& s : seen_) ++ends[s.stitch.a], ++ends[s.stitch.b];
    for (Seen& s : seen_)
      if (s.stage != Stage::later && (ends[s.stitch.a] >= many || ends[s.stitch.b] >= many)) s.width *= thinner;
    return std::move(seen_);
  }

 private:
  double width(int part, Stage stage) const { return widths_[static_cast<std::size_t>(part) * 3 + static_cast<std::size_t>(stage)]; }

  std::vector<double> widths_;  ///< of each part, by stage
  cloth::Box box_;
  std::vector<Seen> seen_;
  std::unordered_map<cloth::Stitch, std::size_t> place_;  // never walked through
};

/// Does the ridge of an edge lead to this stitch from the one before? A change of thread leaves no gap; a stretch worked elsewhere does.
bool joined(const trail::Trail& trail, int k) {
  if (k == 0) return trail.closed;
  const trail::Worked &before = trail.stitches[k - 1], &now = trail.stitches[k];
  return cloth::squared(before.up, now.up) <= cloth::squared(now.up, now.down);
}

void add_trail(const plan::Plan& plan, int t, const Moment& moment, Gatherer& gatherer) {
  const guide::PlacedTrail& trail = plan.trails[t];
  const bool looped = trail.trail.order == stitch::Order::looped;
  const int n = static_cast<int>(trail.trail.stitches.size());
  const Stage closing = trail.sections.empty() ? Stage::later : stage_of(moment, t, &trail.sections.back(), n - 1);
  std::size_t s = 0;
  for (int k = 0; k < n; ++k) {
    while (s < trail.sections.size() && trail.sections[s].last < k) ++s;
    const bool inside = s < trail.sections.size() && trail.sections[s].first <= k;
    const trail::Worked& w = trail.trail.stitches[k];
    const Stage stage = stage_of(moment, t, inside ? &trail.sections[s] : nullptr, k);
    gatherer.add({w.up, w.down}, stage, trail.part);
    if (looped && joined(trail.trail, k)) gatherer.add_ridge({trail.trail.stitches[k == 0 ? n - 1 : k - 1].up, w.up}, k == 0 ? closing : stage, trail.part);
  }
}

/// Tex of pearl cotton by size, from makers' labels by memory.
double tex_of(const course::Thread& thread) {
  if (thread.tex) return *thread.tex;
  switch (thread.pearl.value_or(5)) {
    case 3:
      return 333;
    case 8:
      return 125;
    case 12:
      return 83;
    default:
      return 200;
  }
}

}  // namespace

double thread_width(const course::Course& course, int part, Stage stage) {
  if (stage == Stage::later) return ratio::later;
  const course::Thread* thread = course::find_thread(course, course.parts[part].thread);
  const double true_width = 0.62 * std::sqrt((thread ? tex_of(*thread) : 200) / 200) / 22 * (25.4 / cloth::mm_a_thread(course.cloth.count));
  return stage == Stage::now ? std::clamp(0.65 * true_width, 0.26, ratio::widest_now) : std::clamp(true_width, 0.38, ratio::widest_before);
}

std::vector<Seen> stitches_in(const course::Course& course, const plan::Plan& plan, const cloth::Box& box, const Moment& moment) {
  Gatherer gatherer(course, box);
  std::vector<char> has_trail(course.parts.size(), 0);
  for (std::size_t t = 0; t < plan.trails.size(); ++t) {
    add_trail(plan, static_cast<int>(t), moment, gatherer);
    has_trail[plan.trails[t].part] = 1;
  }
  for (std::size_t p = 0; p < course.parts.size(); ++p) {
    if (has_trail[p]) continue;  // what could not be planned is shown as not yet stitched
    for (const cloth::Stitch& stitch : course.parts[p].work.stitches) gatherer.add(stitch, Stage::later, static_cast<int>(p));
  }
  return gatherer.take();
}

}  // namespace picture
