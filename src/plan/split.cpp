#include "plan/split.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "base/require.h"

namespace plan {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double rounding = 1e-6;  // minutes

double total_minutes(const std::vector<SplitUnit>& units) {
  double sum = 0;
  for (const SplitUnit& unit : units) sum += unit.minutes;
  return sum;
}

/// Units behind which a lesson may end.
struct Range {
  int low = 0, high = 0;
};

/// Sums and first occurrences, worked out once, so that a lesson's cost is quickly told.
class Costs {
 public:
  explicit Costs(const SplitTask& task) : task_(task), minutes_(task.units.size() + 1), new_ones_(task.units.size() + 1) {
    std::vector<bool> known = task.known;
    for (std::size_t i = 0; i < task.units.size(); ++i) {
      const SplitUnit& unit = task.units[i];
      minutes_[i + 1] = minutes_[i] + unit.minutes;
      new_ones_[i + 1] = new_ones_[i];
      if (unit.technique < 0) continue;
      const auto technique = static_cast<std::size_t>(unit.technique);
      if (known.size() <= technique) known.resize(technique + 1);
      if (!known[technique]) ++new_ones_[i + 1];
      known[technique] = true;
    }
    for (const SplitLesson& lesson : task.lessons) room_ += lesson.room;
  }

  double minutes(int first, int end) const { return minutes_[end] - minutes_[first]; }
  /// A lesson's share of all the work, by its room.
  double fair(int lesson) const { return room_ > 0 ? minutes_.back() * task_.lessons[lesson].room / room_ : 0; }
  /// The ends at which so many minutes, at least and at most, are done.
  Range between(double least, double most) const {
    const auto low = std::lower_bound(minutes_.begin(), minutes_.end(), least - rounding);
    const auto high = std::upper_bound(minutes_.begin(), minutes_.end(), most + rounding);
    return {static_cast<int>(low - minutes_.begin()), static_cast<int>(high - minutes_.begin()) - 1};
  }
  double over(int lesson, int first, int end) const { return std::max(0.0, minutes(first, end) - task_.lessons[lesson].room - rounding); }

  /// All but what is told of each unit by itself.
  double of_lesson(int lesson, int first, int end) const {
    const SplitWeights& w = task_.weights;
    double cost = w.uneven * std::abs(minutes(first, end) - fair(lesson)) + w.over * over(lesson, first, end);
    cost += w.technique * std::max(0, new_ones_[end] - new_ones_[first] - 1);
    if (first == end) return cost + w.empty;
    const SplitUnit& last = task_.units[end - 1];
    if (end < static_cast<int>(task_.units.size())) cost += last.may_stop ? last.stop_cost : w.bad_stop;
    return cost;
  }

  double of_unit(int lesson, int unit) const {
    const SplitUnit& u = task_.units[unit];
    const int number = task_.lessons[lesson].number;
    double cost = u.was > 0 && u.was != number ? task_.weights.moved * u.minutes : 0;
    if (number < u.earliest || number > u.latest) cost += task_.weights.misplaced;
    return cost;
  }

 private:
  const SplitTask& task_;
  std::vector<double> minutes_;
  std::vector<int> new_ones_;
  double room_ = 0;
};

/// The least cost of the first i units in the lessons so far, and where the last of these lessons begins.
class Table {
 public:
  Table(const SplitTask& task, const Costs& costs) : costs_(costs), weights_(task.weights), least_(task.units.size() + 1, infinite) {
    least_[0] = 0;
  }

  /// Adds a lesson that ends at one of `range`; ways that are dearer than `enough` by themselves need not be looked at.
  void add_lesson(int lesson, Range range, double enough) {
    std::vector<double> next(least_.size(), infinite);
    begins_.emplace_back(least_.size(), 0);
    for (int end = range.low; end <= range.high; ++end) {
      double units = 0;
      for (int first = end; first >= from_.low; --first) {
        if (first < end) units += costs_.of_unit(lesson, first);
        if (weights_.over * costs_.over(lesson, first, end) > enough) break;
        if (least_[first] > enough) continue;
        const double cost = least_[first] + units + costs_.of_lesson(lesson, first, end);
        if (cost > next[end] - rounding) continue;
        next[end] = cost;
        begins_.back()[end] = first;
      }
    }
    least_ = std::move(next);
    from_ = range;
  }

  double least() const { return least_.back(); }

  std::vector<int> ends() const {
    std::vector<int> ends(begins_.size());
    int end = static_cast<int>(least_.size()) - 1;
    for (std::size_t l = begins_.size(); l-- > 0;) {
      ends[l] = end;
      end = begins_[l][end];
    }
    return ends;
  }

