// The key of a page: every mark that the page uses and none that it does not, in columns.
#pragma once

#include "picture/marks.h"
#include "picture/sheet.h"

namespace picture {

class Legend {
 public:
  /// Entries in as many columns of `width` mm in all as their words need.
  Legend(const Sheet& sheet, const Uses& uses, double width);
  double height() const;
  void draw(list::List& list, Point at) const;
  bool empty() const { return entries_.empty(); }

 private:
  struct Entry {
    Mark mark = Mark::up;
    std::vector<std::string> lines;
    int rows() const { return static_cast<int>(lines.size()); }
  };
  double line() const;
  double unit() const;
  void draw_sign(list::List& list, Mark mark, Point middle) const;

  const Sheet* sheet_;
  double width_;
  double sign_;  ///< room of the drawing before the words
  std::vector<std::vector<Entry>> columns_;
  std::vector<Entry> entries_;
};

}  // namespace picture
