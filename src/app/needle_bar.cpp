// The needle's walk through the lesson: a slider over all its stitches, and in words where the needle is.
#include <fmt/format.h>

#include <algorithm>

#include "app/flow.h"
#include "app/panels.h"

namespace app {
namespace {

std::vector<std::string> labels_of(const Desk& desk) {
  std::vector<std::string> labels;
  for (const char* key : {desk.walk.playing ? "desk.pause" : "desk.play", "desk.first", "desk.step-before", "desk.step", "desk.next-corner", "desk.last"}) labels.push_back(desk.say(key));
  return labels;
}

void buttons(Desk& desk) {
  const int last = std::max(0, walk_length(desk) - 1);
  const std::vector<std::string> labels = labels_of(desk);
  if (strong_button(desk, labels[0])) desk.walk.playing = !desk.walk.playing;
  const int steps[] = {0, std::max(0, desk.walk.step - 1), std::min(last, desk.walk.step + 1), next_corner(desk), last};
  for (std::size_t i = 1; i < labels.size(); ++i) {
    beside(labels[i]);
    if (ImGui::Button(labels[i].c_str())) desk.walk.step = steps[i - 1];
  }
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
  const trail::Trail& trail = desk.plan()->trails[static_cast<std::size_t>(place.trail)].trail;
  if (trail.order == stitch::Order::looped)
    return desk.say("desk.needle-loop", {{"down", std::int64_t{2 * place.of_section + 2}}, {"up", std::int64_t{2 * place.of_section + 3}}});
  const trail::Worked& w = trail.stitches[static_cast<std::size_t>(place.stitch)];
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

float needle_height(const Desk& desk, float width) {
  const float room = width - 2 * ImGui::GetStyle().WindowPadding.x;
  const auto place = walk_place(desk);
  const std::string words = place ? where(desk, *place) + thread_used(desk, *place) + desk.say("desk.stitch-of", {{"n", std::int64_t{walk_length(desk)}}, {"of", std::int64_t{walk_length(desk)}}}) : "";
  const int lines = 1 + static_cast<int>(1.25F * ImGui::CalcTextSize(words.c_str()).x / std::max(1.0F, room));
  return height_of(1 + rows_of(labels_of(desk), room), lines);
}

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
    ImGui::PushTextWrapPos(0);
    const std::string stitch = desk.say("desk.stitch-of", {{"n", std::int64_t{desk.walk.step + 1}}, {"of", std::int64_t{n}}});
    ImGui::TextUnformatted(fmt::format("{}: {} · {}", stitch, where(desk, *place), thread_used(desk, *place)).c_str());
    ImGui::PopTextWrapPos();
  }
  ImGui::End();
}

}  // namespace app
