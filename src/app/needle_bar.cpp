// The needle's walk through the lesson: a slider over all its stitches, and in words where the needle is.
#include <fmt/format.h>

#include <algorithm>

#include "app/flow.h"
#include "app/panels.h"

namespace app {
namespace {

std::vector<std::string> labels_of(const Desk& desk) {
  const char* halt = over_snips(desk) ? "desk.cut.next" : "desk.next-corner";
  std::vector<std::string> labels;
  for (const char* key : {desk.walk.playing ? "desk.pause" : "desk.play", "desk.first", "desk.step-before", "desk.step", halt, "desk.last"})
    labels.push_back(desk.say(key));
  if (desk.cuts && desk.cuts->any_until(desk.lesson)) labels.push_back(desk.say(desk.cut.shown ? "desk.cut.hide" : "desk.cut.show"));
  return labels;
}

void buttons(Desk& desk) {
  const std::vector<std::string> labels = labels_of(desk);
  if (strong_button(desk, labels[0])) desk.walk.playing = !desk.walk.playing;
  const int at = slider_at(desk);
  const int places[] = {0, at - 1, at + 1, next_halt(desk), slider_places(desk) - 1};
  for (std::size_t i = 1; i < labels.size(); ++i) {
    beside(labels[i]);
    if (!ImGui::Button(labels[i].c_str())) continue;
    i <= std::size(places) ? slide_to(desk, places[i - 1]) : show_cutting(desk, !desk.cut.shown);
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

/// Places of the slider at which a leg ends; of snips those at which a cutting ends.
std::vector<int> halts(const Desk& desk) {
  if (!over_snips(desk)) return corners_of_lesson(desk);
  std::vector<int> ends;
  for (int n = 1; n < snips_of_lesson(desk); ++n)
    if (desk.cuts->snip(desk.lesson, n).cut().cutting != desk.cuts->snip(desk.lesson, n - 1).cut().cutting) ends.push_back(n);
  return ends;
}

/// A tick for each of them, as far as they can be told apart.
void ticks(const Desk& desk) {
  const ImVec2 from = ImGui::GetItemRectMin(), to = ImGui::GetItemRectMax();
  const int n = slider_places(desk);
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  const float s = desk.scale;
  float before = -100;
  for (const int step : halts(desk)) {
    const float x = from.x + (to.x - from.x) * (static_cast<float>(step) + 0.5F) / static_cast<float>(n);
    if (x - before < 4 * s) continue;
    before = x;
    draw.AddLine({x, to.y - 8 * s}, {x, to.y - 2 * s}, paint(desk.theme.quiet), 1.5F * s);
  }
}

/// `stitch`: its number as it is shown.
std::string step_words(const Desk& desk, int stitch) {
  if (over_snips(desk)) return next_snip(desk);
  const auto place = walk_place(desk);
  if (!place) return desk.cut.shown && desk.cuts && !desk.cuts->any_until(desk.lesson) ? desk.say("desk.cut.none-yet") : std::string();
  const std::string counted = desk.say("desk.stitch-of", {{"n", std::int64_t{stitch}}, {"of", std::int64_t{walk_length(desk)}}});
  return fmt::format("{}: {} \xC2\xB7 {}", counted, where(desk, *place), thread_used(desk, *place));
}

/// While snips are gone through the caution stands here too, where the eye is.
void caution(const Desk& desk) {
  ImGui::PushStyleColor(ImGuiCol_Text, paint(desk.theme.accent));
  wrapped(desk.say("page.caution.scissors"));
  ImGui::PopStyleColor();
}

int lines_of(const std::string& words, float room) {
  return words.empty() ? 0 : 1 + static_cast<int>(1.25F * ImGui::CalcTextSize(words.c_str()).x / std::max(1.0F, room));
}

}  // namespace

float needle_height(const Desk& desk, float width) {
  const float room = width - 2 * ImGui::GetStyle().WindowPadding.x;
  int lines = std::max(over_snips(desk) ? 2 : 1, lines_of(step_words(desk, walk_length(desk)), room));
  if (over_snips(desk)) lines += lines_of(desk.say("page.caution.scissors"), room);
  return height_of(1 + rows_of(labels_of(desk), room), lines);
}

void needle_bar(Desk& desk, Area area) {
  begin_area("needle", area, paint(desk.theme.panel));
  if (const int n = slider_places(desk); n > 0) {
    int shown = slider_at(desk) + 1;
    ImGui::SetNextItemWidth(-1);
    if (ImGui::SliderInt("##walk", &shown, 1, n, "")) slide_to(desk, shown - 1);
    ticks(desk);
  }
  if (slider_places(desk) > 0 || (desk.cuts && desk.cuts->any_until(desk.lesson))) buttons(desk);
  wrapped(step_words(desk, desk.walk.step + 1));
  if (over_snips(desk)) caution(desk);
  ImGui::End();
}

}  // namespace app
