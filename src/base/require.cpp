#include "base/require.h"

#include <cstdio>
#include <cstdlib>

namespace base {

void require(bool holds, std::string_view what) {
  if (holds) return;
  std::fprintf(stderr, "tellekant: a mistake of the program itself: %.*s\n", static_cast<int>(what.size()), what.data());
  std::abort();
}

}  // namespace base
