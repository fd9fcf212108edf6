#include "app/sight.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

namespace app {

bool mirrored(const Desk& desk) { return desk.hand == say::Hand::left; }

cloth::Hole hole_at(const Desk& desk, Area area, ImVec2 at) {
  const int x = static_cast<int>(std::lround(desk.view.x + (at.x - area.x) / desk.view.pixels));
  const int y = static_cast<int>(std::lround(desk.view.y + (at.y - area.y) / desk.view.pixels));
  return {mirrored(desk) ? -x : x, y};
}

ImVec2 pixel_of(const Desk& desk, Area area, cloth::Hole hole) {
  const double x = (mirrored(desk) ? -hole.x : hole.x) - desk.view.x, y = hole.y - desk.view.y;
  return {area.x + static_cast<float>(x * desk.view.pixels), area.y + static_cast<float>(y * desk.view.pixels)};
}

int part_around(const Desk& desk, cloth::Hole hole) {
  constexpr int round_about = 8;  // threads: as far as the petals of a star leave its middle open
  std::map<int, unsigned> sides;
  for (const auto& lying : desk.index->in(cloth::Box{hole.x, hole.y, hole.x, hole.y}.widened(round_about)))
    for (const cloth::Hole end : {lying.stitch.a, lying.stitch.b})
      sides[lying.part] |= (end.x < hole.x ? 1U : 0U) | (end.x > hole.x ? 2U : 0U) | (end.y < hole.y ? 4U : 0U) | (end.y > hole.y ? 8U : 0U);
  const auto around = std::find_if(sides.begin(), sides.end(), [](const auto& of) { return of.second == 15U; });
  return around == sides.end() ? -1 : around->first;
}

int part_at(const Desk& desk, Area area, ImVec2 at) {
  const cloth::Hole hole = hole_at(desk, area, at);
  const int wide = std::max(1, static_cast<int>(std::ceil(6 * desk.scale / desk.view.pixels)));
  int best = -1;
  double nearest = std::max(7.0 * desk.scale, 0.6 * desk.view.pixels);
  for (const auto& lying : desk.index->in({hole.x - wide, hole.y - wide, hole.x + wide, hole.y + wide})) {
    const ImVec2 a = pixel_of(desk, area, lying.stitch.a), b = pixel_of(desk, area, lying.stitch.b);
    const double dx = b.x - a.x, dy = b.y - a.y, length = dx * dx + dy * dy;
    const double t = length > 0 ? std::clamp(((at.x - a.x) * dx + (at.y - a.y) * dy) / length, 0.0, 1.0) : 0;
    const double away = std::hypot(at.x - a.x - t * dx, at.y - a.y - t * dy);
    if (away < nearest) nearest = away, best = lying.part;
  }
  return best;
}

std::vector<guide::Leg> legs_between(cloth::Hole from, cloth::Hole to) {
  std::vector<guide::Leg> legs;
  const int dx = to.x - from.x, dy = to.y - from.y;
  if (dy != 0) legs.push_back({dy < 0 ? cloth::Way::N : cloth::Way::S, std::abs(dy)});
  if (dx != 0) legs.push_back({dx < 0 ? cloth::Way::W : cloth::Way::E, std::abs(dx)});
  return legs;
}

void draw_tried(const Desk& desk, Area area, ImDrawList& draw, const std::vector<cloth::Stitch>& stitches) {
  const float width = std::clamp(desk.view.pixels * 0.3F, 1.5F, 8.0F);
  for (const cloth::Stitch& stitch : stitches) {
    const ImVec2 a = pixel_of(desk, area, stitch.a), b = pixel_of(desk, area, stitch.b);
    if (std::max(a.x, b.x) < area.x || std::max(a.y, b.y) < area.y || std::min(a.x, b.x) > area.x + area.w ||
        std::min(a.y, b.y) > area.y + area.h)
      continue;
    draw.AddLine(a, b, paint(desk.theme.accent), width);
  }
}

void label_at(const Desk& desk, ImDrawList& draw, ImVec2 at, const std::string& words) {
  if (words.empty()) return;
  const float s = desk.scale, pad = 7 * s;
  const ImVec2 size = desk.fonts.text->CalcTextSizeA(desk.fonts.text->FontSize, FLT_MAX, 0, words.c_str());
  ImVec2 from{at.x + 18 * s, at.y + 18 * s};
  const ImVec2 end = draw.GetClipRectMax();
  from.x = std::max(0.0F, std::min(from.x, end.x - size.x - 2 * pad));
  from.y = std::max(0.0F, std::min(from.y, end.y - size.y - 2 * pad));
  draw.AddRectFilled(from, {from.x + size.x + 2 * pad, from.y + size.y + 2 * pad}, paint(desk.theme.panel), 6 * s);
  draw.AddRect(from, {from.x + size.x + 2 * pad, from.y + size.y + 2 * pad}, paint(desk.theme.deep), 6 * s);
  draw.AddText(desk.fonts.text, desk.fonts.text->FontSize, {from.x + pad, from.y + pad}, paint(desk.theme.ink), words.c_str());
}

}  // namespace app
