// Items put on a list, each in one call, and lists moved about on a page.
#pragma once

#include <string>
#include <vector>

#include "list/list.h"
#include "picture/geometry.h"

namespace picture {

void add_line(list::List& list, list::Role role, Point a, Point b, double width, list::Colour colour, list::Cap cap = list::Cap::round);
void add_stroke(list::List& list, list::Role role, std::vector<Point> points, double width, list::Colour colour,
                list::Dash dash = list::Dash::none, list::Cap cap = list::Cap::round);
void add_outline(list::List& list, list::Role role, std::vector<Point> points, double width, list::Colour colour);
void add_fill(list::List& list, list::Role role, std::vector<Point> points, list::Colour colour);
void add_disc(list::List& list, list::Role role, Point centre, double radius, list::Colour fill, double line = 0,
              list::Colour line_colour = {});
void add_panel(list::List& list, list::Role role, const Rect& rect, double radius, list::Colour fill, double line,
               list::Colour line_colour);
/// A panel without filling.
void add_frame(list::List& list, list::Role role, const Rect& rect, double radius, double line, list::Colour line_colour);
void add_text(list::List& list, list::Role role, Point at, std::string text, list::TypeStyle style, list::Colour colour,
              list::Align align = list::Align::left);
void clip_in(list::List& list, const Rect& rect, double radius);
void clip_out(list::List& list);

/// Puts all of a picture's items on a page, moved.
void put(list::List& page, const list::List& picture, Point by);

}  // namespace picture
