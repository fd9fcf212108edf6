// A thousand edits, undos and redos in any order, on a whole session: nothing throws, the text can always be read, every undo brings back
// the exact bytes there were, and in the end the first ones.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cstdlib>

#include "course_text.h"
#include "folder.h"
#include "session/session.h"

namespace {

constexpr int steps = 1000;

std::string first_text() {
  return file::tidy(
      "format = 1\n# mine\n[course]\ntitle = \"Test\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" +
      part_text("ring", "blocks", "[0, 0]", "first = \"across\"  # its stitches\npath = \"NE 2, SE 1, SW 1\"") +
      "[[lesson]]\ntitle = \"one\"\nwork = [\"ring / 1..10\"]\n# the second\n[[lesson]]\ntitle = \"two\"\nwork = [\"ring / 11..20\"]\n");
}

/// An edit that may fit or not: numbers of lessons and parts go beyond what is there.
session::Edit any_edit(const course::Course& course) {
  constexpr std::size_t parts_most = 8;  // so that the text stays short enough for thousands of readings
  const int kinds = course.parts.size() < parts_most ? 10 : 8;
  const int what = *rc::gen::inRange(0, kinds), a = *rc::gen::inRange(-1, 5), b = *rc::gen::inRange(-60, 60);
  const std::uint64_t run = static_cast<std::uint64_t>(*rc::gen::inRange(0, 3));
  constexpr const char* ways[] = {"NE", "SE", "SW", "NW", "E", "W", "N", "S"};
  const std::string way = ways[*rc::gen::inRange(0, 8)], number = std::to_string(*rc::gen::inRange(0, 6));
  switch (what) {
    case 0:
      return session::add_lesson(a, "t \"" + std::to_string(b));
    case 1:
      return session::rename_lesson(a, "r" + std::to_string(b));
    case 2:
      return session::move_lesson(a, b % 4);
    case 3:
      return session::move_part(course, std::clamp(a, 0, static_cast<int>(course.parts.size()) - 1), {a, b}, run);
    case 4:
      return session::remove_lesson(a);
    case 5:
      return session::move_work(course, a, b % 3, b % 4);
    case 6:
      return session::change_path(a, way + " " + number + ", " + way + " 2", "lengthen leg", run);
    case 9:
      return session::copy_part(course, std::clamp(a, 0, static_cast<int>(course.parts.size()) - 1), {b, a});
    case 7:
      return session::remove_part(course, std::clamp(a, 0, static_cast<int>(course.parts.size()) - 1));
    default:
      return session::add_part({"line " + std::to_string(b), "cable", "heavy", {{"start", cloth::Hole{a, b}}, {"path", std::string("E 8")}}});
  }
}

/// Undo and redo, there and back.
void there_and_back(session::Session& session) {
  const std::string before = session.text();
  if (session.undo()) {
    RC_ASSERT(session.redo());
    RC_ASSERT(session.text() == before);
  }
}

/// An edit that is refused changes nothing; one that is done can be undone to the byte, whatever drag it belongs to.
void one_edit(session::Session& session) {
  const std::string before = session.text();
  const course::Course now = file::read(before).course;
  if (now.parts.empty()) {
    RC_ASSERT(session.apply(session::add_part({"again", "cable", "heavy", {{"start", cloth::Hole{0, 0}}, {"path", std::string("E 8")}}})).has_value());
    return;
  }
  const session::Edit edit = any_edit(now);
  const bool done = session.apply(edit).has_value();
  RC_ASSERT(done || session.text() == before);
  RC_ASSERT(file::read(session.text()).faults.empty());
  if (!done || edit.run != 0 || session.text() == before) return;  // what changes nothing is no step
  const std::string after = session.text();
  RC_ASSERT(session.undo());
  RC_ASSERT(session.text() == before);
  RC_ASSERT(session.redo());
  RC_ASSERT(session.text() == after);
}

}  // namespace

TEST_CASE("a thousand random edits, undos and redos: always readable, undone to the exact bytes") {
  setenv("RC_PARAMS", "seed=1911 max_success=4 noshrink=1", 0);
  CHECK(rc::check("a thousand steps", [] {
    const TestFolder folder;
    std::ofstream(folder / "a.course.toml") << first_text();
    session::Session session(folder.path);
    RC_ASSERT(session.open(folder / "a.course.toml").has_value());
    for (int i = 0; i < steps; ++i) {
      const int what = *rc::gen::inRange(0, 8);
      if (what == 0)
        session.undo();
      else if (what == 1)
        session.redo();
      else if (what == 2)
        there_and_back(session);
      else
        one_edit(session);
      if (i % 97 == 0) session.poll();
    }
    session.wait();
    RC_ASSERT(session.seen() != nullptr);
    RC_ASSERT(*session.seen()->text == session.text());
    while (session.undo()) {
    }
    RC_ASSERT(session.text() == first_text());
  }));
}
