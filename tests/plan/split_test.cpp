// The split against two other ways: every split there is, tried out; and GLPK, which is given the same question as a mixed-integer program
// of other form (each unit assigned to a lesson). The costs are reckoned anew here, from the words of the header.
#include "plan/split.h"

#include <doctest/doctest.h>
#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <set>

namespace {

plan::SplitTask random_task(std::mt19937& random, int most_units, int most_lessons) {
  const auto pick = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  plan::SplitTask task;
  const int lessons = pick(1, most_lessons), units = pick(1, most_units);
  for (int l = 0; l < lessons; ++l) task.lessons.push_back({l + 1, static_cast<double>(pick(10, 60))});
  for (int u = 0; u < units; ++u) {
    plan::SplitUnit unit;
    unit.minutes = pick(1, 40);
    unit.technique = pick(-1, 3);
    unit.may_stop = pick(0, 4) > 0;
    unit.stop_cost = pick(0, 5);
    if (pick(0, 5) == 0) unit.earliest = pick(1, lessons);
    if (pick(0, 5) == 0) unit.latest = pick(1, lessons);
    unit.was = pick(0, lessons);
    task.units.push_back(unit);
  }
  task.known = {pick(0, 1) == 1};
  return task;
}

/// By the words of the header, unit by unit.
double cost_by_hand(const plan::SplitTask& task, const std::vector<int>& ends) {
  double cost = 0, all = 0, rooms = 0;
  for (const auto& unit : task.units) all += unit.minutes;
  for (const auto& lesson : task.lessons) rooms += lesson.room;
  std::set<int> seen;
  for (std::size_t t = 0; t < task.known.size(); ++t)
    if (task.known[t]) seen.insert(static_cast<int>(t));
  int at = 0;
  for (std::size_t l = 0; l < ends.size(); ++l) {
    double minutes = 0;
    int fresh = 0;
    const bool empty = at == ends[l];
    for (; at < ends[l]; ++at) {
      const plan::SplitUnit& unit = task.units[at];
      minutes += unit.minutes;
      if (unit.technique >= 0 && seen.insert(unit.technique).second) ++fresh;
      if (unit.was != 0 && unit.was != task.lessons[l].number) cost += task.weights.moved * unit.minutes;
      if (task.lessons[l].number < unit.earliest || task.lessons[l].number > unit.latest) cost += task.weights.misplaced;
    }
    cost += task.weights.uneven * std::abs(minutes - all * task.lessons[l].room / rooms);
    if (minutes > task.lessons[l].room) cost += task.weights.over * (minutes - task.lessons[l].room);
    if (fresh > 1) cost += task.weights.technique * (fresh - 1);
    if (empty) cost += task.weights.empty;
    if (!empty && at < static_cast<int>(task.units.size()))
      cost += task.units[at - 1].may_stop ? task.units[at - 1].stop_cost : task.weights.bad_stop;
  }
  return cost;
}

double least_of_all(const plan::SplitTask& task, std::vector<int>& ends) {
  const int n = static_cast<int>(task.units.size());
  if (ends.size() + 1 == task.lessons.size()) {
    ends.push_back(n);
    const double cost = cost_by_hand(task, ends);
    ends.pop_back();
    return cost;
  }
  double least = 1e300;
  for (int end = ends.empty() ? 0 : ends.back(); end <= n; ++end) {
    ends.push_back(end);
    least = std::min(least, least_of_all(task, ends));
    ends.pop_back();
  }
  return least;
}

/// A row of a linear program: the sum of these lies between these bounds.
class Program {
 public:
  Program() : all_(glp_create_prob()) {}
  ~Program() { glp_delete_prob(all_); }
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;

