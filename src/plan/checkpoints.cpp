#include "plan/checkpoints.h"

#include <algorithm>

namespace plan {
namespace {

int sign(int n) { return (n > 0) - (n < 0); }

/// A block as it stands on the way: its middle (twice, so that it is whole) and its last stitch.
struct Standing {
  cloth::Hole middle;
  int last = 0;
};

class Section {
 public:
  Section(const course::Course& course, const Plan& plan, int lesson, std::pair<int, int> which)
      : trail_(plan.trails[which.first]),
        section_(trail_.sections[which.second]),
        pass_(course.parts[trail_.part].work.pass(trail_.pass, trail_.place)) {
    like_.lesson = lesson;
    like_.trail = which.first;
    like_.section = which.second;
  }

  std::vector<Checkpoint> all() {
    if (pass_.order == stitch::Order::scattered) return {};
    const bool by_stitch = pass_.order != stitch::Order::in_turn || stitch::stitch_by_stitch(pass_);
    by_stitch ? stitches() : blocks();
    if (points_.size() < 2) points_.clear();
    return std::move(points_);
  }

 private:
  const trail::Worked& at(int k) const { return trail_.trail.stitches[k]; }

  void add(int stitch, std::vector<int> numbers) {
    Checkpoint point = like_;
    point.corner = static_cast<int>(points_.size()) + 1;
    point.stitch = stitch;
    point.numbers = std::move(numbers);
    points_.push_back(std::move(point));
  }

  void stitches() {
    const bool rows = pass_.order == stitch::Order::turn_about;
    std::vector<int> numbers(rows ? 2 : 1, 0);
    for (int k = section_.first; k <= section_.last; ++k) {
      ++numbers[rows && at(k).run != 0 ? 1 : 0];
      if (k < section_.last && at(k + 1).leg != at(k).leg) add(k, numbers);
    }
  }

  std::vector<Standing> standing() const {
    std::vector<Standing> blocks;
    cloth::Box box;
    for (int k = section_.first; k <= section_.last; ++k) {
      const bool fresh = blocks.empty() || at(k).run != at(k - 1).run;
      if (fresh) blocks.emplace_back();
      if (fresh) box = {at(k).up.x, at(k).up.y, at(k).up.x, at(k).up.y};
      box.grow(at(k).up);
      box.grow(at(k).down);
      blocks.back() = {{box.x0 + box.x1, box.y0 + box.y1}, k};
    }
    return blocks;
  }

  /// A corner is a block that is left another way than it was come to.
  void blocks() {
    const std::vector<Standing> blocks = standing();
    const auto way = [&](std::size_t i) {
      const cloth::Hole by = blocks[i + 1].middle - blocks[i].middle;
      return cloth::Hole{sign(by.x), sign(by.y)};
    };
    for (std::size_t i = 1; i + 1 < blocks.size(); ++i)
      if (way(i - 1) != way(i)) add(blocks[i].last, {static_cast<int>(i) + 1});
  }

  const guide::PlacedTrail& trail_;
  const guide::Section& section_;
  const stitch::Pass& pass_;
  Checkpoint like_;
  std::vector<Checkpoint> points_;
};

}  // namespace

std::vector<Checkpoint> checkpoints(const course::Course& course, const Plan& plan) {
  std::vector<Checkpoint> all;
  for (const LessonPlan& lesson : plan.lessons)
    for (const auto& which : lesson.sections)
      for (Checkpoint& point : Section(course, plan, lesson.number, which).all()) all.push_back(std::move(point));
  return all;
}

}  // namespace plan
