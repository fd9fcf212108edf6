// The lessons along the top: number, day, title, minutes as a bar. A click chooses; work and lessons can be dragged on to another.
#include <fmt/format.h>

#include <algorithm>

#include "app/panels.h"

namespace app {
namespace {

constexpr const char* carried = "lesson";

void minutes_bar(const Desk& desk, const plan::LessonPlan& lesson, ImVec2 at, float width) {
  const double share = lesson.minutes / std::max(1.0, lesson.room);
  const bool over = share > 1.02;
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  const float h = 7 * desk.scale;
  draw.AddRectFilled(at, {at.x + width, at.y + h}, paint(desk.theme.line), h / 2);
  draw.AddRectFilled(at, {at.x + width * static_cast<float>(std::min(1.0, share)), at.y + h}, paint(over ? desk.theme.accent : desk.theme.deep), h / 2);
}

/// As much of the text as fits the width, with three dots where some is missing.
std::string fitting(const std::string& text, float width) {
  if (ImGui::CalcTextSize(text.c_str()).x <= width) return text;
  std::string cut = text;
  while (!cut.empty() && ImGui::CalcTextSize((cut + "...").c_str()).x > width) {
    while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xC0) == 0x80) cut.pop_back();
    if (!cut.empty()) cut.pop_back();
  }
  return cut + "...";
}

void drag_and_drop(Desk& desk, int number) {
  if (ImGui::BeginDragDropSource()) {
    ImGui::SetDragDropPayload(carried, &number, sizeof number);
    ImGui::TextUnformatted(desk.say("desk.move-lesson", {{"n", std::int64_t{number}}}).c_str());
    ImGui::EndDragDropSource();
  }
  if (ImGui::BeginDragDropTarget()) {
    if (const ImGuiPayload* payload = ImGui::AcceptDragDropPayload(carried)) desk.apply(session::move_lesson(*static_cast<const int*>(payload->Data) - 1, number - 1));
    if (const ImGuiPayload* payload = ImGui::AcceptDragDropPayload(carried_work)) {
      const auto& work = *static_cast<const CarriedWork*>(payload->Data);
      if (work.lesson != number - 1) desk.apply(session::move_work(*desk.course(), work.lesson, work.item, number - 1));
    }
    ImGui::EndDragDropTarget();
  }
}

void lesson_menu(Desk& desk, int number) {
  if (!ImGui::BeginPopupContextItem()) return;
  if (ImGui::MenuItem(desk.say("desk.rename-lesson").c_str(), "F2")) {
    desk.lesson = number;
    desk.asking = Asking::rename_lesson;
  }
  if (ImGui::MenuItem(desk.say("desk.remove-lesson").c_str())) desk.apply(session::remove_lesson(number - 1));
  ImGui::EndPopup();
}

/// What stands against the lesson as it is: the first snag of its own that stops.
const check::Snag* stop_of(const Desk& desk, int number) {
  for (const check::Snag& snag : desk.session.seen()->snags)
    if (snag.lesson == number && snag.severity == check::Severity::stop) return &snag;
  return nullptr;
}

/// A lesson in an impossible order is marked, with the reason under the pointer.
void mark_stop(const Desk& desk, int number, ImVec2 at, float width, float height, bool hovered) {
  const check::Snag* stop = stop_of(desk, number);
  if (!stop) return;
  const float s = desk.scale;
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  draw.AddRect({at.x + 3 * s, at.y + 3 * s}, {at.x + width - 3 * s, at.y + height - 3 * s}, paint(desk.theme.accent), 6 * s, 0, 2 * s);
  draw.AddText(desk.fonts.bold, desk.fonts.bold->FontSize, {at.x + width - 18 * s, at.y + 6 * s}, paint(desk.theme.accent), "!");
  if (!hovered) return;
  const say::SaidSnag said = say::snag(desk.voice(), *stop);
  ImGui::BeginTooltip();
  ImGui::PushTextWrapPos(360 * s);
  ImGui::TextUnformatted(words::capitalised(said.says).c_str());
  ImGui::TextUnformatted(words::capitalised(said.does).c_str());
  ImGui::PopTextWrapPos();
  ImGui::EndTooltip();
}

