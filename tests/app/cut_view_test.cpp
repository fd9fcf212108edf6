// The cutting in the window: the slider goes over snips, the cloth is open only where the plan cuts it by then, the thread under the
// pointer is told, cautions stand by.
#include <cmath>
#include <fstream>
#include <set>

#include "app/windowless.h"

namespace {

/// A ring of six, five, five and four blocks cut in the second lesson: 20 block ends of four threads, 80 snips (geometry).
std::string course_text(const std::string& path) {
  return "format = 1\n[course]\ntitle = \"Window cloth (invented)\"\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n[thread.heavy]\npearl = "
         "5\n"
         "[[part]]\nname = \"ring\"\nkind = \"blocks\"\nthread = \"heavy\"\nstart = [0, -24]\npath = \"" +
         path +
         "\"\n[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n"
         "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n[[lesson]]\nwork = [\"heart / bars\"]\n";
}

struct Cloth {
  TestFolder folder;
  std::string file;
  explicit Cloth(const std::string& path) : file((folder / "cut.course.toml").string()) { std::ofstream(file) << course_text(path); }
};

/// Pixels within the cloth's view that are drawn in the colour of cloth that is cut open.
double open_pixels(const Windowless& w) {
  const ImU32 gone = app::paint(w.desk->theme.chart.gone);
  const ImDrawData& drawn = *ImGui::GetDrawData();
  double all = 0;
  for (int n = 0; n < drawn.CmdListsCount; ++n) {
    const ImDrawList& list = *drawn.CmdLists[n];
    for (const ImDrawCmd& command : list.CmdBuffer)
      for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
        const auto at = [&](unsigned k) {
          return list.VtxBuffer[static_cast<int>(command.VtxOffset + list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)])];
        };
        const ImDrawVert a = at(0), b = at(1), c = at(2);
        if (a.col != gone || b.col != gone || c.col != gone) continue;
        all += std::abs((b.pos.x - a.pos.x) * (c.pos.y - a.pos.y) - (b.pos.y - a.pos.y) * (c.pos.x - a.pos.x)) / 2;
      }
  }
  return all;
}

/// Squares of the cloth with a thread out when all is cut.
double open_squares(const plan::Plan& plan) {
  std::set<std::pair<int, int>> squares;
  for (const cutwork::Span& span : plan.cuttings[0].cutting.withdrawn)
    for (int k = span.from; k < span.to; ++k)
      squares.insert(span.axis == cutwork::Axis::v ? std::pair{span.thread, k} : std::pair{k, span.thread});
  return static_cast<double>(squares.size());
}

bool tooltip_shown() {
  const ImDrawData& drawn = *ImGui::GetDrawData();
  for (int n = 0; n < drawn.CmdListsCount; ++n)
    if (std::string(drawn.CmdLists[n]->_OwnerName ? drawn.CmdLists[n]->_OwnerName : "").starts_with("##Tooltip")) return true;
  return false;
}

}  // namespace

TEST_CASE("a lesson that only cuts opens with the cloth as it will be; the slider goes over its snips") {
  const Cloth cloth("SE 6, SW 5, NW 5, NE 4");
  Windowless w(cloth.file);
  app::Desk& desk = *w.desk;
  CHECK_FALSE(desk.cut.shown);
  CHECK(open_pixels(w) == 0);
  w.mapped(ImGuiKey_PageDown);
  REQUIRE(desk.lesson == 2);
  CHECK(desk.cut.shown);
  CHECK(app::slider_places(desk) == 81);
  CHECK(app::slider_at(desk) == 80);
  const double thread = desk.view.pixels;
  CHECK(open_pixels(w) == doctest::Approx(open_squares(*desk.plan()) * thread * thread).epsilon(0.001));
  CHECK(app::next_snip(desk) == "All 80 snips are made, 40 threads are out.");
  w.mapped(ImGuiKey_Home);
  CHECK(app::slider_at(desk) == 0);
  CHECK(open_pixels(w) == 0);
  CHECK(app::next_snip(desk).starts_with("Snip 1 of 80, cutting 1:"));
  w.key('C');
  CHECK(app::slider_at(desk) == 4);
  CHECK(open_pixels(w) == 0);  // one end is cut: no thread is out
  w.key('C');
  CHECK(app::slider_at(desk) == 8);
  CHECK(open_pixels(w) > 0);
  w.key('P');
  w.key('N');
  CHECK(app::slider_at(desk) == 8);
  w.key('X');
  CHECK_FALSE(desk.cut.shown);
  CHECK(open_pixels(w) == 0);
  w.mapped(ImGuiKey_PageUp);
  w.key('X');
  CHECK(open_pixels(w) == 0);  // nothing is cut by the first lesson
  CHECK(app::slider_places(desk) == 100);
}

TEST_CASE("where a stop stands against the cutting nothing is shown as cut") {
  const Cloth cloth("SE 6, SW 5, NW 5, NE 3");  // one block is missing
  Windowless w(cloth.file);
  w.mapped(ImGuiKey_PageDown);
  w.key('X');
  CHECK(open_pixels(w) == 0);
  CHECK(app::snips_of_lesson(*w.desk) == 0);
}

TEST_CASE("the thread under the pointer is told while the cutting is shown, in both hands; beside the area nothing is") {
  const Cloth cloth("SE 6, SW 5, NW 5, NE 4");
  for (const bool left : {false, true}) {
    Windowless w(cloth.file);
    if (left) w.key('L');
    w.mapped(ImGuiKey_PageDown);
    const app::Area area = app::cloth_area(*w.desk, w.size.x, w.size.y);
    const cutwork::Opening& opening = w.desk->plan()->cuttings[0].cutting.openings[0];
    const ImVec2 a = w.at({opening.box.x0, opening.box.y0}), b = w.at({opening.box.x0 + 1, opening.box.y0 + 1});
    ImGui::GetIO().MousePos = {(a.x + b.x) / 2, (a.y + b.y) / 2};
    w.frames(3);
    const auto threads = app::threads_under(*w.desk, area, ImGui::GetIO().MousePos);
    REQUIRE(threads.size() == 2);
    CHECK(threads[0].thread == opening.box.x0);
    CHECK(threads[1].thread == opening.box.y0);
    CHECK(threads[0].strand != nullptr);
    CHECK(tooltip_shown());
    ImGui::GetIO().MousePos = {area.x + 3, area.y + 3};
    w.frames(3);
    CHECK_FALSE(tooltip_shown());
    w.key('X');
    ImGui::GetIO().MousePos = {(a.x + b.x) / 2, (a.y + b.y) / 2};
    w.frames(3);
    CHECK_FALSE(tooltip_shown());
  }
}
