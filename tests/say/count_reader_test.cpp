// A little reader of its own: it reads a count-in's English words, finds the landmark among the stitches that stand on the cloth, counts as
// it is told, and must end in the hole where the needle comes up. It knows nothing of landmarks but the words; a mirrored cloth, read
// with the left hand's words, must lead to the mirrored hole.
#include <doctest/doctest.h>

#include <random>

#include "assets/assets.h"
#include "count_reader.h"
#include "course_text.h"
#include "norwegian_to_english.h"
#include "plan/plan.h"
#include "say/say.h"

namespace {

using namespace reader;

const words::Phrases& phrases(const std::string& language) {
  static std::map<std::string, words::Phrases> tables;
  auto found = tables.find(language);
  if (found == tables.end()) {
    auto table = words::Phrases::read(assets::table("phrases/" + language + ".toml"), language);
    REQUIRE(table);
    found = tables.emplace(language, std::move(*table)).first;
  }
  return found->second;
}

/// Petals as they are worked, one after another: eight of as many stitches.
std::vector<Block> petals_of(const std::vector<cloth::Stitch>& stitches) {
  std::vector<Block> petals(8);
  for (std::size_t k = 0; k < stitches.size(); ++k) petals[k * 8 / stitches.size()].add(stitches[k]);
  return petals;
}

/// Holes where stitches of two ways meet, each a piece of its own.
std::vector<Block> corners_of(const std::vector<cloth::Stitch>& stitches) {
  std::map<std::pair<int, int>, std::set<std::pair<int, int>>> ways;
  for (const cloth::Stitch& s : stitches) {
    const auto sign = [](int d) { return (d > 0) - (d < 0); };
    std::pair<int, int> way{sign(s.b.x - s.a.x), sign(s.b.y - s.a.y)};
    if (way < std::pair{0, 0}) way = {-way.first, -way.second};
    for (const Hole h : {s.a, s.b}) ways[{h.x, h.y}].insert(way);
  }
  std::vector<Block> corners;
  for (const auto& [hole, met] : ways)
    if (met.size() > 1) corners.emplace_back().add({{hole.first, hole.second}, {hole.first, hole.second}});
  return corners;
}

Cloth cloth_of(const course::Course& course, const plan::Plan& plan, int before_lesson, bool mirror) {
  Cloth cloth;
  const auto seen = [&](Hole h) { return mirror ? Hole{-h.x, h.y} : h; };
  cloth.middle = seen(course::middle(course));
  for (const guide::PlacedTrail& trail : plan.trails) {
    if (trail.sections.front().lesson >= before_lesson) continue;
    std::vector<cloth::Stitch> stitches;
    for (const trail::Worked& s : trail.trail.stitches) stitches.push_back({seen(s.up), seen(s.down)});
    const course::Part& part = course.parts[static_cast<std::size_t>(trail.part)];
    if (part.kind == "backstitch") cloth.corners[part.name] = corners_of(stitches);
    else cloth.parts[part.name] = part.kind == "star" ? petals_of(stitches) : blocks_of(std::move(stitches));
  }
  return cloth;
}

struct Seen {
  int followed = 0, by_block = 0, round = 0, by_petal = 0, by_corner = 0;
};

void follow_all(const std::string& text, Seen& seen, const std::string& language) {
  const course::Course course = course_from(text);
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  for (const say::Hand hand : {say::Hand::right, say::Hand::left}) {
    const bool left = hand == say::Hand::left;
    const say::Voice voice{phrases(language), hand, course};
    for (const guide::CountIn& count_in : plan->count_ins) {
      const Cloth cloth = cloth_of(course, *plan, count_in.lesson, left);
      const Hole hole = left ? Hole{-count_in.hole.x, count_in.hole.y} : count_in.hole;
      std::vector<std::string> all;
      if (count_in.count.landmark.kind != guide::LandmarkKind::cloth_edges) all.push_back(say::count_in(voice, count_in));
      std::vector<guide::Count> counts = count_in.others;
      if (count_in.proof) counts.push_back(*count_in.proof);
      for (const guide::Count& count : counts)
        if (count.landmark.kind != guide::LandmarkKind::cloth_edges) all.push_back(say::proof(voice, count));
      for (const std::string& said : all) {
        const std::string words = language == "nb" ? in_english(said) : said;
        CAPTURE(said);
        CAPTURE(words);
        CAPTURE(left);
        const auto ends = follow(cloth, words);
        REQUIRE(ends);
        CHECK(*ends == hole);
        ++seen.followed;
        seen.by_block += words.find("block") != std::string::npos;
        seen.round += words.find("clockwise") != std::string::npos;
        seen.by_petal += words.find("petal") != std::string::npos;
        seen.by_corner += words.find("corner") != std::string::npos;
      }
    }
  }
}

}  // namespace

TEST_CASE("the words of every start, read by themselves and followed on the cloth, end where the needle comes up") {
  std::mt19937 random(1907);
  const auto any = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  std::map<std::string, Seen> by;
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
    for (const char* language : {"en", "nb"}) follow_all(text + lessons, by[language], language);
  }
  for (const auto& [language, seen] : by) {
    CAPTURE(language);
    CHECK(seen.followed > 500);
    CHECK(seen.by_block > 300);
    CHECK(seen.round > 30);
  }
}

TEST_CASE("starts counted from petals of a star and from the corners of a line, in both languages") {
  std::mt19937 random(1911);
  const auto any = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  const auto at = [&](int x, int y) { return "[" + std::to_string(x + any(-6, 6)) + ", " + std::to_string(y + any(-6, 6)) + "]"; };
  std::map<std::string, Seen> by;
  for (int round = 0; round < 40; ++round) {
    const std::string wide = std::to_string(2 * any(10, 30)), high = std::to_string(2 * any(10, 30)), reach = std::to_string(2 * any(3, 6));
    std::string text = "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n";
    text += part_text("frame", "backstitch", at(0, 0), "path = \"E " + wide + ", S " + high + ", W " + wide + ", N " + high + "\"");
    text += "[[part]]\nname = \"star\"\nkind = \"star\"\nthread = \"heavy\"\ncentre = " + at(100, 20) + "\nreach = " + reach + "\n";
    text += part_text("ring", "blocks", at(any(20, 110), any(60, 90)), "first = \"across\"\npath = \"NE 2, SE 1, SW 1\"");
    text += part_text("late", "blocks", at(any(20, 110), any(-60, -40)), "first = \"across\"\npath = \"NE 2, SE 1, SW 1\"");
    for (const char* part : {"frame", "star", "ring", "late"}) text += std::string("[[lesson]]\nwork = [\"") + part + "\"]\n";
    CAPTURE(text);
    for (const char* language : {"en", "nb"}) follow_all(text, by[language], language);
  }
  for (const auto& [language, seen] : by) {
    CAPTURE(language);
    CHECK(seen.followed > 300);
    CHECK(seen.by_petal > 60);
    CHECK(seen.by_corner > 60);
  }
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
