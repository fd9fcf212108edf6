// Drawing: press to begin, pull a leg in any of eight ways, let go, pull the next one from its end. Only legs that the kind can build are
// offered.
#include <algorithm>

#include "app/sight.h"
#include "app/snap.h"
#include "file/course_file.h"

namespace app {
namespace {

std::vector<std::pair<std::string, std::string>> further_keys(const session::Shape& shape) {
  std::vector<std::pair<std::string, std::string>> keys;
  for (const stitch::KeySpec& spec : shape.kind->keys) {
    const auto found = shape.values.find(spec.name);
    if (spec.name == "start" || spec.name == "path" || found == shape.values.end() || (spec.fallback && *spec.fallback == found->second))
      continue;
    keys.emplace_back(spec.name, session::value_in_toml(found->second));
  }
  return keys;
}

/// Writes the shape into the course: a new part, or a longer path of the one that is being drawn.
void write(Desk& desk, session::Shape shape, bool closed, const char* what) {
  Drawing& drawing = desk.drawing;
  const course::Course now = file::read(desk.session.text()).course;  // the snapshot may not know the part yet
  const int part = drawing.name.empty() ? -1 : course::find_part(now, drawing.name);
  if (part < 0) {
    const std::string name = session::free_name(now, drawing.kind);
    desk.apply(
        session::add_part({name, drawing.kind, thread_for(desk), session::start_of(shape), session::path_of(shape), further_keys(shape)}));
    if (desk.message.empty()) drawing.name = name;
  } else {
    desk.apply(session::change_path(part, session::path_of(shape), what));
  }
  if (!desk.message.empty()) return;
  desk.picked = drawing.name;
  drawing.shape = std::move(shape);
  if (closed) finish_drawing(desk);
}

session::Shape shape_to_begin(const Desk& desk, session::Shape shape) {
  for (const auto& [key, value] : desk.drawing.chosen)
    if (shape.values.contains(key)) shape.values[key] = value;
  return shape;
}

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
  auto shape = session::begin_shape(desk.drawing.kind, pointed);
  if (!shape) return {};
  shape = shape_to_begin(desk, std::move(*shape));
  const auto piece = session::work_of(lone_piece(*shape));
  const Snapped snap = snapped(*desk.course(), piece ? corners_of(*piece) : std::vector{pointed}, -1, {0, 0});
  const cloth::Hole by = desk.key_pointer ? cloth::Hole{} : snap.by;
  shape->values["start"] = session::start_of(*shape) + by;
  Beginning beginning{std::move(shape), {}, pointed + by, snap};
  beginning.snap.by = by;
  if (piece)
    for (const cloth::Stitch& stitch : piece->stitches) beginning.stitches.push_back({stitch.a + by, stitch.b + by});
  return beginning;
}

void press(Desk& desk, cloth::Hole hole) {
  Drawing& drawing = desk.drawing;
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
    write(desk, drawing.pulled->shape, closed, "add leg");
  } else if (drawing.shape && session::path_of(*drawing.shape).empty()) {
    session::Shape lone = lone_piece(*drawing.shape);
    if (session::work_of(lone))
      write(desk, std::move(lone), false, "add leg");
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
}

/// How far corners of what is drawn are from the nearest of another part, or from the middle.
Snapped from_others(const Desk& desk, const std::vector<cloth::Hole>& own) {
  const std::string& name = desk.drawing.name;
  return snapped(*desk.course(), own, name.empty() ? -1 : course::find_part(*desk.course(), name), {0, 0});
}

/// The hole to pull to: another part's corner where the pointer is near one.
cloth::Hole pulled_towards(const Desk& desk, cloth::Hole pointed) {
  return desk.key_pointer ? pointed : pointed + from_others(desk, {pointed}).by;
}

void show_pulled(const Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed) {
  const session::Pulled& pulled = *desk.drawing.pulled;
  Snapped far = from_others(desk, {session::far_end(pulled.work)});
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

/// The thread that a new part of the kind is worked with: the chosen one, else that of the last part of the kind, else the first for
/// blocks' rank and the last for what comes after.
std::string thread_for(const Desk& desk) {
  const course::Course& course = *desk.course();
  if (course::find_thread(course, desk.drawing.thread)) return desk.drawing.thread;
  for (auto part = course.parts.rbegin(); part != course.parts.rend(); ++part)
    if (part->kind == desk.drawing.kind) return part->thread;
  if (course.threads.empty()) return {};
  const stitch::Kind* kind = stitch::find_kind(desk.drawing.kind);
  return kind && kind->craft_rank == 0 ? course.threads.front().name : course.threads.back().name;
}

void finish_drawing(Desk& desk) {
  desk.drawing.shape.reset();
  desk.drawing.name.clear();
  desk.drawing.pulled.reset();
  desk.drawing.pulling = false;
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
  if (!desk.drawing.shape || desk.drawing.name.empty()) return;
  if (auto shorter = session::without_last(*desk.drawing.shape)) write(desk, std::move(*shorter), false, "take back leg");
}

void draw_by_hand(Desk& desk, Area area, ImDrawList& draw) {
  Drawing& drawing = desk.drawing;
  const cloth::Hole hole = pointed_hole(desk, area);
  if (pointer_pressed(desk)) press(desk, hole);
  if (drawing.pulling && drawing.shape) {
    pull_to(desk, pulled_towards(desk, hole));
    if (drawing.pulled) show_pulled(desk, area, draw, hole);
    if (pointer_let_go(desk)) let_go(desk);
  } else if (drawing.shape && !drawing.name.empty()) {
    const ImVec2 end = pixel_of(desk, area, session::end_of(*drawing.shape));
    draw.AddCircle(end, 7 * desk.scale, paint(desk.theme.accent), 0, 2 * desk.scale);
  } else if (!drawing.shape) {
    show_beginning(desk, area, draw, hole);
  }
  const ImVec2 at = pixel_of(desk, area, hole);
  draw.AddCircle(at, 4 * desk.scale, paint(desk.theme.accent), 0, 1.5F * desk.scale);
}

}  // namespace app
