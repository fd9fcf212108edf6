// Designs of blocks for tests, laid by hand or by the path of a course file.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "cutwork/cutting.h"
#include "stitch/kind.h"

namespace designs {

/// A block of `width` threads over `over`, its upper left hole at (x, y).
inline cutwork::Bundle block(int x, int y, bool upright, int width = 4, int over = 4, int part = 0) {
  cutwork::Bundle bundle{{}, part};
  for (int i = 0; i <= width; ++i)
    bundle.stitches.push_back(upright ? cloth::Stitch{{x + i, y}, {x + i, y + over}} : cloth::Stitch{{x, y + i}, {x + over, y + i}});
  return bundle;
}

inline std::vector<cutwork::Bundle> path(const std::string& text, const std::string& first, cloth::Hole start = {0, 0}, int part = 0) {
  const auto outcome = stitch::find_kind("blocks")->build({{"start", start}, {"first", first}, {"path", text}, {"cut_side", std::string("down")}});
  REQUIRE(outcome.faults.empty());
  std::vector<cutwork::Bundle> bundles;
  for (const auto& feature : outcome.work.features)
    if (feature.shape == stitch::Shape::bundle) bundles.push_back({feature.stitches, part});
  return bundles;
}

/// A closed staircase diamond of n blocks a side, n even.
inline std::vector<cutwork::Bundle> diamond(int n, cloth::Hole start = {0, 0}) {
  const auto side = [](const char* way, int blocks) { return std::string(way) + " " + std::to_string(blocks); };
  std::string text = side("NE", n) + ", " + side("SE", n - 1) + ", " + side("SW", n - 1);
  if (n > 2) text += ", " + side("NW", n - 2);
  return path(text, "across", start);
}

inline cutwork::Request request(std::vector<cutwork::Bundle> blocks, int leave = 0) {
  cutwork::Request asked;
  asked.blocks = std::move(blocks);
  asked.leave = leave;
  return asked;
}

inline bool has(const cutwork::Cutting& cutting, cutwork::Trouble what) {
  for (const auto& problem : cutting.problems)
    if (problem.what == what) return true;
  return false;
}

/// A request in short, to lay it again by hand.
inline std::string text(const cutwork::Request& asked) {
  std::string text = "leave " + std::to_string(asked.leave) + ":";
  const auto hole = [](cloth::Hole h) { return std::to_string(h.x) + "," + std::to_string(h.y); };
  for (const auto& bundle : asked.blocks)
    text += " " + hole(bundle.stitches[0].a) + (bundle.stitches[0].a.x == bundle.stitches[0].b.x ? "u" : "a");
  for (const auto& s : asked.surface) text += " " + hole(s.stitch.a) + "-" + hole(s.stitch.b);
  return text;
}

/// Problems by number, for messages.
inline std::string told(const cutwork::Cutting& cutting) {
  std::string text;
  for (const auto& p : cutting.problems)
    text += std::to_string(static_cast<int>(p.what)) + "@" + std::to_string(p.at.x) + "," + std::to_string(p.at.y) + " ";
  return text;
}

}  // namespace designs
