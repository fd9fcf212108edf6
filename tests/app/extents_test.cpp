// No text is cut off: every panel of the window, in the longest phrases there are, is asked whether what it holds fits it. Compared are the
// toolkit's own extents of the content with the box it is shown in; a panel that scrolls up and down may be longer, none may be wider. Nor
// do two letters of one panel lie on one another: compared are the boxes of all letters that were drawn.
#include <imgui_internal.h>

#include <algorithm>
#include <fstream>

#include "app/windowless.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";

std::string too_large() {
  std::string said;
  for (const ImGuiWindow* window : ImGui::GetCurrentContext()->Windows) {
    if (!window->WasActive || window->Hidden || (window->Flags & ImGuiWindowFlags_Tooltip) != 0) continue;
    // A field of several lines goes along with what is typed.
    const bool scrolls_across = (window->Flags & ImGuiWindowFlags_HorizontalScrollbar) != 0 || std::string_view(window->Name).find("/##notes") != std::string_view::npos;
    const float wide = window->ContentSize.x + 2 * window->WindowPadding.x - window->Size.x;
    const float high = window->ContentSize.y + 2 * window->WindowPadding.y - window->Size.y;
    const bool scrolls_down = (window->Flags & ImGuiWindowFlags_NoScrollbar) == 0;
    if (wide > 1 && !scrolls_across) said += std::string(window->Name) + " is too wide by " + std::to_string(wide) + "\n";
    if (high > 1 && !scrolls_down) said += std::string(window->Name) + " is too high by " + std::to_string(high) + "\n";
  }
  return said;
}

struct Letter {
  float x0, y0, x1, y1;
};
/// Letters are the rectangles that take a part of the type's texture; all else takes its one white pixel, or the texture's ready-made
/// lines.
std::vector<Letter> letters_of(const ImDrawList& list) {
  std::vector<Letter> letters;
  for (const ImDrawCmd& command : list.CmdBuffer)
    for (unsigned i = 0; i + 5 < command.ElemCount; i += 3) {
      const auto at = [&](unsigned k) {
        return list.VtxBuffer[static_cast<int>(command.VtxOffset + list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)])];
      };
      const ImDrawVert a = at(0), c = at(2);
      const bool rectangle = at(3).pos.x == a.pos.x && at(3).pos.y == a.pos.y && at(4).pos.x == c.pos.x && at(4).pos.y == c.pos.y;
      if (!rectangle || a.uv.x >= c.uv.x || a.uv.y >= c.uv.y || at(1).uv.y != a.uv.y || at(1).uv.x != c.uv.x) continue;
      const ImVec4& clip = command.ClipRect;
      const Letter letter{std::max(a.pos.x, clip.x), std::max(a.pos.y, clip.y), std::min(c.pos.x, clip.z), std::min(c.pos.y, clip.w)};
      if (letter.x0 < letter.x1 && letter.y0 < letter.y1) letters.push_back(letter);
      i += 3;
    }
  return letters;
}

/// Neighbours in a word may touch; two words, or two lines, lie on one another when letters share a good part of their height and width.
std::string lie_on_one_another(float scale) {
  std::string said;
  const ImDrawData& drawn = *ImGui::GetDrawData();
  for (int n = 0; n < drawn.CmdListsCount; ++n) {
    std::vector<Letter> letters = letters_of(*drawn.CmdLists[n]);
    std::sort(letters.begin(), letters.end(), [](const Letter& a, const Letter& b) { return a.x0 < b.x0; });
    for (std::size_t i = 0; i < letters.size(); ++i)
      for (std::size_t k = i + 1; k < letters.size() && letters[k].x0 < letters[i].x1; ++k) {
        const float wide = std::min(letters[i].x1, letters[k].x1) - letters[k].x0;
        const float high = std::min(letters[i].y1, letters[k].y1) - std::max(letters[i].y0, letters[k].y0);
        if (wide > 2.5F * scale && high > 2.5F * scale && said.size() < 400)
          said += std::string(drawn.CmdLists[n]->_OwnerName ? drawn.CmdLists[n]->_OwnerName : "?") + ": letters lie on one another at " +
                  std::to_string(letters[k].x0) + ", " + std::to_string(letters[k].y0) + "\n";
      }
  }
  return said;
}

/// What lies over the rest, menus and tooltips, is within the window as a whole.
std::string outside(ImVec2 size) {
  for (const ImGuiWindow* window : ImGui::GetCurrentContext()->Windows)
    if (window->WasActive && !window->Hidden && (window->Flags & (ImGuiWindowFlags_Tooltip | ImGuiWindowFlags_Popup)) != 0 &&
        (window->Pos.x < 0 || window->Pos.y < 0 || window->Pos.x + window->Size.x > size.x || window->Pos.y + window->Size.y > size.y))
      return std::string(window->Name) + " reaches out of the window";
  return {};
}

