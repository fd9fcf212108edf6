// A student's mistake marked on the cloth: the first wrong stitch is pressed and pulled to where it was stitched.
#include <algorithm>
#include <cmath>

#include "app/panels.h"
#include "app/sight.h"

namespace app {
namespace {

double away_from(const Desk& desk, Area area, cloth::Hole hole, const trail::Worked& stitch) {
  const ImVec2 at = pixel_of(desk, area, hole), a = pixel_of(desk, area, stitch.up), b = pixel_of(desk, area, stitch.down);
  const double dx = b.x - a.x, dy = b.y - a.y, length = dx * dx + dy * dy;
  const double t = length > 0 ? std::clamp(((at.x - a.x) * dx + (at.y - a.y) * dy) / length, 0.0, 1.0) : 0;
  return std::hypot(at.x - a.x - t * dx, at.y - a.y - t * dy);
}

/// The stitch of the lesson nearest to the hole, as a place of the walk; the first of several that are equally near.
std::optional<int> step_at(const Desk& desk, Area area, cloth::Hole hole) {
  double nearest = 1.6 * desk.view.pixels;  // threads
  std::optional<int> best;
  int step = 0;
  for (const auto& [t, s] : desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)].sections) {
    const guide::PlacedTrail& trail = desk.plan()->trails[static_cast<std::size_t>(t)];
    const guide::Section& section = trail.sections[static_cast<std::size_t>(s)];
    for (int k = section.first; k <= section.last; ++k, ++step)
      if (const double away = away_from(desk, area, hole, trail.trail.stitches[static_cast<std::size_t>(k)]); away < nearest)
        nearest = away, best = step;
  }
  return best;
}

/// The stitches from the needle's to the end of its stretch, as they stand when they are off.
std::vector<cloth::Stitch> moved(const Desk& desk, cloth::Hole off) {
  const auto place = walk_place(desk);
  std::vector<cloth::Stitch> wrong;
  if (!place) return wrong;
  const auto& stitches = desk.plan()->trails[static_cast<std::size_t>(place->trail)].trail.stitches;
  for (int k = place->stitch; k <= place->last; ++k) {
    const trail::Worked& stitch = stitches[static_cast<std::size_t>(k)];
    wrong.push_back({stitch.up + off, stitch.down + off});
  }
  return wrong;
}

void take_stitch(Desk& desk, Area area, cloth::Hole hole) {
  const auto step = step_at(desk, area, hole);
  if (!step) return;
  desk.walk.step = *step;
  desk.walk.playing = false;
  desk.marked_from = hole;
}

}  // namespace

void begin_marking(Desk& desk) {
  finish_drawing(desk);
  desk.picked.clear();
  desk.key_pointer.reset();
  desk.marked_from.reset();
  desk.tool = Tool::mark;
}

void mark_by_hand(Desk& desk, Area area, ImDrawList& draw) {
  const cloth::Hole hole = pointed_hole(desk, area);
  const bool pressed = pointer_pressed(desk);
  if (!desk.marked_from) {
    label_at(desk, draw, {area.x, area.y}, desk.say("desk.mistake.mark.how"));
    if (pressed) take_stitch(desk, area, hole);
    return;
  }
  const cloth::Hole off = hole - *desk.marked_from;
  if (off != cloth::Hole{}) {
    draw_tried(desk, area, draw, moved(desk, off));
    label_at(desk, draw, pixel_of(desk, area, hole), say::legs(desk.voice(), legs_between(*desk.marked_from, hole)));
  }
  const bool let_go = desk.key_pointer ? pressed : !ImGui::IsMouseDown(ImGuiMouseButton_Left);
  if (!let_go) return;
  desk.marked_from.reset();
  if (off != cloth::Hole{}) take_in_mistake(desk, off);
}

void draw_mistake(const Desk& desk, Area area, ImDrawList& draw) {
  if (mistake_told(desk)) draw_tried(desk, area, draw, moved(desk, desk.mistake.off));
}

}  // namespace app
