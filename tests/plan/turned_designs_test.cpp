// A turned or mirrored design, written as a teacher writes it, is the turned or mirrored plan: random parts of every kind but the edge (see
// edge_test.cpp: it is gone the other way in a mirror), all eight turns, needle point by needle point, cut by cut.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <functional>
#include <random>
#include <set>

#include "cloth/turn.h"
#include "cloth/way.h"
#include "course_text.h"
#include "plan/plan.h"

namespace {

using cloth::Hole;
using cloth::Turn;
using Legs = std::vector<std::pair<cloth::Way, int>>;

cloth::Way apply(Turn turn, cloth::Way way) { return *cloth::way_between({0, 0}, cloth::apply(turn, cloth::step(way))); }
std::string text(Hole h) { return fmt::format("[{}, {}]", h.x, h.y); }

std::string text(Turn turn, const Legs& legs) {
  std::string path;
  for (const auto& [way, n] : legs)
    path += (path.empty() ? "" : ", ") + std::string(cloth::name(apply(turn, way))) + " " + std::to_string(n);
  return '"' + path + '"';
}

/// The upper left hole of a square of so many threads whose upper left hole was `at`.
Hole corner(Turn turn, Hole at, int side) {
  const Hole a = cloth::apply(turn, at), b = cloth::apply(turn, at + Hole{side, side});
  return {std::min(a.x, b.x), std::min(a.y, b.y)};
}

std::string side(Turn turn, bool right) { return right != turn.mirror ? "\"right\"" : "\"left\""; }
std::string grain(Turn turn, bool upright) { return upright != (turn.quarters % 2 == 1) ? "\"upright\"" : "\"across\""; }

class Random {
 public:
  explicit Random(unsigned seed) : engine_(seed) {}
  int number(int least, int most) { return std::uniform_int_distribution<int>(least, most)(engine_); }
  bool coin() { return number(0, 1) == 1; }
  Hole hole() { return {number(-30, 30), number(-30, 30)}; }

