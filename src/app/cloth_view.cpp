// The cloth: pan, zoom, a counting rule, and what lies under the pointer. The chart is played from the same list that says what is seen.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "app/panels.h"
#include "paint/imgui/play.h"

namespace app {
namespace {

constexpr float finest = 0.5F, coarsest = 80;  // pixels of a thread

bool mirrored(const Desk& desk) { return desk.hand == say::Hand::left; }

void fit(Desk& desk, Area area) {
  const cloth::Box box = course::extent(*desk.course());
  constexpr float margin = 4;  // threads on every side
  const float w = static_cast<float>(box.width()) + 2 * margin, h = static_cast<float>(box.height()) + 2 * margin;
  desk.view.pixels = std::clamp(std::min(area.w / w, area.h / h), finest, coarsest);
  const double middle_x = (mirrored(desk) ? -1.0 : 1.0) * (box.x0 + box.x1) / 2.0;
  desk.view.x = middle_x - area.w / desk.view.pixels / 2;
  desk.view.y = (box.y0 + box.y1) / 2.0 - area.h / desk.view.pixels / 2;
  desk.view.fit = false;
}

void zoom(Desk& desk, Area area, ImVec2 about, float times) {
  const float next = std::clamp(desk.view.pixels * times, finest, coarsest);
  const double dx = about.x - area.x, dy = about.y - area.y;
  desk.view.x += dx / desk.view.pixels - dx / next;
  desk.view.y += dy / desk.view.pixels - dy / next;
  desk.view.pixels = next;
}

cloth::Hole hole_at(const Desk& desk, Area area, ImVec2 at) {
  const int x = static_cast<int>(std::lround(desk.view.x + (at.x - area.x) / desk.view.pixels));
  const int y = static_cast<int>(std::lround(desk.view.y + (at.y - area.y) / desk.view.pixels));
  return {mirrored(desk) ? -x : x, y};
}

ImVec2 pixel_of(const Desk& desk, Area area, cloth::Hole hole) {
  const double x = (mirrored(desk) ? -hole.x : hole.x) - desk.view.x, y = hole.y - desk.view.y;
  return {area.x + static_cast<float>(x * desk.view.pixels), area.y + static_cast<float>(y * desk.view.pixels)};
}

std::vector<guide::Leg> legs_between(cloth::Hole from, cloth::Hole to) {
  std::vector<guide::Leg> legs;
  const int dx = to.x - from.x, dy = to.y - from.y;
  if (dy != 0) legs.push_back({dy < 0 ? cloth::Way::N : cloth::Way::S, std::abs(dy)});
  if (dx != 0) legs.push_back({dx < 0 ? cloth::Way::W : cloth::Way::E, std::abs(dx)});
  return legs;
}

void move_by_mouse(Desk& desk, Area area) {
  const ImGuiIO& io = ImGui::GetIO();
  if (ImGui::IsItemHovered() && io.MouseWheel != 0) zoom(desk, area, io.MousePos, std::pow(1.15F, io.MouseWheel));
  if (ImGui::IsItemActive() && ImGui::IsMouseDragging(ImGuiMouseButton_Left, 2) && !desk.rule_from) {
    desk.view.x -= io.MouseDelta.x / desk.view.pixels;
    desk.view.y -= io.MouseDelta.y / desk.view.pixels;
  }
  if (ImGui::IsItemHovered() && ImGui::IsMouseClicked(ImGuiMouseButton_Right)) desk.rule_from = hole_at(desk, area, io.MousePos);
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Right)) desk.rule_from.reset();
}

void move_by_keys(Desk& desk, Area area) {
  if (!ImGui::IsItemFocused() && !ImGui::IsItemHovered()) return;
  const double step = 4;
  if (ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_LeftArrow))) desk.view.x -= step;
  if (ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_RightArrow))) desk.view.x += step;
  if (ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_UpArrow))) desk.view.y -= step;
  if (ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_DownArrow))) desk.view.y += step;
  const ImVec2 middle{area.x + area.w / 2, area.y + area.h / 2};
  for (const ImWchar c : ImGui::GetIO().InputQueueCharacters) {
    if (c == '+') zoom(desk, area, middle, 1.25F);
    if (c == '-') zoom(desk, area, middle, 0.8F);
  }
}

