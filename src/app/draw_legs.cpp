// Drawing a path: press to begin, pull a leg in any of eight ways, let go, pull the next one from its end. Only legs that the kind can
// build are offered.
#include <algorithm>

#include "app/drawing.h"
#include "app/sight.h"

namespace app {
namespace {

/// A first piece by itself, of kinds that are made of pieces; nothing of the others.
session::Shape lone_piece(session::Shape shape) {
  shape.values["path"] = std::string("E 1");
  return shape;
}

/// Where a part would begin: the hole under the pointer, or near it so that a corner of the first piece meets another corner or the middle.
struct Beginning {
  std::optional<session::Shape> shape;
  std::vector<cloth::Stitch> stitches;
  cloth::Hole hole;
  Snapped snap;
};
Beginning beginning_at(const Desk& desk, cloth::Hole pointed) {
  auto shape = next_shape(desk, pointed);
  if (!shape) return {};
  const auto piece = session::work_of(lone_piece(*shape));
  const Snapped snap = from_others(desk, piece ? corners_of(*piece) : std::vector{pointed});
  const cloth::Hole by = snaps(desk) ? snap.by : cloth::Hole{};
  shape->values["start"] = session::start_of(*shape) + by;
  Beginning beginning{std::move(shape), {}, pointed + by, snap};
  beginning.snap.by = by;
  if (piece)
    for (const cloth::Stitch& stitch : piece->stitches) beginning.stitches.push_back({stitch.a + by, stitch.b + by});
  return beginning;
}

void press(Desk& desk, cloth::Hole hole) {
  Drawing& drawing = desk.drawing;
  take_up_drawing(desk);
  if (!drawing.shape) {
    drawing.shape = beginning_at(desk, hole).shape;
    drawing.name.clear();
    if (!drawing.shape) return;
  }
  drawing.pulling = true;
  drawing.asked.reset();
  drawing.pulled.reset();
}

void let_go(Desk& desk) {
  Drawing& drawing = desk.drawing;
  drawing.pulling = false;
  if (drawing.pulled) {
    const bool closed = drawing.pulled->closes;
    if (write_drawing(desk, drawing.pulled->shape, "add leg") && closed) finish_drawing(desk);
  } else if (drawing.shape && session::path_of(*drawing.shape).empty()) {
    session::Shape lone = lone_piece(*drawing.shape);
    if (session::work_of(lone))
      write_drawing(desk, std::move(lone), "add leg");
    else
      drawing.shape.reset();
  }
  drawing.pulled.reset();
}

std::string words_of(const Desk& desk, const session::Pulled& pulled) {
  const std::string unit = pulled.work.legs.empty() || pulled.work.legs.back().blocks == 0 ? "desk.pulled-threads" : "desk.pulled-pieces";
  std::string words = desk.say(unit, {{"n", std::int64_t{pulled.leg.number}}, {"way", std::string(cloth::name(pulled.leg.way))}});
  if (pulled.closes) words += " · " + desk.say("desk.closes");
  return words;
}

void pull_to(Desk& desk, cloth::Hole hole) {
  Drawing& drawing = desk.drawing;
  if (drawing.asked == hole) return;
  drawing.asked = hole;
  const cloth::Hole end = session::end_of(*drawing.shape);
  const bool still = std::abs(hole.x - end.x) < 2 && std::abs(hole.y - end.y) < 2;
  drawing.pulled = still ? std::nullopt : session::pull(*drawing.shape, hole);
  if (!drawing.pulled || !drawing.pulled->closes) return;
  drawing.pulled->shape = session::ridge_outside(drawing.pulled->shape, drawing.chosen);
  if (auto work = session::work_of(drawing.pulled->shape)) drawing.pulled->work = std::move(*work);
}

void show_pulled(const Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed) {
  const session::Pulled& pulled = *desk.drawing.pulled;
  Snapped far = from_others(desk, {session::far_end(pulled.shape, pulled.work)});
  far.by = {};
  draw_tried(desk, area, draw, pulled.work.stitches);
  draw_distance(desk, area, draw, far);
  label_at(desk, draw, pixel_of(desk, area, pointed), words_of(desk, pulled) + "\n" + distance_words(desk, far));
}

void show_beginning(const Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed) {
  if (!ImGui::IsItemHovered() && !desk.key_pointer) return;
  const Beginning beginning = beginning_at(desk, pointed);
  draw_tried(desk, area, draw, beginning.stitches);
  draw_distance(desk, area, draw, beginning.snap);
  label_at(desk, draw, pixel_of(desk, area, beginning.hole), distance_words(desk, beginning.snap));
}

}  // namespace

void draw_legs(Desk& desk, Area area, ImDrawList& draw, cloth::Hole hole) {
  Drawing& drawing = desk.drawing;
  if (pointer_pressed(desk)) press(desk, hole);
  if (drawing.pulling && drawing.shape) {
    pull_to(desk, near_corner(desk, hole));
    if (drawing.pulled) show_pulled(desk, area, draw, hole);
    if (pointer_let_go(desk)) let_go(desk);
  } else if (drawing.shape && !drawing.name.empty()) {
    const ImVec2 end = pixel_of(desk, area, session::end_of(*drawing.shape));
    draw.AddCircle(end, 7 * desk.scale, paint(desk.theme.accent), 0, 2 * desk.scale);
  } else if (!drawing.shape) {
    show_beginning(desk, area, draw, hole);
  }
}

}  // namespace app
