// The sample course handed out into a folder of its own, and what other programs say of the files.
#pragma once

#include <doctest/doctest.h>
#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <string>

#include "assets/assets.h"
#include "course_text.h"
#include "folder.h"
#include "plan/plan.h"
#include "publish/publish.h"

namespace test {

inline const words::Phrases& english() {
  static const words::Phrases phrases = [] {
    auto read = words::Phrases::read(assets::table("phrases/en.toml"), "assets/phrases/en.toml");
    REQUIRE_MESSAGE(read.has_value(), read.error().what);
    return *std::move(read);
  }();
  return phrases;
}

inline plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

/// The sample course with another title.
inline course::Course sample(const std::string& title = "Frost on the Pane") {
  std::string text = text_of("lessons/frost.course.toml");
  const std::string was = "title = \"Frost on the Pane\"";
  text.replace(text.find(was), was.size(), "title = '" + title + "'");
  return course_from(text);
}

inline publish::Written hand_out(const course::Course& course, publish::HandoutOrder order) {
  const plan::Plan plan = planned(course);
  auto written = publish::handouts(course, plan, english(), order, {}, {});
  REQUIRE_MESSAGE(written.has_value(), written.error().what);
  return std::move(*written);
}

struct Heard {
  int code = -1;
  std::string out;  ///< standard output and error
};
/// Runs a command by the shell. A program that is missing is a failure, never a skip.
inline Heard ask(const std::string& command) {
  Heard heard;
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::array<char, 65536> some;
  for (std::size_t n; (n = fread(some.data(), 1, some.size(), pipe)) > 0;) heard.out.append(some.data(), n);
  const int status = pclose(pipe);
  heard.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  INFO(command);
  REQUIRE(heard.code != 127);
  return heard;
}

inline std::string quoted(const std::filesystem::path& path) { return "'" + path.string() + "'"; }

}  // namespace test
