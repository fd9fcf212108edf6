// Choosing one of a few variants for each unit of a chain so that the whole costs least: exact dynamic programming, linear in the units. The chain may
// close to a circle. Equal costs are settled near by: the lower variant earlier, so that like places come out alike.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <limits>
#include <vector>

#include "cloth/hole.h"

namespace trail {

/// What a choice costs, in the order of importance. Whole numbers, so that equal is equal.
struct Cost {
  std::int64_t crossing = 0;  ///< back threads over what must stay clear
  std::int64_t outside = 0;   ///< back threads that leave the squares of the two runs they join
  std::int64_t away = 0;      ///< steps back that touch no corner
  std::int64_t steps = 0;     ///< steps back
  std::int64_t wrong = 0;     ///< stitches that do not go down on the side wanted
  std::int64_t back = 0;      ///< thread on the back, millionths of a thread of the cloth
  friend auto operator<=>(const Cost&, const Cost&) = default;
  friend Cost operator+(const Cost& a, const Cost& b) {
    return {a.crossing + b.crossing, a.outside + b.outside, a.away + b.away, a.steps + b.steps, a.wrong + b.wrong, a.back + b.back};
  }
};

inline constexpr std::int64_t impossible = std::numeric_limits<std::int64_t>::max() / 4;

/// A distance as a whole number of millionths of a thread.
std::int64_t fine(cloth::Hole a, cloth::Hole b);

enum class Ring { open, closed };

/// The cheapest variant of each of n units, or nothing where no choice obeys the laws. `chain` offers
///   int variants(std::size_t unit)                                at most 4
///   Cost own(std::size_t unit, int variant)
///   Cost step(std::size_t from, int v, std::size_t to, int w)     crossing >= impossible forbids it
template <class Chain>
std::vector<std::uint8_t> cheapest(const Chain& chain, std::size_t n, Ring ring) {
  constexpr std::size_t most = 4;
  Cost best{.crossing = impossible};
  std::vector<std::uint8_t> chosen;
  if (n == 0) return chosen;
  std::vector<std::array<std::uint8_t, most>> from(n);
  const int firsts = ring == Ring::closed && n > 1 ? chain.variants(0) : 1;
  for (int first = 0; first < firsts; ++first) {
    std::array<Cost, most> costs{}, next{};
    for (int v = 0; v < chain.variants(0); ++v)
      costs[v] = ring == Ring::closed && n > 1 && v != first ? Cost{.crossing = impossible} : chain.own(0, v);
    for (std::size_t k = 1; k < n; ++k) {
      for (int w = 0; w < chain.variants(k); ++w) {
        next[w] = {.crossing = impossible};
        const Cost own = chain.own(k, w);
        for (int v = 0; v < chain.variants(k - 1); ++v) {
          if (costs[v].crossing >= impossible) continue;
          const Cost total = costs[v] + own + chain.step(k - 1, v, k, w);
          if (total < next[w]) next[w] = total, from[k][w] = static_cast<std::uint8_t>(v);
        }
      }
      costs = next;
    }
    for (int v = 0; v < chain.variants(n - 1); ++v) {
      if (costs[v].crossing >= impossible) continue;
      const Cost total = ring == Ring::closed && n > 1 ? costs[v] + chain.step(n - 1, v, 0, first) : costs[v];
      if (total.crossing >= impossible || !(total < best)) continue;
      best = total;
      chosen.resize(n);
      int way = v;
      for (std::size_t k = n; k-- > 0;) chosen[k] = static_cast<std::uint8_t>(way), way = from[k][way];
    }
  }
  return chosen;
}

}  // namespace trail
