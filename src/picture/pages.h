// Blocks of a lesson flowed into pages. Every page has its running head, at its foot the small picture of the design and the key of just
// the marks it uses, and a last line that says what its grid stands for. Nothing is squeezed: what does not fit goes on to the next page.
#pragma once

#include <vector>

#include "picture/block.h"

namespace picture {

/// "Lesson 3 of 6 · Tuesday 26 January 2027 · 90 minutes"
std::string lesson_line(const Sheet& sheet);

class Pages {
 public:
  explicit Pages(const Sheet& sheet);
  void add(std::vector<Block> blocks);
  bool empty() const { return blocks_.empty(); }
  std::vector<list::List> finish();
  /// Height that the first page, or a further one, leaves for blocks over a foot as high as feet are, mm.
  double room(bool first_page) const;
  /// By how much the block alone is too high for the first page, mm; not above 0 where it fits.
  double over_first(const Block& block) const;

 private:
  struct Page {
    std::size_t first = 0, last = 0;  ///< blocks
  };
  std::vector<Page> divide();
  std::vector<Page> divide_well();
  bool fits(std::size_t first, std::size_t last, bool first_page) const;
  double needed(std::size_t first, std::size_t last) const;
  double top(bool first_page) const { return first_page ? first_top_ : further_top_; }
  Point place_of(const Page& page, std::size_t number, std::size_t block) const;
  list::List draw(const Page& page, std::size_t number, std::size_t of) const;

  const Sheet& sheet_;
  DesignMap map_;
  std::vector<Block> blocks_;
  double first_top_ = 0, further_top_ = 0;  ///< mm from the paper's edge
};

}  // namespace picture
