// The cloth: pan, zoom, a counting rule, and what lies under the pointer. The chart is played from the same list that says what is seen.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "app/sight.h"
#include "file/course_file.h"
#include "paint/imgui/play.h"

namespace app {
namespace {

constexpr float finest = 0.5F, coarsest = 80;  // pixels of a thread

/// What the lesson stitches and cuts, or the whole design where it does neither.
cloth::Box lesson_box(const Desk& desk) {
  std::optional<cloth::Box> box;
  const auto take = [&](cloth::Hole h) {
    if (!box) box = cloth::Box{h.x, h.y, h.x, h.y};
    box->grow(h);
  };
  for (int n = 0; n < snips_of_lesson(desk); ++n) take(desk.cuts->snip(desk.lesson, n).cut().at);
  for (const auto& [t, s] : desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)].sections) {
    const guide::PlacedTrail& trail = desk.plan()->trails[static_cast<std::size_t>(t)];
    const guide::Section& section = trail.sections[static_cast<std::size_t>(s)];
    for (int k = section.first; k <= section.last; ++k) {
      const trail::Worked& w = trail.trail.stitches[static_cast<std::size_t>(k)];
      take(w.up), take(w.down);
    }
  }
  return box.value_or(course::extent(*desk.course()));
}

void fit(Desk& desk, Area area) {
  const bool lesson = std::exchange(desk.view.fit_lesson, false) && desk.plan() && !desk.plan()->lessons.empty();
  constexpr int room_to_begin = 40;  // threads each way, before anything is drawn
  const cloth::Hole middle = course::middle(*desk.course());
  const cloth::Box empty = cloth::Box{middle.x, middle.y, middle.x, middle.y}.widened(room_to_begin);
  const cloth::Box box = lesson ? lesson_box(desk) : desk.course()->parts.empty() ? empty : course::extent(*desk.course());
  constexpr float margin = 4;  // threads on every side
  const float w = static_cast<float>(box.width()) + 2 * margin, h = static_cast<float>(box.height()) + 2 * margin;
  desk.view.pixels = std::clamp(std::min(area.w / w, area.h / h), finest, coarsest);
  const double middle_x = (mirrored(desk) ? -1.0 : 1.0) * (box.x0 + box.x1) / 2.0;
  desk.view.x = middle_x - area.w / desk.view.pixels / 2;
  desk.view.y = (box.y0 + box.y1) / 2.0 - area.h / desk.view.pixels / 2;
  desk.view.fit = false;
  desk.view.whole = !lesson;
  desk.view.w = area.w;
  desk.view.h = area.h;
}

void zoom(Desk& desk, Area area, ImVec2 about, float times) {
  desk.view.whole = false;
  const float next = std::clamp(desk.view.pixels * times, finest, coarsest);
  const double dx = about.x - area.x, dy = about.y - area.y;
  desk.view.x += dx / desk.view.pixels - dx / next;
  desk.view.y += dy / desk.view.pixels - dy / next;
  desk.view.pixels = next;
}

/// The left button draws or holds; where it holds nothing, and always with the middle one, the cloth is moved.
void move_by_mouse(Desk& desk, Area area) {
  const ImGuiIO& io = ImGui::GetIO();
  if (ImGui::IsItemHovered() && io.MouseWheel != 0) zoom(desk, area, io.MousePos, std::pow(1.15F, io.MouseWheel));
  const bool free = desk.tool == Tool::pick && desk.holding.what == Holding::What::nothing;
  const bool left = free && ImGui::IsItemActive() && ImGui::IsMouseDragging(ImGuiMouseButton_Left, 2);
  const bool middle = ImGui::IsItemHovered() && ImGui::IsMouseDragging(ImGuiMouseButton_Middle, 2);
  if ((left || middle) && !desk.rule_from) {
    desk.view.whole = false;
    desk.view.x -= io.MouseDelta.x / desk.view.pixels;
    desk.view.y -= io.MouseDelta.y / desk.view.pixels;
  }
  if (ImGui::IsItemHovered() && ImGui::IsMouseClicked(ImGuiMouseButton_Right)) desk.rule_from = hole_at(desk, area, io.MousePos);
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Right)) desk.rule_from.reset();
}

