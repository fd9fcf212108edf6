// Between the files that draw by hand: what all of them need, and the one that each is for.
#pragma once

#include "app/snap.h"

namespace app {

/// By the way in which the kind is put on the cloth (session::ByHand): pulled leg by leg; put in places and pulled to a size; made of other
/// parts.
void draw_legs(Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed);
void draw_placed(Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed);
void draw_named(Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed);

/// The part that grows, as the course has it now; nothing grows any more where it is gone.
void take_up_drawing(Desk& desk);
/// Writes the shape into the course: a new part, or the one that grows, changed. True where it was taken; else the message says why.
bool write_drawing(Desk& desk, session::Shape shape, const char* what);

/// Does the pointer snap to corners? Not with the keys, nor while Shift is held.
bool snaps(const Desk& desk);
/// How far corners of what is drawn are from the nearest of another part, or from the middle.
Snapped from_others(const Desk& desk, const std::vector<cloth::Hole>& own);
/// The hole that is meant: another part's corner where the pointer is near one.
cloth::Hole near_corner(const Desk& desk, cloth::Hole pointed);

}  // namespace app
