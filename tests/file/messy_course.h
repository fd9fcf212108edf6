// A random course, and random ways of writing it down (see messy_text.h). What the course says is the same every time.
#pragma once

#include <fmt/format.h>

#include <optional>
#include <random>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace messy {

using Random = std::mt19937;

struct Number {
  std::string digits;  ///< "8.5", "90", "-4"
};
struct Bare {
  std::string text;  ///< true, 2027-01-12
};
struct Value {
  std::variant<std::string, Number, Bare, std::vector<Value>> value;
};
using Pairs = std::vector<std::pair<std::string, Value>>;

struct Table {
  std::string name;  ///< "course", "habits.count_cost", "part"
  std::string of;    ///< "thread" for the table of one thread, whose name is free
  bool many = false;
  Pairs pairs;
};
using Course = std::vector<Table>;

inline int dice(Random& random, int least, int most) {
  return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
}
inline bool coin(Random& random) { return dice(random, 0, 1) == 1; }
template <class T>
const T& one_of(Random& random, const std::vector<T>& all) {
  return all[random() % all.size()];
}

/// Letters that are written with and without escapes, quotation marks and number signs among them.
inline std::string text(Random& random, int most) {
  static const std::vector<std::string> letters{"a", "B", "7", " ", "#",      "'",      "\"",         "\\",    "[",
                                                "=", ",", "{", "]", "\u00E6", "\u2744", "\U0001F9F5", "\u00A0"};
  std::string out;
  for (int n = dice(random, 0, most); n > 0; --n) out += one_of(random, letters);
  return out;
}

inline std::string notes(Random& random) {
  std::string out = text(random, 12);
  for (int n = dice(random, 0, 3); n > 0; --n) {
    out += coin(random) ? '\n' : '\t';
    out += text(random, 8);
    out.append(static_cast<std::size_t>(dice(random, 0, 6)), '"');
  }
  return out;
}

inline Value number(Random& random, int least, int most) { return {Number{std::to_string(dice(random, least, most))}}; }
inline Value decimal(Random& random, int least, int most) {
  return {Number{fmt::format("{}.{}", dice(random, least, most - 1), one_of<std::string>(random, {"5", "25", "0", "125", "10", "000"}))}};
}
inline Value word(std::string text) { return {std::move(text)}; }
inline Value date(int day) { return {Bare{fmt::format("2027-{:02}-{:02}", 1 + day / 28, 1 + day % 28)}}; }
inline Value hole(int x, int y) { return {std::vector<Value>{{Number{std::to_string(x)}}, {Number{std::to_string(y)}}}}; }

/// Each pair with the chance of a coin.
inline Pairs some(Random& random, Pairs pairs) {
  Pairs kept;
  for (auto& pair : pairs)
    if (coin(random)) kept.push_back(std::move(pair));
  return kept;
}

inline void add(Pairs& to, Pairs more) {
  for (auto& pair : more) to.push_back(std::move(pair));
}

inline Table course_table(Random& random) {
  Table table{"course", "", false, {{"title", word(fmt::format("T{}", text(random, 20)))}}};
  std::vector<Value> days, seen;
  for (int i = 0, n = dice(random, 0, 14); i < n; ++i) days.push_back(date(7 * i));
  for (int n = dice(random, 0, 3); n > 0; --n) seen.push_back(word(text(random, 9)));
  add(table.pairs, some(random, {{"teacher", word(text(random, 9))},
                                 {"first_day", date(0)},
                                 {"start_time", word("18:30")},
                                 {"time_zone", word("Europe/Oslo")},
                                 {"holidays", {days}},
                                 {"minutes", number(random, 1, 1440)},
                                 {"lessons", number(random, 1, 200)},
                                 {"students", number(random, 1, 10000)},
                                 {"hand", word(one_of<std::string>(random, {"right", "left", "both"}))},
                                 {"paper", word(one_of<std::string>(random, {"A4", "Letter"}))},
                                 {"language", word("en")},
                                 {"home_minutes", number(random, 0, 1440)},
                                 {"seen_before", {seen}}}));
  if (coin(random)) table.pairs.emplace_back("every", word(one_of<std::string>(random, {"week", "two weeks", "day"})));
  else if (!days.empty()) table.pairs.emplace_back("days", Value{days});
  return table;
}

inline Table cloth_table(Random& random) {
  Table table{"cloth", "", false, {}};
  if (coin(random)) table.pairs.emplace_back("count", decimal(random, 5, 100));
  else if (coin(random)) table.pairs.emplace_back("per_cm", Value{std::vector<Value>{decimal(random, 2, 39), decimal(random, 2, 39)}});
  else table.pairs.emplace_back("per_cm", decimal(random, 2, 39));
  add(table.pairs, some(random, {{"line", word(one_of<std::string>(random, {"thread", "hole"}))},
                                 {"margin_mm", decimal(random, 0, 1000)},
                                 {"colour", word("#12aBcD")},
                                 {"size_threads", hole(dice(random, 1, 900), dice(random, 1, 900))},
                                 {"middle", hole(dice(random, -900, 900), dice(random, -900, 900))},
                                 {"begin", word(one_of<std::string>(random, {"middle", "edges"}))}}));
  return table;
}

