// A course being edited without a window: edits, undo to the byte, saving, what is kept safe.
#include "session/session.h"

#include <doctest/doctest.h>

#include <rapidcheck.h>

#include <cstdlib>

#include "course_text.h"
#include "folder.h"

namespace {

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"  # its stitches\npath = \"NE 2, SE 1, SW 1\"");

std::string course_text() {
  return file::tidy("format = 1\n# mine\n[course]\ntitle = \"Test\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" + ring +
                    "[[lesson]]\ntitle = \"one\"\nwork = [\"ring / 1..10\"]\n# the second\n[[lesson]]\ntitle = \"two\"\nwork = [\"ring / 11..20\"]\n");
}

struct Open {
  TestFolder folder;
  session::Session session{folder.path};
  Open() {
    std::ofstream(folder / "a.course.toml") << course_text();
    REQUIRE(session.open(folder / "a.course.toml"));
    session.wait();
    REQUIRE(session.seen());
  }
  const course::Course& course() { return session.seen()->course; }
};

}  // namespace

TEST_CASE("every edit changes the file as it says, keeps comments, and undo brings the very bytes back") {
  Open open;
  const std::string before = open.session.text();
  const std::vector<std::pair<session::Edit, std::string>> edits{
      {session::add_lesson(99, "three"), "title = \"three\""},
      {session::rename_lesson(0, "first \"one\""), "title = \"first \\\"one\\\"\""},
      {session::move_lesson(1, 0), "[[lesson]]\ntitle = \"two\""},
      {session::move_work(open.course(), 0, 0, 1), "work = [\"ring / 11..20\", \"ring / 1..10\"]"},
      {session::move_part(open.course(), 0, {3, -4}), "start = [3, -4]"},
      {session::change_path(0, "NE 3, SE 2, SW 2, NW 1", "lengthen leg"), "path = \"NE 3, SE 2, SW 2, NW 1\""},
      {session::copy_part(open.course(), 0, {40, 0}), "name = \"ring 2\""},
      {session::add_part({"line", "cable", "heavy", {{"start", cloth::Hole{0, -20}}, {"path", std::string("E 8")}}}), "name = \"line\""},
  };
  for (const auto& [edit, wanted] : edits) {
    INFO(edit.name);
    REQUIRE(open.session.apply(edit));
    CHECK(open.session.text().find(wanted) != std::string::npos);
    CHECK(open.session.text().find("# mine") != std::string::npos);
    CHECK(open.session.text().find("# its stitches") != std::string::npos);
    CHECK(file::read(open.session.text()).faults.empty());
    CHECK(open.session.undo_name() == edit.name);
    CHECK(open.session.undo());
    CHECK(open.session.text() == before);
    CHECK(open.session.redo_name() == edit.name);
  }
}

TEST_CASE("removing a part takes its work out of the lessons; removing a lesson its comments") {
  Open open;
  REQUIRE(open.session.apply(session::add_part({"line", "cable", "heavy", {{"start", cloth::Hole{0, -20}}, {"path", std::string("E 8")}}})));
  open.session.wait();
  REQUIRE(open.session.apply(session::remove_part(open.course(), 0)));
  CHECK(open.session.text().find("ring") == std::string::npos);
  REQUIRE(open.session.apply(session::remove_lesson(1)));
  CHECK(open.session.text().find("# the second") == std::string::npos);
}

TEST_CASE("a part that others name: its new name stands there too; taken out it is named no more, but the only one stays") {
  Open open;
  const auto within = [&](std::vector<std::string> names) { return stitch::Values{{"within", std::move(names)}}; };
  REQUIRE(open.session.apply(session::copy_part(open.course(), 0, {40, 0})));
  REQUIRE(open.session.apply(session::add_part({"both", "cutwork", "heavy", within({"ring", "ring 2"})})));
  REQUIRE(open.session.apply(session::add_part({"one", "cutwork", "heavy", within({"ring 2"})})));
  open.session.wait();
  REQUIRE(open.session.apply(session::rename_part(open.course(), 0, "diamond")));
  CHECK(open.session.text().find("within = [\"diamond\", \"ring 2\"]") != std::string::npos);
  open.session.wait();
  const std::string before = open.session.text();
  CHECK(!open.session.apply(session::remove_part(open.course(), 1)));
  CHECK(open.session.text() == before);
  REQUIRE(open.session.apply(session::remove_part(open.course(), 0)));
  CHECK(open.session.text().find("diamond") == std::string::npos);
  CHECK(open.session.text().find("within = [\"ring 2\"]") != std::string::npos);
}

TEST_CASE("an edit that would make faults is refused with the fault, and nothing is changed") {
  Open open;
  const std::string before = open.session.text();
  const auto refused = open.session.apply(session::change_path(0, "NE 0", "lengthen leg"));
  REQUIRE(!refused);
  CHECK(refused.error().what.find("cannot lengthen leg: found") == 0);
  CHECK(open.session.text() == before);
  CHECK(open.session.undo_name().empty());
  CHECK(!open.session.apply(session::rename_lesson(7, "x")));
}

TEST_CASE("edits of one drag are one step") {
  Open open;
  const std::string before = open.session.text();
  const course::Course parts = open.course();
  for (int x = 1; x < 9; ++x) REQUIRE(open.session.apply(session::move_part(parts, 0, {x, 0}, 7)));
  REQUIRE(open.session.apply(session::move_part(parts, 0, {9, 0}, 8)));
  CHECK(open.session.undo());
  CHECK(open.session.text().find("start = [8, 0]") != std::string::npos);
  CHECK(open.session.undo());
  CHECK(open.session.text() == before);
}