 private:
  std::mt19937 engine_;
};

using Written = std::function<std::string(Turn)>;
std::string part(const std::string& kind, const std::string& keys) {
  return "[[part]]\nname = \"it\"\nkind = \"" + kind + "\"\nthread = \"heavy\"\n" + keys;
}

Written blocks(Random& random) {
  using enum cloth::Way;
  const int n = 2 * random.number(1, 4);
  const Legs ring = n > 2 ? Legs{{NE, n}, {SE, n - 1}, {SW, n - 1}, {NW, n - 2}} : Legs{{NE, 2}, {SE, 1}, {SW, 1}};
  const bool closed = random.coin();
  const Legs legs = closed ? ring : Legs{{NE, random.number(2, 6)}, {SE, random.number(1, 6)}, {NE, random.number(1, 4)}};
  const Hole at = random.hole();
  const bool down = random.coin();  // of an open row on the right of the way: the other side in a mirror
  return [=](Turn turn) {
    return part("blocks", fmt::format("start = {}\nfirst = {}\npath = {}\ncut_side = \"{}\"\n", text(corner(turn, at, 4)),
                                      grain(turn, false), text(turn, legs), down != (!closed && turn.mirror) ? "down" : "up"));
  };
}

Written cable(Random& random) {
  using enum cloth::Way;
  const int slant = 2 * random.number(3, 12), flat = 2 * random.number(3, 12), tall = 2 * random.number(3, 12);
  const Legs octagon{{E, flat}, {SE, slant}, {S, tall}, {SW, slant}, {W, flat}, {NW, slant}, {N, tall}, {NE, slant}};
  const Legs open{{E, flat}, {SE, slant}, {E, tall}, {NE, slant}, {N, flat}};
  const Legs legs = random.coin() ? octagon : open;
  const bool right = random.coin();
  const int rows = random.number(2, 3);
  const Hole at = random.hole();
  const std::string back = random.coin() ? "end" : "start";
  return [=](Turn turn) {
    return part("cable", fmt::format("start = {}\npath = {}\nrows = {}\nrows_lie = {}\nstep_back = \"{}\"\n", text(cloth::apply(turn, at)),
                                     text(turn, legs), rows, side(turn, right), back));
  };
}

Written satin(Random& random) {
  std::string over, step;
  for (int n = random.number(1, 12); n > 0; --n) {
    over += (over.empty() ? "" : ", ") + std::to_string(random.number(1, 9));
    step += (step.empty() ? "" : ", ") + std::to_string(random.number(-2, 2));
  }
  const Hole at = random.hole();
  const bool up = random.coin();
  return [=](Turn turn) {
    return part("satin", fmt::format("start = {}\nalong = \"{}\"\ntoward = \"{}\"\nover = [{}]\nstep = [{}]\n",
                                     text(cloth::apply(turn, at)), cloth::name(apply(turn, cloth::Way::E)),
                                     cloth::name(apply(turn, up ? cloth::Way::N : cloth::Way::S)), over, step));
  };
}

Written star(Random& random) {
  const int reach = 2 * random.number(2, 8), points = 4 * random.number(1, 2);
  const Hole at = random.hole();
  return [=](Turn turn) {
    return part("star", fmt::format("centre = {}\nreach = {}\npoints = {}\n", text(cloth::apply(turn, at)), reach, points));
  };
}

Written eyelet(Random& random) {
  const int size = 2 * random.number(2, 5);
  std::set<Hole> centres;
  for (int n = random.number(1, 6); n > 0; --n) centres.insert({(size + 1) * random.number(-2, 2), (size + 1) * random.number(-2, 2)});
  const std::string outline = random.coin() ? "square" : "star";
  return [=](Turn turn) {
    std::string all;
    for (const Hole h : centres) all += (all.empty() ? "" : ", ") + text(cloth::apply(turn, h));
    return part("eyelet", fmt::format("centres = [{}]\nsize = {}\noutline = \"{}\"\n", all, size, outline));
  };
}

Written four_sided(Random& random) {
  using enum cloth::Way;
  const int over = random.number(2, 4), a = over * random.number(3, 6), b = over * random.number(3, 6);
  const Legs legs = random.coin() ? Legs{{E, a}, {S, b}, {W, a}, {N, b}} : Legs{{E, a}, {S, b}, {E, a}};
  const bool right = random.coin();
  const Hole at = random.hole();
  return [=](Turn turn) {
    return part("four-sided", fmt::format("start = {}\npath = {}\nover = {}\nsquares_lie = {}\n", text(cloth::apply(turn, at)),
                                          text(turn, legs), over, side(turn, right)));
  };
}

Written backstitch(Random& random) {
  using enum cloth::Way;
  const int over = random.number(1, 4), a = over * random.number(2, 6), b = over * random.number(2, 6);
  const Legs legs = random.coin() ? Legs{{E, a}, {SE, b}, {W, a}, {NW, b}} : Legs{{E, a}, {NE, b}, {N, a}};
  const Hole at = random.hole();
  const std::string worked = random.coin() ? "back" : "double running";
  return [=](Turn turn) {
    return part("backstitch", fmt::format("start = {}\npath = {}\nover = {}\nworked = \"{}\"\n", text(cloth::apply(turn, at)),
                                          text(turn, legs), over, worked));
  };
}

plan::Plan planned(const std::string& written) {
  auto plan = plan::make_plan(course_of(written));
  REQUIRE(plan);
  return std::move(*plan);
}

/// Every needle point in order, steps back and spare stitches marked.
std::string points(const plan::Plan& plan, Turn turn) {
  std::string all;
  for (const guide::PlacedTrail& trail : plan.trails) {
    for (const trail::Worked& w : trail.trail.stitches)
      all += text(cloth::apply(turn, w.up)) + text(cloth::apply(turn, w.down)) + (w.backward ? "b" : "") + (w.over ? "o" : "");
    all += fmt::format("; {} ends, {:.6f} {:.6f}\n", trail.trail.ends.size(), trail.trail.front_threads, trail.trail.back_threads);
  }
  return all;
}

/// The same without order, for what has more starts than `begin_at` settles: the second pass of a double cable.
std::multiset<std::string> stitches(const plan::Plan& plan, Turn turn) {
  std::multiset<std::string> all;
  for (const guide::PlacedTrail& trail : plan.trails)
    for (const trail::Worked& w : trail.trail.stitches)
      all.insert(fmt::format("{} {}{}{}{}", trail.pass, text(cloth::apply(turn, w.up)), text(cloth::apply(turn, w.down)),
                             w.backward ? "b" : "", w.over ? "o" : ""));
  return all;
}

/// The threads that are seen, whichever way each was worked.
std::multiset<cloth::Stitch> seen(const plan::Plan& plan, Turn turn) {
  std::multiset<cloth::Stitch> all;
  for (const guide::PlacedTrail& trail : plan.trails)
    for (const trail::Worked& w : trail.trail.stitches)
      all.insert(cloth::Stitch{cloth::apply(turn, w.up), cloth::apply(turn, w.down)}.normal());
  return all;
}

/// What no turn changes, for pieces that are their own images: which of their ways is gone is as good as another.
std::string lengths(const plan::Plan& plan) {
  const trail::Trail& trail = plan.trails.at(0).trail;
  return fmt::format("{} stitches, {} threads, {:.6f} {:.6f}", trail.stitches.size(), trail.ends.size(), trail.front_threads,
                     trail.back_threads);
}

/// Each snip by the two holes beside its thread, whichever way the cloth lies.
std::multiset<std::string> snips(const plan::Plan& plan, Turn turn) {
  std::multiset<std::string> all;
  for (const cutwork::Cut& cut : plan.cuttings.at(0).cutting.cuts) {
    const bool v = cut.axis == cutwork::Axis::v;
    Hole a = v ? Hole{cut.thread, cut.at.y} : Hole{cut.at.x, cut.thread}, b = v ? a + Hole{1, 0} : a + Hole{0, 1};
    a = cloth::apply(turn, a), b = cloth::apply(turn, b);
    all.insert(text(std::min(a, b)) + text(std::max(a, b)));
  }
  return all;
}

}  // namespace

