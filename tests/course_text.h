// Courses for tests: written as a teacher writes them, read by the program's own reader.
#pragma once

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "file/course_file.h"

/// The course of a whole text; the test fails where the text has faults.
inline course::Course course_from(const std::string& text) {
  file::Read read = file::read(text);
  std::string faults;
  for (const base::Fault& fault : read.faults) faults += base::render("test", text, fault);
  INFO(faults);
  REQUIRE(faults.empty());
  return std::move(read.course);
}

/// The same from parts and lessons alone, with a plain head.
inline course::Course course_of(const std::string& parts_and_lessons, const std::string& habits = "") {
  return course_from("format = 1\n[course]\ntitle = \"Test\"\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" +
                     (habits.empty() ? "" : "[habits]\n" + habits + "\n") + parts_and_lessons);
}

inline std::string part_text(const std::string& name, const std::string& kind, const std::string& start, const std::string& rest) {
  return "[[part]]\nname = \"" + name + "\"\nkind = \"" + kind + "\"\nthread = \"heavy\"\nstart = " + start + "\n" + rest + "\n";
}

inline std::string text_of(const std::string& path_in_project) {
  std::ifstream in(std::filesystem::path(TELLEKANT_ROOT) / path_in_project, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}