void check_all(const Windowless& w) {
  CHECK(too_large() == "");
  CHECK(lie_on_one_another(w.desk->scale) == "");
  CHECK(outside(w.size) == "");
}

/// Opens each menu by a click and looks at it; says how many there were.
int walk_menus(Windowless& w) {
  int menus = 0;
  std::string last;
  for (float x = 20; x < w.size.x; x += 20 * w.desk->scale) {
    w.click(x, 14 * w.desk->scale);
    w.frames(3);
    if (ImGui::GetCurrentContext()->OpenPopupStack.Size > 0) {
      const std::string open =
          ImGui::GetCurrentContext()->OpenPopupStack[0].Window ? ImGui::GetCurrentContext()->OpenPopupStack[0].Window->Name : "";
      const float at = ImGui::GetCurrentContext()->OpenPopupStack[0].OpenPopupPos.x;
      if (open + std::to_string(at) != last) ++menus;
      last = open + std::to_string(at);
      check_all(w);
    }
    w.desk->asking = app::Asking::nothing;
    w.mapped(ImGuiKey_Escape);
    w.frames(2);
  }
  return menus;
}

/// The pointer on every row of the sheet and on the tools: the tooltips that come. Says how many were seen.
int walk_tooltips(Windowless& w) {
  int seen = 0;
  const auto look = [&](float x, float y) {
    ImGui::GetIO().MousePos = {x, y};
    w.frames(3);
    for (const ImGuiWindow* window : ImGui::GetCurrentContext()->Windows)
      seen += window->WasActive && (window->Flags & ImGuiWindowFlags_Tooltip) != 0 ? 1 : 0;
    check_all(w);
  };
  for (float y = 170 * w.desk->scale; y < w.size.y; y += 14 * w.desk->scale) look(w.size.x - 60 * w.desk->scale, y);
  for (float x = 30; x < w.size.x / 2; x += 60 * w.desk->scale) look(x, 190 * w.desk->scale);
  ImGui::GetIO().MousePos = {-1, -1};
  return seen;
}

void walk_panels(Windowless& w) {
  for (const app::Asking asking :
       {app::Asking::nothing, app::Asking::open, app::Asking::save_as, app::Asking::unsaved_quit, app::Asking::changed_on_disk,
        app::Asking::begin, app::Asking::keys, app::Asking::pages, app::Asking::rename_lesson, app::Asking::split, app::Asking::buying, app::Asking::class_list}) {
    INFO("asking " << static_cast<int>(asking));
    w.desk->asking = asking;
    w.frames(4);
    check_all(w);
    w.desk->asking = app::Asking::nothing;
    w.frames(2);
  }
  w.desk->picked = "ring";
  w.frames(3);
  check_all(w);
  for (const stitch::Kind* kind : stitch::kinds()) {
    INFO("kind " << std::string(kind->name));
    app::choose_kind(*w.desk, kind->name);
    w.frames(3);
    check_all(w);
  }
}

}  // namespace

TEST_CASE("nothing is cut off in the smallest window, in English and in the pretend language") {
  for (const Language language : {Language::english, Language::pretend}) {
    INFO("language " << static_cast<int>(language));
    Windowless w(frost, language);
    w.size = {1024, 700};
    walk_panels(w);
    CHECK(walk_menus(w) >= 3);
    CHECK(walk_tooltips(w) > 3);
  }
}

TEST_CASE("nothing is cut off at 250 percent") {
  for (const Language language : {Language::english, Language::pretend}) {
    INFO("language " << static_cast<int>(language));
    Windowless w(frost, language);
    w.size = {2560, 1750};
    w.rescale(2.5F);
    walk_panels(w);
    CHECK(walk_menus(w) >= 3);
    CHECK(walk_tooltips(w) > 3);
  }
}

TEST_CASE("nothing is cut off where a file has faults, in the smallest window and the largest type") {
  for (const float scale : {0.75F, 1.0F, 2.5F}) {
    INFO("scale " << scale);
    Windowless w(frost, Language::pretend);
    w.size = {std::max(1024 * scale, 1024.0F), std::max(700 * scale, 700.0F)};
    w.rescale(scale);
    std::string text = bytes_of(frost);
    text.insert(text.find("kind ="), "knid = \"a word that is far too long to stand on one line of a narrow sheet beside the cloth\"\n");
    std::ofstream(w.folder / "faulty.course.toml", std::ios::binary) << text;
    REQUIRE(w.desk->session.open(w.folder / "faulty.course.toml"));
    w.settle();
    REQUIRE(!w.desk->session.faults().empty());
    check_all(w);
  }
}
