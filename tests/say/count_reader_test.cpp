// A little reader of its own: it reads a count-in's English words, finds the landmark among the stitches that stand on the cloth, counts as
// it is told, and must end in the hole where the needle comes up. It knows nothing of landmarks but the words; a mirrored cloth, read
// with the left hand's words, must lead to the mirrored hole.
#include <doctest/doctest.h>

#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"  // within <regex>, with the sanitizers
#endif

#include <algorithm>
#include <map>
#include <optional>
#include <random>
#include <regex>
#include <set>

#include "assets/assets.h"
#include "course_text.h"
#include "plan/plan.h"
#include "say/say.h"

namespace {

using cloth::Hole;

const words::Phrases& english() {
  static const auto table = words::Phrases::read(assets::table("phrases/en.toml"), "en.toml");
  REQUIRE(table);
  return *table;
}

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

/// The cloth as a student has it before her: blocks of each part in the order in which they lie round the ring.
struct Cloth {
  std::map<std::string, std::vector<Block>> parts;
  Hole middle;
};

std::vector<Block> runs_of(const std::vector<cloth::Stitch>& stitches) {
  std::vector<Block> runs;
  for (const cloth::Stitch& stitch : stitches) {
    if (runs.empty() || !runs.back().goes_on_with(stitch)) runs.emplace_back();
    runs.back().add(stitch);
  }
  return runs;
}

/// A block has five stitches over four threads; in a straight row of them the last of one is the first of the next. The thread may be
/// begun anywhere: the round is read from where a row begins.
std::vector<Block> blocks_of(std::vector<cloth::Stitch> stitches) {
  std::rotate(stitches.begin(), stitches.begin() + static_cast<std::ptrdiff_t>(runs_of(stitches).front().stitches.size()), stitches.end());
  std::vector<Block> blocks;
  for (const Block& run : runs_of(stitches))
    for (std::size_t first = 0; first + 4 < run.stitches.size(); first += 4) {
      Block& block = blocks.emplace_back();
      for (std::size_t k = first; k <= first + 4; ++k) block.add(run.stitches[k]);
    }
  return blocks;
}

Cloth cloth_of(const course::Course& course, const plan::Plan& plan, int before_lesson, bool mirror) {
  Cloth cloth;
  const auto seen = [&](Hole h) { return mirror ? Hole{-h.x, h.y} : h; };
  cloth.middle = seen(course::middle(course));
  for (const guide::PlacedTrail& trail : plan.trails) {
    if (trail.sections.front().lesson >= before_lesson) continue;
    std::vector<cloth::Stitch> stitches;
    for (const trail::Worked& s : trail.trail.stitches) stitches.push_back({seen(s.up), seen(s.down)});
    cloth.parts[course.parts[static_cast<std::size_t>(trail.part)].name] = blocks_of(std::move(stitches));
  }
  return cloth;
}

int out(const Block& b, const std::string& side) { return side == "top" ? -b.y0 : side == "bottom" ? b.y1 : side == "left" ? -b.x0 : b.x1; }

std::vector<int> furthest(const std::vector<Block>& all, const std::vector<int>& among, const std::string& side) {
  int best = -(1 << 20);
  for (const int i : among) best = std::max(best, out(all[static_cast<std::size_t>(i)], side));
  std::vector<int> found;
  for (const int i : among)
    if (out(all[static_cast<std::size_t>(i)], side) == best) found.push_back(i);
  return found;
}

std::optional<int> only(const std::vector<int>& found) { return found.size() == 1 ? std::optional(found[0]) : std::nullopt; }

const std::map<std::string, std::string> outermost{{"topmost", "top"}, {"lowest", "bottom"}, {"leftmost", "left"}, {"rightmost", "right"}};
const std::map<std::string, std::string> ones{{"left-hand", "left"}, {"right-hand", "right"}, {"upper", "top"}, {"lower", "bottom"}};

/// "the topmost block", "the left-hand one of the topmost blocks"
std::optional<int> read_anchor(const std::vector<Block>& all, const std::string& words) {
  std::vector<int> every(all.size());
  for (std::size_t i = 0; i < all.size(); ++i) every[i] = static_cast<int>(i);
  std::smatch m;
  if (std::regex_match(words, m, std::regex("the (topmost|lowest|leftmost|rightmost) block")))
    return only(furthest(all, every, outermost.at(m[1])));
  if (std::regex_match(words, m,
                       std::regex("the (left-hand|right-hand|upper|lower) one of the (topmost|lowest|leftmost|rightmost) blocks")))
    return only(furthest(all, furthest(all, every, outermost.at(m[2])), ones.at(m[1])));
  return std::nullopt;
}

std::optional<int> read_ordinal(const std::string& word) {
  static const std::vector<std::string> said{"first",   "second", "third", "fourth", "fifth",    "sixth",
                                             "seventh", "eighth", "ninth", "tenth",  "eleventh", "twelfth"};
  const auto found = std::find(said.begin(), said.end(), word);
  if (found != said.end()) return static_cast<int>(found - said.begin()) + 1;
  return std::isdigit(static_cast<unsigned char>(word[0])) ? std::optional(std::stoi(word)) : std::nullopt;
}

/// Do the blocks lie clockwise as they are listed? Twice the area that their middles enclose; y grows down.
bool clockwise(const std::vector<Block>& all) {
  long area = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Block &a = all[i], &b = all[(i + 1) % all.size()];
    area += static_cast<long>(a.x0 + a.x1) * (b.y0 + b.y1) - static_cast<long>(b.x0 + b.x1) * (a.y0 + a.y1);
  }
  return area > 0;
}

