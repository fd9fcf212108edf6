// Keys that work everywhere but while something is typed. Letters come as characters, so that they are where the keyboard's own letters are.
#include <algorithm>

#include "app/panels.h"
#include "app/typed_field.h"

namespace app {

void save(Desk& desk) {
  if (!desk.session.file()) desk.asking = Asking::save_as;
  else if (desk.session.changed_on_disk()) desk.asking = Asking::changed_on_disk;
  else desk.report(desk.session.save());
}

namespace {

bool pressed(ImGuiKey key) { return ImGui::IsKeyPressed(ImGui::GetKeyIndex(key)); }
/// GLFW's codes of letters are their capitals.
bool letter(char c) { return ImGui::IsKeyPressed(c, false); }

void with_control(Desk& desk) {
  const bool shift = ImGui::GetIO().KeyShift;
  if (letter('N')) desk.asking = Asking::begin;
  if (letter('=')) scale_by(desk, 1.1F);
  if (letter('-')) scale_by(desk, 1 / 1.1F);
  if (letter('0')) scale_by(desk, 1 / desk.scale);
  if (letter('O')) desk.asking = Asking::open;
  if (letter('S')) shift ? void(desk.asking = Asking::save_as) : save(desk);
  if (letter('Z') && !shift) undo(desk);
  if (letter('Y') || (letter('Z') && shift)) redo(desk);
  if (letter('D')) copy_picked(desk);
  if (letter('Q')) desk.saved_or_ask();
  if (letter('P')) desk.asking = Asking::pages;
  if (letter('L') && desk.plan()) desk.asking = Asking::split;
  if (letter('B') && desk.plan()) desk.asking = Asking::buying;
}

void kinds(Desk& desk) {
  int number = 0;
  for (const stitch::Kind* kind : stitch::kinds())
    if (const char key = key_of_kind(number++); key != ' ' && letter(key) && desk.course()) choose_kind(desk, kind->name);
}

/// What is drawn is done; what is picked or marked is let go.
void leave(Desk& desk) {
  if (desk.drawing.shape) return finish_drawing(desk);
  desk.picked.clear();
  desk.marked_from.reset();
  if (desk.tool == Tool::mark) desk.tool = Tool::pick;
}

void plain(Desk& desk) {
  const int at = slider_at(desk);
  if (letter('F')) (ImGui::GetIO().KeyShift ? desk.view.fit_lesson : desk.view.fit) = true;
  if (letter('G')) desk.lines_swapped = !desk.lines_swapped;
  if (letter('H')) desk.show_later = !desk.show_later;
  if (letter('X')) show_cutting(desk, !desk.cut.shown);
  if (letter('B')) desk.show_back = !desk.show_back;
  if (letter('D')) desk.set_light(desk.light == Light::dark ? Light::light : Light::dark);
  if (letter('L')) desk.hand = desk.hand == say::Hand::left ? say::Hand::right : say::Hand::left, desk.view.fit = true;
  if (letter('N')) slide_to(desk, at + 1);
  if (letter('P')) slide_to(desk, at - 1);
  if (letter('C')) slide_to(desk, next_halt(desk));
  if (letter(' ')) desk.walk.playing = !desk.walk.playing;
  if (letter('K')) desk.tool = Tool::pick, finish_drawing(desk);
  if (letter('W')) desk.tool = Tool::draw, desk.picked.clear();
  if (letter('M')) desk.tool == Tool::mark ? void(desk.tool = Tool::pick) : begin_marking(desk);
  kinds(desk);
  if (letter('T')) pick_next(desk);
  if (pressed(ImGuiKey_Delete)) remove_picked(desk);
  if (pressed(ImGuiKey_Backspace)) shorten_drawing(desk);
  if (pressed(ImGuiKey_Escape)) leave(desk);
  if (pressed(ImGuiKey_Home)) slide_to(desk, 0);
  if (pressed(ImGuiKey_End)) slide_to(desk, slider_places(desk) - 1);
  const int lessons = desk.plan() ? static_cast<int>(desk.plan()->lessons.size()) : 1;
  if (pressed(ImGuiKey_PageDown)) choose_lesson(desk, std::min(lessons, desk.lesson + 1));
  if (pressed(ImGuiKey_PageUp)) choose_lesson(desk, std::max(1, desk.lesson - 1));
}

}  // namespace

void shortcuts(Desk& desk) {
  constexpr int f1 = 290, f2 = 291;  // GLFW's codes
  if (desk.asking != Asking::nothing) return;
  if (ImGui::GetIO().WantTextInput) {
    if (ImGui::GetIO().KeyCtrl && letter('S')) desk.save_when_left = true, leave_field();
    return;
  }
  if (ImGui::IsKeyPressed(f1, false)) desk.asking = Asking::keys;
  if (ImGui::IsKeyPressed(f2, false) && desk.course() && desk.lesson <= static_cast<int>(desk.course()->lessons.size())) desk.asking = Asking::rename_lesson;
  ImGui::GetIO().KeyCtrl ? with_control(desk) : plain(desk);
}

void save_what_was_typed(Desk& desk) {
  if (!desk.save_when_left || desk.typing.id != 0) return;
  desk.save_when_left = false;
  save(desk);
}

}  // namespace app
