// What a piece of work takes of the memory that `new` gives out, at its peak. Counts the whole program: one thread at a time.
#pragma once

#include <cstddef>
#include <utility>

namespace bench {

void begin_peak();
std::size_t peak_bytes();  ///< above what was in use at begin_peak

template <class Work>
std::size_t peak_of(Work&& work) {
  begin_peak();
  std::forward<Work>(work)();
  return peak_bytes();
}

}  // namespace bench
