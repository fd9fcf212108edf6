// Every kind drawn with real mouse and key events, also those without a path; what is compared is the course file.
#include "app/empty_cloth.h"

TEST_CASE("the kinds have keys in the order of the list: 1 is the first; each chooses it and the drawing tool") {
  Empty w;
  int number = 0;
  for (const stitch::Kind* kind : stitch::kinds()) {
    w.key(app::key_of_kind(number++));
    CHECK(w.desk->tool == app::Tool::draw);
    CHECK(w.desk->drawing.kind == kind->name);
    CHECK(!app::how_to_draw(*w.desk).empty());
  }
}

TEST_CASE("eyelets: the first is pulled to its size, each click puts one more, a click on one takes it away; each a step of undo") {
  Empty w;
  const std::string empty = w.desk->session.text();
  app::choose_kind(*w.desk, "eyelet");
  w.drag(w.at({0, 0}), w.at({3, 0}));
  const auto centres = [&] { return std::get<std::vector<cloth::Hole>>(w.course().parts.at(0).values.at("centres")); };
  REQUIRE(w.course().parts.size() == 1);
  CHECK(std::get<int>(w.course().parts[0].values.at("size")) == 6);
  CHECK(w.course().parts[0].thread == "fine");
  const auto click = [&](cloth::Hole hole) { w.click(w.at(hole).x, w.at(hole).y); };
  click({12, 0});
  click({12, 12});
  CHECK(centres() == std::vector<cloth::Hole>{{0, 0}, {12, 0}, {12, 12}});
  click({12, 0});
  CHECK(centres() == std::vector<cloth::Hole>{{0, 0}, {12, 12}});
  w.mapped(ImGuiKey_Backspace);
  CHECK(centres() == std::vector<cloth::Hole>{{0, 0}});
  w.mapped(ImGuiKey_Escape);
  for (int i = 0; i < 5; ++i) w.key('Z', true);
  CHECK(w.desk->session.text() == empty);
}

TEST_CASE("a star is pulled out of its middle; the next click puts one of the same reach, a part of its own") {
  Empty w;
  app::choose_kind(*w.desk, "star");
  w.drag(w.at({0, 0}), w.at({10, 2}));
  REQUIRE(w.course().parts.size() == 1);
  CHECK(std::get<int>(w.course().parts[0].values.at("reach")) == 10);
  CHECK(w.course().parts[0].work.stitches.size() == 8 * 9);  // eight petals of 2 3 4 5 6 5 4 3 2
  w.click(w.at({25, 12}).x, w.at({25, 12}).y);
  REQUIRE(w.course().parts.size() == 2);
  CHECK(w.course().parts[1].values.at("centre") == stitch::Value(cloth::Hole{25, 12}));
  CHECK(w.course().parts[1].values.at("reach") == stitch::Value(10));
}

TEST_CASE("a click in the empty middle of a star picks it; one beside it, or in the wide middle of a ring, picks nothing") {
  Empty w;
  app::choose_kind(*w.desk, "star");
  w.drag(w.at({0, 0}), w.at({10, 0}));
  app::choose_kind(*w.desk, "blocks");
  w.drag(w.at({-34, 0}), w.at({-22, -12}));
  w.drag(w.at({-22, -12}), w.at({-10, 0}));
  w.drag(w.at({-10, 0}), w.at({-22, 12}));
  REQUIRE(w.course().parts.size() == 2);
  const auto picked_at = [&](cloth::Hole hole) {
    w.key('K');
    w.mapped(ImGuiKey_Escape);
    REQUIRE(w.desk->picked.empty());
    w.click(w.at(hole).x, w.at(hole).y);
    return w.desk->picked;
  };
  CHECK(picked_at({0, 0}) == w.course().parts[0].name);
  CHECK(picked_at({13, 13}).empty());
  CHECK(picked_at({-22, 0}).empty());
}

