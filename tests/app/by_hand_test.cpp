// Drawing, moving and shaping with real mouse and key events; what is compared is the course file.
#include <algorithm>

#include "app/empty_cloth.h"
#include "app/panels.h"
#include "picture/table.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";

}  // namespace

TEST_CASE("a ring of blocks is drawn leg by leg and closes; each leg is one step of undo") {
  Empty w;
  w.key('W');
  REQUIRE(w.desk->tool == app::Tool::draw);
  const std::string empty = w.desk->session.text();
  w.drag(w.at({2, 2}), w.at({14, -10}));
  REQUIRE(w.course().parts.size() == 1);
  CHECK(w.course().parts[0].kind == "blocks");
  CHECK(w.desk->session.text().find("path = \"NE 4\"") != std::string::npos);
  CHECK(w.desk->session.text().find("thread = \"heavy\"") != std::string::npos);
  w.drag(w.at({14, -10}), w.at({26, 2}));
  w.drag(w.at({26, 2}), w.at({14, 14}));
  w.drag(w.at({14, 14}), w.at({2, 2}));
  INFO(w.desk->session.text());
  REQUIRE(w.course().parts.size() == 1);
  CHECK(w.course().parts[0].work.closed);
  CHECK(w.course().parts[0].work.stitches.size() == 60);  // 20 n - 20, n = 4 blocks a side
  CHECK(!w.desk->drawing.shape);
  for (int i = 0; i < 4; ++i) w.key('Z', true);
  CHECK(w.desk->session.text() == empty);
}

TEST_CASE("a cable is drawn beside what is there, in the fine thread; Backspace takes a leg back, Esc ends the part") {
  Empty w;
  w.key('W');
  w.desk->drawing.kind = "cable";
  w.drag(w.at({0, 0}), w.at({13, 0}));
  w.drag(w.at({14, 0}), w.at({14, 11}));
  REQUIRE(w.course().parts.size() == 1);
  const auto path = [&] { return std::get<std::string>(w.course().parts[0].values.at("path")); };
  CHECK(path().find("E 1") == 0);
  CHECK(path().find(", S 1") != std::string::npos);
  CHECK(w.course().parts[0].thread == "fine");
  w.mapped(ImGuiKey_Backspace);
  CHECK(path().find(',') == std::string::npos);
  w.mapped(ImGuiKey_Escape);
  CHECK(!w.desk->drawing.shape);
}

TEST_CASE("with the keys alone: arrows move the pointer, Enter presses and lets go") {
  Empty w;
  w.key('W');
  ImGui::GetIO().MousePos = w.at({0, 0});
  w.frames(2);
  w.mapped(ImGuiKey_Enter);
  w.mapped(ImGuiKey_RightArrow);
  REQUIRE(w.desk->key_pointer);
  w.mapped(ImGuiKey_Enter);
  for (int i = 0; i < 9; ++i) w.mapped(ImGuiKey_RightArrow);
  w.mapped(ImGuiKey_Enter);
  REQUIRE(w.course().parts.size() == 1);
  CHECK(std::get<std::string>(w.course().parts[0].values.at("path")).starts_with("E "));
}

TEST_CASE("a part is picked by a click, moved by pulling in one step of undo, by arrows, copied, deleted") {
  Empty w;
  w.key('W');
  w.drag(w.at({2, 2}), w.at({16, -12}));
  w.mapped(ImGuiKey_Escape);
  w.key('K');
  w.mapped(ImGuiKey_Escape);
  const std::string before = w.desk->session.text();
  w.drag(w.at({0, 2}), w.at({10, 12}));
  CHECK(w.desk->picked == "blocks");
  CHECK(w.desk->session.text() != before);
  w.key('Z', true);
  CHECK(w.desk->session.text() == before);
  const auto start = [&] { return std::get<cloth::Hole>(w.course().parts[0].values.at("start")); };
  const cloth::Hole was = start();
  ImGui::GetIO().MousePos = w.at({30, 18});
  w.frames(2);
  w.desk->picked = "blocks";
  w.mapped(ImGuiKey_RightArrow);
  w.mapped(ImGuiKey_UpArrow);
  CHECK(start() == was + cloth::Hole{1, -1});
  w.key('D', true);
  REQUIRE(w.course().parts.size() == 2);
  CHECK(w.desk->picked == "blocks 2");
  w.mapped(ImGuiKey_Delete);
  CHECK(w.course().parts.size() == 1);
}

