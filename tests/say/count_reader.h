// A little reader of count-ins: it finds the landmark among the stitches that stand on the cloth, counts as it is told, and says in which hole
// that ends. It knows nothing of landmarks but the words.
#pragma once

#include <doctest/doctest.h>

#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"  // within <regex>, with the sanitizers
#endif

#include <algorithm>
#include <map>
#include <optional>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "cloth/hole.h"

namespace reader {

using cloth::Hole;

struct Block {
  std::vector<cloth::Stitch> stitches;
  int x0 = 1 << 20, x1 = -(1 << 20), y0 = 1 << 20, y1 = -(1 << 20);
  void add(cloth::Stitch s) {
    stitches.push_back(s);
    for (const Hole h : {s.a, s.b}) x0 = std::min(x0, h.x), x1 = std::max(x1, h.x), y0 = std::min(y0, h.y), y1 = std::max(y1, h.y);
  }
  bool upright() const { return stitches[0].a.x == stitches[0].b.x; }
  bool goes_on_with(cloth::Stitch s) const {
    const cloth::Stitch& last = stitches.back();
    if ((s.a.x == s.b.x) != upright()) return false;
    return upright() ? std::abs(s.a.x - last.a.x) == 1 && std::min(s.a.y, s.b.y) == y0
                     : std::abs(s.a.y - last.a.y) == 1 && std::min(s.a.x, s.b.x) == x0;
  }
};

/// The cloth as a student has it before her: blocks of each part in the order in which they lie round the ring, or petals; corners of lines.
struct Cloth {
  std::map<std::string, std::vector<Block>> parts, corners;
  Hole middle;
};

inline std::vector<Block> runs_of(const std::vector<cloth::Stitch>& stitches) {
  std::vector<Block> runs;
  for (const cloth::Stitch& stitch : stitches) {
    if (runs.empty() || !runs.back().goes_on_with(stitch)) runs.emplace_back();
    runs.back().add(stitch);
  }
  return runs;
}

/// A block has five stitches over four threads; in a straight row of them the last of one is the first of the next. The thread may be
/// begun anywhere: the round is read from where a row begins.
inline std::vector<Block> blocks_of(std::vector<cloth::Stitch> stitches) {
  std::rotate(stitches.begin(), stitches.begin() + static_cast<std::ptrdiff_t>(runs_of(stitches).front().stitches.size()), stitches.end());
  std::vector<Block> blocks;
  for (const Block& run : runs_of(stitches))
    for (std::size_t first = 0; first + 4 < run.stitches.size(); first += 4) {
      Block& block = blocks.emplace_back();
      for (std::size_t k = first; k <= first + 4; ++k) block.add(run.stitches[k]);
    }
  return blocks;
}

inline int out(const Block& b, const std::string& side) { return side == "top" ? -b.y0 : side == "bottom" ? b.y1 : side == "left" ? -b.x0 : b.x1; }

inline std::vector<int> furthest(const std::vector<Block>& all, const std::vector<int>& among, const std::string& side) {
  int best = -(1 << 20);
  for (const int i : among) best = std::max(best, out(all[static_cast<std::size_t>(i)], side));
  std::vector<int> found;
  for (const int i : among)
    if (out(all[static_cast<std::size_t>(i)], side) == best) found.push_back(i);
  return found;
}

inline std::optional<int> only(const std::vector<int>& found) { return found.size() == 1 ? std::optional(found[0]) : std::nullopt; }

inline const std::map<std::string, std::string> outermost{{"topmost", "top"}, {"lowest", "bottom"}, {"leftmost", "left"}, {"rightmost", "right"}};
inline const std::map<std::string, std::string> ones{{"left-hand", "left"}, {"right-hand", "right"}, {"upper", "top"}, {"lower", "bottom"}};

/// "the topmost block", "the left-hand one of the topmost blocks"; of petals and corners likewise
inline std::optional<int> read_anchor(const std::vector<Block>& all, const std::string& words) {
  std::vector<int> every(all.size());
  for (std::size_t i = 0; i < all.size(); ++i) every[i] = static_cast<int>(i);
  std::smatch m;
  if (std::regex_match(words, m, std::regex("the (topmost|lowest|leftmost|rightmost) (?:block|petal|corner)")))
    return only(furthest(all, every, outermost.at(m[1])));
  if (std::regex_match(words, m,
                       std::regex("the (left-hand|right-hand|upper|lower) one of the (topmost|lowest|leftmost|rightmost) (?:blocks|petals|corners)")))
    return only(furthest(all, furthest(all, every, outermost.at(m[2])), ones.at(m[1])));
  return std::nullopt;
}

inline std::optional<int> read_ordinal(const std::string& word) {
  static const std::vector<std::string> said{"first",   "second", "third", "fourth", "fifth",    "sixth",
                                             "seventh", "eighth", "ninth", "tenth",  "eleventh", "twelfth"};
  const auto found = std::find(said.begin(), said.end(), word);
  if (found != said.end()) return static_cast<int>(found - said.begin()) + 1;
  return std::isdigit(static_cast<unsigned char>(word[0])) ? std::optional(std::stoi(word)) : std::nullopt;
}

/// Do the blocks lie clockwise as they are listed? Twice the area that their middles enclose; y grows down.
inline bool clockwise(const std::vector<Block>& all) {
  long area = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Block &a = all[i], &b = all[(i + 1) % all.size()];
    area += static_cast<long>(a.x0 + a.x1) * (b.y0 + b.y1) - static_cast<long>(b.x0 + b.x1) * (a.y0 + a.y1);
  }
  return area > 0;
}

