// Text and rows of text flowed into pages with a running head: for pages that show no stitches.
#pragma once

#include <string>
#include <vector>

#include "picture/column.h"
#include "picture/ink.h"
#include "picture/telling.h"

namespace picture {

class TextPages {
 public:
  TextPages(std::string course, std::string title, Styles styles, PageSize page, const list::Measure& measure);

  void add(const Telling& telling);
  /// Cells side by side, in columns of these shares of the width; a thin line under the row.
  enum class Weight { plain, strong };
  void add_row(const std::vector<std::string>& cells, const std::vector<double>& shares, Weight weight);

  std::vector<list::List> finish();

 private:
  struct Piece {
    double height = 0;
    double before = 0;                               ///< white space above, except at the top of a page
    bool keep = false;                               ///< not parted from the next one: a heading
    std::vector<std::pair<double, Column>> columns;  ///< mm from the left margin
    bool ruled = false;
  };
  double top() const;
  double kept_together(std::size_t i) const;                             ///< mm that a piece needs with those it is not parted from
  std::vector<std::vector<std::size_t>> parted(double first_top) const;  ///< pieces of each page
  void draw(list::List& list, const std::vector<std::size_t>& pieces, double y) const;
  list::List fresh(std::size_t number, std::size_t of) const;

  std::string course_, title_;
  Styles styles_;
  PageSize page_;
  const list::Measure& measure_;
  std::vector<Piece> pieces_;
};

}  // namespace picture
