// Picking: a click picks a part, a drag moves it, handles lengthen a leg or move it aside, change a size or move one of several places. Every drag is one step of undo. On approach a
// corner of what is moved snaps to the middle or to another part's corner.
#include <cmath>

#include "app/sight.h"
#include "app/snap.h"
#include "file/course_file.h"
#include "session/placed.h"

namespace app {
namespace {

constexpr float reach_pixels = 9;  // of a handle

using What = Holding::What;

std::optional<session::Handle> handle_at(const Desk& desk, Area area, int part, ImVec2 mouse) {
  for (const session::Handle& handle : session::handles_of(session::shape_of(desk.course()->parts[static_cast<std::size_t>(part)]))) {
    const ImVec2 at = pixel_of(desk, area, handle.at);
    if (std::hypot(mouse.x - at.x, mouse.y - at.y) <= reach_pixels * desk.scale) return handle;
  }
  return std::nullopt;
}

void take_hold(Desk& desk, Area area, ImVec2 mouse) {
  Holding& holding = desk.holding;
  holding = {};
  const int picked = picked_part(desk);
  const auto handle = picked >= 0 ? handle_at(desk, area, picked, mouse) : std::nullopt;
  const int near = handle ? picked : part_at(desk, area, mouse);
  const int part = near >= 0 ? near : part_around(desk, hole_at(desk, area, mouse));
  desk.picked = part >= 0 ? desk.course()->parts[static_cast<std::size_t>(part)].name : std::string();
  if (part < 0) return;
  holding = {handle ? What::handle : What::part, desk.session.seen(),        part,        handle.value_or(session::Handle{}),
             hole_at(desk, area, mouse),         hole_at(desk, area, mouse), ++desk.runs, false};
}

void move_held(Desk& desk, Area area, ImDrawList& draw, cloth::Hole hole) {
  Holding& holding = desk.holding;
  const course::Course& course = holding.seen->course;
  Snapped snap = snapped(course, corners_of(course.parts[static_cast<std::size_t>(holding.part)].work), holding.part, hole - holding.from);
  if (ImGui::GetIO().KeyShift) snap.by = hole - holding.from;
  if (hole != holding.last) {
    holding.last = hole;
    holding.moved = true;
    desk.apply(session::move_part(course, holding.part, snap.by, holding.run));
  }
  if (!holding.moved) return;
  label_at(desk, draw, pixel_of(desk, area, hole), distance_words(desk, snap));
  draw_distance(desk, area, draw, snap);
}

const char* name_of(session::Grip grip) {
  switch (grip) {
    case session::Grip::end: return "lengthen leg";
    case session::Grip::middle: return "move leg";
    case session::Grip::place: return "move one place";
    case session::Grip::size: return "change size";
  }
  return "";
}

std::string pulled_words(const session::Shape& shape, session::Grip grip) {
  if (grip == session::Grip::place) return {};
  return grip == session::Grip::size ? session::size_in_words(shape) : session::path_of(shape);
}

void pull_held(Desk& desk, Area area, ImDrawList& draw, cloth::Hole hole) {
  Holding& holding = desk.holding;
  const auto shape =
      session::handle_pulled(session::shape_of(holding.seen->course.parts[static_cast<std::size_t>(holding.part)]), holding.handle, hole);
  if (!shape) {
    label_at(desk, draw, pixel_of(desk, area, hole), desk.say("desk.nothing-fits"));
    return;
  }
  if (hole != holding.last) {
    holding.last = hole;
    holding.moved = true;
    desk.apply(session::change_values(holding.part, shape->values, name_of(holding.handle.grip), holding.run));
  }
  label_at(desk, draw, pixel_of(desk, area, hole), pulled_words(*shape, holding.handle.grip));
}

void draw_handles(const Desk& desk, Area area, ImDrawList& draw) {
  const int part = picked_part(desk);
  if (part < 0) return;
  const float r = 5 * desk.scale;
  for (const session::Handle& handle : session::handles_of(session::shape_of(desk.course()->parts[static_cast<std::size_t>(part)]))) {
    const ImVec2 at = pixel_of(desk, area, handle.at);
    if (handle.grip == session::Grip::end || handle.grip == session::Grip::size) {
      draw.AddRectFilled({at.x - r, at.y - r}, {at.x + r, at.y + r}, paint(desk.theme.panel), 2);
      draw.AddRect({at.x - r, at.y - r}, {at.x + r, at.y + r}, paint(desk.theme.accent), 2, 0, 2 * desk.scale);
    } else {
      draw.AddCircleFilled(at, r * 0.8F, paint(desk.theme.panel));
      draw.AddCircle(at, r * 0.8F, paint(desk.theme.accent), 0, 1.5F * desk.scale);
    }
  }
}

}  // namespace

int picked_part(const Desk& desk) { return desk.picked.empty() || !desk.course() ? -1 : course::find_part(*desk.course(), desk.picked); }

void remove_picked(Desk& desk) {
  const auto now = file::read(desk.session.text()).course;
  const int part = course::find_part(now, desk.picked);
  if (part < 0) return;
  desk.apply(session::remove_part(now, part));
  desk.picked.clear();
  finish_drawing(desk);
}

void copy_picked(Desk& desk) {
  constexpr cloth::Hole aside{4, 4};
  const auto now = file::read(desk.session.text()).course;
  const int part = course::find_part(now, desk.picked);
  if (part < 0) return;
  const std::string name = session::free_name(now, now.parts[static_cast<std::size_t>(part)].name);
  desk.apply(session::copy_part(now, part, aside));
  if (desk.message.empty()) desk.picked = name;
}

void pick_next(Desk& desk) {
  if (!desk.course() || desk.course()->parts.empty()) return;
  const auto next = static_cast<std::size_t>(picked_part(desk) + 1) % desk.course()->parts.size();
  desk.picked = desk.course()->parts[next].name;
}

void hold_by_hand(Desk& desk, Area area, ImDrawList& draw) {
  const ImVec2 mouse = ImGui::GetIO().MousePos;
  if (ImGui::IsItemHovered() && ImGui::IsMouseClicked(ImGuiMouseButton_Left)) take_hold(desk, area, mouse);
  draw_handles(desk, area, draw);
  if (desk.holding.what == What::nothing) return;
  const cloth::Hole hole = hole_at(desk, area, mouse);
  if (hole != desk.holding.from || desk.holding.moved)
    desk.holding.what == What::part ? move_held(desk, area, draw, hole) : pull_held(desk, area, draw, hole);
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Left)) desk.holding = {};
}

}  // namespace app
