#include "paint/imgui/play.h"

#include <algorithm>
#include <cmath>

namespace paint {
namespace {

ImU32 colour(list::Colour c) { return IM_COL32(c.r, c.g, c.b, 255); }

class Player {
 public:
  Player(const Screen& screen, ImDrawList& draw) : screen_(screen), draw_(draw) {}

  void operator()(const list::Stroke& stroke) {
    const float width = std::max(1.0F, scaled(stroke.width));
    for (std::size_t i = 1; i < stroke.points.size(); ++i) line(stroke.points[i - 1], stroke.points[i], stroke, width);
    if (stroke.closed && stroke.points.size() > 2) line(stroke.points.back(), stroke.points.front(), stroke, width);
  }
  void operator()(const list::Fill& fill) {
    points_.clear();
    for (const list::Point p : fill.points) points_.push_back(at(p));
    draw_.AddConvexPolyFilled(points_.data(), static_cast<int>(points_.size()), colour(fill.colour));
  }
  void operator()(const list::Disc& disc) {
    draw_.AddCircleFilled(at(disc.centre), scaled(disc.radius), colour(disc.fill));
    if (disc.line > 0) draw_.AddCircle(at(disc.centre), scaled(disc.radius), colour(disc.line_colour), 0, std::max(1.0F, scaled(disc.line)));
  }
  void operator()(const list::Panel& panel) {
    const ImVec2 from = at({panel.rect.x, panel.rect.y}), to = at({panel.rect.x + panel.rect.w, panel.rect.y + panel.rect.h});
    if (panel.filled) draw_.AddRectFilled(from, to, colour(panel.fill), scaled(panel.radius));
    if (panel.line > 0) draw_.AddRect(from, to, colour(panel.line_colour), scaled(panel.radius), 0, std::max(1.0F, scaled(panel.line)));
  }
  void operator()(const list::Text& text) {
    const ImFont* font = text.style.weight == list::Weight::regular ? screen_.regular : screen_.bold;
    if (font == nullptr) return;
    const float size = scaled(text.style.size_pt * 25.4 / 72);
    const float width = font->CalcTextSizeA(size, FLT_MAX, 0, text.text.data(), text.text.data() + text.text.size()).x;
    ImVec2 from = at(text.at);
    from.x -= text.align == list::Align::left ? 0 : text.align == list::Align::centre ? width / 2 : width;
    from.y -= size * font->Ascent / font->FontSize;
    draw_.AddText(font, size, from, colour(text.colour), text.text.data(), text.text.data() + text.text.size());
  }
  void operator()(const list::ClipIn& clip) {
    draw_.PushClipRect(at({clip.rect.x, clip.rect.y}), at({clip.rect.x + clip.rect.w, clip.rect.y + clip.rect.h}), true);
  }
  void operator()(const list::ClipOut&) { draw_.PopClipRect(); }

 private:
  float scaled(double v) const { return static_cast<float>(v) * screen_.scale; }
  ImVec2 at(list::Point p) const { return {screen_.origin.x + scaled(p.x), screen_.origin.y + scaled(p.y)}; }

  void line(list::Point from, list::Point to, const list::Stroke& stroke, float width) {
    if (stroke.dash == list::Dash::none) {
      piece(at(from), at(to), stroke, width);
      return;
    }
    const ImVec2 a = at(from), b = at(to);
    const float length = std::hypot(b.x - a.x, b.y - a.y), seen = 3 * width, free = 2 * width;
    for (float s = 0; s < length; s += seen + free) {
      const float e = std::min(length, s + seen);
      piece({a.x + (b.x - a.x) * s / length, a.y + (b.y - a.y) * s / length}, {a.x + (b.x - a.x) * e / length, a.y + (b.y - a.y) * e / length}, stroke, width);
    }
  }
  void piece(ImVec2 a, ImVec2 b, const list::Stroke& stroke, float width) {
    if (stroke.cap != list::Cap::round || width < 3) {
      draw_.AddLine(a, b, colour(stroke.colour), width);
      return;
    }
    constexpr float half_turn = 3.14159265F;
    const float way = std::atan2(b.y - a.y, b.x - a.x);
    const int segments = std::clamp(static_cast<int>(width), 4, 16);
    draw_.PathArcTo(a, width / 2, way + half_turn / 2, way + 1.5F * half_turn, segments);
    draw_.PathArcTo(b, width / 2, way - half_turn / 2, way + half_turn / 2, segments);
    draw_.PathFillConvex(colour(stroke.colour));
  }

  const Screen& screen_;
  ImDrawList& draw_;
  std::vector<ImVec2> points_;
};

}  // namespace

void play(const list::List& list, const Screen& screen, ImDrawList& draw) {
  Player player(screen, draw);
  for (const list::Item& item : list.items) std::visit(player, item.what);
}

}  // namespace paint