std::optional<int> read_block(const std::vector<Block>& all, const std::string& words) {
  std::smatch m;
  if (!std::regex_match(words, m, std::regex("the (\\w+) block (clockwise|anticlockwise) after (.*)"))) return read_anchor(all, words);
  const auto nth = read_ordinal(m[1]), from = read_anchor(all, m[3]);
  if (!nth || !from) return std::nullopt;
  const int n = static_cast<int>(all.size()), step = (m[2] == "clockwise") == clockwise(all) ? *nth : -*nth;
  return ((*from + step) % n + n) % n;
}

/// The hole of "the upper end of the left-hand stitch of BLOCK".
std::optional<Hole> read_spot(const Block& block, const std::string& end, const std::string& stitch) {
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

std::optional<Hole> read_landmark(const Cloth& cloth, const std::string& words) {
  if (words == "the crossing of the two folds in the middle of the cloth") return cloth.middle;
  std::smatch m;
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

std::optional<Hole> read_legs(Hole at, const std::string& words) {
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
std::optional<Hole> follow(const Cloth& cloth, const std::string& words) {
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

struct Seen {
  int followed = 0, by_block = 0, round = 0;
};

void follow_all(const std::string& text, Seen& seen) {
  const course::Course course = course_from(text);
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  for (const say::Hand hand : {say::Hand::right, say::Hand::left}) {
    const bool left = hand == say::Hand::left;
    const say::Voice voice{english(), hand, course};
    for (const guide::CountIn& count_in : plan->count_ins) {
      const Cloth cloth = cloth_of(course, *plan, count_in.lesson, left);
      const Hole hole = left ? Hole{-count_in.hole.x, count_in.hole.y} : count_in.hole;
      std::vector<std::string> all;
      if (count_in.count.landmark.kind != guide::LandmarkKind::cloth_edges) all.push_back(say::count_in(voice, count_in));
      std::vector<guide::Count> counts = count_in.others;
      if (count_in.proof) counts.push_back(*count_in.proof);
      for (const guide::Count& count : counts)
        if (count.landmark.kind != guide::LandmarkKind::cloth_edges) all.push_back(say::proof(voice, count));
      for (const std::string& words : all) {
        CAPTURE(words);
        CAPTURE(left);
        const auto ends = follow(cloth, words);
        REQUIRE(ends);
        CHECK(*ends == hole);
        ++seen.followed;
        seen.by_block += words.find("block") != std::string::npos;
        seen.round += words.find("clockwise") != std::string::npos;
      }
    }
  }
}

}  // namespace

TEST_CASE("the words of every start, read by themselves and followed on the cloth, end where the needle comes up") {
  std::mt19937 random(1907);
  const auto any = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  Seen seen;
  for (int round = 0; round < 60; ++round) {
    std::string text = "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n", lessons;
    for (int i = 0, rings = any(2, 4); i < rings; ++i) {
      const int n = 2 * any(1, 4);
      const std::string name = std::string("ring") + static_cast<char>('a' + i);
      const std::string path = any(0, 3) == 0
                                   ? "first = \"upright\"\npath = \"E 3, SE 1, S 2, SW 1, W 2, NW 1, N 2\""
                                   : "first = \"across\"\npath = \"NE " + std::to_string(n) + ", SE " + std::to_string(n - 1) + ", SW " +
                                         std::to_string(n - 1) + (n > 2 ? ", NW " + std::to_string(n - 2) : std::string()) + "\"";
      text += part_text(name, "blocks",
                        "[" + std::to_string(80 * (i % 2) + any(-8, 8)) + ", " + std::to_string(80 * (i / 2) + any(-8, 8)) + "]", path);
      lessons += "[[lesson]]\nwork = [\"" + name + "\"]\n";
    }
    CAPTURE(text);
    follow_all(text + lessons, seen);
  }
  CHECK(seen.followed > 500);
  CHECK(seen.by_block > 300);
  CHECK(seen.round > 30);
}

TEST_CASE("the reader sees words that are wrong") {
  Cloth cloth;
  cloth.middle = {5, 5};
  CHECK(follow(cloth, "From the crossing of the two folds in the middle of the cloth count 2 threads up. The needle comes up there: 1.") ==
        Hole{5, 3});
  CHECK(follow(cloth,
               "From the crossing of the two folds in the middle of the cloth count 1 thread to the left, then 2 threads down. The needle "
               "comes up there: 1.") == Hole{4, 7});
  CHECK(
      !follow(cloth, "From the crossing of the two folds in the middle of the cloth count 2 threads over. The needle comes up there: 1."));
  CHECK(!follow(cloth,
                "From the upper end of the top stitch of the topmost block of the ring count 2 threads up. The needle comes up there: 1."));
}
