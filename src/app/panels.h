// The window's panels. Each is one file and keeps no state; all of it is in the Desk.
#pragma once

#include "app/desk.h"

namespace app {

struct Area {
  float x = 0, y = 0, w = 0, h = 0;  ///< pixels
};

void top_bar(Desk& desk, Area area);
void lesson_row(Desk& desk, Area area);
void cloth_view(Desk& desk, Area area);
void needle_bar(Desk& desk, Area area);
void sheet(Desk& desk, Area area);
/// The panels that lie over the rest: files, questions, keys, pages.
void overlays(Desk& desk, float width, float height);
void file_panel(Desk& desk);
void page_panel(Desk& desk, float width, float height);
/// A line to type into; true when Enter was pressed.
bool input_text(const char* id, std::string& text);
/// Keys that work everywhere.
void shortcuts(Desk& desk);

/// A window of our own without the toolkit's decorations; End() it.
void begin_area(const char* name, Area area, ImU32 ground, ImGuiWindowFlags more = 0);
/// A button in the deep colour; for the one action that matters most.
bool strong_button(const Desk& desk, const std::string& label, ImVec2 size = {0, 0});

}  // namespace app
