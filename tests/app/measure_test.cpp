// What measuring rests on: triangles counted right, shares of times, calls read; and more than a 16-bit index can hold played without a
// fault.
#include "app/measure.h"

#include "app/call.h"
#include "app/windowless.h"
#include "paint/imgui/play.h"
#include "picture/far_cells.h"

namespace {

/// Every index of every command within the list's corners, none beyond 16 bits of its own offset.
bool indices_hold(const ImDrawData& drawn) {
  for (int n = 0; n < drawn.CmdListsCount; ++n)
    for (const ImDrawCmd& command : drawn.CmdLists[n]->CmdBuffer)
      for (unsigned i = 0; i < command.ElemCount; ++i)
        if (command.VtxOffset + drawn.CmdLists[n]->IdxBuffer[static_cast<int>(command.IdxOffset + i)] >=
            static_cast<unsigned>(drawn.CmdLists[n]->VtxBuffer.Size))
          return false;
  return true;
}

app::FrameCost cost_of(const list::List& list) {
  ImGui::GetIO().BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
  ImGui::NewFrame();
  paint::play(list, {{0, 0}, 1, nullptr, nullptr}, *ImGui::GetBackgroundDrawList());
  ImGui::Render();
  app::FrameCost cost;
  app::count_triangles(*ImGui::GetDrawData(), cost);
  CHECK(indices_hold(*ImGui::GetDrawData()));
  return cost;
}

list::Panel square(double x, double y) { return {{x, y, 2, 2}, 0, true, {1, 2, 3}, 0, {}}; }

}  // namespace

TEST_CASE("triangles: a rectangle is two, one outside the window is not visible; 100,000 rectangles overflow nothing") {
  const Windowless w(std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml");
  const app::FrameCost none = cost_of({});
  list::List two;
  two.add(list::Role::ground, square(10, 10));
  two.add(list::Role::ground, square(-50, 10));
  const app::FrameCost cost = cost_of(two);
  CHECK(cost.submitted - none.submitted == 4);
  CHECK(cost.visible - none.visible == 2);
  list::List many;
  for (int i = 0; i < 100000; ++i) many.add(list::Role::ground, square(i % 1000, i / 1000));
  CHECK(cost_of(many).submitted - none.submitted == 200000);
}

TEST_CASE("shares of values: the middle one, the ninety-ninth of a hundred") {
  std::vector<double> values;
  for (int i = 100; i >= 1; --i) values.push_back(i);
  CHECK(app::share(values, 0.5) == 50);
  CHECK(app::share(values, 0.99) == 99);
  CHECK(app::share({7}, 0.99) == 7);
  CHECK(app::share({}, 0.5) == 0);
}

TEST_CASE("calls: a file, measuring, and what is wrong") {
  const auto read = [](std::vector<const char*> words) {
    words.insert(words.begin(), "tellekant-desk");
    return app::read_call(static_cast<int>(words.size()), words.data());
  };
  CHECK(read({}).job == app::Job::window);
  CHECK(!read({}).file);
  CHECK(read({"a.course.toml"}).file == "a.course.toml");
  CHECK(read({"--measure", "a.course.toml"}).job == app::Job::measure);
  CHECK(read({"--measure"}).exit == 2);
  CHECK(read({"--nonsense"}).exit == 2);
  CHECK(read({"a", "b"}).exit == 2);
  CHECK(read({"--version"}).exit == 0);
  CHECK(read({"--help"}).exit == 0);
}

TEST_CASE("the cloth from far away: a stitch marks the squares it lies in, the higher rank stays, runs are cut at the view") {
  picture::ChartView view;
  view.x = 1;
  view.width = view.height = 40;
  view.pixels = 0.5;  // squares of four threads
  picture::FarCells cells(view);
  cells.mark({7, 4}, {15, 4}, 1);  // holes 8 to 16: two squares
  cells.mark({11, 4}, {15, 4}, 3);
  cells.mark({-90, 4}, {-80, 4}, 3);
  std::vector<std::pair<double, int>> runs;
  cells.each_run([&](list::Rect rect, std::uint8_t rank) { runs.emplace_back(rect.x, rank); });
  CHECK(runs == std::vector<std::pair<double, int>>{{7, 1}, {11, 3}});
}

TEST_CASE("edits are timed to their plans, and taken back") {
  Windowless w(std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml");
  const std::string before = w.desk->session.text();
  CHECK(app::measure_edits(w.desk->session).size() == 20);
  CHECK(w.desk->session.text() == before);
}

TEST_CASE("frames are measured at every scale, and nothing much is submitted that cannot be seen") {
  Windowless w(std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml");
  const app::MeasuredFrames measured = app::measure_frames(*w.desk, {"here", app::Timed::processor, [] {}, [] {}}, 1440, 900);
  CHECK(measured.scales.size() == 12);
  for (const app::FramesAt& at : measured.scales) {
    double submitted = 0, visible = 0;
    for (const app::FrameCost& cost : at.frames) {
      CHECK(cost.visible > 0);
      CHECK(cost.submitted <= 1.15 * static_cast<double>(cost.visible));
      submitted += static_cast<double>(cost.submitted);
      visible += static_cast<double>(cost.visible);
    }
    CHECK(submitted <= 1.1 * visible);
  }
}
