// No text is cut off: every panel of the window, in the longest phrases there are, is asked whether what it holds fits it. Compared are the toolkit's own extents
// of the content with the box it is shown in; a panel that scrolls up and down may be longer, none may be wider.
#include <imgui_internal.h>

#include "app/windowless.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";

std::string too_large() {
  std::string said;
  for (const ImGuiWindow* window : ImGui::GetCurrentContext()->Windows) {
    if (!window->WasActive || window->Hidden || (window->Flags & ImGuiWindowFlags_Tooltip) != 0) continue;
    const bool scrolls_across = (window->Flags & ImGuiWindowFlags_HorizontalScrollbar) != 0;
    const float wide = window->ContentSize.x + 2 * window->WindowPadding.x - window->Size.x;
    const float high = window->ContentSize.y + 2 * window->WindowPadding.y - window->Size.y;
    const bool scrolls_down = (window->Flags & ImGuiWindowFlags_NoScrollbar) == 0;
    if (wide > 1 && !scrolls_across) said += std::string(window->Name) + " is too wide by " + std::to_string(wide) + "\n";
    if (high > 1 && !scrolls_down) said += std::string(window->Name) + " is too high by " + std::to_string(high) + "\n";
  }
  return said;
}

void walk_panels(Windowless& w) {
  for (const app::Asking asking : {app::Asking::nothing, app::Asking::open, app::Asking::save_as, app::Asking::unsaved_quit, app::Asking::changed_on_disk, app::Asking::begin,
                                   app::Asking::keys, app::Asking::pages, app::Asking::rename_lesson}) {
    INFO("asking " << static_cast<int>(asking));
    w.desk->asking = asking;
    w.frames(4);
    CHECK(too_large() == "");
    w.desk->asking = app::Asking::nothing;
    w.frames(2);
  }
  w.desk->picked = "ring";
  w.frames(3);
  CHECK(too_large() == "");
  w.desk->tool = app::Tool::draw;
  w.desk->picked.clear();
  w.frames(3);
  CHECK(too_large() == "");
}

}  // namespace

TEST_CASE("nothing is cut off in the smallest window, in English and in the pretend language") {
  for (const Language language : {Language::english, Language::pretend}) {
    INFO("language " << static_cast<int>(language));
    Windowless w(frost, language);
    w.size = {1024, 700};
    walk_panels(w);
  }
}

TEST_CASE("nothing is cut off at 250 percent") {
  for (const Language language : {Language::english, Language::pretend}) {
    INFO("language " << static_cast<int>(language));
    Windowless w(frost, language);
    w.size = {2560, 1750};
    w.rescale(2.5F);
    walk_panels(w);
  }
}
