// An area taken apart row by row into patches in which the same threads are left.
#pragma once

#include <utility>
#include <vector>

#include "cutwork/search.h"

namespace cutwork {

enum class Left { nothing, across, upright, both };  ///< which threads

/// Crossings of one sort that hang together.
struct Patch {
  Left left = Left::both;
  std::vector<cloth::Box> boxes;
  cloth::Box box;
};

struct Patches {
  std::vector<Patch> all;
  struct Beside {
    int first = 0, second = 0;  ///< left and right, or above and below
    bool level = false;         ///< left and right
    friend auto operator<=>(const Beside&, const Beside&) = default;
  };
  std::vector<Beside> beside;  ///< sorted, each once
};

Patches find_patches(const Areas& areas, const std::vector<Taken>& taken);

}  // namespace cutwork
