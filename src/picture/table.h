// Counts to be sure of, as a table whose lines add up to its last: so many sides of so many stitches each, row by row.
#pragma once

#include <string>
#include <vector>

#include "picture/geometry.h"
#include "picture/sheet.h"
#include "picture/telling.h"

namespace picture {

struct Table {
  struct Row {
    std::string label;
    std::vector<int> numbers;
    int times = 1;  ///< how often the numbers go into the total
    bool total = false;
  };
  std::string title;
  std::vector<std::string> heads;  ///< of the columns of numbers
  std::vector<Row> rows;
  std::string note;  ///< below, or empty
};

/// One table a trail of the lesson, in order.
std::vector<Table> count_tables(const Sheet& sheet);

/// How much is stitched by each corner, one table a trail with two corners or more; of many corners, eight spread over the way.
std::vector<Table> check_tables(const Sheet& sheet);

/// Both for the screen, where nobody measures type: of lesson `number`, from 1; of a lesson that cuts, its cuttings too.
std::vector<Table> lesson_counts(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice);

/// For the screen likewise: what is looked over of each sort of area before the lesson cuts it, to be ticked; empty where it cuts nothing.
std::vector<Telling> lesson_ready_to_cut(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice);

/// A table set for a width; it draws itself with its top left corner anywhere.
class SetTable {
 public:
  SetTable(const Sheet& sheet, const Table& table, double width);
  double height() const { return height_; }
  void draw(list::List& list, Point at) const;

 private:
  struct Row {
    std::vector<std::string> label;
    std::vector<std::string> numbers;
    bool total = false;
  };
  double row_height(const Row& row) const;

  const Sheet& sheet_;
  double width_, column_ = 0, label_width_ = 0, height_ = 0;
  std::vector<std::string> title_, note_;
  std::vector<std::string> heads_;
  std::vector<Row> rows_;
};

}  // namespace picture
