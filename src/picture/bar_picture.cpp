// One bar, and a picot, as the needle goes.
#include "picture/bar_picture.h"

#include <algorithm>

#include "picture/ink.h"

namespace picture {
namespace {

list::TypeStyle point_style(const Sheet& sheet) {
  list::TypeStyle style = sheet.styles.number;
  style.weight = list::Weight::bold;
  return style;
}

/// A bar in a picture of its own: places are threads along it from where it begins, threads aside from its middle.
class OneBar {
 public:
  OneBar(const Sheet& sheet, const BarWork& work, int i, const cloth::Box& window, double scale, Point at)
      : sheet_(sheet), item_(work.item(i)), bar_(work.bar(item_.bar)), cloth_(sheet, work, view_of(window, scale, sheet.voice.hand), at) {}

  const BarCloth& cloth() const { return cloth_; }
  double length() const { return bar_.axis == cutwork::Axis::h ? bar_.box.width() : bar_.box.height(); }
  double half() const { return (bar_.axis == cutwork::Axis::h ? bar_.box.height() : bar_.box.width()) / 2.0; }

  Point at(double along, double aside) const {
    const cloth::Box& b = bar_.box;
    const bool across = bar_.axis == cutwork::Axis::h;
    const double on = item_.from_low ? along : length() - along, middle = (across ? b.y0 + b.y1 : b.x0 + b.x1) / 2.0;
    return across ? cloth_.at(b.x0 + on, middle + aside) : cloth_.at(middle + aside, b.y0 + on);
  }

  void hidden(Picture& picture, const std::vector<Point>& way) const {
    draw_hidden(picture.list, way, cloth_.unit());
    picture.uses.marks.insert(Mark::hidden_thread);
  }
  void seen(Picture& picture, const std::vector<Point>& way) const {
    draw_worked(picture.list, way, cloth_.unit());
    picture.uses.marks.insert(Mark::worked_thread);
  }
  void point(Picture& picture, Point where, int number) const {
    draw_point(picture.list, where, number, point_style(sheet_), sheet_.measure);
    picture.uses.marks.insert(number % 2 != 0 ? Mark::point_up : Mark::point_down);
  }