/// Arrow keys move the pointer while drawing, the picked part while one is picked, else the cloth; with Shift four times as far.
void move_by_arrows(Desk& desk, Area area, cloth::Hole way) {
  const int far = ImGui::GetIO().KeyShift ? 4 : 1;
  if (desk.tool != Tool::pick) return move_pointer(desk, area, far * way);
  const int part = picked_part(desk);
  if (part < 0) {
    desk.view.whole = false;
    desk.view.x += 4.0 * way.x;
    desk.view.y += 4.0 * way.y;
    return;
  }
  const cloth::Hole by = far * (mirrored(desk) ? cloth::Hole{-way.x, way.y} : way);
  const auto now = file::read(desk.session.text()).course;
  if (part < static_cast<int>(now.parts.size())) desk.apply(session::move_part(now, part, by));
}

void move_by_keys(Desk& desk, Area area) {
  if (!ImGui::IsItemFocused() && !ImGui::IsItemHovered()) return;
  const auto pressed = [](ImGuiKey key) { return ImGui::IsKeyPressed(ImGui::GetKeyIndex(key)); };
  if (pressed(ImGuiKey_LeftArrow)) move_by_arrows(desk, area, {-1, 0});
  if (pressed(ImGuiKey_RightArrow)) move_by_arrows(desk, area, {1, 0});
  if (pressed(ImGuiKey_UpArrow)) move_by_arrows(desk, area, {0, -1});
  if (pressed(ImGuiKey_DownArrow)) move_by_arrows(desk, area, {0, 1});
  const ImVec2 middle{area.x + area.w / 2, area.y + area.h / 2};
  if (ImGui::GetIO().KeyCtrl) return;
  for (const ImWchar c : ImGui::GetIO().InputQueueCharacters) {
    if (c == '+') zoom(desk, area, middle, 1.25F);
    if (c == '-') zoom(desk, area, middle, 0.8F);
  }
}

course::Line grid_line(const Desk& desk) {
  const bool thread = (desk.course()->choices.line == course::Line::thread) != desk.lines_swapped;
  return thread ? course::Line::thread : course::Line::hole;
}

picture::ChartView chart_view(const Desk& desk, Area area) {
  picture::ChartView view{desk.view.x, desk.view.y, area.w / desk.view.pixels, area.h / desk.view.pixels, desk.view.pixels, desk.lesson, desk.show_back, desk.show_later,
                          mirrored(desk), grid_line(desk), std::nullopt, picked_part(desk)};
  view.folds = true;
  if (desk.cut.shown) {
    view.cuts = desk.cuts.get();
    view.snips = desk.cut.snips;
    view.at_hand = over_snips(desk);
  }
  if (over_snips(desk)) return view;
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
  std::string text = say::cloth_count(desk.voice());
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

void use_tool(Desk& desk, Area area, ImDrawList& draw) {
  switch (desk.tool) {
    case Tool::pick: return hold_by_hand(desk, area, draw);
    case Tool::draw: return draw_by_hand(desk, area, draw);
    case Tool::mark: return mark_by_hand(desk, area, draw);
  }
}

}  // namespace

void cloth_view(Desk& desk, Area area) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
  begin_area("cloth", area, paint(desk.theme.panel));
  ImGui::PopStyleVar();
  if (desk.course() && desk.index) {
    if (desk.view.fit || desk.view.fit_lesson || (desk.view.whole && (desk.view.w != area.w || desk.view.h != area.h))) fit(desk, area);
    ImGui::InvisibleButton("##cloth", {area.w, area.h});
    const bool hovered = ImGui::IsItemHovered();
    move_by_mouse(desk, area);
    move_by_keys(desk, area);
    ImDrawList& draw = *ImGui::GetWindowDrawList();
    draw_paper(desk, area, draw);
    const list::List chart = picture::chart(*desk.course(), *desk.plan(), *desk.index, chart_view(desk, area), desk.theme.chart);
    paint::play(chart, {{area.x, area.y}, desk.view.pixels, desk.fonts.text, desk.fonts.bold}, draw);
    draw.PushClipRect({area.x, area.y}, {area.x + area.w, area.y + area.h}, true);
    draw_mistake(desk, area, draw);
    if (!click_on_paper(desk, area)) use_tool(desk, area, draw);
    if (hovered && desk.tool == Tool::pick && desk.holding.what == Holding::What::nothing && !desk.rule_from) show_held(desk, area, draw);
    draw.PopClipRect();
    if (desk.rule_from) counting_rule(desk, area, draw);
    status(desk, area, draw, hovered);
  }
  ImGui::End();
}

}  // namespace app
