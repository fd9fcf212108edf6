// Drawing by hand, whatever the kind: what would be drawn next, how it gets into the course, and when it is done.
#include "app/drawing.h"

#include "app/sight.h"
#include "file/course_file.h"
#include "session/placed.h"

namespace app {
namespace {

/// The last part of the kind that is drawn; null where there is none.
const course::Part* last_of_kind(const Desk& desk) {
  const auto& parts = desk.course()->parts;
  for (auto part = parts.rbegin(); part != parts.rend(); ++part)
    if (part->kind == desk.drawing.kind) return &*part;
  return nullptr;
}

std::optional<session::Shape> shortened(const session::Shape& shape) {
  if (session::has_path(shape)) return session::without_last(shape);
  if (const auto names = session::names_of(shape); names.size() > 1) return session::name_toggled(shape, names.back());
  const auto places = session::places_of(shape);
  return places.empty() ? std::nullopt : session::place_toggled(shape, places.back());
}

}  // namespace

std::optional<session::Shape> next_shape(const Desk& desk, cloth::Hole held) {
  auto shape = session::begin_shape(desk.drawing.kind, held);
  if (!shape) return shape;
  if (const course::Part* like = last_of_kind(desk)) session::take_after(*shape, *like);
  for (const auto& [key, value] : desk.drawing.chosen)
    if (shape->values.contains(key)) shape->values[key] = value;
  return shape;
}

/// The thread that a new part of the kind is worked with: the chosen one, else that of the last part of the kind, else the first for
/// blocks and edge, the last for the rest (common practice, no source).
std::string thread_for(const Desk& desk) {
  const course::Course& course = *desk.course();
  if (course::find_thread(course, desk.drawing.thread)) return desk.drawing.thread;
  if (const course::Part* like = last_of_kind(desk)) return like->thread;
  if (course.threads.empty()) return {};
  const stitch::Kind* kind = stitch::find_kind(desk.drawing.kind);
  return kind && (kind->craft_rank == 0 || kind->by_edge_habit) ? course.threads.front().name : course.threads.back().name;
}

void take_up_drawing(Desk& desk) {
  Drawing& drawing = desk.drawing;
  if (drawing.name.empty()) return;
  const course::Course now = file::read(desk.session.text()).course;
  const int part = course::find_part(now, drawing.name);
  if (part < 0) return finish_drawing(desk);
  drawing.shape = session::shape_of(now.parts[static_cast<std::size_t>(part)]);
}

bool write_drawing(Desk& desk, session::Shape shape, const char* what) {
  Drawing& drawing = desk.drawing;
  const course::Course now = file::read(desk.session.text()).course;  // the snapshot may not know the part yet
  const int part = drawing.name.empty() ? -1 : course::find_part(now, drawing.name);
  const std::string name = part < 0 ? session::free_name(now, say::kind_name(desk.page_voice().phrases, drawing.kind)) : drawing.name;
  desk.apply(part < 0 ? session::add_part({name, drawing.kind, thread_for(desk), shape.values})
                      : session::change_values(part, shape.values, what));
  if (!desk.message.empty()) return false;
  drawing.name = name;
  desk.picked = name;
  drawing.shape = std::move(shape);
  return true;
}

void finish_drawing(Desk& desk) {
  desk.drawing.shape.reset();
  desk.drawing.name.clear();
  desk.drawing.pulled.reset();
  desk.drawing.pulling = false;
}

void choose_kind(Desk& desk, std::string_view kind) {
  finish_drawing(desk);
  desk.tool = Tool::draw;
  if (desk.drawing.kind != kind) desk.drawing.chosen.clear(), desk.drawing.thread.clear();
  desk.drawing.kind = kind;
  desk.picked.clear();
}

std::string how_to_draw(const Desk& desk) {
  const stitch::Kind* kind = stitch::find_kind(desk.drawing.kind);
  if (!kind) return {};
  switch (session::by_hand(*kind)) {
    case session::ByHand::legs:
      return desk.say("desk.draw-by.legs");
    case session::ByHand::row:
      return desk.say("desk.draw-by.row");
    case session::ByHand::places:
      return desk.say("desk.draw-by.places");
    case session::ByHand::spot:
      return desk.say("desk.draw-by.spot");
    case session::ByHand::named:
      return desk.say("desk.draw-by.named");
  }
  return {};
}

char key_of_kind(int number) {
  constexpr std::string_view keys = "1234567890";
  return number < static_cast<int>(keys.size()) ? keys[static_cast<std::size_t>(number)] : ' ';
}

void undo(Desk& desk) {
  finish_drawing(desk);
  desk.session.undo();
}

void redo(Desk& desk) {
  finish_drawing(desk);
  desk.session.redo();
}

void shorten_drawing(Desk& desk) {
  take_up_drawing(desk);
  if (!desk.drawing.shape || desk.drawing.name.empty()) return;
  if (auto shorter = shortened(*desk.drawing.shape)) write_drawing(desk, std::move(*shorter), "take back");
}

bool snaps(const Desk& desk) { return !desk.key_pointer && !ImGui::GetIO().KeyShift; }

Snapped from_others(const Desk& desk, const std::vector<cloth::Hole>& own) {
  const std::string& name = desk.drawing.name;
  return snapped(*desk.course(), own, name.empty() ? -1 : course::find_part(*desk.course(), name), {0, 0});
}

cloth::Hole near_corner(const Desk& desk, cloth::Hole pointed) { return snaps(desk) ? pointed + from_others(desk, {pointed}).by : pointed; }

void draw_by_hand(Desk& desk, Area area, ImDrawList& draw) {
  const stitch::Kind* kind = stitch::find_kind(desk.drawing.kind);
  if (!kind) return;
  const cloth::Hole hole = pointed_hole(desk, area);
  switch (session::by_hand(*kind)) {
    case session::ByHand::legs:
      draw_legs(desk, area, draw, hole);
      break;
    case session::ByHand::row:
    case session::ByHand::places:
    case session::ByHand::spot:
      draw_placed(desk, area, draw, hole);
      break;
    case session::ByHand::named:
      draw_named(desk, area, draw, hole);
      break;
  }
  const ImVec2 at = pixel_of(desk, area, hole);
  draw.AddCircle(at, 4 * desk.scale, paint(desk.theme.accent), 0, 1.5F * desk.scale);
}

}  // namespace app
