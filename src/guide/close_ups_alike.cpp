#include "guide/close_ups_alike.h"

#include "cloth/turn.h"

namespace guide {
namespace {

/// What does not change when the cloth is turned.
int mark(const Needle& needle, const Span& stretch, int stitch) {
  const trail::Worked& w = needle.at(stitch);
  const bool other = needle.turn_about() ? w.run != 0 : stitch > stretch.first && needle.at(stitch - 1).run != w.run;
  return (w.backward ? 1 : 0) + (other ? 2 : 0);
}

Signature turned(const Needle& needle, const Span& stretch, cloth::Turn turn) {
  Signature numbers{needle.turn_about() ? 1 : 0};
  numbers.reserve(1 + 5 * static_cast<std::size_t>(stretch.count()));
  const cloth::Hole origin = needle.at(stretch.first).up;
  for (int k = stretch.first; k <= stretch.last; ++k) {
    for (const cloth::Hole hole : {needle.at(k).up, needle.at(k).down}) {
      const cloth::Hole at = cloth::apply(turn, hole - origin);
      numbers.push_back(at.x);
      numbers.push_back(at.y);
    }
    numbers.push_back(mark(needle, stretch, k));
  }
  return numbers;
}

}  // namespace

Signature signature(const Needle& needle, const Span& stretch) {
  Signature least = turned(needle, stretch, cloth::quarter_turns[0]);
  for (std::size_t i = 1; i < cloth::quarter_turns.size(); ++i) least = std::min(least, turned(needle, stretch, cloth::quarter_turns[i]));
  return least;
}

int Kinds::find(const Signature& signature) const {
  const auto found = numbers_.find(signature);
  return found == numbers_.end() ? -1 : found->second;
}

std::size_t Kinds::Hash::operator()(const Signature& signature) const noexcept {
  std::uint64_t hash = 1469598103934665603u;  // FNV-1a, by whole numbers
  for (const int n : signature) hash = (hash ^ static_cast<std::uint32_t>(n)) * 1099511628211u;
  return static_cast<std::size_t>(hash ^ (hash >> 32));
}

}  // namespace guide
