// What is stitched beforehand: hours and thread add up to those of the lessons before, worked out here from the plan's own lessons.
#include "say/stage_pieces.h"

#include <cmath>
#include <cstdlib>

#include "handed_out.h"

TEST_CASE("a piece for each lesson but the first and the finished one; the last is all of the course") {
  for (const char* file : {"frost", "mat", "runner"}) {
    CAPTURE(file);
    const course::Course course = course_from(text_of(std::string("lessons/") + file + ".course.toml"));
    const plan::Plan plan = test::planned(course);
    const say::Voice voice{test::english(), say::Hand::right, course};
    const auto pieces = say::stage_pieces(voice, plan);
    REQUIRE(pieces.size() == plan.lessons.size());
    double minutes = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      minutes += plan.lessons[i].minutes;
      CHECK(pieces[i].lesson == static_cast<int>(i) + 2);
      CHECK(std::abs(std::strtod(pieces[i].own.c_str(), nullptr) - minutes / 60) <= 0.1 + 1e-9);
      CHECK(std::strtod(pieces[i].own.c_str(), nullptr) >= minutes / 60 - 1e-9);
      CHECK(std::strtod(pieces[i].on.c_str(), nullptr) >= plan.lessons[i].minutes / 60 - 1e-9);
    }
    const std::string text = publish::stage_text(voice, plan);
    for (const say::StagePiece& piece : pieces) CHECK(text.find(piece.shown) != std::string::npos);
    CHECK(text.find(test::english().say("stage.finished")) != std::string::npos);
  }
}
