// Files that are whole or not there: written beside, synced, renamed.
#pragma once

#include <filesystem>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace base {

/// Several files that appear together: each is written beside its place first; `keep` renames them all, otherwise the destructor takes the
/// unfinished ones away and older files stay as they were.
class Batch {
 public:
  Batch() = default;
  Batch(const Batch&) = delete;
  Batch& operator=(const Batch&) = delete;
  ~Batch();
  Result<void> add(const std::filesystem::path& path, std::string_view bytes);
  Result<std::vector<std::filesystem::path>> keep();
  /// Like keep, but a file that is there already is left alone, and told.
  Result<void> keep_new();

 private:
  struct Waiting {
    std::filesystem::path temporary, final_path;
  };
  std::vector<Waiting> waiting_;
};

/// Writes the bytes beside, syncs and renames: afterwards the file is whole and new, or as it was.
Result<void> write_whole(const std::filesystem::path& path, std::string_view bytes);
/// The same, but never in the place of something that is already there.
Result<void> write_new(const std::filesystem::path& path, std::string_view bytes);

/// Makes the folder and those above it where they are missing.
Result<void> make_folder(const std::filesystem::path& folder);

}  // namespace base
