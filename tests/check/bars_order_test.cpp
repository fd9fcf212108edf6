// The needle follows the scissors: cutting, bars, fillings, each stretch in its order, nothing left out (common practice, no source).
#include <doctest/doctest.h>

#include "check/check.h"
#include "course_text.h"

namespace {

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 6, SE 5, SW 5, NW 4\"");
const std::string heart = "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\nfillings = [{ kind = \"wheel\" }]\n";

std::string lesson(const std::string& work) { return "[[lesson]]\nwork = [" + work + "]\nminutes = 900\n"; }

std::vector<check::Snag> snags_of(const std::string& lessons) {
  const auto course = course_of(ring + heart + lessons);
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  auto snags = check::look(course, *plan);
  std::erase_if(snags, [](const check::Snag& s) { return s.rule == "new-techniques"; });
  return snags;
}

std::string told(const std::string& lessons) {
  std::string text;
  for (const auto& snag : snags_of(lessons))
    text += (text.empty() ? "" : "; ") + snag.rule + (snag.severity == check::Severity::stop ? "" : "?") + " " + std::to_string(snag.lesson);
  return text;
}

}  // namespace

TEST_CASE("in order: nothing is said") {
  CHECK(told("") == "");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\"") + lesson("\"heart / bars\"") + lesson("\"heart / fillings\"")) == "");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart\"")) == "");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / bars / 1..6\"") + lesson("\"heart / bars / 7..16\", \"heart / fillings / 1..5\"") +
             lesson("\"heart / fillings / 6..13\"")) == "");
}

TEST_CASE("bars and fillings before the cutting, in another lesson or the same") {
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / bars\"") + lesson("\"heart / cut\", \"heart / fillings\"")) == "bars-before-cutting 2");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / bars\", \"heart / cut\", \"heart / fillings\"")) == "bars-before-cutting 2");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / fillings\"") + lesson("\"heart / cut\", \"heart / bars\"")) ==
        "fillings-before-bars 2; fillings-before-cutting 2");
}

TEST_CASE("fillings before the bars round them; only those whose bars are not done") {
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / fillings\"") + lesson("\"heart / bars\"")) == "fillings-before-bars 2");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / bars / 1..15\", \"heart / fillings\"") + lesson("\"heart / bars / 16..16\"")) ==
        "fillings-before-bars 2");
}

TEST_CASE("stretches out of turn, doubled, beyond the end, left out") {
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / bars / 9..16\", \"heart / bars / 1..8\", \"heart / fillings\"")) ==
        "bars-out-of-turn 2");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / bars\", \"heart / fillings\", \"heart / bars / 3..4\"")) == "stage-doubled 2");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / bars / 1..17\", \"heart / fillings\"")) == "stage-beyond 2");
  CHECK(told(lesson("\"ring\"") + lesson("\"heart / cut\"")) == "bars-in-no-lesson 0; fillings-in-no-lesson 0");
  const auto snags = snags_of(lesson("\"ring\"") + lesson("\"heart / cut\", \"heart / bars / 1..4\", \"heart / bars / 9..16\", \"heart / fillings\""));
  REQUIRE(snags.size() == 1);
  CHECK(snags[0].rule == "bars-in-no-lesson");
  CHECK(snags[0].numbers.at("first") == 5);
  CHECK(snags[0].numbers.at("last") == 8);
}
