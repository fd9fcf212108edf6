// The route of bars or fillings as a map.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "picture/bar_picture.h"
#include "picture/ink.h"

namespace picture {
namespace {

constexpr double most_scale = 4.2, cap_height = 0.727;
constexpr int margin = 3;

class Maps {
 public:
  Maps(const Sheet& sheet, const BarWork& work, double width, double height) : sheet_(sheet), work_(work), width_(width), height_(height), style_(sheet.styles.number) {
    style_.weight = list::Weight::bold;
    const double text = sheet.measure.measure(std::to_string(work.last + 1), style_).width;
    least_ = std::max(1.7, (text + 1.2) / 3);  // a number stands within a bar of four threads, with room for its arrow
  }

  std::vector<Picture> draw() {
    std::vector<Picture> maps;
    for (const auto& items : tiles()) maps.push_back(draw_tile(items));
    return maps;
  }

 private:
  cloth::Box box_of(int i) const {
    const cutwork::RouteItem& item = work_.item(i);
    if (item.bar < 0) return work_.opening(item.fillings[0].opening).box;
    cloth::Box box = work_.bar(item.bar).box;
    for (const auto& filling : item.fillings) {
      const cloth::Box& opening = work_.opening(filling.opening).box;
      box.grow({opening.x0, opening.y0});
      box.grow({opening.x1, opening.y1});
    }
    return box;
  }

  cloth::Box window_of(const std::vector<int>& items) const {
    cloth::Box box = box_of(items.front());
    for (const int i : items) {
      const cloth::Box one = box_of(i);
      box.grow({one.x0, one.y0});
      box.grow({one.x1, one.y1});
    }
    return box.widened(4 + margin);
  }

  /// As few as hold all, side by side; each has the items whose own place lies in it, in order.
  std::vector<std::vector<int>> tiles() const {
    std::vector<int> all;
    for (int i = work_.first; i <= work_.last; ++i) all.push_back(i);
    const cloth::Box window = window_of(all);
    const int columns = pieces(window.width() + 1, width_), rows = pieces(window.height() + 1, height_);
    std::vector<std::vector<int>> tiles(static_cast<std::size_t>(columns * rows));
    for (const int i : all) {
      const cloth::Box box = box_of(i);
      const int column = (box.x0 - window.x0) * columns / (window.width() + 1), row = (box.y0 - window.y0) * rows / (window.height() + 1);
      tiles[static_cast<std::size_t>(row * columns + column)].push_back(i);
    }
    tiles.erase(std::remove_if(tiles.begin(), tiles.end(), [](const auto& t) { return t.empty(); }), tiles.end());
    std::sort(tiles.begin(), tiles.end());
    return tiles;
  }
  int pieces(int threads, double room) const {
    const double fits = room / least_;
    constexpr double overlap = 22;  // threads: margins, and openings that reach over
    return threads <= fits ? 1 : static_cast<int>(std::ceil(threads / std::max(12.0, fits - overlap)));
  }

  Picture draw_tile(const std::vector<int>& items) {
    const cloth::Box window = window_of(items);
    const double scale = std::min({most_scale * times_larger(sheet_.styles), width_ / (window.width() + 1), height_ / (window.height() + 1)});
    Picture picture;
    const View view = view_of(window, scale, sheet_.voice.hand);
    picture.width = view.width();
    picture.height = view.height();
    picture.scale = scale;
    picture.window = window;
    const BarCloth cloth(sheet_, work_, view, {0, 0});
    cloth.draw(picture);
    draw_earlier(cloth, picture, items.front());
    for (const int i : items) draw_fillings(cloth, picture, i);
    for (const int i : items) draw_way(cloth, picture, i);
    for (const int i : items) draw_item(cloth, picture, i);
    cloth.close(picture);
    return picture;
  }

  bool begins(int i) const { return std::binary_search(work_.route->starts.begin(), work_.route->starts.end(), i); }

  /// Bars of earlier lessons are done; with fillings, all of them are.
  void draw_earlier(const BarCloth& cloth, Picture& picture, int) const {
    for (const plan::PartRoute& route : sheet_.plan.routes) {
      if (route.cutting != work_.route->cutting || route.stage != course::Stage::bars) continue;
      const int n = static_cast<int>(route.items.size());
      for (int i = 0; i < (work_.bars() ? work_.first : n); ++i) cloth.draw_done_bar(picture.list, route.items[static_cast<std::size_t>(i)].bar, 0, 1);
    }
  }