  int column(double cost, bool binary) {
    const int c = glp_add_cols(all_, 1);
    binary ? glp_set_col_kind(all_, c, GLP_BV) : glp_set_col_bnds(all_, c, GLP_LO, 0, 0);
    glp_set_obj_coef(all_, c, cost);
    return c;
  }
  void row(const std::vector<std::pair<int, double>>& terms, int kind, double bound) {
    const int r = glp_add_rows(all_, 1);
    glp_set_row_bnds(all_, r, kind, bound, bound);
    std::vector<int> columns{0};
    std::vector<double> factors{0};
    std::map<int, double> sums;  // a column stands once in a row
    for (const auto& [column, factor] : terms)
      if (column > 0) sums[column] += factor;
    for (const auto& [column, factor] : sums) columns.push_back(column), factors.push_back(factor);
    glp_set_mat_row(all_, r, static_cast<int>(sums.size()), columns.data(), factors.data());
  }
  double least() {
    glp_term_out(GLP_OFF);
    glp_iocp how;
    glp_init_iocp(&how);
    how.presolve = GLP_ON;
    REQUIRE(glp_intopt(all_, &how) == 0);
    return glp_mip_obj_val(all_);
  }

 private:
  glp_prob* all_;
};

using Terms = std::vector<std::pair<int, double>>;

/// done[u][l]: unit u is worked in lesson l or before. Falling in u, rising in l.
class AsProgram {
 public:
  explicit AsProgram(const plan::SplitTask& task)
      : task_(task), n_(static_cast<int>(task.units.size())), lessons_(static_cast<int>(task.lessons.size())) {
    std::set<int> seen;
    for (std::size_t t = 0; t < task.known.size(); ++t)
      if (task.known[t]) seen.insert(static_cast<int>(t));
    for (const auto& unit : task.units) fresh_.push_back(unit.technique >= 0 && seen.insert(unit.technique).second);
    for (const auto& unit : task.units) all_ += unit.minutes;
    for (const auto& lesson : task.lessons) rooms_ += lesson.room;
  }

  double least() {
    order();
    for (int l = 0; l < lessons_; ++l) {
      add_lesson(l);
      for (int u = 0; u < n_; ++u) add_unit(u, l);
    }
    return program_.least();
  }

 private:
  void order() {
    done_.resize(static_cast<std::size_t>(n_));
    for (auto& row : done_)
      for (int l = 0; l < lessons_; ++l) row.push_back(program_.column(0, true));
    for (int u = 0; u < n_; ++u) {
      program_.row({{done_[u][lessons_ - 1], 1}}, GLP_FX, 1);
      for (int l = 0; l + 1 < lessons_; ++l) program_.row({{done_[u][l + 1], 1}, {done_[u][l], -1}}, GLP_LO, 0);
      for (int l = 0; l < lessons_ && u > 0; ++l) program_.row({{done_[u - 1][l], 1}, {done_[u][l], -1}}, GLP_LO, 0);
    }
  }

  /// Worked in lesson l itself, so many times.
  Terms in(int u, int l, double factor) const {
    Terms terms{{done_[u][l], factor}};
    if (l > 0) terms.push_back({done_[u][l - 1], -factor});
    return terms;
  }

  static Terms joined(Terms to, const Terms& more) {
    to.insert(to.end(), more.begin(), more.end());
    return to;
  }

  void add_lesson(int l) {
    const auto& w = task_.weights;
    const int above = program_.column(w.uneven, false), below = program_.column(w.uneven, false);
    const int over = program_.column(w.over, false), more = program_.column(w.technique, false), empty = program_.column(w.empty, true);
    Terms minutes, techniques, filled;
    for (int u = 0; u < n_; ++u) {
      minutes = joined(minutes, in(u, l, task_.units[u].minutes));
      filled = joined(filled, in(u, l, 1));
      if (fresh_[u]) techniques = joined(techniques, in(u, l, 1));
    }
    program_.row(joined(minutes, {{above, -1}, {below, 1}}), GLP_FX, all_ * task_.lessons[l].room / rooms_);
    program_.row(joined(minutes, {{over, -1}}), GLP_UP, task_.lessons[l].room);
    program_.row(joined(techniques, {{more, -1}}), GLP_UP, 1);
    program_.row(joined(filled, {{empty, 1}}), GLP_LO, 1);
  }

