// Scattered pieces: the laws, and the least thread on the back against every order tried.
#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <set>

#include "passes.h"
#include "trail/pieces.h"

namespace {

using cloth::Hole;

stitch::Pass eyelets(std::vector<Hole> centres, int size, bool down) {
  return passes::pass_of(passes::build("eyelet", {{"centres", std::move(centres)}, {"size", size}, {"eyelet_needle", std::string(down ? "down" : "up")}}));
}

std::vector<Hole> scattered(std::mt19937& random, int many) {
  std::set<Hole> holes;
  std::uniform_int_distribution<int> at(0, 6);
  while (static_cast<int>(holes.size()) < many) holes.insert({5 * at(random), 5 * at(random)});
  return {holes.begin(), holes.end()};
}

double back_of(const trail::Round& round) {
  double sum = 0;
  for (std::size_t k = 1; k < round.stitches.size(); ++k) sum += cloth::distance(round.stitches[k - 1].down, round.stitches[k].up);
  return sum;
}

void check_laws(const stitch::Pass& pass, const trail::Round& round) {
  std::multiset<cloth::Stitch> wanted, worked;
  for (const stitch::Run& run : pass.runs)
    for (const cloth::Stitch& s : run.stitches) wanted.insert(s.normal());
  for (const trail::Worked& w : round.stitches) worked.insert(cloth::Stitch{w.up, w.down}.normal());
  CHECK(wanted == worked);
  for (std::size_t k = 1; k < round.stitches.size(); ++k) {
    const Hole from = round.stitches[k - 1].down, to = round.stitches[k].up;
    CHECK(from != to);
    for (const Hole centre : pass.keep_open) {
      const bool inside = centre != from && centre != to && cloth::distance(from, centre) + cloth::distance(centre, to) < cloth::distance(from, to) + 1e-9;
      CHECK_FALSE(inside);
    }
  }
}

TEST_CASE("few pieces: no order leaves less thread on the back") {
  std::mt19937 random(7);
  for (int round = 0; round < 12; ++round) {
    const stitch::Pass pass = eyelets(scattered(random, 2 + round % 4), 4, round % 2 == 0);
    const trail::Round planned = trail::plan_round(pass, {});
    check_laws(pass, planned);
    const trail::Clear clear({}, pass.keep_open);
    const trail::Pieces pieces(pass, clear);
    std::vector<int> order(pass.runs.size());
    std::iota(order.begin(), order.end(), 0);
    std::optional<trail::Cost> least;
    do {
      const trail::Cost cost = pieces.choose(order, std::nullopt, std::nullopt).cost;
      if (!least || cost < *least) least = cost;
    } while (std::next_permutation(order.begin(), order.end()));
    CHECK(least->broken == 0);
    if (least->crossing == 0) CHECK(back_of(planned) == doctest::Approx(static_cast<double>(least->thread) / 1e6).epsilon(1e-6));
  }
}

TEST_CASE("many pieces: laws, and never more thread than as listed") {
  std::mt19937 random(11);
  for (const int many : {9, 14, 25}) {
    const stitch::Pass pass = eyelets(scattered(random, many), 4, many % 2 == 0);
    const trail::Round planned = trail::plan_round(pass, {});
    check_laws(pass, planned);
    const trail::Clear clear({}, pass.keep_open);
    std::vector<int> listed(pass.runs.size());
    std::iota(listed.begin(), listed.end(), 0);
    CHECK(back_of(planned) <= static_cast<double>(trail::Pieces(pass, clear).choose(listed, std::nullopt, std::nullopt).cost.thread) / 1e6 + 1e-3);
  }
}

TEST_CASE("a star keeps the laws, and turned or mirrored takes as much thread") {
  const stitch::Pass pass = passes::pass_of(passes::build("star", {{"centre", Hole{0, 0}}, {"reach", 10}}));
  const trail::Round planned = trail::plan_round(pass, {});
  check_laws(pass, planned);
  for (const cloth::Turn turn : {cloth::Turn{1, false}, {0, true}, {3, true}})
    CHECK(back_of(trail::plan_round(passes::apply(turn, pass), {})) == doctest::Approx(back_of(planned)));
}

TEST_CASE("fixed and backward runs stay as they are listed") {
  for (const auto& [kind, path] : {std::pair("four-sided", "E 8, S 12, E 8"), {"backstitch", "E 8, S 12, NE 8"}}) {
    const stitch::Pass pass = passes::pass_of(passes::build(kind, {{"start", Hole{0, 0}}, {"path", std::string(path)}}));
    const trail::Round planned = trail::plan_round(pass, {});
    check_laws(pass, planned);
    std::size_t k = 0;
    for (const stitch::Run& run : pass.runs)
      for (const cloth::Stitch& s : run.stitches) {
        CHECK(planned.stitches[k].up == s.a);
        CHECK(planned.stitches[k++].down == s.b);
      }
  }
}

}  // namespace