TEST_CASE("satin stitch is pulled as a box; its handle makes it larger in one step of undo") {
  Empty w;
  app::choose_kind(*w.desk, "satin");
  w.drag(w.at({0, 0}), w.at({8, -4}));
  REQUIRE(w.course().parts.size() == 1);
  CHECK(w.course().parts[0].values.at("over") == stitch::Value(std::vector(9, 4)));
  const std::string before = w.desk->session.text();
  w.key('K');
  w.desk->picked = "satin";
  w.settle();
  w.drag(w.at({8, -4}), w.at({12, -6}));
  CHECK(w.course().parts[0].values.at("over") == stitch::Value(std::vector(13, 6)));
  CHECK(w.desk->session.undo_name() == "change size");
  w.key('Z', true);
  CHECK(w.desk->session.text() == before);
}

TEST_CASE("pulled out and back again, a size is what it was") {
  Empty w;
  app::choose_kind(*w.desk, "star");
  w.drag(w.at({0, 0}), w.at({10, 0}));
  w.key('K');
  w.desk->picked = "star";
  w.settle();
  ImGuiIO& io = ImGui::GetIO();
  io.MousePos = w.at({10, 0});
  w.frames(2);
  io.MouseDown[0] = true;
  w.frames(2);
  for (const int x : {12, 14, 12, 10}) {
    io.MousePos = w.at({x, 0});
    w.frames(2);
  }
  io.MouseDown[0] = false;
  w.settle();
  CHECK(w.course().parts[0].values.at("reach") == stitch::Value(10));
}

TEST_CASE("an area to be cut: the parts that hold it are clicked, the hole too; what holds nothing is refused and said") {
  Empty w;
  w.key('W');
  app::choose_kind(*w.desk, "blocks");
  w.drag(w.at({2, 2}), w.at({14, -10}));
  w.drag(w.at({14, -10}), w.at({26, 2}));
  w.drag(w.at({26, 2}), w.at({14, 14}));
  w.drag(w.at({14, 14}), w.at({2, 2}));
  app::choose_kind(*w.desk, "cable");
  w.drag(w.at({-10, 20}), w.at({20, 20}));
  w.mapped(ImGuiKey_Escape);
  app::choose_kind(*w.desk, "cutwork");
  const auto click = [&](cloth::Hole hole) { w.click(w.at(hole).x, w.at(hole).y); };
  const cloth::Stitch block = w.course().parts[0].work.stitches[0], run = w.course().parts[1].work.stitches[1];
  click(run.a);
  CHECK(w.course().parts.size() == 2);
  CHECK(!w.desk->message.empty());
  click({(block.a.x + block.b.x) / 2, (block.a.y + block.b.y) / 2});
  REQUIRE(w.course().parts.size() == 3);
  CHECK(w.course().parts[2].values.at("within") == stitch::Value(std::vector<std::string>{"blocks"}));
  click({14, 2});
  CHECK(w.course().parts[2].values.at("zone") == stitch::Value(cloth::Hole{14, 2}));
  click({14, 2});
  CHECK(!w.course().parts[2].values.contains("zone"));
}

TEST_CASE("with the keys alone an eyelet is put and sized: Enter, arrows, Enter") {
  Empty w;
  app::choose_kind(*w.desk, "eyelet");
  ImGui::GetIO().MousePos = w.at({0, 0});
  w.frames(2);
  w.mapped(ImGuiKey_RightArrow);
  w.mapped(ImGuiKey_Enter);
  for (int i = 0; i < 4; ++i) w.mapped(ImGuiKey_RightArrow);
  w.mapped(ImGuiKey_Enter);
  REQUIRE(w.course().parts.size() == 1);
  CHECK(w.course().parts[0].values.at("centres") == stitch::Value(std::vector<cloth::Hole>{{1, 0}}));
  CHECK(w.course().parts[0].values.at("size") == stitch::Value(8));
}
