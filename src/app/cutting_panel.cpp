// What stands beside a lesson that cuts: the look-over before, how much is cut, and the cautions, marked off by a bar in the warning
// colour.
#include "app/panels.h"
#include "picture/table.h"

namespace app {
namespace {

void cautions(const Desk& desk) {
  const float bar = 3 * desk.scale, gap = 12 * desk.scale;
  const ImVec2 top = ImGui::GetCursorScreenPos();
  ImGui::Indent(gap);
  heading(desk, desk.say("page.caution.title.sentence"));
  for (const std::string& caution : say::cutting_cautions(desk.voice())) wrapped(caution);
  ImGui::Unindent(gap);
  ImGui::GetWindowDrawList()->AddRectFilled(top, {top.x + bar, ImGui::GetCursorScreenPos().y}, paint(desk.theme.accent));
}

/// As on its pages: a box before each point.
void ready(const Desk& desk) {
  using Telling = picture::Telling;
  for (const Telling& telling : picture::lesson_ready_to_cut(*desk.course(), *desk.plan(), desk.lesson, desk.voice()))
    for (const Telling::Piece& piece : telling.pieces()) {
      if (piece.how == Telling::How::heading) heading(desk, piece.text);
      else wrapped(Telling::mark(piece) + " " + piece.text);
    }
}

}  // namespace

std::string lesson_size(const Desk& desk) {
  const plan::LessonPlan& lesson = desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)];
  std::int64_t snips = 0;
  for (const int cut : lesson.cuttings)
    snips += static_cast<std::int64_t>(desk.plan()->cuttings[static_cast<std::size_t>(cut)].cutting.cuts.size());
  const std::string stitches = desk.say("desk.stitches", {{"n", std::int64_t{lesson.stitches}}});
  if (snips == 0) return stitches;
  const std::string cut = desk.say("desk.snips", {{"n", snips}});
  return lesson.stitches == 0 ? cut : stitches + " \xC2\xB7 " + cut;
}

void cutting_panel(const Desk& desk) {
  if (desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)].cuttings.empty()) return;
  cautions(desk);
  heading(desk, desk.say("page.cut.before"));
  for (const char* key : {"page.cut.before.front", "page.cut.before.back", "page.cut.before.scrap", "page.cut.before.teacher"})
    wrapped(desk.say(key));
  ready(desk);
}

}  // namespace app
