// The display list: what is drawn, in millimetres from the page's upper left corner, in painting order. Painters play it and decide nothing.
// Each item carries a role, so that tests and hit-testing know what it stands for.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace list {

struct Point {
  double x = 0, y = 0;  ///< mm; x right, y down
};
struct Rect {
  double x = 0, y = 0, w = 0, h = 0;  ///< mm
};
struct Colour {
  std::uint8_t r = 0, g = 0, b = 0;
  friend auto operator<=>(const Colour&, const Colour&) = default;
};

/// What an item stands for.
enum class Role {
  ground, grid, frame, stitch_now, stitch_before, stitch_later, back_thread, hole_up, hole_down, hole_both,
  number, leader, ruler, ruler_number, landmark, map_mark, letter, heading, text, rule_line, key_mark, caution,
  cut_out, thread_left
};

enum class Dash { none, back };  ///< `back`: short strokes, the thread behind the cloth
enum class Cap { round, flat };
enum class Weight { regular, semibold, bold };
enum class Figures { proportional, tabular };  ///< tabular: all equally wide, for numbers in columns
enum class Align { left, centre, right };

struct Stroke {  ///< an open or closed run of straight lines
  std::vector<Point> points;
  double width = 0.2;  ///< mm
  Colour colour;
  Dash dash = Dash::none;
  Cap cap = Cap::round;
  bool closed = false;
};
struct Fill {  ///< a filled polygon
  std::vector<Point> points;
  Colour colour;
};
struct Disc {  ///< a circle: filled, and outlined where `line` > 0
  Point centre;
  double radius = 1;  ///< mm, to the middle of its outline
  Colour fill;
  double line = 0;  ///< mm
  Colour line_colour;
};
struct Panel {  ///< a rectangle with rounded corners: filled, and outlined where `line` > 0
  Rect rect;
  double radius = 0;
  bool filled = true;
  Colour fill;
  double line = 0;
  Colour line_colour;
};
struct TypeStyle {
  double size_pt = 12;
  Weight weight = Weight::regular;
  Figures figures = Figures::proportional;
  friend auto operator<=>(const TypeStyle&, const TypeStyle&) = default;
};
struct Text {  ///< one line of type, never wrapped
  Point at;    ///< on the base line; which end of it says `align`
  std::string text;
  TypeStyle style;
  Align align = Align::left;
  Colour colour;
};
struct ClipIn {  ///< until the matching ClipOut nothing is drawn outside the rectangle; may be nested
  Rect rect;
  double radius = 0;
};
struct ClipOut {};

struct Item {
  Role role = Role::text;
  std::variant<Stroke, Fill, Disc, Panel, Text, ClipIn, ClipOut> what;
};

/// A picture on the page that is spoken of elsewhere: its letter, and what it is called in a table of contents.
struct Place {
  std::string name, title;
  Rect rect;
};
/// What leads to the place of that name when it is clicked on.
struct Jump {
  Rect rect;
  std::string to;
};

struct List {
  double width = 210, height = 297;  ///< mm
  std::string title;                 ///< plain text, for the picture's title
  std::vector<Item> items;
  std::vector<Place> places;
  std::vector<Jump> jumps;

  template <class T>
  void add(Role role, T what) {
    items.push_back({role, std::move(what)});
  }
};

}  // namespace list
