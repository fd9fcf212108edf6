// Running text set into lines of a column: headings, paragraphs, lists. Left aligned, no word split unless it is wider than the column.
#pragma once

#include <string>
#include <vector>

#include "list/measure.h"
#include "picture/geometry.h"
#include "picture/styles.h"

namespace picture {

/// The text in lines no wider than `width` mm. Line breaks in it are kept.
std::vector<std::string> wrapped(const std::string& text, list::TypeStyle style, double width, const list::Measure& measure);

struct SetLine {
  std::string text;  ///< empty: white space
  std::string mark;  ///< set to the left of the text: the number of a list
  list::TypeStyle style;
  list::Colour colour = colour::ink;
  list::Role role = list::Role::text;
  double indent = 0;  ///< mm
  double height = 0;  ///< mm down to the next line's top
  bool keep = false;  ///< never parted from the next line
};

class Column {
 public:
  Column(double width, const Styles& styles, const list::Measure& measure) : width_(width), styles_(styles), measure_(measure) {}

  void heading(const std::string& text, list::Colour colour = colour::ink);
  void strong(const std::string& text);
  void paragraph(const std::string& text);
  void marked(const std::string& mark, const std::string& text);
  void space(double em);  ///< white space, in ems of the running text; none at the top

  double width() const { return width_; }
  double height() const;
  const std::vector<SetLine>& lines() const { return lines_; }

 private:
  void set(const std::string& text, list::TypeStyle style, list::Colour colour, list::Role role, double indent, bool keep_all);

  double width_;
  const Styles& styles_;
  const list::Measure& measure_;
  std::vector<SetLine> lines_;
};

/// Draws a line whose top left corner is `at`.
void draw_line_of_type(list::List& list, const SetLine& line, Point at);
void draw_column(list::List& list, const Column& column, Point at);

}  // namespace picture
