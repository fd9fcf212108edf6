// The least thread on the back that any order of a front can have: stitch ends joined in pairs, no hole with itself, as short as can be
// (minimum-weight perfect matching; Arkin and others, The Embroidery Problem, CCCG 2008: exact on connected fronts). Computed by LEMON,
// whose headers need C++17: a small library of its own, with a header for both.
#pragma once

#include <vector>

namespace matching {

/// A stitch end lies in a hole.
struct End {
  int x = 0, y = 0;
};

/// Is a first and a last stitch end left over, or does the back close to a circle?
enum class Back { closed, open };

struct Least {
  double threads = 0;
  bool proven = false;  ///< no pair farther apart than `reach` could have shortened it
};

/// `ends` has two for each stitch. Only pairs up to `reach` threads apart are offered; the matching's own dual values tell whether that was
/// enough.
Least least_back(const std::vector<End>& ends, Back back, double reach);

}  // namespace matching