void card(Desk& desk, const plan::LessonPlan& lesson, float width, float height) {
  const float s = desk.scale, pad = 12 * s;
  const bool chosen = lesson.number == desk.lesson, written = !desk.course()->lessons.empty();
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const std::string id = fmt::format("##lesson{}", lesson.number);
  if (ImGui::InvisibleButton(id.c_str(), {width, height})) choose_lesson(desk, lesson.number);
  const bool hovered = ImGui::IsItemHovered() || ImGui::IsItemFocused();
  if (written) {
    drag_and_drop(desk, lesson.number);
    lesson_menu(desk, lesson.number);
  }
  if (!ImGui::IsItemVisible()) return;  // a list never leaves out by itself what cannot be seen
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  draw.AddRectFilled(at, {at.x + width, at.y + height}, paint(hovered ? desk.theme.hover : desk.theme.panel), 8 * s);
  draw.AddRect(at, {at.x + width, at.y + height}, paint(chosen ? desk.theme.deep : desk.theme.line), 8 * s, 0, chosen ? 2 * s : 1);
  const ImVec2 dot{at.x + pad + 12 * s, at.y + pad + 12 * s};
  draw.AddCircleFilled(dot, 13 * s, paint(chosen ? desk.theme.deep : desk.theme.hover));
  const std::string number = std::to_string(lesson.number);
  const ImVec2 size = ImGui::CalcTextSize(number.c_str());
  draw.AddText(desk.fonts.bold, desk.fonts.bold->FontSize, {dot.x - size.x / 2, dot.y - size.y / 2}, paint(chosen ? desk.theme.on_deep : desk.theme.ink), number.c_str());
  const float text_x = dot.x + 22 * s, text_w = at.x + width - pad - text_x;
  ImGui::PushFont(desk.fonts.small);
  const std::string day = lesson.date ? desk.say("desk.day", {{"day", std::int64_t{static_cast<unsigned>(lesson.date->day())}},
                                                             {"month", desk.say(fmt::format("month.{}", static_cast<unsigned>(lesson.date->month())))}})
                                      : desk.say("desk.no-day");
  draw.AddText({text_x, at.y + pad - 4 * s}, paint(desk.theme.quiet), fitting(day, text_w).c_str());
  ImGui::PopFont();
  draw.AddText({text_x, at.y + pad + 15 * s}, paint(desk.theme.ink), fitting(say::lesson_title(desk.voice(), *desk.plan(), lesson.number), text_w).c_str());
  ImGui::PushFont(desk.fonts.small);
  const std::string minutes = desk.say("desk.minutes", {{"n", static_cast<std::int64_t>(lesson.minutes + 0.5)}});
  const float minutes_w = ImGui::CalcTextSize(minutes.c_str()).x;
  const float base = at.y + height - pad - 10 * s;
  draw.AddText({at.x + width - pad - minutes_w, base - 5 * s}, paint(lesson.minutes > lesson.room * 1.02 ? desk.theme.accent : desk.theme.ink), minutes.c_str());
  ImGui::PopFont();
  minutes_bar(desk, lesson, {at.x + pad, base}, width - 3 * pad - minutes_w);
  mark_stop(desk, lesson.number, at, width, height, hovered);
}

}  // namespace

void lesson_row(Desk& desk, Area area) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
  begin_area("lessons", area, paint(desk.theme.desk), ImGuiWindowFlags_HorizontalScrollbar);
  ImGui::PopStyleVar(2);
  if (desk.course() && desk.course()->parts.empty() && desk.course()->lessons.empty()) {
    wrapped(desk.say("desk.no-lessons-yet"));
  } else if (desk.plan()) {
    const int n = static_cast<int>(desk.plan()->lessons.size());
    const float s = desk.scale, gap = 10 * s, height = area.h - 2;
    const float width = std::max(190 * s, (area.w - gap * static_cast<float>(n)) / static_cast<float>(n + 1));
    for (const plan::LessonPlan& lesson : desk.plan()->lessons) {
      card(desk, lesson, width, height);
      ImGui::SameLine(0, gap);
    }
    const bool written = !desk.course()->lessons.empty();
    if (ImGui::Button(desk.say(written ? "desk.add-lesson" : "desk.write-lessons").c_str(), {width, height})) {
      if (written) {
        desk.apply(session::add_lesson(n, desk.say("desk.new-lesson")));
      } else {
        std::vector<std::vector<std::string>> work;
        for (const plan::LessonPlan& lesson : desk.plan()->lessons) work.push_back(lesson.work);
        desk.apply(session::write_lessons(std::move(work)));
      }
    }
  }
  ImGui::End();
}

}  // namespace app
