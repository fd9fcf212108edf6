#include "memory.h"

#include <malloc.h>

#include <atomic>
#include <cstdlib>
#include <new>

namespace {

std::atomic<std::size_t> in_use{0}, peak{0}, at_begin{0};

void* taken(void* room) {
  if (!room) throw std::bad_alloc();
  const std::size_t now = in_use += malloc_usable_size(room);
  if (now > peak) peak = now;
  return room;
}

void given_back(void* room) {
  if (room) in_use -= malloc_usable_size(room);
  std::free(room);
}

}  // namespace

void* operator new(std::size_t size) { return taken(std::malloc(size)); }
void* operator new[](std::size_t size) { return taken(std::malloc(size)); }
void operator delete(void* room) noexcept { given_back(room); }
void operator delete[](void* room) noexcept { given_back(room); }
void operator delete(void* room, std::size_t) noexcept { given_back(room); }
void operator delete[](void* room, std::size_t) noexcept { given_back(room); }

namespace bench {

void begin_peak() {
  at_begin = in_use.load();
  peak = in_use.load();
}

std::size_t peak_bytes() { return peak - at_begin; }

}  // namespace bench
