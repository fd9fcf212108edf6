// [[student]]: what follows from the list where nothing else is written, and its faults exactly as they are shown.
#include <doctest/doctest.h>

#include "read_faults.h"

namespace {

course::Course with(const std::string& course_keys, const std::string& students) {
  const auto read = file::read("format = 1\n[course]\ntitle = \"T\"\n" + course_keys + "[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" + students);
  REQUIRE(read.faults.empty());
  return read.course;
}

const std::string left = "[[student]]\nhand = \"left\"\n", right = "[[student]]\nname = \"Una\"\n";

}  // namespace

TEST_CASE("the list says how many, and for which hands the pages are, where the course does not") {
  using course::Hand;
  CHECK(with("", "").choices.hand == Hand::right);
  CHECK(with("", "").students == 1);
  CHECK(with("", right + right).choices.hand == Hand::right);
  CHECK(with("", right + left + right).choices.hand == Hand::both);
  CHECK(with("", right + left + right).students == 3);
  CHECK(with("", left + left).choices.hand == Hand::left);
  CHECK(with("students = 5\n", left + left).choices.hand == Hand::both);  // three more, not listed
  CHECK(with("students = 5\n", left + left).students == 5);
  CHECK(with("hand = \"right\"\n", left).choices.hand == Hand::right);
  CHECK(course::left_handed(with("", right + left + left)) == 2);
  CHECK(with("", right).class_list[0].name == "Una");
}

TEST_CASE("faults of the class list") {
  CHECK(faults_with("[[student]]\nhand = \"both\"\n") == R"(x:9:8: found "both"; expected "right" or "left"
  hand = "both"
         ^^^^^^
)");
  CHECK(faults_with("[[student]]\nname = 3\n").find("found a whole number; expected a text in quotation marks") != std::string::npos);
  CHECK(faults_with("[[student]]\nnmae = \"Una\"\n").find("found the key \"nmae\"; expected a key of [[student]]; did you mean name?") != std::string::npos);
  CHECK(faults_with("[student]\n").find("double brackets") != std::string::npos);
  CHECK(faults_with("student = 3\n") != "");
  std::string many;
  for (int i = 0; i < 1001; ++i) many += "[[student]]\n";
  CHECK(faults_with(many).find("found 1001 students; expected at most 1000") != std::string::npos);
}

TEST_CASE("the tidy form keeps the list with its comments, behind the lessons") {
  const std::string text = "format = 1\n\n[course]\ntitle = \"T\"\n\n[cloth]\ncount = 22\n\n# by the window\n[[student]]\nname = \"Una\"  # new\nhand = \"left\"\n\n[[student]]\n";
  CHECK(file::tidy(text) == text);
}
