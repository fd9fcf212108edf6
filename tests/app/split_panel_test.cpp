// The split in the window: a look at what would move, taken as one step of undo; locked lessons; speeds; what to buy and the days, written.
#include <imgui_internal.h>

#include <chrono>
#include <fstream>
#include <sstream>
#include <thread>

#include "app/windowless.h"
#include "file/course_file.h"

namespace {

const std::string mat = std::string(TELLEKANT_ROOT) + "/lessons/mat.course.toml";

std::string text_in(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

/// Clicks the control with this label, found by going over the panel; of a table's cells those of `table`.
bool press(Windowless& w, const std::string& label, const char* table = nullptr) {
  w.frames(2);
  ImGuiContext& context = *ImGui::GetCurrentContext();
  const ImVec2 before = ImGui::GetIO().MousePos;
  for (float y = 12; y < w.size.y; y += 14)
    for (float x = 12; x < w.size.x; x += 30) {
      ImGui::GetIO().MousePos = {x, y};
      w.frames(1);
      if (context.HoveredId == 0 || !context.HoveredWindow) continue;
      const ImGuiID within = context.HoveredWindow->IDStack.back();
      if (context.HoveredId != ImHashStr(label.c_str(), 0, table ? ImHashStr(table, 0, within) : within)) continue;
      w.click(x, y);
      w.settle();
      return true;
    }
  ImGui::GetIO().MousePos = before;
  return false;
}

void wait_for_split(Windowless& w) {
  for (int i = 0; i < 2000 && !(w.desk->splitting && w.desk->splitting->finished); ++i)
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
  REQUIRE(w.desk->splitting);
  REQUIRE(w.desk->splitting->finished);
  w.frames(2);
}

}  // namespace

TEST_CASE("split again: shown before it is taken, one step of undo, the same as the command line's") {
  Windowless w(mat);
  const std::string before = w.desk->session.text();
  w.key('L', true);
  REQUIRE(w.desk->asking == app::Asking::split);
  REQUIRE(press(w, w.desk->say("desk.split.again")));
  wait_for_split(w);
  CHECK(w.desk->session.text() == before);  // looked at, not taken
  REQUIRE(w.desk->splitting->found);
  const auto rows = w.desk->splitting->found->lessons;
  REQUIRE(rows.size() == 7);
  CHECK(std::any_of(rows.begin(), rows.end(), [](const auto& row) { return row.moves(); }));
  REQUIRE(press(w, w.desk->say("desk.split.take")));
  CHECK(w.desk->session.text() != before);
  CHECK(w.desk->session.undo_name() == "split again");
  REQUIRE(w.desk->plan()->lessons.size() == 7);
  for (std::size_t i = 0; i < rows.size(); ++i) CHECK(w.desk->plan()->lessons[i].work == rows[i].then);
  w.mapped(ImGuiKey_Escape);
  w.key('Z', true);
  CHECK(w.desk->session.text() == before);
}

TEST_CASE("a lesson that is locked keeps its work; unlocked, the file is as it was") {
  Windowless w(mat);
  const std::string before = w.desk->session.text();
  w.key('L', true);
  REQUIRE(press(w, "##lock1", "##split"));
  CHECK(w.desk->session.text().find("locked = true") != std::string::npos);
  const auto kept = w.desk->plan()->lessons[0].work;
  REQUIRE(press(w, w.desk->say("desk.split.again")));
  wait_for_split(w);
  REQUIRE(w.desk->splitting->found);
  CHECK(w.desk->splitting->found->lessons[0].then == kept);
  CHECK(w.desk->splitting->found->lessons[0].locked);
  REQUIRE(press(w, "##lock1", "##split"));
  CHECK(w.desk->session.text() == before);
}

TEST_CASE("edits of the course: minutes, pace, speeds, notes; undo restores the bytes") {
  Windowless w(mat);
  session::Session& session = w.desk->session;
  const std::string before = session.text();
  const double minutes = w.desk->plan()->lessons[0].minutes;
  const auto done = [&](const session::Edit& edit) {
    const auto applied = session.apply(edit);
    session.wait();
    w.frames(2);
    return applied.has_value();
  };
  CHECK(done(session::change_speed("blocks", 3.0)));
  CHECK(w.desk->plan()->lessons[0].minutes == doctest::Approx(100 / 3.0));
  CHECK(done(session::change_speed("bars", 2.5)));
  CHECK(done(session::change_speed("blocks", std::nullopt)));
  CHECK(w.desk->plan()->lessons[0].minutes == doctest::Approx(minutes));
  CHECK(done(session::change_pace(course::Pace::beginner)));
  CHECK(w.desk->plan()->lessons[0].minutes > minutes);
  CHECK(done(session::change_course("home_minutes", "30", "change home work")));
  CHECK(w.desk->course()->home_minutes == 30);
  CHECK(!done(session::change_course("minutes", "0", "change minutes")));  // refused, nothing is changed
  CHECK(w.desk->course()->minutes == 90);
  CHECK(done(session::change_notes(0, "Bring \"good\" light.")));
  CHECK(w.desk->course()->lessons[0].notes == "Bring \"good\" light.");
  while (!session.undo_name().empty()) session.undo();
  session.wait();
  CHECK(session.text() == before);
}

TEST_CASE("what to buy and the days are written beside the course, whole") {
  Windowless w(mat);
  w.key('B', true);
  REQUIRE(w.desk->asking == app::Asking::buying);
  for (const char* key : {"desk.buying.text", "desk.buying.table", "desk.buying.calendar"}) REQUIRE(press(w, w.desk->say(key)));
  const std::string stem = "four-stars-at-table";
  CHECK(text_in(w.folder / (stem + "-shopping-list.txt")) == publish::supplies_text(w.desk->voice(), *w.desk->plan()));
  CHECK(text_in(w.folder / (stem + "-shopping-list.csv")) == publish::supplies_csv(w.desk->voice(), *w.desk->plan()));
  const std::string calendar = text_in(w.folder / (stem + "-calendar.ics"));
  CHECK(calendar.rfind("BEGIN:VCALENDAR\r\n", 0) == 0);
  int events = 0;
  for (std::size_t at = 0; (at = calendar.find("BEGIN:VEVENT", at)) != std::string::npos; ++at) ++events;
  CHECK(events == 7);
}

TEST_CASE("the class: one more student, a name and a hand are edits of the file; each is one step of undo") {
  Windowless w(std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml");
  const std::string before = w.desk->session.text();
  const auto now = [&] { return file::read(w.desk->session.text()).course; };
  w.desk->apply(session::add_student());
  w.desk->apply(session::add_student());
  w.desk->apply(session::change_student(1, "Una \"U\"", course::Hand::left));
  REQUIRE(now().class_list.size() == 2);
  CHECK(now().class_list[1].name == "Una \"U\"");
  CHECK(now().class_list[1].hand == course::Hand::left);
  w.desk->apply(session::change_student(1, "", course::Hand::right));
  CHECK(now().class_list[1].name.empty());
  CHECK(now().class_list[1].hand == course::Hand::right);
  w.desk->apply(session::change_student(7, "Nobody", course::Hand::left));
  CHECK(!w.desk->message.empty());
  w.desk->apply(session::remove_student(0));
  CHECK(now().class_list.size() == 1);
  w.desk->asking = app::Asking::class_list;
  w.settle();
  w.frames(3);
  w.click(480, 144);  // into the first name
  for (const char letter : {'A', 'd', 'a'}) {
    ImGui::GetIO().AddInputCharacter(static_cast<unsigned>(letter));
    w.frames(1);
  }
  CHECK(now().class_list[0].name.empty());  // not before the field is left
  w.click(480, 600);
  CHECK(now().class_list[0].name == "Ada");
  w.desk->asking = app::Asking::nothing;
  w.frames(2);
  for (int i = 0; i < 6; ++i) w.desk->session.undo();
  CHECK(w.desk->session.text() == before);
}
