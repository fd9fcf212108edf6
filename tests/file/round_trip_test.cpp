// Random courses, written down in random ways: read, tidied and read again they say the same, and the canonical form is one.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cstdlib>

#include "describe.h"
#include "messy_text.h"
#include "read_faults.h"

namespace {

void fix_seed() { setenv("RC_PARAMS", "seed=1911 max_success=150", 0); }

std::string course_of(const std::string& text) { return describe::course(file::read(text).course); }

}  // namespace

TEST_CASE("a course tidied and read again is the same, and tidying it once more changes nothing") {
  fix_seed();
  CHECK(rc::check([](unsigned course, unsigned way) {
    const std::string text = messy::write(messy::random_course(course), way, messy::Comments::everywhere);
    RC_ASSERT(faults_of(text) == "");
    const std::string tidied = file::tidy(text);
    RC_ASSERT(faults_of(tidied) == "");
    RC_ASSERT(course_of(tidied) == course_of(text));
    RC_ASSERT(file::tidy(tidied) == tidied);
  }));
}

TEST_CASE("no comment is lost or doubled") {
  fix_seed();
  CHECK(rc::check([](unsigned course, unsigned way) {
    const std::string text = messy::write(messy::random_course(course), way, messy::Comments::everywhere);
    std::vector<int> before = messy::comments_in(text), after = messy::comments_in(file::tidy(text));
    std::sort(before.begin(), before.end());
    std::sort(after.begin(), after.end());
    RC_ASSERT(before == after);
  }));
}

TEST_CASE("however a course is written, its canonical form is the same bytes") {
  fix_seed();
  CHECK(rc::check([](unsigned course, unsigned one_way, unsigned other_way) {
    const messy::Course random = messy::random_course(course);
    RC_ASSERT(file::tidy(messy::write(random, one_way, messy::Comments::none)) == file::tidy(messy::write(random, other_way, messy::Comments::none)));
  }));
}

TEST_CASE("every part of the course is read: a change of any value is seen") {
  fix_seed();
  CHECK(rc::check([](unsigned course, unsigned way) {
    const messy::Course random = messy::random_course(course);
    messy::Course changed = random;
    messy::Random dice(way);
    messy::Table& table = changed[dice() % changed.size()];
    RC_PRE(!table.pairs.empty());
    auto& [key, value] = table.pairs[dice() % table.pairs.size()];
    auto* number = std::get_if<messy::Number>(&value.value);
    const bool whole = number && number->digits.find('.') == std::string::npos && key != "rows";
    RC_PRE(whole);
    number->digits = std::to_string(std::stoi(number->digits) + (std::stoi(number->digits) > 29 ? -1 : 1));
    RC_PRE(faults_of(messy::write(changed, way, messy::Comments::none)) == "");
    RC_ASSERT(course_of(messy::write(random, way, messy::Comments::none)) != course_of(messy::write(changed, way, messy::Comments::none)));
  }));
}