 private:
  const Costs& costs_;
  const SplitWeights& weights_;
  Range from_;  ///< where the lesson before may end
  std::vector<double> least_;
  std::vector<std::vector<int>> begins_;
};

double cost_of(const Costs& costs, const std::vector<int>& ends) {
  double sum = 0;
  int first = 0;
  for (std::size_t l = 0; l < ends.size(); ++l) {
    const int lesson = static_cast<int>(l);
    sum += costs.of_lesson(lesson, first, ends[l]);
    for (int unit = first; unit < ends[l]; ++unit) sum += costs.of_unit(lesson, unit);
    first = ends[l];
  }
  return sum;
}

/// Some split, made quickly: its cost is an upper bound.
std::vector<int> in_even_shares(const SplitTask& task, const Costs& costs) {
  const int n = static_cast<int>(task.units.size()), lessons = static_cast<int>(task.lessons.size());
  std::vector<int> ends(task.lessons.size(), n);
  int end = 0;
  for (int l = 0; l + 1 < lessons; ++l) {
    const double share = costs.minutes(0, n) * (l + 1) / lessons;
    while (end < n && costs.minutes(0, end + 1) <= share + rounding) ++end;
    while (end > 0 && end < n && !task.units[end - 1].may_stop) ++end;
    ends[l] = end;
  }
  return ends;
}

/// The best of the splits in which the work done never strays from the fair share by more than `reach` minutes.
Table within(const SplitTask& task, const Costs& costs, double reach, double enough) {
  const int n = static_cast<int>(task.units.size()), lessons = static_cast<int>(task.lessons.size());
  Table table(task, costs);
  double fair = 0;
  for (int l = 0; l < lessons; ++l) {
    fair += costs.fair(l);
    const bool last = l + 1 == lessons;
    table.add_lesson(l, last ? Range{n, n} : costs.between(fair - reach, fair + reach), enough);
  }
  return table;
}

/// How far the work done can stray in a split that costs `enough` at most: what is done too early or too late costs on both sides of the
/// lesson's end, all lessons but the one that ends the work pay for their stop or for being empty, and work without room is paid anyhow.
double reach_of(const SplitTask& task, const Costs& costs, double enough) {
  double stop = task.weights.empty, fair = 0, room = 0;
  for (const SplitUnit& unit : task.units) stop = std::min(stop, unit.may_stop ? unit.stop_cost : task.weights.bad_stop);
  for (int l = 0; l < static_cast<int>(task.lessons.size()); ++l) fair += costs.fair(l), room += task.lessons[l].room + rounding;
  const double all = costs.minutes(0, static_cast<int>(task.units.size()));
  if (task.weights.uneven <= 0 || std::abs(all - fair) > rounding) return all;
  const double anyhow = stop * static_cast<double>(task.lessons.size() - 1) + task.weights.over * std::max(0.0, all - room);
  return (enough - anyhow) / task.weights.uneven / 2;
}

}  // namespace

Split split(const SplitTask& task) {
  base::require(!task.lessons.empty(), "work is split into one lesson at least");
  const Costs costs(task);
  double enough = cost_of(costs, in_even_shares(task, costs)) + rounding;
  const double half_a_lesson = costs.minutes(0, static_cast<int>(task.units.size())) / static_cast<double>(task.lessons.size()) / 2;
  enough = std::min(enough, within(task, costs, half_a_lesson, enough).least() + rounding);
  const Table table = within(task, costs, reach_of(task, costs, enough), enough);
  Split best{table.ends(), table.least(), 0};
  int first = 0;
  for (std::size_t l = 0; l < best.ends.size(); first = best.ends[l++]) best.over += costs.over(static_cast<int>(l), first, best.ends[l]);
  return best;
}

double lesson_cost(const SplitTask& task, int lesson, int first, int end) {
  const Costs costs(task);
  double cost = costs.of_lesson(lesson, first, end);
  for (int unit = first; unit < end; ++unit) cost += costs.of_unit(lesson, unit);
  return cost;
}

int lessons_needed(const std::vector<SplitUnit>& units, double room) {
  const int n = static_cast<int>(units.size());
  int lessons = 0;
  for (int first = 0; first < n;) {
    double minutes = 0;
    int end = first;  // the furthest place where the lesson may end
    for (int i = first; i < n; ++i) {
      minutes += units[i].minutes;
      if (minutes > room + rounding && end > first) break;
      if (units[i].may_stop || i == n - 1) end = i + 1;
    }
    first = end;
    ++lessons;
  }
  return std::max(1, lessons);
}

double room_needed(const std::vector<SplitUnit>& units, int lessons) {
  constexpr double tenth = 0.1;
  double longest = 0, joined = 0;  // work that nobody may part needs room for all of it
  for (const SplitUnit& unit : units) {
    joined += unit.minutes;
    longest = std::max(longest, joined);
    if (unit.may_stop) joined = 0;
  }
  int low = static_cast<int>(std::floor(longest / tenth)), high = static_cast<int>(std::ceil(total_minutes(units) / tenth)) + 1;
  while (low < high) {
    const int half = low + (high - low) / 2;
    const bool fits = half * tenth + rounding >= longest && lessons_needed(units, half * tenth) <= lessons;
    (fits ? high : low) = fits ? half : half + 1;
  }
  return low * tenth;
}

}  // namespace plan
