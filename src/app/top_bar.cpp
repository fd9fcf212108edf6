// The course's name, whether it is saved, and what can be done with it.
#include <fmt/format.h>

#include <algorithm>

#include "app/panels.h"

namespace app {
namespace {

void file_menu(Desk& desk) {
  if (!ImGui::BeginMenu(desk.say("desk.menu.course").c_str())) return;
  if (ImGui::MenuItem(desk.say("desk.begin-with").c_str(), "Ctrl+N")) desk.asking = Asking::begin;
  if (ImGui::MenuItem(desk.say("desk.open").c_str(), "Ctrl+O")) desk.asking = Asking::open;
  if (ImGui::MenuItem(desk.say("desk.save").c_str(), "Ctrl+S", false, desk.session.file().has_value() && !desk.session.saved())) save(desk);
  if (ImGui::MenuItem(desk.say("desk.save-as").c_str(), "Ctrl+Shift+S")) desk.asking = Asking::save_as;
  if (ImGui::MenuItem(desk.say("desk.split").c_str(), "Ctrl+L", false, desk.plan() != nullptr)) desk.asking = Asking::split;
  if (ImGui::MenuItem(desk.say("desk.class").c_str(), nullptr, false, desk.course() != nullptr)) desk.asking = Asking::class_list;
  if (ImGui::MenuItem(desk.say("desk.buying").c_str(), "Ctrl+B", false, desk.plan() != nullptr)) desk.asking = Asking::buying;
  if (ImGui::MenuItem(desk.say("desk.quit").c_str(), "Ctrl+Q")) desk.saved_or_ask();
  ImGui::EndMenu();
}

void edit_menu(Desk& desk) {
  if (!ImGui::BeginMenu(desk.say("desk.menu.edit").c_str())) return;
  const std::string undo(desk.session.undo_name()), redo(desk.session.redo_name());
  if (ImGui::MenuItem(desk.say("desk.undo", {{"what", desk.edit_words(undo)}}).c_str(), "Ctrl+Z", false, !undo.empty())) app::undo(desk);
  if (ImGui::MenuItem(desk.say("desk.redo", {{"what", desk.edit_words(redo)}}).c_str(), "Ctrl+Y", false, !redo.empty())) app::redo(desk);
  ImGui::EndMenu();
}

/// The window in another language; each is named in itself.
void language_menu(Desk& desk) {
  if (!ImGui::BeginMenu(desk.say("desk.language").c_str())) return;
  for (const std::string_view language : publish::languages())
    if (ImGui::MenuItem(publish::phrases_in(language).say("language.name").c_str(), nullptr, desk.phrases.get().language() == language)) desk.speak(language);
  ImGui::EndMenu();
}

void show_menu(Desk& desk) {
  if (!ImGui::BeginMenu(desk.say("desk.menu.show").c_str())) return;
  if (ImGui::MenuItem(desk.say("desk.fit").c_str(), "F")) desk.view.fit = true;
  if (ImGui::MenuItem(desk.say("desk.fit-lesson").c_str(), "Shift+F")) desk.view.fit_lesson = true;
  if (bool cut = desk.cut.shown; ImGui::MenuItem(desk.say("desk.cut.view").c_str(), "X", &cut)) show_cutting(desk, cut);
  ImGui::MenuItem(desk.say("desk.back").c_str(), "B", &desk.show_back);
  ImGui::MenuItem(desk.say("desk.later").c_str(), "H", &desk.show_later);
  if (ImGui::MenuItem(desk.say("desk.paper-open").c_str())) desk.asking = Asking::paper_chart;
  bool holes = (desk.course() && desk.course()->choices.line == course::Line::hole) != desk.lines_swapped;
  if (ImGui::MenuItem(desk.say("desk.lines").c_str(), "G", &holes)) desk.lines_swapped = !desk.lines_swapped;
  if (ImGui::MenuItem(desk.say("desk.larger").c_str(), "Ctrl++")) scale_by(desk, 1.1F);
  if (ImGui::MenuItem(desk.say("desk.smaller").c_str(), "Ctrl+-")) scale_by(desk, 1 / 1.1F);
  bool left = desk.hand == say::Hand::left, dark = desk.light == Light::dark;
  if (ImGui::MenuItem(desk.say("desk.left-hand").c_str(), "L", &left)) {
    desk.hand = left ? say::Hand::left : say::Hand::right;
    desk.view.fit = true;
  }
  if (ImGui::MenuItem(desk.say("desk.dark").c_str(), "D", &dark)) desk.set_light(dark ? Light::dark : Light::light);
  language_menu(desk);
  ImGui::EndMenu();
}

/// The course's title; of a file that cannot be read as a course, its name.
std::string name_of(const Desk& desk) {
  if (desk.course()) return desk.course()->title;
  return desk.session.file() ? desk.session.file()->filename().string() : desk.say("desk.no-course");
}

}  // namespace

void top_bar(Desk& desk, Area area) {
  // The bar of menus is as high as a line with its frame: the frame fills the area, so the line stands in its middle.
  ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {ImGui::GetStyle().FramePadding.x, std::max(0.0F, (area.h - ImGui::GetFontSize()) / 2)});
  begin_area("top", area, paint(desk.theme.panel), ImGuiWindowFlags_MenuBar);
  if (ImGui::BeginMenuBar()) {
    ImGui::PushFont(desk.fonts.bold);
    ImGui::TextUnformatted(name_of(desk).c_str());
    ImGui::PopFont();
    ImGui::PushFont(desk.fonts.small);
    ImGui::TextDisabled("%s", desk.say(desk.session.planning() ? "desk.planning"
                                       : desk.session.saved()  ? "desk.saved"
                                                               : "desk.not-saved")
                                  .c_str());
    ImGui::PopFont();
    file_menu(desk);
    edit_menu(desk);
    show_menu(desk);
    if (ImGui::MenuItem(desk.say("desk.keys").c_str(), "F1")) desk.asking = Asking::keys;
    ImGui::EndMenuBar();
  }
  ImGui::PopStyleVar();
  ImGui::End();
}

}  // namespace app