 private:
  const Sheet& sheet_;
  const cutwork::RouteItem& item_;
  const cutwork::Bar& bar_;
  BarCloth cloth_;
};

cloth::Box window_of(const cutwork::Bar& bar) {
  const cloth::Box& b = bar.box;
  return bar.axis == cutwork::Axis::h ? cloth::Box{b.x0 - 2, b.y0 - 4, b.x1 + 2, b.y1 + 4} : cloth::Box{b.x0 - 4, b.y0 - 2, b.x1 + 4, b.y1 + 2};
}

void draw_woven(const OneBar& bar, Picture& picture) {
  const double step = bar.length() / 8, out = bar.half() + 0.75;
  const auto middle = [&](int i) { return bar.at((2 * i + 0.5) * step, 0); };
  const auto outside = [&](int i) { return bar.at((2 * i + 1.5) * step, i % 2 == 0 ? -out : out); };
  for (int i = 0; i < 3; ++i) bar.hidden(picture, {outside(i), middle(i + 1)});
  for (int i = 0; i < 4; ++i) bar.seen(picture, {middle(i), outside(i)});
  for (int i = 0; i < 4; ++i) {
    bar.point(picture, middle(i), 2 * i + 1);
    bar.point(picture, outside(i), 2 * i + 2);
  }
}

void draw_wrapped(const OneBar& bar, Picture& picture) {
  const double step = bar.length() / 8, out = bar.half() + 0.75;
  const auto low = [&](int i) { return bar.at((2 * i + 0.5) * step, -out); };
  const auto high = [&](int i) { return bar.at((2 * i + 1.5) * step, out); };
  for (int i = 0; i < 3; ++i) bar.hidden(picture, {high(i), low(i + 1)});
  for (int i = 0; i < 4; ++i) bar.seen(picture, {low(i), high(i)});
  for (int i = 0; i < 4; ++i) {
    bar.point(picture, low(i), 2 * i + 1);
    bar.point(picture, high(i), 2 * i + 2);
  }
}

/// A soft line through the places.
std::vector<Point> soft(const std::vector<Point>& through) {
  constexpr int steps = 8;
  std::vector<Point> line;
  for (std::size_t i = 0; i + 1 < through.size(); ++i) {
    const Point a = through[i == 0 ? 0 : i - 1], b = through[i], c = through[i + 1], d = through[std::min(i + 2, through.size() - 1)];
    for (int k = i == 0 ? 0 : 1; k <= steps; ++k) {
      const double t = static_cast<double>(k) / steps, u = t * t, v = u * t;
      const auto mixed = [&](double p, double q, double r, double s) { return q + 0.5 * ((r - p) * t + (2 * p - 5 * q + 4 * r - s) * u + (3 * q - p - 3 * r + s) * v); };
      line.push_back({mixed(a.x, b.x, c.x, d.x), mixed(a.y, b.y, c.y, d.y)});
    }
  }
  return line;
}

Picture picture_of(double width, double height, double scale, const cloth::Box& window) {
  Picture picture;
  picture.width = width;
  picture.height = height;
  picture.scale = scale;
  picture.window = window;
  return picture;
}

}  // namespace

double times_larger(const Styles& styles) { return std::max(1.0, styles.number.size_pt / styles_for(Print::normal).number.size_pt); }

Picture bar_picture(const Sheet& sheet, const BarWork& work, int item, double width) {
  const cloth::Box window = window_of(work.bar(work.item(item).bar));
  constexpr double largest = 7.2;  // mm a thread
  const double scale = std::min(largest * times_larger(sheet.styles), width / (std::max(window.width(), window.height()) + 1));
  const View view = view_of(window, scale, sheet.voice.hand);
  Picture picture = picture_of(view.width(), view.height(), scale, window);
  const OneBar bar(sheet, work, item, window, scale, {0, 0});
  bar.cloth().draw(picture);
  work.wrapped ? draw_wrapped(bar, picture) : draw_woven(bar, picture);
  bar.cloth().close(picture);
  return picture;
}

Picture picot_picture(const Sheet& sheet, const BarWork& work, int item, double width) {
  const cutwork::RouteItem& worked = work.item(item);
  const cloth::Box window = window_of(work.bar(worked.bar));
  constexpr double gap = 3;  // mm
  const double scale = std::min(4.4 * times_larger(sheet.styles), (width - gap) / 2 / (window.width() + 1));
  const View view = view_of(window, scale, sheet.voice.hand);
  Picture picture = picture_of(2 * view.width() + gap, view.height(), scale, window);
  const double out = worked.picots[0] ? -1 : 1;
  for (const int step : {0, 1}) {
    const OneBar bar(sheet, work, item, window, scale, {step * (view.width() + gap), 0});
    bar.cloth().draw(picture);
    bar.cloth().draw_done_bar(picture.list, worked.bar, worked.from_low ? 0 : 0.5, worked.from_low ? 0.5 : 1);
    const double middle = bar.length() / 2, edge = bar.half();
    const auto place = [&](double along, double aside) { return bar.at(middle + along, out * (edge + aside)); };
    if (step == 0) {  // out under that side's threads, once round, and off
      bar.hidden(picture, {bar.at(middle + 0.2, 0), place(0.3, 0)});
      bar.seen(picture, soft({place(0.3, 0), place(0.9, 0.9), place(0.7, 1.8), place(-0.2, 1.9), place(-0.5, 1.2), place(0, 0.8)}));
      bar.seen(picture, soft({place(0, 0.8), place(0.8, 1), place(1.5, 1.8), place(1.7, 2.6)}));
      bar.point(picture, bar.at(middle + 0.2, 0), 1);
      bar.point(picture, place(1.7, 2.8), 2);
    } else {
      bar.seen(picture, soft({place(-0.1, 0), place(-0.4, 0.6), place(0, 1.05), place(0.5, 0.7), place(0.4, 0)}));
      bar.hidden(picture, {place(0.4, 0), bar.at(middle + 0.8, 0)});
      bar.point(picture, bar.at(middle + 0.8, 0), 3);
    }
    bar.cloth().close(picture);
  }
  return picture;
}

}  // namespace picture
