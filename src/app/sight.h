// From pixels of the cloth view to holes and back, for whichever hand the design is looked at.
#pragma once

#include <vector>

#include "app/panels.h"

namespace app {

bool mirrored(const Desk& desk);
/// The hole nearest to a point of the window.
cloth::Hole hole_at(const Desk& desk, Area area, ImVec2 at);
ImVec2 pixel_of(const Desk& desk, Area area, cloth::Hole hole);
/// The part whose stitch lies nearest, if one does; else -1.
int part_at(const Desk& desk, Area area, ImVec2 at);
/// The part whose stitches lie on all four sides of the hole, near it; the first of several; -1: none.
int part_around(const Desk& desk, cloth::Hole hole);
/// The count between two holes: up or down first, then across; empty where they are the same.
std::vector<guide::Leg> legs_between(cloth::Hole from, cloth::Hole to);
/// Stitches tried out or held, over the chart.
void draw_tried(const Desk& desk, Area area, ImDrawList& draw, const std::vector<cloth::Stitch>& stitches);
/// A few words on a ground of their own beside a point.
void label_at(const Desk& desk, ImDrawList& draw, ImVec2 at, const std::string& words);

}  // namespace app