TEST_CASE("a part that begins near another's corner snaps to it; with the keys it begins where it is told") {
  Empty w;
  w.key('W');
  w.drag(w.at({2, 2}), w.at({14, -10}));
  w.mapped(ImGuiKey_Escape);
  REQUIRE(w.course().parts.size() == 1);
  const cloth::Hole corner = w.course().parts[0].work.legs[0].to;
  w.desk->drawing.kind = "cable";
  w.drag(w.at(corner + cloth::Hole{2, -1}), w.at(corner + cloth::Hole{14, -1}));
  REQUIRE(w.course().parts.size() == 2);
  CHECK(std::get<cloth::Hole>(w.course().parts[1].values.at("start")) == corner);
  w.mapped(ImGuiKey_Escape);
  w.drag(w.at(corner + cloth::Hole{20, 13}), w.at(corner + cloth::Hole{32, 13}));
  REQUIRE(w.course().parts.size() == 3);
  CHECK(std::get<cloth::Hole>(w.course().parts[2].values.at("start")) == corner + cloth::Hole{20, 13});
}

TEST_CASE("the picked part is repeated from its panel: turned about the middle, no longer, in one step of undo each") {
  Empty w;
  w.key('W');
  w.drag(w.at({2, 2}), w.at({14, -10}));
  w.mapped(ImGuiKey_Escape);
  const std::string once = w.desk->session.text();
  stitch::Repeat four{4, "", {0, 0}};
  w.desk->apply(session::change_repeat(0, four));
  w.settle();
  CHECK(w.desk->session.text().find("turn = 4\nabout = [0, 0]") != std::string::npos);
  CHECK(w.course().parts[0].work.places == 4);
  w.desk->apply(session::change_repeat(0, {}));
  w.settle();
  CHECK(w.desk->session.text() == once);
  w.key('Z', true);
  CHECK(w.course().parts[0].work.places == 4);
}

TEST_CASE("a leg's handle lengthens it; only lengths that fit are taken") {
  Empty w;
  w.key('W');
  w.desk->drawing.kind = "cable";
  w.drag(w.at({0, 0}), w.at({12, 0}));
  w.mapped(ImGuiKey_Escape);
  w.key('K');
  w.desk->picked = "cable";
  w.settle();
  INFO(w.desk->session.text());
  w.drag(w.at({12, 0}), w.at({21, 0}));
  const std::string path = std::get<std::string>(w.course().parts[0].values.at("path"));
  CHECK((path == "E 20" || path == "E 22"));
  CHECK(w.desk->session.undo_name() == "lengthen leg");
}

TEST_CASE("work is pulled from the sheet onto another lesson; an impossible order is marked there") {
  Windowless w(frost);
  const std::string before = w.desk->session.text();
  const auto work_of = [&](std::size_t n) { return file::read(w.desk->session.text()).course.lessons[n].work.size(); };
  const std::size_t first = work_of(0), second = work_of(1);
  ImGui::GetIO().MousePos = {1100, 600};
  for (int i = 0; i < 40; ++i) {
    ImGui::GetIO().MouseWheel = -2;
    w.frames(1);
  }
  w.frames(2);
  for (float y = 320; y < 850 && w.desk->session.text() == before; y += 9) w.drag({1100, y}, {300, 110});
  CHECK(work_of(0) == first - 1);
  CHECK(work_of(1) == second + 1);
  w.key('Z', true);
  CHECK(w.desk->session.text() == before);
}

TEST_CASE("G swaps what a grid line stands for, H hides later work; neither touches the course") {
  Windowless w(frost);
  const std::string before = w.desk->session.text();
  w.key('G');
  CHECK(w.desk->lines_swapped);
  w.key('H');
  CHECK(!w.desk->show_later);
  CHECK(w.desk->session.text() == before);
}

