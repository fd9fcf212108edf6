// What lies over the window: questions, keys, a new name; files and pages have panels of their own.
#include <algorithm>

#include "app/flow.h"
#include "app/panels.h"

namespace app {
namespace {

bool begin_box(const Desk& desk, const char* name, float width, float height) {
  const ImVec2 display = ImGui::GetIO().DisplaySize;
  ImGui::SetNextWindowPos({display.x / 2, display.y / 2}, ImGuiCond_Always, {0.5F, 0.5F});
  ImGui::SetNextWindowSize({std::min(width * desk.scale, display.x - 20), height > 0 ? std::min(height * desk.scale, display.y - 20) : 0});
  ImGui::OpenPopup(name);
  return ImGui::BeginPopupModal(name, nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings);
}

void close(Desk& desk) {
  desk.asking = Asking::nothing;
  ImGui::CloseCurrentPopup();
}

void title(const Desk& desk, const char* key) {
  ImGui::PushFont(desk.fonts.title);
  ImGui::TextUnformatted(desk.say(key).c_str());
  ImGui::PopFont();
}

void words(const Desk& desk, const char* key) {
  ImGui::PushTextWrapPos(0);
  ImGui::TextUnformatted(desk.say(key).c_str());
  ImGui::PopTextWrapPos();
}

void ask_before_quitting(Desk& desk) {
  if (!begin_box(desk, "quit", 520, 0)) return;
  title(desk, "desk.quit.title");
  words(desk, "desk.quit.words");
  if (desk.session.file() && strong_button(desk, desk.say("desk.save-and-quit"))) {
    desk.report(desk.session.save());
    desk.quit = desk.session.saved();
    close(desk);
  }
  if (desk.session.file()) beside(desk.say("desk.quit-anyway"));
  if (ImGui::Button(desk.say("desk.quit-anyway").c_str())) {
    desk.session.leave_unsaved_work();
    desk.quit = true;
  }
  beside(desk.say("desk.cancel"));
  if (ImGui::Button(desk.say("desk.cancel").c_str())) close(desk);
  ImGui::EndPopup();
}

void ask_about_unsaved_work(Desk& desk) {
  if (!begin_box(desk, "unsaved", 460, 0)) return;
  title(desk, "desk.unsaved.title");
  words(desk, "desk.unsaved.words");
  if (strong_button(desk, desk.say("desk.take-up"))) {
    desk.session.take_up_unsaved_work();
    close(desk);
  }
  beside(desk.say("desk.leave"));
  if (ImGui::Button(desk.say("desk.leave").c_str())) {
    desk.session.leave_unsaved_work();
    close(desk);
  }
  ImGui::EndPopup();
}

void ask_about_changes(Desk& desk) {
  if (!begin_box(desk, "changed", 560, 0)) return;
  title(desk, "desk.changed.title");
  words(desk, "desk.changed.words");
  if (strong_button(desk, desk.say("desk.save-as"))) desk.asking = Asking::save_as, ImGui::CloseCurrentPopup();
  beside(desk.say("desk.write-over"));
  if (ImGui::Button(desk.say("desk.write-over").c_str())) {
    desk.report(desk.session.save(true));
    close(desk);
  }
  beside(desk.say("desk.cancel"));
  if (ImGui::Button(desk.say("desk.cancel").c_str())) close(desk);
  ImGui::EndPopup();
}

void keys(Desk& desk) {
  const bool beside_each_other = ImGui::GetIO().DisplaySize.x >= 960 * desk.scale;  // two keys a row
  if (!begin_box(desk, "keys", beside_each_other ? 980 : 520, 0)) return;
  title(desk, "desk.keys");
  constexpr const char* rows[] = {"begin", "open",      "save",      "undo",      "fit",    "fit-lesson", "zoom",    "move",
                                  "walk",  "corner",    "play",      "cutting",   "back",   "later",      "lines",   "left",
                                  "dark",  "lesson",    "split", "buying", "scale",     "interface", "rule",   "pick",       "draw",    "kind", "mark",
                                  "exact", "next-part", "move-part", "copy",      "delete", "take-back",  "end-part"};
  if (ImGui::BeginTable("##keys", beside_each_other ? 4 : 2, ImGuiTableFlags_SizingStretchProp)) {
    for (int column = 0; column < (beside_each_other ? 4 : 2); ++column)
      ImGui::TableSetupColumn(nullptr, ImGuiTableColumnFlags_WidthStretch, column % 2 == 0 ? 1.0F : 1.6F);
    for (const char* row : rows) {
      ImGui::TableNextColumn();
      words(desk, (std::string("desk.key.") + row).c_str());
      ImGui::TableNextColumn();
      words(desk, (std::string("desk.key-does.") + row).c_str());
    }
    ImGui::EndTable();
  }
  if (strong_button(desk, desk.say("desk.close")) || ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Escape))) close(desk);
  ImGui::EndPopup();
}

