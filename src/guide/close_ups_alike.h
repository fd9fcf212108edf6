// When two places of the work are alike: their needle points agree up to quarter turns of the cloth. A mirrored place is another one.
#pragma once

#include <unordered_map>
#include <vector>

#include "guide/close_ups_needle.h"

namespace guide {

/// Equal for two stretches exactly when they are alike: same needle points in the same order, up and down, after some quarter turns and a
/// shift; the same stitches worked backwards; the same row each (turn about), or a new block begun at the same stitch (in turn).
using Signature = std::vector<int>;
Signature signature(const Needle& needle, const Span& stretch);

/// Numbers kinds of places from 0 in the order in which they are first met.
class Kinds {
 public:
  int of(const Signature& signature) { return numbers_.try_emplace(signature, static_cast<int>(numbers_.size())).first->second; }
  /// -1: never met.
  int find(const Signature& signature) const;

 private:
  struct Hash {
    std::size_t operator()(const Signature& signature) const noexcept;
  };
  std::unordered_map<Signature, int, Hash> numbers_;
};

}  // namespace guide