inline std::optional<int> read_block(const std::vector<Block>& all, const std::string& words) {
  std::smatch m;
  if (!std::regex_match(words, m, std::regex("the (\\w+) block (clockwise|anticlockwise) after (.*)"))) return read_anchor(all, words);
  const auto nth = read_ordinal(m[1]), from = read_anchor(all, m[3]);
  if (!nth || !from) return std::nullopt;
  const int n = static_cast<int>(all.size()), step = (m[2] == "clockwise") == clockwise(all) ? *nth : -*nth;
  return ((*from + step) % n + n) % n;
}

/// The hole of "the upper end of the left-hand stitch of BLOCK".
inline std::optional<Hole> read_spot(const Block& block, const std::string& end, const std::string& stitch) {
  std::vector<cloth::Stitch> row = block.stitches;
  std::sort(row.begin(), row.end(), [&](const auto& a, const auto& b) { return block.upright() ? a.a.x < b.a.x : a.a.y < b.a.y; });
  std::smatch m;
  std::size_t which = 0;
  if (stitch == "left-hand stitch of" || stitch == "top stitch of")
    which = 0;
  else if (stitch == "right-hand stitch of" || stitch == "bottom stitch of")
    which = row.size() - 1;
  else if (std::regex_match(stitch, m, std::regex("(\\w+) stitch from the (left|top) in"))) {
    const auto nth = read_ordinal(m[1]);
    if (!nth) return std::nullopt;
    which = static_cast<std::size_t>(*nth - 1);
  } else
    return std::nullopt;
  if (which >= row.size() || block.upright() != (end == "upper" || end == "lower")) return std::nullopt;
  const cloth::Stitch s = row[which];
  if (block.upright()) return (s.a.y < s.b.y) == (end == "upper") ? s.a : s.b;
  return (s.a.x < s.b.x) == (end == "left") ? s.a : s.b;
}

inline std::optional<Hole> read_landmark(const Cloth& cloth, const std::string& words) {
  if (words == "the crossing of the two folds in the middle of the cloth") return cloth.middle;
  std::smatch m;
  if (std::regex_match(words, m, std::regex("(the .* corners?) of the (\\w+)"))) {
    const auto part = cloth.corners.find(m[2]);
    if (part == cloth.corners.end()) return std::nullopt;
    const auto corner = read_anchor(part->second, m[1]);
    return corner ? std::optional(part->second[static_cast<std::size_t>(*corner)].stitches[0].a) : std::nullopt;
  }
  if (!std::regex_match(
          words, m,
          std::regex(
              "the (upper|lower|left|right) end of the (.*? stitch(?: from the left| from the top)? (?:of|in)) (the .*) of the (\\w+)")))
    return std::nullopt;
  const auto part = cloth.parts.find(m[4]);
  if (part == cloth.parts.end()) return std::nullopt;
  const auto block = read_block(part->second, m[3]);
  return block ? read_spot(part->second[static_cast<std::size_t>(*block)], m[1], m[2]) : std::nullopt;
}

inline std::optional<Hole> read_legs(Hole at, const std::string& words) {
  static const std::regex leg("(\\d+) threads? (?:straight )?(up|down|to the left|to the right)");
  for (auto m = std::sregex_iterator(words.begin(), words.end(), leg); m != std::sregex_iterator(); ++m) {
    const int n = std::stoi((*m)[1]);
    const std::string way = (*m)[2];
    at = at + (way == "up" ? Hole{0, -n} : way == "down" ? Hole{0, n} : way == "to the left" ? Hole{-n, 0} : Hole{n, 0});
  }
  const std::string rest = std::regex_replace(words, leg, "");
  return rest.empty() || rest == ", then " ? std::optional(at) : std::nullopt;
}

/// Where the words lead; nothing where they cannot be followed.
inline std::optional<Hole> follow(const Cloth& cloth, const std::string& words) {
  std::smatch m;
  if (std::regex_match(words, m, std::regex("From (.*) count (.*)\\. The needle comes up there: 1\\.")) ||
      std::regex_match(words, m, std::regex("From (.*): (.*)\\."))) {
    const auto from = read_landmark(cloth, m[1]);
    return from ? read_legs(*from, m[2]) : std::nullopt;
  }
  if (std::regex_match(words, m, std::regex("The needle comes up in the very hole of a stitch already there: (.*)\\. That is 1\\.")) ||
      std::regex_match(words, m, std::regex("It is the hole of (.*)\\.")))
    return read_landmark(cloth, m[1]);
  return std::nullopt;
}

}  // namespace reader