/// Title and notes of the lesson that is chosen, and whether it is locked.
void rename_lesson(Desk& desk) {
  if (!begin_box(desk, "rename", 460, 0)) return;
  title(desk, "desk.rename-lesson");
  const course::Lesson& lesson = desk.course()->lessons[static_cast<std::size_t>(desk.lesson - 1)];
  ImGui::SetNextItemWidth(-1);
  if (ImGui::IsWindowAppearing()) {
    desk.typed = lesson.title;
    desk.typed_notes = lesson.notes;
    ImGui::SetKeyboardFocusHere();
  }
  const bool entered = input_text("##title", desk.typed);
  words(desk, "desk.lesson-notes");
  input_lines("##notes", desk.typed_notes, 5);
  bool locked = lesson.locked;
  if (ImGui::Checkbox(desk.say("desk.lesson-locked").c_str(), &locked)) desk.apply(session::lock_lesson(desk.lesson - 1, locked));
  if (strong_button(desk, desk.say("desk.rename")) || entered) {
    if (desk.typed != lesson.title) desk.apply(session::rename_lesson(desk.lesson - 1, desk.typed));
    if (desk.typed_notes != lesson.notes) desk.apply(session::change_notes(desk.lesson - 1, desk.typed_notes));
    close(desk);
  }
  beside(desk.say("desk.cancel"));
  if (ImGui::Button(desk.say("desk.cancel").c_str()) || ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Escape))) close(desk);
  ImGui::EndPopup();
}

}  // namespace

void cancel_and_message(Desk& desk, const char* label) {
  beside(desk.say(label));
  if (ImGui::Button(desk.say(label).c_str()) || ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Escape))) {
    desk.asking = Asking::nothing;
    ImGui::CloseCurrentPopup();
  }
  if (!desk.message.empty()) {
    ImGui::PushTextWrapPos(0);
    ImGui::TextUnformatted(desk.message.c_str());
    ImGui::PopTextWrapPos();
  }
}

void overlays(Desk& desk, float width, float height) {
  if (desk.session.unsaved_work() && desk.asking == Asking::nothing) desk.asking = Asking::unsaved_work;
  switch (desk.asking) {
    case Asking::nothing: return;
    case Asking::open:
    case Asking::paper_chart:
    case Asking::save_as: file_panel(desk); return;
    case Asking::unsaved_quit: ask_before_quitting(desk); return;
    case Asking::unsaved_work: ask_about_unsaved_work(desk); return;
    case Asking::changed_on_disk: ask_about_changes(desk); return;
    case Asking::begin: start_panel(desk); return;
    case Asking::keys: keys(desk); return;
    case Asking::pages: page_panel(desk, width, height); return;
    case Asking::rename_lesson: rename_lesson(desk); return;
    case Asking::split: split_panel(desk, width, height); return;
    case Asking::class_list: class_panel(desk, width, height); return;
    case Asking::buying: buying_panel(desk, width, height); return;
  }
}

}  // namespace app