TEST_CASE("a turned or mirrored design is the turned or mirrored plan, point by point") {
  const std::pair<const char*, Written (*)(Random&)> kinds[] = {
      {"blocks", blocks}, {"cable", cable},           {"satin", satin},          {"star", star},
      {"eyelet", eyelet}, {"four-sided", four_sided}, {"backstitch", backstitch}};
  Random random(1911);
  for (const auto& [name, kind] : kinds)
    for (int i = 0; i < 25; ++i) {
      const Written written = kind(random);
      CAPTURE(written({}));
      const Hole begin = planned(written({})).trails.at(0).trail.stitches.at(0).up;  // else the easiest count says where
      const auto begun = [&](Turn turn) { return planned(written(turn) + "begin_at = " + text(cloth::apply(turn, begin)) + "\n"); };
      const plan::Plan here = begun({});
      const bool own_image = std::string(name) == "star" || std::string(name) == "eyelet";
      for (const bool mirror : {false, true})
        for (const Turn quarters : cloth::quarter_turns) {
          const Turn turn{quarters.quarters, mirror};
          const plan::Plan there = begun(turn);
          CHECK(seen(there, {}) == seen(here, turn));
          if (own_image)
            CHECK(lengths(there) == lengths(here));
          else if (here.trails.size() > 1)
            CHECK(stitches(there, {}) == stitches(here, turn));
          else
            CHECK(points(there, {}) == points(here, turn));
        }
    }
}

TEST_CASE("a turned or mirrored cutwork: the same snips, openings, bars, fillings and thread") {
  using enum cloth::Way;
  Random random(5);
  for (int i = 0; i < 12; ++i) {
    const int n = 2 * random.number(2, 4);
    const Legs legs{{NE, n}, {SE, n - 1}, {SW, n - 1}, {NW, n - 2}};
    const Hole at = random.hole();
    const std::string keys = random.coin() ? "bars = \"wrapped\"\n" : "fillings = [{ kind = \"dove's eye\" }]\n";
    const auto written = [&](Turn turn) {
      return part("blocks",
                  fmt::format("start = {}\nfirst = {}\npath = {}\n", text(corner(turn, at, 4)), grain(turn, false), text(turn, legs))) +
             "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"it\"]\n" + keys;
    };
    const plan::Plan plain = planned(written({}));
    CHECK(snips(plain, {}).size() == static_cast<std::size_t>(16 * n - 16));
    for (const bool mirror : {false, true})
      for (const Turn quarters : cloth::quarter_turns) {
        const Turn turn{quarters.quarters, mirror};
        const plan::Plan there = planned(written(turn));
        CHECK(snips(there, {}) == snips(plain, turn));
        CHECK(there.cuttings[0].cutting.openings.size() == plain.cuttings[0].cutting.openings.size());
        REQUIRE(there.routes.size() == plain.routes.size());
        for (std::size_t r = 0; r < there.routes.size(); ++r) {
          CHECK(there.routes[r].items.size() == plain.routes[r].items.size());
          CHECK(there.routes[r].starts.size() == plain.routes[r].starts.size());
        }
      }
  }
}
