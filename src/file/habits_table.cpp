// [habits] and its tables: lengths, speeds, the weights of a count.
#include <fmt/format.h>

#include <algorithm>

#include "file/schema.h"
#include "file/speeds.h"
#include "file/table_reader.h"
#include "file/tables.h"

namespace file {
namespace {

constexpr double least_length = 20, most_length = 300;  // cm
constexpr double least_usable = 10;                     // cm that two tails must leave of a working length

void read_lengths(const TableReader& table, course::Habits& habits) {
  table.number("working_length_cm", least_length, most_length, habits.working_length_cm);
  for (const std::string& kind : kind_names()) {
    double length = 0;
    table.number(length_key(kind), least_length, most_length, length);
    if (length > 0) habits.length_cm[kind] = length;
  }
  table.number("tail_cm", 1, 50, habits.tail_cm);
  table.number("first_tail_cm", 1, 50, habits.first_tail_cm);
}

/// The key among these that is written first, to point at; the table where none is.
void add_at_first(const TableReader& table, const Keys& keys, std::string found, std::string expected) {
  for (const std::string& key : keys)
    if (const Node* node = table.find(key)) return table.faults().add(*node, std::move(found), std::move(expected));
  table.faults().add(table.site().place, table.site().length, std::move(found), std::move(expected));
}

/// The shortest working length and its key.
std::pair<double, std::string> shortest(const course::Habits& habits) {
  std::pair<double, std::string> least{habits.working_length_cm, "working_length_cm"};
  for (const auto& [kind, own] : habits.length_cm)
    if (own < least.first) least = {own, length_key(kind)};
  return least;
}

/// Both ends of a length are woven under; what is left in between must be worth threading.
void check_tails(const TableReader& table, const course::Habits& habits) {
  const auto [length, key] = shortest(habits);
  if (length - 2 * habits.tail_cm < least_usable)
    return add_at_first(table, {"tail_cm", key}, fmt::format("two tails of {} cm in a length of {} cm", habits.tail_cm, length),
                        fmt::format("tails that leave at least {} cm of {}", least_usable, key));
  if (length - habits.first_tail_cm - habits.tail_cm < 1)
    add_at_first(
        table, {"first_tail_cm", "tail_cm", key},
        fmt::format("a first tail of {} cm and a last of {} cm in a length of {} cm", habits.first_tail_cm, habits.tail_cm, length),
        fmt::format("tails that leave at least 1 cm of {}", key));
}

void read_speeds(const TableReader& habits_table, course::Habits& habits) {
  const Entry* entry = habits_table.site().table->find("stitches_a_minute");
  const auto site = table_at(entry, "[habits.stitches_a_minute]", habits_table.faults());
  if (!site) return;
  const TableReader table(*site, habits_table.faults());
  for (const std::string& kind : speed_names()) {
    double speed = 0;
    table.number(kind, 0.1, 100, speed);
    if (speed > 0) habits.stitches_a_minute[kind] = speed;
  }
  table.refuse_others(speed_names());
}

void read_count_cost(const TableReader& habits_table, course::CountCost& cost) {
  const auto site = table_at(habits_table.site().table->find("count_cost"), "[habits.count_cost]", habits_table.faults());
  if (!site) return;
  const TableReader table(*site, habits_table.faults());
  constexpr double most = 60;  // s
  table.number("glance", 0, most, cost.glance);
  table.whole("glance_to", 0, 20, cost.glance_to);
  table.number("each", 0, most, cost.each);
  table.number("second_leg", 0, most, cost.second_leg);
  table.number("under_stitches", 0, most, cost.under_stitches);
  table.number("plain_landmark", 0, most, cost.plain_landmark);
  table.refuse_others(count_cost_keys());
}

}  // namespace

void read_habits_table(const Entry* entry, Reading& reading) {
  reading.course.choices.habits.assumed_speeds = assumed_speeds().practised;
  const auto site = table_at(entry, "[habits]", reading.faults);
  if (!site) return;
  const TableReader table(*site, reading.faults);
  course::Habits& habits = reading.course.choices.habits;
  const std::size_t before = reading.faults.size();
  read_lengths(table, habits);
  if (reading.faults.size() == before) check_tails(table, habits);
  table.number("take_up", 0, 1, habits.take_up);
  table.number("waste", 0, 1, habits.waste);
  table.number("back_limit", 5, 100, habits.back_limit);
  table.number("class_share", 0.05, 1, habits.class_share);
  table.number("prepare_minutes", 0, 1440, habits.prepare_minutes);
  table.number("wash_minutes", 0, 1440, habits.wash_minutes);
  using course::Pace;
  table.word<Pace>("pace", {{"practised", Pace::practised}, {"beginner", Pace::beginner}}, habits.pace);
  if (habits.pace == Pace::beginner) habits.assumed_speeds = assumed_speeds().beginner;
  using course::EdgeWhen, course::EyeletNeedle;
  table.word<EdgeWhen>("edge", {{"before cutting", EdgeWhen::before_cutting}, {"after", EdgeWhen::after_cutting}}, habits.edge);
  table.word<EyeletNeedle>("eyelet_needle",
                           {{"down in the middle", EyeletNeedle::down_in_the_middle}, {"up", EyeletNeedle::up_in_the_middle}},
                           habits.eyelet_needle);
  read_speeds(table, habits);
  read_count_cost(table, habits.count_cost);
  table.refuse_others(habits_keys());
}

}  // namespace file