TEST_CASE("saving: whole, noticed when another changed the file, asked before it is written over") {
  Open open;
  REQUIRE(open.session.apply(session::rename_lesson(0, "mine")));
  CHECK(!open.session.saved());
  std::ofstream(open.folder / "a.course.toml") << "format = 1\n";
  CHECK(open.session.changed_on_disk());
  CHECK(!open.session.save());
  CHECK(bytes_of(open.folder / "a.course.toml") == "format = 1\n");
  REQUIRE(open.session.save(true));
  CHECK(bytes_of(open.folder / "a.course.toml") == open.session.text());
  CHECK(open.session.saved());
}

TEST_CASE("unsaved work is kept, found by the next session, and forgotten when it is saved") {
  const TestFolder folder;
  std::ofstream(folder / "a.course.toml") << course_text();
  std::string edited;
  {
    session::Session first{folder.path};
    REQUIRE(first.open(folder / "a.course.toml"));
    REQUIRE(first.apply(session::rename_lesson(0, "not saved")));
    REQUIRE(first.keep());
    edited = first.text();
    session::Session second{folder.path};
    REQUIRE(second.open(folder / "a.course.toml"));
    CHECK(second.open_elsewhere());
  }
  session::Session next{folder.path};
  REQUIRE(next.open(folder / "a.course.toml"));
  CHECK(!next.open_elsewhere());
  REQUIRE(next.unsaved_work());
  CHECK(*next.unsaved_work() == edited);
  next.take_up_unsaved_work();
  CHECK(next.text() == edited);
  REQUIRE(next.save());
  session::Session after{folder.path};
  REQUIRE(after.open(folder / "a.course.toml"));
  CHECK(!after.unsaved_work());
}

TEST_CASE("a file with faults opens with them; a missing one leaves what was open") {
  Open open;
  std::ofstream(open.folder / "bad.course.toml") << "format = 1\n[course]\ntitel = \"x\"\n";
  REQUIRE(open.session.open(open.folder / "bad.course.toml"));
  open.session.wait();
  CHECK(!open.session.faults().empty());
  CHECK(!open.session.seen());
  REQUIRE(open.session.open(open.folder / "a.course.toml"));
  open.session.wait();
  CHECK(!open.session.open(open.folder / "nowhere.course.toml"));
  CHECK(open.session.file()->filename() == "a.course.toml");
}

TEST_CASE("the newest text is planned in the end, however many are asked for") {
  Open open;
  const course::Course before = open.course();
  for (int x = 0; x < 40; ++x) REQUIRE(open.session.apply(session::move_part(before, 0, {x, x})));
  open.session.wait();
  CHECK(!open.session.planning());
  CHECK(*open.session.seen()->text == open.session.text());
  CHECK(open.course().parts[0].work.stitches[0].a.x >= 39);
}

TEST_CASE("random edits, undos and redos: the text always reads, and undoing all brings the first bytes back") {
  setenv("RC_PARAMS", "seed=1911 max_success=60", 0);
  const course::Course course = file::read(course_text()).course;
  CHECK(rc::check("edits and undos", [&course] {
    session::History history(course_text());
    const int steps = *rc::gen::inRange(1, 40);
    for (int i = 0; i < steps; ++i) {
      const int what = *rc::gen::inRange(0, 7), a = *rc::gen::inRange(-3, 4), b = *rc::gen::inRange(-30, 30);
      std::optional<std::string> next;
      switch (what) {
        case 0: next = session::add_lesson(a, "t" + std::to_string(b)).change(*history.now()); break;
        case 1: next = session::rename_lesson(a, "r" + std::to_string(b)).change(*history.now()); break;
        case 2: next = session::move_lesson(a, b % 3).change(*history.now()); break;
        case 3: next = session::move_part(course, 0, {a, b}).change(*history.now()); break;
        case 4: next = session::remove_lesson(a).change(*history.now()); break;
        case 5: history.undo(); break;
        default: history.redo();
      }
      if (next) history.change("edit", *next);
      RC_ASSERT(file::read(*history.now()).faults.empty());
    }
    while (history.undo()) {}
    RC_ASSERT(*history.now() == course_text());
  }));
}

TEST_CASE("a repeated part moves with its middle: all its places move alike") {
  const std::string text =
      "format = 1\n[course]\ntitle = \"t\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n"
      "[[part]]\nname = \"four\"\nkind = \"blocks\"\nthread = \"heavy\"\nstart = [8, 8]\npath = \"E 1\"\nturn = 4\nabout = [0.5, -1.5]\n";
  const file::Read before = file::read(text);
  REQUIRE(before.faults.empty());
  const auto moved_text = session::move_part(before.course, 0, {3, -4}).change(text);
  REQUIRE(moved_text);
  CHECK(moved_text->find("about = [3.5, -5.5]") != std::string::npos);
  const file::Read after = file::read(*moved_text);
  REQUIRE(after.faults.empty());
  const auto &was = before.course.parts[0].work.stitches, &is = after.course.parts[0].work.stitches;
  REQUIRE(was.size() == 20);
  REQUIRE(is.size() == 20);
  for (std::size_t i = 0; i < was.size(); ++i) CHECK(is[i] == cloth::Stitch{was[i].a + cloth::Hole{3, -4}, was[i].b + cloth::Hole{3, -4}});
}
