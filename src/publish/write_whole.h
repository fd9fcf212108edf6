// Files that are whole or not there: written beside, synced, renamed.
#pragma once

#include <filesystem>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace publish {

/// Several files that appear together: each is written beside its place first; `keep` renames them all, otherwise the destructor takes the
/// unfinished ones away and older files stay as they were.
class Batch {
 public:
  Batch() = default;
  Batch(const Batch&) = delete;
  Batch& operator=(const Batch&) = delete;
  ~Batch();
  base::Result<void> add(const std::filesystem::path& path, std::string_view bytes);
  base::Result<std::vector<std::filesystem::path>> keep();
  /// Like keep, but a file that is there already is left alone, and told.
  base::Result<void> keep_new();

 private:
  struct Waiting {
    std::filesystem::path temporary, final_path;
  };
  std::vector<Waiting> waiting_;
};

/// Makes the folder and those above it where they are missing.
base::Result<void> make_folder(const std::filesystem::path& folder);

}  // namespace publish