TEST_CASE("Shift+F shows what the lesson stitches, F the whole design") {
  Windowless w(frost);
  const float whole = w.desk->view.pixels;
  ImGui::GetIO().KeyShift = true;
  w.key('F');
  ImGui::GetIO().KeyShift = false;
  CHECK(w.desk->view.pixels > 1.2F * whole);  // half of the ring fills the view better than the octagon round it
  w.key('F');
  CHECK(w.desk->view.pixels == doctest::Approx(whole));
}

TEST_CASE("the counts to be sure on the screen are those of the pages: an octagon of 212 stitches in its first pass") {
  Windowless w(frost);
  const auto tables = picture::lesson_counts(*w.desk->course(), *w.desk->plan(), 4, w.desk->voice());
  REQUIRE(tables.size() == 2);  // the counts to be sure, and how many by each corner
  REQUIRE(tables[0].rows.back().numbers.size() == 2);
  CHECK(tables[0].rows.back().numbers[0] + tables[0].rows.back().numbers[1] == 212);
  CHECK(tables[0].rows.back().numbers[0] - tables[0].rows.back().numbers[1] == 4);  // an octagon's outer row has 4 more (geometry)
}

TEST_CASE("a mistake is taken in where the needle stands; what was said goes when the needle moves; the left hand sees the mirror image") {
  Windowless w(frost);
  w.desk->walk.step = 30;
  app::take_in_mistake(*w.desk, {1, 0});
  w.frames(2);
  const std::vector<std::string> right = w.desk->mistake.said;
  REQUIRE(!right.empty());
  CHECK(std::any_of(right.begin(), right.end(), [](const std::string& s) { return s.find("unpick 40 stitches: the last right one is stitch 30") != std::string::npos; }));
  w.desk->hand = say::Hand::left;
  app::take_in_mistake(*w.desk, {1, 0});  // to the left as she sees it
  REQUIRE(w.desk->mistake.said.size() == right.size());
  CHECK(w.desk->mistake.said.front() == right.front());  // the stitches that miss each other are the same; where to count from is mirrored
  w.desk->walk.step = 31;
  w.frames(2);
  CHECK(w.desk->mistake.step == 30);
}

TEST_CASE("a mistake is marked on the cloth: the wrong stitch is pulled to where it was stitched, by the mouse or by the keys") {
  Windowless w(frost);
  const auto& stitches = w.desk->plan()->trails[0].trail.stitches;
  w.desk->walk.step = 32;
  app::take_in_mistake(*w.desk, {2, -1});
  const std::vector<std::string> asked = w.desk->mistake.said;
  REQUIRE(!asked.empty());
  w.desk->walk.step = 3;
  w.desk->mistake = {};
  w.key('M');
  REQUIRE(w.desk->tool == app::Tool::mark);
  const cloth::Hole from{(stitches[32].up.x + stitches[32].down.x) / 2, (stitches[32].up.y + stitches[32].down.y) / 2};  // in the middle of a block
  w.drag(w.at(from), w.at(from + cloth::Hole{2, -1}));
  CHECK(w.desk->mistake.off == cloth::Hole{2, -1});
  CHECK(w.desk->walk.step == 32);
  CHECK(w.desk->mistake.said == asked);
  w.click(w.at(stitches[12].up).x, w.at(stitches[12].up).y);  // the needle goes there, nothing is asked
  CHECK(!app::mistake_told(*w.desk));
  CHECK(w.desk->walk.step != 32);
  ImGui::GetIO().MousePos = w.at(from);
  w.frames(2);
  w.mapped(ImGuiKey_LeftArrow);
  w.mapped(ImGuiKey_RightArrow);
  w.mapped(ImGuiKey_Enter);
  REQUIRE(w.desk->marked_from == from);
  w.mapped(ImGuiKey_RightArrow);
  w.mapped(ImGuiKey_Enter);
  CHECK(w.desk->mistake.off == cloth::Hole{1, 0});
  CHECK(app::mistake_told(*w.desk));
  w.mapped(ImGuiKey_Escape);
  CHECK(w.desk->tool == app::Tool::pick);
}