inline void add_threads(Random& random, Course& course, const std::vector<std::string>& names) {
  for (const std::string& name : names) {
    Table table{name, "thread", false, {}};
    if (coin(random)) table.pairs.emplace_back("pearl", number(random, 1, 40));
    else table.pairs.emplace_back("tex", decimal(random, 1, 500));
    add(table.pairs, some(random, {{"colour", word("#FFFFFF")},
                                   {"needle", number(random, 10, 30)},
                                   {"ball_m", decimal(random, 1, 200)},
                                   {"ball_g", number(random, 1, 50)},
                                   {"price", coin(random) ? word("4.50") : decimal(random, 0, 90)},
                                   {"currency", word(text(random, 5))}}));
    course.push_back(std::move(table));
  }
}

inline void add_habits(Random& random, Course& course) {
  course.push_back({"habits", "", false,
                    some(random, {{"working_length_cm", number(random, 26, 300)},
                                  {"cable_length_cm", decimal(random, 26, 300)},
                                  {"first_tail_cm", number(random, 1, 15)},
                                  {"take_up", decimal(random, 0, 1)},
                                  {"waste", decimal(random, 0, 1)},
                                  {"back_limit", number(random, 5, 100)},
                                  {"edge", word("after")},
                                  {"eyelet_needle", word("up")}})});
  if (coin(random))
    course.push_back(
        {"habits.count_cost", "", false, some(random, {{"glance", decimal(random, 0, 60)}, {"glance_to", number(random, 0, 20)}})});
  if (coin(random))
    course.push_back(
        {"habits.stitches_a_minute", "", false, some(random, {{"blocks", decimal(random, 1, 100)}, {"cable", number(random, 1, 100)}})});
}

inline Value wholes(const std::vector<int>& numbers) {
  std::vector<Value> values;
  for (const int n : numbers) values.push_back({Number{std::to_string(n)}});
  return {values};
}

/// Keys of a part of one of the further kinds, at least four stitches long.
inline Pairs surface_part(Random& random, int y) {
  const std::string kind = one_of<std::string>(random, {"satin", "star", "eyelet", "four-sided", "backstitch", "edge"});
  Pairs pairs{{"kind", word(kind)}};
  if (kind == "satin") {
    add(pairs, {{"start", hole(0, y)}, {"along", word("W")}, {"toward", word("S")}, {"over", wholes({2, dice(random, 1, 40), 4, 3})}});
    add(pairs, some(random, {{"step", coin(random) ? wholes({dice(random, -3, 3)}) : wholes({1, 0, -2, 4})}}));
  } else if (kind == "star") {
    add(pairs, {{"centre", hole(0, y)}, {"reach", number(random, 2, 10)}});
    std::get<Number>(pairs.back().second.value).digits = std::to_string(2 * dice(random, 2, 10));
    add(pairs, some(random, {{"points", word("")}}));
    if (pairs.back().first == "points") pairs.back().second = {Number{coin(random) ? "4" : "8"}};
  } else if (kind == "eyelet") {
    std::vector<Value> centres;
    for (int i = dice(random, 1, 12); i > 0; --i) centres.push_back(hole(9 * i, y));
    add(pairs, {{"centres", {centres}}, {"size", {Number{coin(random) ? "4" : "8"}}}});
    add(pairs, some(random, {{"outline", word(coin(random) ? "star" : "square")},
                             {"legs", coin(random) ? word("all") : Value{Number{"8"}}},
                             {"open", {Bare{coin(random) ? "true" : "false"}}}}));
  } else {
    add(pairs, {{"start", hole(0, y)}, {"path", word(one_of<std::string>(random, {"E 24", "E 24, S 12", "E 24, S 12, W 24, N 12"}))}});
    const std::vector<std::string> over = kind == "edge" ? std::vector<std::string>{"4", "5", "6"} : std::vector<std::string>{"2", "3", "4", "6"};
    add(pairs, some(random, {{"over", {Number{one_of(random, over)}}}}));
    if (kind == "edge") add(pairs, some(random, {{"out", word("left")}, {"corner", {Bare{coin(random) ? "5" : "7"}}}}));
    if (kind == "four-sided") add(pairs, some(random, {{"squares_lie", word(coin(random) ? "left" : "right")}}));
    if (kind == "backstitch") add(pairs, some(random, {{"worked", word(coin(random) ? "back" : "double running")}}));
  }
  return pairs;
}

