// Large memory touched at one go: asking the kernel for pages of 2 MB instead of 4 kB spares thousands of page faults. Only ever a matter
// of speed.
#pragma once

#include <cstddef>

namespace paint {

/// Memory just allocated and not yet touched; what is too small, or where the kernel does not care, stays as it is.
void ask_large_pages(void* start, std::size_t bytes);

}  // namespace paint
