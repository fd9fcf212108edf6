// Satin, stars, eyelets, four-sided stitch and backstitch against published figures and common practice, and their faults.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "cloth/turn.h"
#include "parts.h"

namespace {

using cloth::Hole;
using Holes = std::vector<Hole>;
using Wholes = std::vector<int>;

stitch::Outcome satin(Hole start, const std::string& along, const std::string& toward, Wholes over, Wholes step = {0}) {
  return parts::build("satin", {{"start", start}, {"along", along}, {"toward", toward}, {"over", std::move(over)}, {"step", std::move(step)}});
}
stitch::Outcome star(int reach, int points) {
  return parts::build("star", {{"centre", Hole{0, 0}}, {"reach", reach}, {"points", points}});
}
stitch::Outcome eyelet(Holes centres, int size, const std::string& outline = "square", stitch::Value legs = std::string("all")) {
  return parts::build("eyelet", {{"centres", std::move(centres)}, {"size", size}, {"outline", outline}, {"legs", std::move(legs)}});
}
stitch::Outcome four_sided(const std::string& path, int over = 2, const std::string& lie = "left") {
  return parts::build("four-sided", {{"start", Hole{0, 0}}, {"path", path}, {"over", over}, {"squares_lie", lie}});
}

int threads(const cloth::Stitch& s) { return std::max(std::abs(s.a.x - s.b.x), std::abs(s.a.y - s.b.y)); }

Holes points(const stitch::Work& work) {
  Holes all;
  for (const stitch::Run& run : work.passes.at(0).runs)
    for (const cloth::Stitch& s : run.stitches) all.insert(all.end(), {s.a, s.b});
  return all;
}

TEST_CASE("the sides of a published star come from satin profiles") {  // Archer 1911, pp. 191 ff.: 52 stitches, 32 over 4 and 20 over 8
  const Wholes profile{4, 4, 4, 4, 8, 8, 8, 8, 8, 4, 4, 4, 4};
  std::map<int, int> over;
  parts::StitchSet all;
  for (const auto& [start, along, toward] : {std::tuple(Hole{0, 0}, "E", "N"), {Hole{12, 0}, "S", "E"}, {Hole{12, 12}, "W", "S"}, {Hole{0, 12}, "N", "W"}})
    for (const cloth::Stitch& s : parts::work(satin(start, along, toward, profile)).stitches) {
      ++over[threads(s)];
      CHECK(all.insert(s.normal()).second);
    }
  CHECK(over == std::map<int, int>{{4, 32}, {8, 20}});
}

TEST_CASE("satin: each stitch begins so much further than the one before") {
  const stitch::Work work = parts::work(satin({3, 5}, "W", "S", {2, 3, 4}, {1, 0, -2}));
  CHECK(work.stitches == std::vector<cloth::Stitch>{{{3, 6}, {3, 8}}, {{2, 6}, {2, 9}}, {{1, 4}, {1, 8}}});
}

TEST_CASE("petals rise 2 3 4 5 6 and fall again") {  // common practice, no source
  for (const int points : {4, 8}) {
    const stitch::Work work = parts::work(star(10, points));
    CHECK(work.passes[0].runs.size() == static_cast<std::size_t>(points));
    for (const stitch::Run& run : work.passes[0].runs) {
      Wholes lengths;
      for (const cloth::Stitch& s : run.stitches) lengths.push_back(threads(s));
      CHECK(lengths == Wholes{2, 3, 4, 5, 6, 5, 4, 3, 2});
    }
    CHECK(parts::extent(work.stitches) == cloth::Box{-10, -10, 10, 10});
    CHECK(parts::normal_set(work.stitches).size() == work.stitches.size());
  }
}

TEST_CASE("a star looks alike turned and mirrored") {
  for (const int points : {4, 8})
    for (const int reach : {4, 6, 10, 14})
      for (const cloth::Turn turn : {cloth::Turn{1, false}, {2, false}, {0, true}, {1, true}}) {
        const stitch::Work work = parts::work(star(reach, points));
        parts::StitchSet turned;
        for (const cloth::Stitch& s : work.stitches) turned.insert(cloth::Stitch{cloth::apply(turn, s.a), cloth::apply(turn, s.b)}.normal());
        CHECK(turned == parts::normal_set(work.stitches));
      }
}

TEST_CASE("eyelets") {
  const auto front = [](const stitch::Work& work) {
    double sum = 0;
    for (const cloth::Stitch& s : work.stitches) sum += cloth::distance(s.a, s.b);
    return sum;
  };
  const stitch::Work algerian = parts::work(eyelet({{0, 0}}, 4));
  CHECK(algerian.stitches.size() == 16);
  CHECK(front(algerian) == doctest::Approx(8 + 16 * std::sqrt(2.0) / 2 + 8 * std::sqrt(5.0)).epsilon(1e-9));  // geometry: 37.20
  CHECK(std::abs(front(algerian) - 37.20) < 0.005);
  Wholes lengths;  // Dillmont 1886, fig. 166: 8 6 4 6 four times
  for (const cloth::Stitch& s : parts::work(eyelet({{0, 0}}, 16, "star", 16)).stitches) lengths.push_back(threads(s));
  CHECK(lengths == Wholes{8, 6, 4, 6, 8, 6, 4, 6, 8, 6, 4, 6, 8, 6, 4, 6});
  for (const int n : {2, 4, 6, 10}) CHECK(parts::work(eyelet({{0, 0}}, n)).stitches.size() == static_cast<std::size_t>(4 * n));  // geometry
  CHECK(parts::work(eyelet({{0, 0}}, 6, "square", 8)).stitches.size() == 8);
}

TEST_CASE("every leg goes down in the centre, or all come up there; shared ones once") {
  for (const bool down : {true, false}) {
    const stitch::Outcome made = parts::build(
        "eyelet", {{"centres", Holes{{0, 0}, {2, 0}}}, {"size", 4}, {"eyelet_needle", std::string(down ? "down" : "up")}});
    const stitch::Work work = parts::work(made);
    CHECK(work.stitches.size() == 31);  // the leg between the two centres belongs to both
    CHECK(parts::normal_set(work.stitches).size() == 31);
    const Holes centres{{0, 0}, {2, 0}};
    for (std::size_t e = 0; e < 2; ++e)
      for (const cloth::Stitch& s : work.passes[0].runs[e].stitches) CHECK((down ? s.b : s.a) == centres[e]);
  }
}

TEST_CASE("four-sided stitch, points 1 to 8") {  // common practice, no source
  const Holes all = points(parts::work(four_sided("E 4")));
  CHECK(Holes(all.begin(), all.begin() + 8) == Holes{{0, 0}, {0, -2}, {2, 0}, {0, 0}, {2, -2}, {0, -2}, {2, 0}, {2, -2}});
  CHECK(all.size() == 14);  // two squares, seven sides
}

TEST_CASE("rows of squares turn corners") {
  for (const std::string lie : {"left", "right"})
    for (const char* path : {"E 4", "E 6, S 4", "E 6, N 4", "E 6, N 4, W 8, N 4", "E 8, S 6, W 8, N 6", "S 2, E 2, S 2"}) {
      CAPTURE(path);
      const stitch::Work work = parts::work(four_sided(path, 2, lie));
      CHECK(parts::normal_set(work.stitches).size() == work.stitches.size());
      const Holes all = points(work);
      for (std::size_t i = 1; i + 1 < all.size(); i += 2) CHECK(all[i] != all[i + 1]);
      if (work.closed) CHECK(all.back() != all.front());
      const stitch::Work mirror = parts::work(four_sided(path, 2, lie));
      CHECK(points(mirror) == all);
    }
  CHECK(parts::work(four_sided("E 8, S 6, W 8, N 6")).stitches.size() == 3 * (14 + 4));           // squares outside: 2 (4 + 3) and 4 corners
  CHECK(parts::work(four_sided("E 8, S 6, W 8, N 6", 2, "right")).stitches.size() == 3 * (14 - 4));  // inside
}

TEST_CASE("a mirrored path with its squares on the other side is the mirrored row") {
  const std::pair<const char*, const char*> both[] = {{"E 6, S 4, E 4, N 8", "W 6, S 4, W 4, N 8"}, {"E 8, S 6, W 8, N 6", "W 8, S 6, E 8, N 6"}};
  for (const auto& [path, mirrored] : both) {
    Holes there = points(parts::work(four_sided(path, 2, "left")));
    for (Hole& hole : there) hole = cloth::apply({0, true}, hole);
    CHECK(parts::normal_set(parts::work(four_sided(path, 2, "left")).stitches).size() == parts::work(four_sided(mirrored, 2, "right")).stitches.size());
    if (!parts::work(four_sided(path)).closed) CHECK(points(parts::work(four_sided(mirrored, 2, "right"))) == there);
  }
}

TEST_CASE("backstitch goes down where the stitch before came up") {  // common practice, no source
  for (const char* path : {"E 8", "E 8, NE 4, N 2", "E 8, S 6, W 8, N 6"}) {
    const Holes all = points(parts::work(parts::build("backstitch", {{"start", Hole{0, 0}}, {"path", std::string(path)}})));
    for (std::size_t i = 3; i < all.size(); i += 2) CHECK(all[i] == all[i - 3]);
  }
}

TEST_CASE("double running: over and under in turn, and on the way back every gap filled") {  // common practice, no source
  const auto run = [](const char* path) {
    return parts::work(parts::build("backstitch", {{"start", Hole{0, 0}}, {"path", std::string(path)}, {"worked", std::string("double running")}}));
  };
  CHECK(points(run("E 6")) == Holes{{0, 0}, {2, 0}, {4, 0}, {6, 0}, {4, 0}, {2, 0}});
  CHECK(points(run("E 8")) == Holes{{0, 0}, {2, 0}, {4, 0}, {6, 0}, {8, 0}, {6, 0}, {4, 0}, {2, 0}});
  for (const char* path : {"E 2", "E 4", "E 8, S 6", "E 8, NE 4, N 2, W 6", "E 8, S 6, W 8, N 6", "E 6, S 4, W 6, N 4"}) {
    CAPTURE(path);
    const stitch::Work there_and_back = run(path);
    const auto back = parts::build("backstitch", {{"start", Hole{0, 0}}, {"path", std::string(path)}});
    CHECK(parts::normal_set(there_and_back.stitches) == parts::normal_set(back.work.stitches));
    const Holes all = points(there_and_back);
    parts::StitchSet front = parts::normal_set(there_and_back.stitches);
    for (std::size_t i = 1; i + 1 < all.size(); i += 2) {  // the back looks like the front: its threads lie behind stitches of the line
      CHECK(all[i] != all[i + 1]);
      CHECK(front.count(cloth::Stitch{all[i], all[i + 1]}.normal()) == 1);
    }
  }
}

TEST_CASE("values that do not fit are told at their own key") {
  const auto key = [](const stitch::Outcome& outcome) { return outcome.faults.empty() ? "" : outcome.faults[0].key; };
  CHECK(key(eyelet({{0, 0}}, 5)) == "size");
  CHECK(key(eyelet({{0, 0}}, 6, "square", 16)) == "legs");
  CHECK(key(eyelet({{0, 0}, {0, 0}}, 4)) == "centres");
  CHECK(eyelet({{0, 0}, {0, 0}}, 4).faults[0].item == 1);
  CHECK(key(star(9, 8)) == "reach");
  CHECK(key(star(10, 6)) == "points");
  CHECK(key(satin({0, 0}, "E", "W", {2})) == "toward");
  CHECK(key(satin({0, 0}, "E", "N", {2, 3, 4}, {0, 1})) == "step");
  CHECK(key(four_sided("E 5")) == "path");
  CHECK(key(four_sided("NE 4")) == "path");
  CHECK(key(four_sided("E 4, N 2, W 4")) == "path");  // no room for two corner squares
}

}  // namespace