  void add_unit(int u, int l) {
    const auto& unit = task_.units[u];
    const int number = task_.lessons[l].number;
    double cost = unit.was != 0 && unit.was != number ? task_.weights.moved * unit.minutes : 0;
    if (number < unit.earliest || number > unit.latest) cost += task_.weights.misplaced;
    const int here = program_.column(cost, false);  // 1 where the unit is worked in this lesson
    program_.row(joined(in(u, l, 1), {{here, -1}}), GLP_FX, 0);
    if (u + 1 == n_) return;
    const int ends = program_.column(unit.may_stop ? unit.stop_cost : task_.weights.bad_stop, false);  // this lesson ends behind u
    program_.row({{ends, 1}, {here, -1}, {done_[u + 1][l], 1}, {l > 0 ? done_[u + 1][l - 1] : 0, l > 0 ? -1.0 : 0.0}}, GLP_LO, 0);
  }

  const plan::SplitTask& task_;
  int n_, lessons_;
  std::vector<bool> fresh_;
  double all_ = 0, rooms_ = 0;
  Program program_;
  std::vector<std::vector<int>> done_;
};

double by_glpk(const plan::SplitTask& task) { return AsProgram(task).least(); }

}  // namespace

TEST_CASE("300 random courses: no split of all there are costs less, and the cost is what it says") {
  std::mt19937 random(20270112);
  for (int i = 0; i < 300; ++i) {
    CAPTURE(i);
    const plan::SplitTask task = random_task(random, 10, 4);
    const plan::Split best = plan::split(task);
    REQUIRE(best.ends.size() == task.lessons.size());
    CHECK(best.ends.back() == static_cast<int>(task.units.size()));
    CHECK(std::is_sorted(best.ends.begin(), best.ends.end()));
    CHECK(best.cost == doctest::Approx(cost_by_hand(task, best.ends)));
    std::vector<int> ends;
    CHECK(best.cost == doctest::Approx(least_of_all(task, ends)));
  }
}

TEST_CASE("500 random courses: GLPK finds the same least cost") {
  std::mt19937 random(7);
  for (int i = 0; i < 500; ++i) {
    CAPTURE(i);
    const plan::SplitTask task = random_task(random, 7, 3);
    CHECK(plan::split(task).cost == doctest::Approx(by_glpk(task)));
  }
}

TEST_CASE("the fewest lessons, and the least room for a number of lessons, belong together") {
  std::mt19937 random(3);
  for (int i = 0; i < 300; ++i) {
    CAPTURE(i);
    const plan::SplitTask task = random_task(random, 12, 5);
    const int lessons = static_cast<int>(task.lessons.size());
    const double room = plan::room_needed(task.units, lessons);
    CHECK(plan::lessons_needed(task.units, room) <= lessons);
    double joined = 0, longest = 0;
    for (const auto& unit : task.units) {
      longest = std::max(longest, joined += unit.minutes);
      if (unit.may_stop) joined = 0;
    }
    CHECK((room - 0.2 < longest || plan::lessons_needed(task.units, room - 0.2) > lessons));
  }
}

TEST_CASE("small changes move little: a split that is fed its own answer stays") {
  std::mt19937 random(11);
  for (int i = 0; i < 100; ++i) {
    plan::SplitTask task = random_task(random, 14, 4);
    for (auto& unit : task.units) unit.was = 0;
    const plan::Split first = plan::split(task);
    int lesson = 0;
    for (int u = 0; u < static_cast<int>(task.units.size()); ++u) {
      while (u >= first.ends[lesson]) ++lesson;
      task.units[u].was = task.lessons[lesson].number;
    }
    CHECK(plan::split(task).ends == first.ends);
  }
}
