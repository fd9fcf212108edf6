// The needle's walk through the lesson: a slider over all its stitches, and in words where the needle is.
#include <fmt/format.h>

#include <algorithm>

#include "app/panels.h"

namespace app {
namespace {

void buttons(Desk& desk) {
  const int last = walk_length(desk) - 1;
  if (strong_button(desk, desk.say(desk.walk.playing ? "desk.pause" : "desk.play"))) desk.walk.playing = !desk.walk.playing;
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.first").c_str())) desk.walk.step = 0;
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.step-before").c_str()) && desk.walk.step > 0) --desk.walk.step;
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.step").c_str()) && desk.walk.step < last) ++desk.walk.step;
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.next-corner").c_str())) desk.walk.step = next_corner(desk);
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.last").c_str())) desk.walk.step = std::max(0, last);
}

/// Thread of the working length used so far, and what is left, in cm.
std::string thread_used(const Desk& desk, const WalkPlace& place) {
  const trail::Trail& trail = desk.plan()->trails[static_cast<std::size_t>(place.trail)].trail;
  int begun = 0;
  for (const int end : trail.ends)
    if (end <= place.stitch) begun = end;
  const course::Habits& habits = desk.course()->choices.habits;
  const double mm = cloth::mm(trail::thread_of(trail, begun, place.stitch), desk.course()->cloth.count) * (1 + habits.take_up);
  return desk.say("desk.thread-used", {{"used", words::Decimal{mm / 10, 0}}, {"length", words::Decimal{habits.working_length_cm, 0}}});
}

std::string where(const Desk& desk, const WalkPlace& place) {
  const trail::Worked& w = desk.plan()->trails[static_cast<std::size_t>(place.trail)].trail.stitches[static_cast<std::size_t>(place.stitch)];
  return desk.say(w.backward ? "desk.needle-back" : "desk.needle", {{"up", std::int64_t{2 * place.of_section + 1}}, {"down", std::int64_t{2 * place.of_section + 2}}});
}

/// A tick on the slider for every corner of the lesson, as far as they can be told apart.
void corner_ticks(const Desk& desk) {
  const ImVec2 from = ImGui::GetItemRectMin(), to = ImGui::GetItemRectMax();
  const int n = walk_length(desk);
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  const float s = desk.scale;
  float before = -100;
  for (const int step : corners_of_lesson(desk)) {
    const float x = from.x + (to.x - from.x) * (static_cast<float>(step) + 0.5F) / static_cast<float>(n);
    if (x - before < 4 * s) continue;
    before = x;
    draw.AddLine({x, to.y - 8 * s}, {x, to.y - 2 * s}, paint(desk.theme.quiet), 1.5F * s);
  }
}

}  // namespace

void needle_bar(Desk& desk, Area area) {
  begin_area("needle", area, paint(desk.theme.panel));
  const auto place = walk_place(desk);
  if (place) {
    const int n = walk_length(desk);
    int shown = desk.walk.step + 1;
    ImGui::SetNextItemWidth(-1);
    if (ImGui::SliderInt("##walk", &shown, 1, n, "")) desk.walk.step = std::clamp(shown - 1, 0, n - 1);
    corner_ticks(desk);
    buttons(desk);
    ImGui::SameLine(0, 20 * desk.scale);
    ImGui::PushFont(desk.fonts.bold);
    ImGui::TextUnformatted(desk.say("desk.stitch-of", {{"n", std::int64_t{desk.walk.step + 1}}, {"of", std::int64_t{n}}}).c_str());
    ImGui::PopFont();
    ImGui::SameLine();
    ImGui::TextUnformatted(where(desk, *place).c_str());
    ImGui::SameLine();
    ImGui::TextDisabled("%s", thread_used(desk, *place).c_str());
  }
  ImGui::End();
}

}  // namespace app