picture::ChartView chart_view(const Desk& desk, Area area) {
  picture::ChartView view{desk.view.x, desk.view.y, area.w / desk.view.pixels, area.h / desk.view.pixels, desk.view.pixels, desk.lesson, desk.show_back,
                          mirrored(desk), desk.course()->choices.line, std::nullopt, -1};
  if (const auto place = walk_place(desk)) view.needle = picture::ChartNeedle{place->trail, place->stitch};
  return view;
}

void counting_rule(const Desk& desk, Area area, ImDrawList& draw) {
  const cloth::Hole to = hole_at(desk, area, ImGui::GetIO().MousePos);
  const ImVec2 a = pixel_of(desk, area, *desk.rule_from), b = pixel_of(desk, area, to);
  const ImU32 accent = paint(desk.theme.accent);
  draw.AddLine(a, {a.x, b.y}, accent, 2 * desk.scale);
  draw.AddLine({a.x, b.y}, b, accent, 2 * desk.scale);
  const std::string words = say::legs(desk.voice(), legs_between(*desk.rule_from, to));
  if (!words.empty()) ImGui::SetTooltip("%s", words.c_str());
}

void status(const Desk& desk, Area area, ImDrawList& draw, bool hovered) {
  std::string text = desk.say("desk.cloth", {{"count", words::Decimal{desk.course()->cloth.count.per_inch, 0}}});
  if (hovered) {
    const cloth::Hole hole = hole_at(desk, area, ImGui::GetIO().MousePos);
    text = desk.say("desk.hole", {{"x", std::int64_t{hole.x}}, {"y", std::int64_t{hole.y}}}) + " · " + text;
    const auto lying = desk.index->in({hole.x, hole.y, hole.x, hole.y});
    if (!lying.empty()) text = desk.course()->parts[static_cast<std::size_t>(lying.back().part)].name + " · " + text;
  }
  const float s = desk.scale, pad = 10 * s;
  const ImVec2 size = desk.fonts.small->CalcTextSizeA(desk.fonts.small->FontSize, FLT_MAX, 0, text.c_str());
  const ImVec2 to{area.x + area.w - pad, area.y + area.h - pad}, from{to.x - size.x - 2 * pad, to.y - size.y - pad};
  draw.AddRectFilled(from, to, paint(desk.theme.panel), 6 * s);
  draw.AddRect(from, to, paint(desk.theme.line), 6 * s);
  draw.AddText(desk.fonts.small, desk.fonts.small->FontSize, {from.x + pad, from.y + pad / 2}, paint(desk.theme.quiet), text.c_str());
}

}  // namespace

void cloth_view(Desk& desk, Area area) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
  begin_area("cloth", area, paint(desk.theme.panel));
  ImGui::PopStyleVar();
  if (desk.course() && desk.index) {
    if (desk.view.fit) fit(desk, area);
    ImGui::InvisibleButton("##cloth", {area.w, area.h});
    const bool hovered = ImGui::IsItemHovered();
    move_by_mouse(desk, area);
    move_by_keys(desk, area);
    ImDrawList& draw = *ImGui::GetWindowDrawList();
    const list::List chart = picture::chart(*desk.course(), *desk.plan(), *desk.index, chart_view(desk, area), desk.theme.chart);
    paint::play(chart, {{area.x, area.y}, desk.view.pixels, desk.fonts.text, desk.fonts.bold}, draw);
    if (desk.rule_from) counting_rule(desk, area, draw);
    status(desk, area, draw, hovered);
  }
  ImGui::End();
}

}  // namespace app
