// Plays a display list on the screen with Dear ImGui's draw list. Lengths of the list are multiplied by `scale`; nothing is measured, wrapped or chosen.
#pragma once

#include <imgui.h>

#include "list/list.h"

namespace paint {

struct Screen {
  ImVec2 origin;       ///< where the list's upper left corner comes to lie, pixels
  float scale = 1;     ///< pixels of one unit of the list
  const ImFont* regular = nullptr;
  const ImFont* bold = nullptr;
};

void play(const list::List& list, const Screen& screen, ImDrawList& draw);

}  // namespace paint
