// Beginning: a new course from a few answers, a sample, or one of the courses opened lately.
#include <fmt/format.h>

#include "app/panels.h"
#include "session/new_course.h"

namespace app {
namespace {

void title(const Desk& desk, const char* key) {
  ImGui::PushFont(desk.fonts.bold);
  ImGui::TextUnformatted(desk.say(key).c_str());
  ImGui::PopFont();
}

/// What is asked stands above its answer, so that it may be as long as it must.
void ask(const Desk& desk, const char* key) {
  ImGui::PushTextWrapPos(0);
  ImGui::TextUnformatted(desk.say(key).c_str());
  ImGui::PopTextWrapPos();
  ImGui::SetNextItemWidth(-1);
}

void answers(Desk& desk) {
  NewAnswers& a = desk.answers;
  title(desk, "desk.new-course");
  ask(desk, "desk.new.title");
  input_text("##title", a.title);
  ask(desk, "desk.new.day");
  input_text("##day", a.first_day);
  ask(desk, "desk.new.weeks");
  ImGui::InputInt("##weeks", &a.weeks);
  ask(desk, "desk.new.count");
  ImGui::InputInt("##count", &a.count);
  ask(desk, "desk.new.size");
  ImGui::InputInt2("##size", a.size);
}

/// The course of the answers; nothing where one of them will not do, which is said.
std::optional<std::string> course_of(Desk& desk) {
  const NewAnswers& a = desk.answers;
  session::NewCourse course;
  course.title = a.title;
  course.first_day = base::parse_date(a.first_day);
  course.weeks = a.weeks;
  course.count = a.count;
  course.language = desk.phrases.get().language();
  if (a.size[0] > 0 && a.size[1] > 0) course.size_threads = cloth::Hole{a.size[0], a.size[1]};
  const bool fits = !a.title.empty() && (a.first_day.empty() || course.first_day) && a.weeks >= 1 && a.weeks <= course::lesson_limit && a.count >= 4 && a.count <= 80;
  if (fits) return session::text_of(course);
  desk.message = desk.say("desk.new.wrong");
  return std::nullopt;
}

void begin(Desk& desk, std::string text) {
  desk.session.begin(std::move(text));
  finish_drawing(desk);
  desk.picked.clear();
  desk.view.fit = true;
  desk.lesson = 1;
  desk.walk = {};
  desk.asking = Asking::nothing;
  ImGui::CloseCurrentPopup();
}

void others(Desk& desk) {
  title(desk, "desk.samples");
  for (const Sample& sample : desk.samples)
    if (ImGui::Selectable((sample.name.empty() ? desk.say("desk.small-sample") : sample.name).c_str(), false, ImGuiSelectableFlags_DontClosePopups)) return begin(desk, sample.text);
  if (desk.recent.empty()) return;
  title(desk, "desk.recent");
  for (const std::filesystem::path& file : std::vector<std::filesystem::path>(desk.recent))
    if (ImGui::Selectable(file.string().c_str(), false, ImGuiSelectableFlags_DontClosePopups)) {
      open_course(desk, file);
      if (!desk.message.empty()) return;
      desk.asking = Asking::nothing;
      ImGui::CloseCurrentPopup();
      return;
    }
}

}  // namespace

void open_course(Desk& desk, const std::filesystem::path& file) {
  constexpr std::size_t remembered = 10;
  desk.message.clear();
  desk.report(desk.session.open(file));
  if (!desk.message.empty()) return;
  finish_drawing(desk);
  desk.picked.clear();
  desk.view.fit = true;
  desk.lesson = 1;
  desk.walk = {};
  std::error_code ignored;
  const std::filesystem::path whole = std::filesystem::absolute(file, ignored);
  std::erase(desk.recent, whole);
  desk.recent.insert(desk.recent.begin(), whole);
  if (desk.recent.size() > remembered) desk.recent.resize(remembered);
}

void start_panel(Desk& desk) {
  const ImVec2 display = ImGui::GetIO().DisplaySize;
  ImGui::SetNextWindowPos({display.x / 2, display.y / 2}, ImGuiCond_Always, {0.5F, 0.5F});
  ImGui::SetNextWindowSize({std::min(620 * desk.scale, display.x - 20), std::min(620 * desk.scale, display.y - 20)});
  ImGui::OpenPopup("begin");
  if (!ImGui::BeginPopupModal("begin", nullptr, ImGuiWindowFlags_NoTitleBar | ImGuiWindowFlags_NoResize | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings)) return;
  answers(desk);
  if (strong_button(desk, desk.say("desk.begin"))) {
    if (!desk.session.saved()) desk.message = desk.say("desk.save-first");
    else if (auto text = course_of(desk)) begin(desk, std::move(*text));
  }
  cancel_and_message(desk);
  ImGui::Separator();
  if (desk.asking == Asking::begin && desk.session.saved()) others(desk);
  ImGui::EndPopup();
}

}  // namespace app
