// Open and save: folders, course files, and a path that can be typed.
#include <algorithm>
#include <utility>

#include "app/panels.h"
#include "publish/publish.h"

namespace app {
namespace {

constexpr std::string_view ending = ".course.toml";

struct Entry {
  std::filesystem::path path;
  bool folder = false;
};

bool wanted(const std::string& name, bool picture) {
  if (!picture) return name.ends_with(ending);
  return name.ends_with(".png") || name.ends_with(".jpg") || name.ends_with(".jpeg") || name.ends_with(".PNG") || name.ends_with(".JPG");
}

/// Folders first, then course files (or pictures), each by name; what cannot be read is left out.
std::vector<Entry> entries(const std::filesystem::path& folder, bool picture) {
  std::vector<Entry> all;
  std::error_code error;
  for (std::filesystem::directory_iterator it(folder, std::filesystem::directory_options::skip_permission_denied, error), end; !error && it != end; it.increment(error)) {
    const std::string name = it->path().filename().string();
    std::error_code ignored;
    const bool is_folder = it->is_directory(ignored);
    if (name.starts_with('.') || (!is_folder && !wanted(name, picture))) continue;
    all.push_back({it->path(), is_folder});
  }
  std::sort(all.begin(), all.end(), [](const Entry& a, const Entry& b) { return a.folder != b.folder ? a.folder : a.path < b.path; });
  return all;
}

/// Is another course's file there, which has not been asked about yet?
bool would_replace(const Desk& desk, const std::filesystem::path& named) {
  std::error_code ignored;
  const auto& own = desk.session.file();
  const bool same = own && std::filesystem::equivalent(*own, named, ignored);
  return !same && named != desk.may_replace && std::filesystem::exists(named, ignored);
}

void choose(Desk& desk, const std::filesystem::path& path) {
  desk.message.clear();
  if (desk.asking == Asking::open) {
    open_course(desk, path);
  } else if (desk.asking == Asking::paper_chart) {
    lay_paper(desk, path);
  } else {
    std::filesystem::path named = path;
    if (!named.string().ends_with(ending)) named += ending;
    if (would_replace(desk, named)) {
      desk.message = desk.say("desk.file-there", {{"file", named.filename().string()}});
      desk.may_replace = named;
      desk.type_on = true;
      return;
    }
    desk.report(desk.session.save_as(named));
  }
  if (desk.message.empty()) {
    desk.asking = Asking::nothing;
    ImGui::CloseCurrentPopup();
  }
}

/// What the file is called, or would be after the course's title.
std::string name_to_save(const Desk& desk) {
  if (desk.session.file()) return desk.session.file()->filename().string();
  return (desk.course() ? publish::file_stem(desk.course()->title) : "mine") + std::string(ending);
}

}  // namespace

void file_panel(Desk& desk) {
  const ImVec2 display = ImGui::GetIO().DisplaySize;
  ImGui::SetNextWindowPos({display.x / 2, display.y / 2}, ImGuiCond_Always, {0.5F, 0.5F});
  ImGui::SetNextWindowSize({std::min(640 * desk.scale, display.x - 20), std::min(480 * desk.scale, display.y - 20)});
  ImGui::OpenPopup("files");
  if (!ImGui::BeginPopupModal("files", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings)) return;
  const bool opening = desk.asking != Asking::save_as;
  const std::string name = opening ? "" : name_to_save(desk);
  if (ImGui::IsWindowAppearing()) desk.may_replace.clear(), desk.typed = (desk.folder / name).string();
  ImGui::PushFont(desk.fonts.title);
  ImGui::TextUnformatted(desk.say(opening ? "desk.open" : "desk.save-as").c_str());
  ImGui::PopFont();
  ImGui::SetNextItemWidth(-1);
  if (ImGui::IsWindowAppearing() || std::exchange(desk.type_on, false)) ImGui::SetKeyboardFocusHere();
  const bool entered = input_text("##path", desk.typed);
  ImGui::BeginChild("entries", {0, -90 * desk.scale}, true);
  if (ImGui::Selectable(desk.say("desk.folder-above").c_str(), false, ImGuiSelectableFlags_DontClosePopups)) {
    desk.folder = desk.folder.parent_path();
    desk.typed = (desk.folder / name).string();
  }
  for (const Entry& entry : entries(desk.folder, desk.asking == Asking::paper_chart)) {
    const std::string label = entry.path.filename().string() + (entry.folder ? "/" : "");
    if (!ImGui::Selectable(label.c_str(), desk.typed == entry.path.string(), ImGuiSelectableFlags_DontClosePopups)) continue;
    if (entry.folder) desk.folder = entry.path;
    desk.typed = entry.folder ? (entry.path / name).string() : entry.path.string();
  }
  ImGui::EndChild();
  if (strong_button(desk, desk.say(opening ? "desk.open" : "desk.save")) || entered) choose(desk, desk.typed);
  cancel_and_message(desk);
  ImGui::EndPopup();
}

}  // namespace app
