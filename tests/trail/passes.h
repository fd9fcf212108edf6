// Passes for the tests of this folder: of parts made of a few words, turned and mirrored, and what is counted on a round.
#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "cloth/turn.h"
#include "trail/trail.h"

namespace passes {

using stitch::Pass;
using trail::Round;
using trail::Worked;

inline stitch::Outcome build(std::string_view kind, stitch::Values values) {
  const stitch::Kind* found = stitch::find_kind(kind);
  REQUIRE(found != nullptr);
  for (const stitch::KeySpec& key : found->keys)
    if (key.fallback) values.try_emplace(std::string(key.name), *key.fallback);
  return found->build(values);
}

inline stitch::Outcome build_cable(const std::string& path, int rows = 2, const std::string& lie = "right") {
  return build("cable", {{"start", cloth::Hole{0, 0}}, {"path", path}, {"rows", rows}, {"rows_lie", lie}});
}
inline stitch::Outcome build_blocks(const std::string& path, const std::string& first = "across") {
  return build("blocks", {{"start", cloth::Hole{0, 0}}, {"path", path}, {"first", first}});
}

/// The first pass of a part that has no fault.
inline Pass pass_of(stitch::Outcome outcome, std::size_t number = 0) {
  for (const stitch::KeyFault& fault : outcome.faults) MESSAGE(fault.found << "; " << fault.expected);
  REQUIRE(outcome.faults.empty());
  REQUIRE(number < outcome.work.passes.size());
  return std::move(outcome.work.passes[number]);
}
inline Pass cable(const std::string& path, int rows = 2, const std::string& lie = "right", std::size_t pass = 0) {
  return pass_of(build_cable(path, rows, lie), pass);
}
inline Pass blocks(const std::string& path, const std::string& first = "across") { return pass_of(build_blocks(path, first)); }

inline Pass apply(cloth::Turn turn, Pass pass) {
  for (stitch::Run& run : pass.runs)
    for (cloth::Stitch& s : run.stitches) s = {cloth::apply(turn, s.a), cloth::apply(turn, s.b)};
  return pass;
}
inline std::vector<cloth::Turn> all_turns() {
  std::vector<cloth::Turn> turns;
  for (const cloth::Turn turn : cloth::quarter_turns)
    for (const bool mirror : {false, true}) turns.push_back({turn.quarters, mirror});
  return turns;
}

inline int steps_back(const std::vector<Worked>& stitches) {
  return static_cast<int>(std::count_if(stitches.begin(), stitches.end(), [](const Worked& w) { return w.backward; }));
}

/// Back thread from stitch to stitch, round the circle where it is closed.
inline double back_round(const Round& round) {
  double back = 0;
  const auto& s = round.stitches;
  for (std::size_t k = round.closed ? 0 : 1; k < s.size(); ++k) back += cloth::distance(s[(k + s.size() - 1) % s.size()].down, s[k].up);
  return back;
}

inline std::vector<cloth::Hole> points(const std::vector<Worked>& stitches) {
  std::vector<cloth::Hole> all;
  for (const Worked& w : stitches) all.insert(all.end(), {w.up, w.down});
  return all;
}

/// Needle points as text: (0,0) (2,2) ...
inline std::string text(const std::vector<cloth::Hole>& holes) {
  std::string all;
  for (const cloth::Hole h : holes) all += (all.empty() ? "(" : " (") + std::to_string(h.x) + "," + std::to_string(h.y) + ")";
  return all;
}
inline std::string first_points(const Round& round, std::size_t count) {
  auto all = points(round.stitches);
  all.resize(std::min(count, all.size()));
  return text(all);
}

/// With a length that never runs out.
inline trail::Trail endless(const Round& round, int start = -1, const trail::Rules& rules = {}) {
  const int begin = start >= 0 ? start : round.starts.empty() ? 0 : round.starts.front();
  return trail::make_trail(round, begin, rules, {1e9, 0});
}

}  // namespace passes
