// Puts the panels where they belong, whatever the window's size, and moves what moves with time.
#include <algorithm>

#include "app/panels.h"

namespace app {
namespace {

void walk_on(Desk& desk, double seconds) {
  constexpr double pace = 0.6;  // seconds a stitch, slow enough to follow
  if (!desk.walk.playing) return;
  desk.walk.since += seconds;
  if (desk.walk.since < pace) return;
  desk.walk.since = 0;
  if (slider_at(desk) + 1 < slider_places(desk))
    slide_to(desk, slider_at(desk) + 1);
  else
    desk.walk.playing = false;
}

/// What was chosen must still be there after an edit.
void keep_in_range(Desk& desk) {
  const plan::Plan* plan = desk.plan();
  if (!plan) return;
  desk.lesson = std::clamp(desk.lesson, 1, std::max(1, static_cast<int>(plan->lessons.size())));
  desk.walk.step = std::clamp(desk.walk.step, 0, std::max(0, walk_length(desk) - 1));
  if (desk.indexed != desk.session.seen()) {
    const bool all_cut = desk.cut.snips == snips_of_lesson(desk);
    desk.index = std::make_unique<picture::ChartIndex>(desk.session.seen()->course, *plan);
    desk.cuts = std::make_unique<picture::CutIndex>(*plan);
    desk.cut.snips = all_cut ? snips_of_lesson(desk) : std::min(desk.cut.snips, snips_of_lesson(desk));
    desk.indexed = desk.session.seen();
  }
}

}  // namespace

void begin_area(const char* name, Area area, ImU32 ground, ImGuiWindowFlags more) {
  ImGui::SetNextWindowPos({area.x, area.y});
  ImGui::SetNextWindowSize({area.w, area.h});
  ImGui::PushStyleColor(ImGuiCol_WindowBg, ground);
  ImGui::Begin(name, nullptr,
               ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBringToFrontOnFocus | more);
  ImGui::PopStyleColor();
}

void heading(const Desk& desk, const std::string& text) {
  ImGui::Dummy({0, 4 * desk.scale});
  ImGui::PushFont(desk.fonts.bold);
  ImGui::TextUnformatted(text.c_str());
  ImGui::PopFont();
}

void wrapped(const std::string& text) {
  ImGui::PushTextWrapPos(0);
  ImGui::TextUnformatted(text.c_str());
  ImGui::PopTextWrapPos();
}

void quiet(const Desk& desk, const std::string& text) {
  ImGui::PushStyleColor(ImGuiCol_Text, paint(desk.theme.quiet));
  wrapped(text);
  ImGui::PopStyleColor();
}

bool strong_button(const Desk& desk, const std::string& label, ImVec2 size) {
  ImGui::PushStyleColor(ImGuiCol_Button, paint(desk.theme.deep));
  ImGui::PushStyleColor(ImGuiCol_ButtonHovered, paint(desk.theme.accent));
  ImGui::PushStyleColor(ImGuiCol_Text, paint(desk.theme.on_deep));
  const bool pressed = ImGui::Button(label.c_str(), size);
  ImGui::PopStyleColor(3);
  return pressed;
}

namespace {

struct Places {
  Area top, lessons, tools, cloth, needle, sheet;
};

Places places(const Desk& desk, float width, float height) {
  const float s = desk.scale, gap = 12 * s;
  const float top = 46 * s, row = 92 * s, side = std::min(430 * s, width * 0.42F), top_gap = top + row + 2 * gap;
  const float y = top_gap, h = height - y - gap, left = width - side - 3 * gap;
  const float bottom = needle_height(desk, left), tools = tools_height(desk, left);
  return {{0, 0, width, top},
          {gap, top + gap, width - 2 * gap, row},
          {gap, y, left, tools},
          {gap, y + tools, left, h - bottom - gap - tools},
          {gap, y + h - bottom, left, bottom},
          {2 * gap + left, y, side, h}};
}

}  // namespace

Area cloth_area(const Desk& desk, float width, float height) { return places(desk, width, height).cloth; }

void frame(Desk& desk, float width, float height, double seconds) {
  desk.session.poll();
  keep_in_range(desk);
  walk_on(desk, seconds);
  shortcuts(desk);
  ImGui::GetBackgroundDrawList()->AddRectFilled({0, 0}, {width, height}, paint(desk.theme.desk));
  const Places at = places(desk, width, height);
  top_bar(desk, at.top);
  lesson_row(desk, at.lessons);
  tool_bar(desk, at.tools);
  sheet(desk, at.sheet);  // before the cloth: what was typed in it is taken over before a click there picks something else
  cloth_view(desk, at.cloth);
  needle_bar(desk, at.needle);
  overlays(desk, width, height);
  save_what_was_typed(desk);
}

}  // namespace app
