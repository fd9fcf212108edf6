// Drawing what has no path: press where it is to be and pull to its size, or let go for the size of the one before. A part of several
// places takes a further one with each click, and gives one up where it is clicked again.
#include <algorithm>

#include "app/drawing.h"
#include "app/sight.h"
#include "session/placed.h"

namespace app {
namespace {

bool grows(const Drawing& drawing) { return drawing.shape && !drawing.name.empty(); }

/// What would be there if the pointer were let go at the hole.
std::optional<session::Shape> tried_at(const Desk& desk, cloth::Hole hole) {
  const Drawing& drawing = desk.drawing;
  if (grows(drawing)) return session::place_toggled(*drawing.shape, hole);
  return drawing.shape ? session::sized(*drawing.shape, hole, drawing.chosen) : next_shape(desk, hole);
}

/// What of it is new to the eye: of a part that grows only the further place.
std::optional<session::Shape> seen_at(const Desk& desk, const std::optional<session::Shape>& tried, cloth::Hole hole) {
  const auto further = tried && grows(desk.drawing) ? next_shape(desk, hole) : std::nullopt;
  if (!further) return tried;
  const auto places = session::places_of(*tried);
  if (std::find(places.begin(), places.end(), hole) == places.end()) return further;  // it is taken away
  session::Shape one = *tried;
  for (const cloth::Hole place : places)
    if (place != hole) one = session::place_toggled(one, place).value_or(one);
  return one;
}

void show(const Desk& desk, Area area, ImDrawList& draw, const std::optional<session::Shape>& shape, cloth::Hole hole) {
  const auto seen = seen_at(desk, shape, hole);
  const auto work = seen ? session::work_of(*seen) : std::nullopt;
  if (!work) return label_at(desk, draw, pixel_of(desk, area, hole), desk.say("desk.nothing-fits"));
  draw_tried(desk, area, draw, work->stitches);
  Snapped far = from_others(desk, {hole});
  far.by = {};
  draw_distance(desk, area, draw, far);
  label_at(desk, draw, pixel_of(desk, area, hole), session::size_in_words(*seen) + "\n" + distance_words(desk, far));
}

void press(Desk& desk, cloth::Hole hole) {
  Drawing& drawing = desk.drawing;
  take_up_drawing(desk);
  if (!drawing.shape) {
    drawing.name.clear();
    drawing.shape = next_shape(desk, hole);
  }
  drawing.pulling = drawing.shape.has_value();
}

void let_go(Desk& desk, std::optional<session::Shape> shape) {
  Drawing& drawing = desk.drawing;
  drawing.pulling = false;
  const bool several = session::by_hand(*drawing.shape->kind) == session::ByHand::places;
  const bool taken = shape && session::work_of(*shape) && write_drawing(desk, std::move(*shape), "change places");
  if (!several || !grows(drawing)) finish_drawing(desk);
  if (!taken && desk.message.empty()) desk.message = desk.say("desk.nothing-fits");
}

}  // namespace

void draw_placed(Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed) {
  Drawing& drawing = desk.drawing;
  const bool sizing = drawing.pulling && !grows(drawing);
  const cloth::Hole hole = sizing ? pointed : near_corner(desk, pointed);
  if (!drawing.pulling && pointer_pressed(desk)) {
    press(desk, hole);
  } else if (drawing.pulling) {
    auto tried = tried_at(desk, hole);
    show(desk, area, draw, tried, hole);
    drawing.asked = pointed;
    if (pointer_let_go(desk)) let_go(desk, std::move(tried));
  } else if (ImGui::IsItemHovered() || desk.key_pointer) {
    show(desk, area, draw, tried_at(desk, hole), hole);
  }
}

}  // namespace app
