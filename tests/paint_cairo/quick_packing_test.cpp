// Quick packing gives the same bytes whatever lies where in memory: held against itself on stacks at many places.
#include <doctest/doctest.h>
#include <pthread.h>
#include <sys/mman.h>

#include <cstdint>
#include <random>

#include "paint/cairo/paint.h"

namespace {

using Bytes = std::vector<std::uint8_t>;

/// Rows of coloured stretches, seven rows alike at a time.
paint::Pixels stretches(unsigned seed) {
  std::mt19937 random(seed);
  paint::Pixels pixels{.width = 285, .height = 318, .grey = false, .bytes = {}};
  Bytes row;
  for (int y = 0; y < pixels.height; ++y) {
    if (y % 7 == 0) {
      row.clear();
      while (row.size() < 285U * 3) {
        const auto colour = static_cast<unsigned>(random() % 7);
        for (auto n = 1 + random() % 60; n > 0 && row.size() < 285U * 3; --n)
          for (const unsigned byte : {colour * 37, colour * 91 + 5, colour * 13 + 7}) row.push_back(static_cast<std::uint8_t>(byte));
      }
    }
    pixels.bytes.insert(pixels.bytes.end(), row.begin(), row.end());
  }
  return pixels;
}

struct Task {
  const paint::Pixels& pixels;
  Bytes file = {};
};

void* pack(void* task_memory) {
  Task& task = *static_cast<Task*>(task_memory);
  if (auto file = paint::png(task.pixels, 300, {}, paint::Packing::quick)) task.file = std::move(*file);
  return nullptr;
}

/// Stacks one behind the other, each begun a block after the one before.
class Stacks {
 public:
  static constexpr std::size_t block = 64UL * 1024, room = 16 * block;
  explicit Stacks(std::size_t count) : size_(count * block + room), memory_(::mmap(nullptr, size_, PROT_READ | PROT_WRITE, flags, -1, 0)) {}
  ~Stacks() { ::munmap(memory_, size_); }
  Stacks(const Stacks&) = delete;
  Stacks& operator=(const Stacks&) = delete;
  bool whole() const { return memory_ != MAP_FAILED; }

  Bytes packed_on(std::size_t n, const paint::Pixels& pixels) {
    Task task{pixels};
    pthread_attr_t attributes;
    pthread_t thread{};
    pthread_attr_init(&attributes);
    pthread_attr_setstack(&attributes, static_cast<char*>(memory_) + n * block, room);
    if (pthread_create(&thread, &attributes, pack, &task) == 0) pthread_join(thread, nullptr);
    pthread_attr_destroy(&attributes);
    return task.file;
  }

 private:
  static constexpr int flags = MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE;
  std::size_t size_;
  void* memory_;
};

}  // namespace

TEST_CASE("quick packing: the same bytes from a stack at any place") {
  constexpr std::size_t places = 8192;
  Stacks stacks(places);
  REQUIRE(stacks.whole());
  const paint::Pixels pixels = stretches(14);
  const Bytes first = stacks.packed_on(0, pixels);
  REQUIRE(!first.empty());
  std::size_t others = 0;
  for (std::size_t n = 1; n < places; ++n) others += stacks.packed_on(n, pixels) == first ? 0U : 1U;
  CHECK(others == 0);
}