  void draw_fillings(const BarCloth& cloth, Picture& picture, int i) const {
    for (const cutwork::FillingWork& filling : work_.item(i).fillings) {
      const cloth::Box& b = work_.opening(filling.opening).box;
      const double x = (b.x0 + b.x1) / 2.0, y = (b.y0 + b.y1) / 2.0;
      std::vector<Point> loop;
      constexpr int steps = 32;
      for (int k = 0; k <= steps; ++k) {
        const double turn = 2 * std::numbers::pi * k / steps, r = filling.kind == stitch::Filling::wheel ? 0.9 : 1.5;
        loop.push_back(cloth.at(x + r * std::cos(turn), y + r * std::sin(turn)));
      }
      if (!work_.bars()) continue;
      add_stroke(picture.list, list::Role::key_mark, loop, 0.35, colour::now);
      const cloth::Hole bar = cutwork::middle_of(work_.bar(work_.item(i).bar));
      const double far = std::hypot(bar.x - x, bar.y - y);
      if (far > 0)
        add_line(picture.list, list::Role::key_mark, cloth.at(x + (bar.x - x) / far * 1.5, y + (bar.y - y) / far * 1.5), cloth.at(bar.x, bar.y), 0.35, colour::now);
      picture.uses.marks.insert(Mark::stem);
    }
  }

  void draw_way(const BarCloth& cloth, Picture& picture, int i) const {
    const cutwork::RouteItem& item = work_.item(i);
    if (i == work_.first || item.behind < 0 || begins(i)) return;
    std::vector<Point> way{cloth.at(work_.item(i - 1).to.x, work_.item(i - 1).to.y)};
    for (const cloth::Hole h : item.via) way.push_back(cloth.at(h.x, h.y));
    way.push_back(cloth.at(item.from.x, item.from.y));
    draw_back(picture.list, way, std::min(4.0, cloth.unit() * 1.6));
    picture.uses.marks.insert(Mark::back);
  }

  void draw_item(const BarCloth& cloth, Picture& picture, int i) const {
    const cutwork::RouteItem& item = work_.item(i);
    const cloth::Box box = item.bar < 0 ? work_.opening(item.fillings[0].opening).box : work_.bar(item.bar).box;
    const Point a = cloth.at(box.x0, box.y0), c = cloth.at(box.x1, box.y1);
    const double pad = 0.25 * cloth.unit();
    const Rect rect{std::min(a.x, c.x) + pad, std::min(a.y, c.y) + pad, std::abs(c.x - a.x) - 2 * pad, std::abs(c.y - a.y) - 2 * pad};
    if (item.bar >= 0) add_panel(picture.list, list::Role::key_mark, rect, 0, colour::white, 0.35, colour::now);
    const std::string text = std::to_string(i + 1);
    const double width = sheet_.measure.measure(text, style_).width;
    const Point middle{rect.x + rect.w / 2, rect.y + rect.h / 2};
    add_text(picture.list, list::Role::number, {middle.x - width / 2, middle.y + cap_height / 2 * em(style_)}, text, style_, colour::ink);
    picture.uses.marks.insert(Mark::bar_number);
    const Point from = cloth.at(item.from.x, item.from.y), to = cloth.at(item.to.x, item.to.y);
    if (item.bar >= 0) {
      draw_arrow(picture.list, to, minus(to, from), 0.75 * cloth.unit());
      picture.uses.marks.insert(Mark::bar_way);
    }
    if (item.bar >= 0) draw_picots(cloth, picture, i);
    if (begins(i) || i == work_.first) {
      draw_thread_begins(picture.list, from);
      picture.uses.marks.insert(Mark::thread_begins);
    }
  }

  void draw_picots(const BarCloth& cloth, Picture& picture, int i) const {
    const cutwork::Bar& bar = work_.bar(work_.item(i).bar);
    const double x = (bar.box.x0 + bar.box.x1) / 2.0, y = (bar.box.y0 + bar.box.y1) / 2.0;
    const bool across = bar.axis == cutwork::Axis::h;
    for (const bool after : {false, true}) {
      if (!work_.item(i).picots[after ? 1 : 0]) continue;
      const double inset = after ? -0.25 : 0.25;  // where the box of the number has its edge
      const Point edge = across ? cloth.at(x, (after ? bar.box.y1 : bar.box.y0) + inset) : cloth.at((after ? bar.box.x1 : bar.box.x0) + inset, y);
      draw_picot(picture.list, edge, minus(edge, cloth.at(x, y)), 0.7 * cloth.unit());
      picture.uses.marks.insert(Mark::picot);
    }
  }

  const Sheet& sheet_;
  const BarWork& work_;
  double width_, height_, least_ = 1.7;
  list::TypeStyle style_;
};

}  // namespace

std::vector<Picture> bar_maps(const Sheet& sheet, const BarWork& work, double width, double height) {
  return Maps(sheet, work, width, height).draw();
}

}  // namespace picture
