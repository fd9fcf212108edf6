#include "picture/sections.h"

#include <algorithm>

#include "picture/ink.h"
#include "picture/legend.h"

namespace picture {
namespace {

constexpr double gap = 7;  // mm between a picture and its words
constexpr double columns_gap = 10;
constexpr double most_key = 142;  // mm: a higher one stands at the foot of the page
constexpr double key_width = 76;  // mm that the key has beside a picture, in large type

}  // namespace

double Sections::widest_beside() const {
  return sheet_.styles.key_aside ? 0 : sheet_.width() - letter_inset - gap - sheet_.styles.text_least_mm;
}

double Sections::widest() const { return sheet_.width() - letter_inset - (sheet_.styles.key_aside ? key_width + gap : 0); }

Column Sections::column(const Telling& telling, double width) const {
  return set(telling, std::min(width, sheet_.styles.text_most_mm), sheet_.styles, sheet_.measure);
}

std::vector<Block> Sections::picture(Picture picture, const Telling& telling, Block proto) const {
  proto.uses = picture.uses;
  proto.before = 7;
  const auto shared = std::make_shared<Picture>(std::move(picture));
  Block block = proto;
  if (beside(shared, telling, block) || in_two_columns(shared, telling, block)) {
    block.parts = std::make_shared<std::vector<Block>>(one_under_the_other(shared, telling, std::move(proto), Keep::as_text));
    return {std::move(block)};
  }
  if (std::vector<Block> parted = beside_and_under(shared, telling, proto); !parted.empty()) return parted;
  return one_under_the_other(shared, telling, std::move(proto), Keep::together);
}

/// Words that are too long for the side of the picture go on under it; as many as there is room for stand beside it.
std::vector<Block> Sections::beside_and_under(const Shared& picture, const Telling& telling, const Block& proto) const {
  for (std::size_t at = telling.pieces().size(); at-- > 1;) {
    if (telling.pieces()[at - 1].how != Telling::How::paragraph) continue;
    const std::pair<Telling, Telling> parted = telling.parted(at);
    Block block = proto;
    if (!beside(picture, parted.first, block) || block.height > letter_inset + picture->height + 1) continue;
    std::vector<Block> blocks{std::move(block)};
    for (Block& line : text(parted.second, 3, Keep::as_text)) blocks.push_back(std::move(line));
    return blocks;
  }
  return {};
}

bool Sections::beside(const Shared& picture, const Telling& telling, Block& block) const {
  const double aside = sheet_.width() - letter_inset - picture->width - gap;
  if (sheet_.styles.key_aside || aside < sheet_.styles.text_least_mm - 0.01) return false;
  const auto words = std::make_shared<Column>(column(telling, aside));
  block.height = std::max(letter_inset + picture->height, letter_inset + words->height() - 2);
  if (block.height > page_) return false;
  block.draw = [picture, words](list::List& list, Point at) {
    put(list, picture->list, {at.x + letter_inset, at.y + letter_inset});
    draw_column(list, *words, {at.x + letter_inset + picture->width + gap, at.y + letter_inset - 2});
  };
  return true;
}

bool Sections::in_two_columns(const Shared& picture, const Telling& telling, Block& block) const {
  const double half = (sheet_.width() - columns_gap) / 2;
  if (half < sheet_.styles.text_least_mm) return false;
  const auto [first, second] = halves(telling, half);
  const auto left = std::make_shared<Column>(column(first, half)), right = std::make_shared<Column>(column(second, half));
  block.height = letter_inset + picture->height + 3 + std::max(left->height(), right->height());
  if (block.height > page_) return false;
  block.draw = [picture, left, right, half](list::List& list, Point at) {
    put(list, picture->list, {at.x + letter_inset, at.y + letter_inset});
    const double top = at.y + letter_inset + picture->height + 3;
    draw_column(list, *left, {at.x, top});
    draw_column(list, *right, {at.x + half + columns_gap, top});
  };
  return true;
}

/// Parted before the piece at which both columns come out most alike.
std::pair<Telling, Telling> Sections::halves(const Telling& telling, double width) const {
  std::pair<Telling, Telling> best{telling, {}};
  double least = column(telling, width).height();
  for (std::size_t at = 1; at < telling.pieces().size(); ++at) {
    if (telling.pieces()[at - 1].how != Telling::How::paragraph) continue;
    std::pair<Telling, Telling> parted = telling.parted(at);
    const double height = std::max(column(parted.first, width).height(), column(parted.second, width).height());
    if (height < least - 0.01) least = height, best = std::move(parted);
  }
  return best;
}

/// Of the key of a page that holds this block alone.
double Sections::key_height(const Block& block, double width) const {
  Uses uses = block.uses;
  if (!block.frames.empty()) uses.marks.insert({Mark::frame, Mark::place, Mark::now, Mark::later});  // the map's
  if (!block.frames.empty() && (sheet_.lesson.number > 1 || sheet_.lesson.sections.size() > 1)) uses.marks.insert(Mark::before);
  const double height = Legend(sheet_, uses, width).height();
  return height < most_key ? height : 0;
}

std::vector<Block> Sections::one_under_the_other(const Shared& picture, const Telling& telling, Block block, Keep keep) const {
  block.height = letter_inset + picture->height;
  block.keep = true;
  const double beyond = letter_inset + picture->width + gap;
  if (sheet_.styles.key_aside) {
    block.height = std::max(block.height, key_height(block, sheet_.width() - beyond));
    block.aside = Rect{beyond, 0, sheet_.width() - beyond, block.height};
  }
  block.draw = [picture](list::List& list, Point at) { put(list, picture->list, {at.x + letter_inset, at.y + letter_inset}); };
  std::vector<Block> blocks{std::move(block)};
  std::vector<Block> lines = text(telling, 3, keep);
  double all = blocks.front().height + 3;
  for (const Block& line : lines) all += line.height;
  if (all > page_) lines = text(telling, 3, Keep::as_text);
  blocks.insert(blocks.end(), std::make_move_iterator(lines.begin()), std::make_move_iterator(lines.end()));
  return blocks;
}

std::vector<Block> Sections::text(const Telling& telling, double before, Keep keep) const {
  std::vector<Block> blocks;
  if (telling.empty()) return blocks;
  const auto words = std::make_shared<Column>(column(telling, sheet_.width()));
  const bool together = keep == Keep::together && words->height() <= page_;
  for (std::size_t i = 0; i < words->lines().size(); ++i) {
    const SetLine& line = words->lines()[i];
    Block block;
    block.height = line.height;
    block.before = i == 0 ? before : 0;
    block.bound = line.keep && i + 1 < words->lines().size();
    block.keep = block.bound || (together && i + 1 < words->lines().size());
    block.draw = [words, i](list::List& list, Point at) { draw_line_of_type(list, words->lines()[i], at); };
    blocks.push_back(std::move(block));
  }
  return blocks;
}

}  // namespace picture
