// Parts made of a few words, for the tests of this folder: every key that is not given has its default.
#pragma once

#include <doctest/doctest.h>

#include <set>
#include <string>

#include "stitch/kind.h"

namespace parts {

inline stitch::Outcome build(std::string_view kind, stitch::Values values) {
  const stitch::Kind* found = stitch::find_kind(kind);
  REQUIRE(found != nullptr);
  for (const stitch::KeySpec& key : found->keys)
    if (key.fallback) values.try_emplace(std::string(key.name), *key.fallback);
  return found->build(values);
}

inline stitch::Outcome blocks(cloth::Hole start, const std::string& path, const std::string& first = "upright") {
  return build("blocks", {{"start", start}, {"path", path}, {"first", first}});
}

inline stitch::Outcome cable(cloth::Hole start, const std::string& path, int rows = 2, const std::string& lie = "right") {
  return build("cable", {{"start", start}, {"path", path}, {"rows", rows}, {"rows_lie", lie}});
}

/// The work of a part that has no fault.
inline stitch::Work work(stitch::Outcome outcome) {
  for (const stitch::KeyFault& fault : outcome.faults)
    MESSAGE(fault.key << " at " << fault.offset << ": " << fault.found << "; " << fault.expected);
  REQUIRE(outcome.faults.empty());
  return std::move(outcome.work);
}

using StitchSet = std::set<cloth::Stitch>;
inline StitchSet normal_set(const std::vector<cloth::Stitch>& stitches) {
  StitchSet set;
  for (const cloth::Stitch& stitch : stitches) set.insert(stitch.normal());
  return set;
}

inline std::set<cloth::Hole> holes(const std::vector<cloth::Stitch>& stitches) {
  std::set<cloth::Hole> all;
  for (const cloth::Stitch& stitch : stitches) all.insert({stitch.a, stitch.b});
  return all;
}

inline cloth::Box extent(const std::vector<cloth::Stitch>& stitches) {
  const cloth::Hole first = stitches.at(0).a;
  cloth::Box box{first.x, first.y, first.x, first.y};
  for (const cloth::Hole& hole : holes(stitches)) box.grow(hole);
  return box;
}

}  // namespace parts
