// Linux' MADV_HUGEPAGE; on another system nothing happens.
#include "paint/cairo/large_pages.h"

#include <sys/mman.h>

#include <memory>

namespace paint {

void ask_large_pages([[maybe_unused]] void* start, [[maybe_unused]] std::size_t bytes) {
#ifdef MADV_HUGEPAGE
  constexpr std::size_t small_page = 4096, worth_it = std::size_t{4} << 20;
  if (bytes < worth_it || !std::align(small_page, worth_it / 2, start, bytes)) return;
  madvise(start, bytes / small_page * small_page, MADV_HUGEPAGE);  // a refusal changes nothing
#endif
}

}  // namespace paint