/// A part that comes again, turned or mirrored about a hole.
inline Pairs repeat(Random& random) {
  if (coin(random)) return {};
  Pairs pairs{{"about", hole(dice(random, -9, 9), dice(random, -9, 9))}};
  if (coin(random)) pairs.push_back({"turn", {Bare{coin(random) ? "2" : "4"}}});
  else pairs.push_back({"mirror", word(one_of<std::string>(random, {"x", "y", "xy"}))});
  return pairs;
}

/// Cutwork within these blocks, with bars and fillings.
inline Table cutwork(Random& random, const std::string& ring, const std::string& thread) {
  const std::vector<Value> within{word(ring)},
      fillings{{Bare{"{ kind = \"wheel\", where = \"every second\" }"}}, {Bare{"{ kind = \"none\", where = [[1, 2]], turn = 4 }"}}};
  Table table{"part", "", true, {{"name", word("heart")}, {"kind", word("cutwork")}, {"thread", word(thread)}, {"within", {within}}}};
  add(table.pairs, some(random, {{"leave", {Bare{coin(random) ? "0" : "4"}}},
                                 {"bar_threads", number(random, 1, 11)},
                                 {"bars", word(coin(random) ? "woven" : "wrapped")},
                                 {"weaves", number(random, 2, 59)},
                                 {"picots", {Bare{coin(random) ? "true" : "false"}}},
                                 {"zone", hole(dice(random, -9, 9), 2)},
                                 {"fillings", {fillings}}}));
  return table;
}

inline void add_parts(Random& random, Course& course, const std::vector<std::string>& parts, const std::vector<std::string>& threads) {
  std::optional<std::string> ring;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const bool cable = coin(random), further = coin(random);
    Table table{"part", "", true, {{"name", word(parts[i])}, {"thread", word(one_of(random, threads))}}};
    if (further) {
      add(table.pairs, surface_part(random, 100 * static_cast<int>(i)));
      add(table.pairs, some(random, {{"begin_at", hole(3, -4)}, {"notes", word(notes(random))}}));
      add(table.pairs, repeat(random));
      course.push_back(std::move(table));
      continue;
    }
    table.pairs.emplace_back("start", hole(0, 100 * static_cast<int>(i)));
    table.pairs.emplace_back("kind", word(cable ? "cable" : "blocks"));
    table.pairs.emplace_back("path", word(cable ? "E 12" : "E 3"));
    add(table.pairs, some(random, {{"begin_at", hole(3, -4)}, {"count_from", hole(-3, 4)}, {"notes", word(notes(random))}}));
    if (cable) add(table.pairs, some(random, {{"rows", number(random, 2, 3)}, {"rows_lie", word("left")}, {"step_back", word("start")}}));
    else ring = parts[i], add(table.pairs, some(random, {{"cut_side", word("up")}}));
    add(table.pairs, repeat(random));
    course.push_back(std::move(table));
  }
  if (ring && coin(random)) course.push_back(cutwork(random, *ring, threads.front()));
}

inline void add_lessons(Random& random, Course& course, const std::vector<std::string>& parts) {
  for (int n = dice(random, 0, 3); n > 0; --n) {
    std::vector<Value> work{word("wash")};
    for (int items = dice(random, 0, 15); items > 0; --items)
      work.push_back(word(one_of(random, parts) + (coin(random) ? " / pass 1 / 1..4" : "")));
    Table table{"lesson", "", true, {{"work", {work}}}};
    add(table.pairs, some(random, {{"title", word(text(random, 20))},
                                   {"notes", word(notes(random))},
                                   {"date", date(dice(random, 0, 90))},
                                   {"minutes", number(random, 1, 1440)},
                                   {"locked", {Bare{coin(random) ? "true" : "false"}}}}));
    course.push_back(std::move(table));
  }
}

inline void add_students(Random& random, Course& course) {
  for (int n = dice(random, 0, 2); n > 0; --n) {
    Table table{"student", "", true, {}};
    add(table.pairs, some(random, {{"name", word(text(random, 20))}, {"hand", word(coin(random) ? "left" : "right")}}));
    course.push_back(std::move(table));
  }
}

/// A right course; the same seed gives the same one.
inline Course random_course(unsigned seed) {
  Random random(seed);
  const std::vector<std::string> threads{"heavy", "fine gold", "gr\u00F8nn", "4"},
      parts{"ring", "the \"inner\" border", "edge.2", "bl\u00E5"};
  Course course{course_table(random), cloth_table(random)};
  add_threads(random, course, threads);
  if (coin(random)) add_habits(random, course);
  add_parts(random, course, parts, threads);
  add_lessons(random, course, parts);
  add_students(random, course);
  return course;
}

}  // namespace messy
