// tellekant supplies and calendar: the list as text, and as CSV that another reader takes apart; events on standard output.
#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "cli/call.h"

namespace {

std::string priced() {
  std::string text = small_course;
  text.replace(text.find("title = \"Two Rings\""), 19, "title = \"Two Rings\"\nstudents = 10\nspares = 2");
  text.replace(text.find("pearl = 5"), 9, "pearl = 5\ncolour = \"#F2EBDD\"\nprice = \"1.05\"\ncurrency = \"a, \\\"b\\\"\"");
  return text;
}

}  // namespace

TEST_CASE("supplies: text on standard output") {
  const TestFolder folder;
  put(folder, "a.course.toml", priced());
  const Said said = call(folder, "supplies a.course.toml");
  CHECK(said.code == 0);
  CHECK(said.err == "");
  CHECK(said.out.find("What to buy: Two Rings\nFor 10 students and 2 spare sets\n\n") == 0);
  CHECK(said.out.find("pearl cotton 5, colour #F2EBDD (heavy)") != std::string::npos);
  CHECK(said.out.find("12 pieces") != std::string::npos);
  CHECK(said.out.find("tapestry needle 24") != std::string::npos);
}

TEST_CASE("supplies --as csv: Python's csv reader finds the same fields, and every line has as many") {
  const TestFolder folder;
  put(folder, "a.course.toml", priced());
  const Said said = call(folder, "supplies a.course.toml --as csv");
  CHECK(said.code == 0);
  for (std::size_t at = said.out.find('\n'); at != std::string::npos; at = said.out.find('\n', at + 1)) CHECK(said.out[at - 1] == '\r');
  put(folder, "a.csv", said.out);
  put(folder, "read.py",
      "import csv, json\nprint(json.dumps(list(csv.reader(open('a.csv', newline='', encoding='utf-8'), strict=True))))\n");
  REQUIRE(std::system(("cd '" + folder.path.string() + "' && python3 read.py > a.json").c_str()) == 0);
  const auto rows = nlohmann::json::parse(bytes_of(folder / "a.json"));
  REQUIRE(rows.size() >= 5);
  for (const auto& row : rows) CHECK(row.size() == 10);
  CHECK(rows[0][0] == "item");
  CHECK(rows[1][6] == "12");
  CHECK(rows[2][0] == "pearl cotton 5, colour #F2EBDD (heavy)");
  CHECK(rows[2][1] == "skein");
  CHECK(rows[2][7] == "1.05");
  CHECK(rows[2][8] == "a, \"b\"");
  CHECK(rows[2][9] == "1.05");
  const auto plan = nlohmann::json::parse(call(folder, "plan a.course.toml").out);
  const auto& thread = plan["supplies"]["class"]["threads"][0];
  CHECK(std::stod(rows[2][5].get<std::string>()) == doctest::Approx(thread["buy_m"].get<double>()).epsilon(0.01));
  CHECK(rows[2][6] == std::to_string(thread["balls"].get<int>()));
}

TEST_CASE("supplies: another form is a wrong call, a faulty file an error") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  CHECK(call(folder, "supplies a.course.toml --as xml").code == 2);
  put(folder, "b.course.toml", "format = 1\n");
  CHECK(call(folder, "supplies b.course.toml").code == 2);
}

TEST_CASE("calendar: one event a lesson on standard output; without a day a clear error") {
  const TestFolder folder;
  put(folder, "none.course.toml", small_course);
  const Said none = call(folder, "calendar none.course.toml");
  CHECK(none.code == 2);
  CHECK(none.out == "");
  CHECK(none.err == "tellekant: no lesson has a day: write first_day or days into [course]\n");
  std::string dated = small_course;
  dated.insert(dated.find("\n[cloth]"), "first_day = 2027-01-12\nstart_time = \"18:30\"\ntime_zone = \"Europe/Oslo\"\n");
  put(folder, "a.course.toml", dated);
  const Said said = call(folder, "calendar a.course.toml");
  CHECK(said.code == 0);
  CHECK(said.err == "");
  CHECK(said.out.find("BEGIN:VCALENDAR\r\n") == 0);
  CHECK(said.out.find("DTSTART;TZID=Europe/Oslo:20270112T183000\r\n") != std::string::npos);
}

TEST_CASE("split: prints the file with lessons, keeps what is locked, replaces the file when asked") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  const Said said = call(folder, "split a.course.toml --lessons 2");
  CHECK(said.code == 0);
  CHECK(said.out.find("[[lesson]]\nwork = [\"ring / 1..10\"]\n\n[[lesson]]\nwork = [\"ring / 11..20\"]\n") != std::string::npos);
  CHECK(bytes_of(folder / "a.course.toml") == small_course);
  CHECK(call(folder, "split a.course.toml --lessons 2 --write").code == 0);
  CHECK(bytes_of(folder / "a.course.toml") == said.out);
  CHECK(call(folder, "check a.course.toml").out == "");
  put(folder, "b.course.toml", small_course + "[[lesson]]\nwork = [\"ring / 1..5\"]\nlocked = true\n[[lesson]]\n");
  const Said locked = call(folder, "split -", "cat b.course.toml |");
  CHECK(locked.code == 0);
  CHECK(locked.out.find("work = [\"ring / 1..5\"]\nlocked = true\n\n[[lesson]]\nwork = [\"ring / 6..20\"]\n") != std::string::npos);
}
