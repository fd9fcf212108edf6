// Pictures and sentences made into blocks: words beside a picture, under it in two columns, or as running text that may go on on the next
// page.
#pragma once

#include "picture/block.h"
#include "picture/sheet.h"
#include "picture/telling.h"

namespace picture {

class Sections {
 public:
  /// `page`: height that a page of its own leaves for blocks, mm.
  Sections(const Sheet& sheet, double page) : sheet_(sheet), page_(page) {}

  /// Widest picture with words at its side, and without; 0 where none may have words at its side.
  double widest_beside() const;
  double widest() const;

  /// `proto` brings what the block stands for on the map.
  std::vector<Block> picture(Picture picture, const Telling& telling, Block proto) const;
  /// Text by itself, line by line. `together`: on one page, where a page holds it.
  enum class Keep { as_text, together };
  std::vector<Block> text(const Telling& telling, double before, Keep keep) const;
  Column column(const Telling& telling, double width) const;

 private:
  using Shared = std::shared_ptr<Picture>;
  bool beside(const Shared& picture, const Telling& telling, Block& block) const;
  std::vector<Block> beside_and_under(const Shared& picture, const Telling& telling, const Block& proto) const;
  bool in_two_columns(const Shared& picture, const Telling& telling, Block& block) const;
  std::vector<Block> one_under_the_other(const Shared& picture, const Telling& telling, Block block, Keep keep) const;
  double key_height(const Block& block, double width) const;
  std::pair<Telling, Telling> halves(const Telling& telling, double width) const;

  const Sheet& sheet_;
  double page_;
};

inline constexpr double letter_inset = 3.6;  // mm: a picture's letter stands out of its frame by so much

}  // namespace picture
