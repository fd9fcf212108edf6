// Files made on all cores and then put in their places together, or not at all.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <stop_token>
#include <vector>

#include "publish/publish.h"
#include "publish/types.h"

namespace publish {

using Bytes = std::vector<std::uint8_t>;

/// One file to be made. `make` runs on any thread, with that thread's fonts.
struct Job {
  std::filesystem::path path;
  std::function<base::Result<Bytes>(const paint::Type&)> make;
};

inline Bytes bytes_of(std::string_view text) { return {text.begin(), text.end()}; }

/// Calls it with 0 .. n-1 on all cores, each with its thread's fonts; the first trouble, or a stop, ends it.
base::Result<void> on_all_cores(std::size_t n, Types& types, const std::stop_token& stop,
                                const std::function<base::Result<void>(std::size_t, const paint::Type&)>& work);

/// Makes every file, then shows them all at once in their order; folders are made where they are missing. On trouble or a stop nothing is
/// changed. What is made is put on the disk at once and not kept in memory.
base::Result<Written> print(const std::vector<Job>& jobs, Types& types, const std::stop_token& stop,
                            const std::function<void(int done, int of)>& progress);

}  // namespace publish
