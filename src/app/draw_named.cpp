// Drawing what is made of other parts: each is clicked, and clicked again to leave it out. Where the kind may have a hole of its own, a
// click on bare cloth says which, and there again that it has none.
#include "app/drawing.h"
#include "app/sight.h"
#include "session/placed.h"

namespace app {
namespace {

const stitch::KeySpec* hole_of_its_own(const stitch::Kind& kind) {
  const stitch::KeySpec* key = session::key_of(kind, stitch::KeyType::hole);
  return key && !key->required ? key : nullptr;
}

void click_part(Desk& desk, const std::string& name) {
  auto shape = desk.drawing.shape ? desk.drawing.shape : next_shape(desk, {});
  if (!shape) return;
  *shape = session::name_toggled(*shape, name);
  if (session::names_of(*shape).empty())
    desk.message = desk.say("desk.named-last");
  else
    write_drawing(desk, std::move(*shape), "choose parts");
}

void click_cloth(Desk& desk, cloth::Hole hole) {
  if (!desk.drawing.shape) return;
  session::Shape shape = *desk.drawing.shape;
  const stitch::KeySpec* key = hole_of_its_own(*shape.kind);
  if (!key) return;
  const std::string name(key->name);
  const auto now = shape.values.find(name);
  if (now != shape.values.end() && now->second == stitch::Value(hole))
    shape.values.erase(now);
  else
    shape.values[name] = hole;
  write_drawing(desk, std::move(shape), "choose hole");
}

void mark_part(const Desk& desk, Area area, ImDrawList& draw, const std::string& name) {
  const int part = course::find_part(*desk.course(), name);
  if (part >= 0) draw_tried(desk, area, draw, desk.course()->parts[static_cast<std::size_t>(part)].work.stitches);
}

void mark_hole(const Desk& desk, Area area, ImDrawList& draw, const session::Shape& shape) {
  const stitch::KeySpec* key = hole_of_its_own(*shape.kind);
  if (!key || !shape.values.contains(key->name)) return;
  const ImVec2 at = pixel_of(desk, area, std::get<cloth::Hole>(shape.values.find(key->name)->second));
  draw.AddCircleFilled(at, 6 * desk.scale, paint(desk.theme.accent));
}

}  // namespace

void draw_named(Desk& desk, Area area, ImDrawList& draw, cloth::Hole pointed) {
  const int part = part_at(desk, area, desk.key_pointer ? pixel_of(desk, area, pointed) : ImGui::GetIO().MousePos);
  const std::string under = part < 0 ? std::string() : desk.course()->parts[static_cast<std::size_t>(part)].name;
  if (pointer_pressed(desk)) {
    desk.message.clear();
    take_up_drawing(desk);
    under.empty() ? click_cloth(desk, pointed) : click_part(desk, under);
  }
  if (desk.drawing.shape) {
    for (const std::string& name : session::names_of(*desk.drawing.shape)) mark_part(desk, area, draw, name);
    mark_hole(desk, area, draw, *desk.drawing.shape);
  }
  if (under.empty() || !(ImGui::IsItemHovered() || desk.key_pointer)) return;
  mark_part(desk, area, draw, under);
  label_at(desk, draw, pixel_of(desk, area, pointed), under);
}

}  // namespace app
