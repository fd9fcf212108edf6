// The foot of a page: the small picture of the design, the key, and the line that says how the pictures are to be read.
#pragma once

#include "picture/column.h"
#include "picture/legend.h"
#include "picture/pages.h"

namespace picture {

class Foot {
 public:
  /// For a page that holds these blocks.
  Foot(const Sheet& sheet, const DesignMap& map, const Block* first, const Block* last);
  double height() const;
  /// Of the cautions on a page that shows cutting.
  static double cautions_height(const Sheet& sheet);
  void draw(list::List& list, std::size_t page, std::size_t of) const;
  /// Where the key stands beside a block instead of here: which block, counted from the first, and its room there.
  const std::optional<std::pair<std::size_t, Rect>>& aside() const { return aside_; }
  void draw_key(list::List& list, Point at) const { legend_->draw(list, at); }

 private:
  double cautions_height() const;
  void draw_cautions(list::List& list, Point at) const;
  void set_key(const Uses& uses, const Block* first, const Block* last);
  double strip() const;
  double map_room() const;
  std::vector<std::string> line_words() const;
  std::string scale_words() const;
  double line_height_mm() const { return line_height(sheet_.styles.body); }
  double lines_height() const { return static_cast<double>(lines_.size()) * line_height_mm() + 3.0; }
  /// Where the key stands elsewhere the line that is last stands beside the small picture, not under it.
  bool line_beside() const { return map_ && aside_; }
  double below_rule() const;

  const Sheet& sheet_;
  const DesignMap& design_;
  MapOrder order_;
  std::optional<Picture> map_;  ///< its size and marks
  std::optional<Legend> legend_;
  std::optional<std::pair<std::size_t, Rect>> aside_;
  std::vector<std::pair<std::string, double>> scales_;
  bool gridded_ = false;
  std::optional<Column> cautions_;
  std::vector<std::string> lines_;
};

}  // namespace picture
