// Blocks of a lesson flowed into pages. Every page has its running head, at its foot the small picture of the design and the key of just the marks
// it uses, and a last line that says what its grid stands for. Nothing is squeezed: what does not fit goes on to the next page.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "picture/map.h"

namespace picture {

/// A piece that is not divided.
struct Block {
  double height = 0;
  double before = 0;                 ///< white space above, except at the top of a page
  bool keep = false;                 ///< not parted from the next block
  Uses uses;
  std::vector<MapFrame> frames;      ///< close-ups in it, for the map
  std::vector<std::pair<std::string, double>> scales;  ///< letter and mm a thread of each
  bool gridded = false;              ///< it shows a grid
  bool corners = false;              ///< it speaks of the corners to be tacked
  std::function<void(list::List&, Point)> draw;
};

class Pages {
 public:
  explicit Pages(const Sheet& sheet);
  void add(Block block) { blocks_.push_back(std::move(block)); }
  bool empty() const { return blocks_.empty(); }
  std::vector<list::List> finish();
  /// Height that the first page, or a further one, leaves for blocks over a foot as high as feet are, mm.
  double room(bool first_page) const;

 private:
  struct Page {
    std::size_t first = 0, last = 0;  ///< blocks
  };
  std::vector<Page> divide() const;
  double needed(std::size_t first, std::size_t last) const;
  double top(bool first_page) const;
  list::List draw(const Page& page, std::size_t number, std::size_t of) const;

  const Sheet& sheet_;
  DesignMap map_;
  std::vector<Block> blocks_;
};

}  // namespace picture
