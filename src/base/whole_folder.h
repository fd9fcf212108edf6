// A folder that is made anew beside the old one and takes its place at one stroke.
#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <string_view>

#include "base/result.h"

namespace base {

/// Until `keep` the old folder is as it was; given up or interrupted, it stays so. What is the same as before is the same file still, its
/// time too. What a killed process left beside it is taken away by the next one. `contents.txt` in it lists what was put there; files of
/// other names, put there by somebody else, are taken over.
class WholeFolder {
 public:
  explicit WholeFolder(std::filesystem::path folder);
  WholeFolder(const WholeFolder&) = delete;
  WholeFolder& operator=(const WholeFolder&) = delete;
  ~WholeFolder();

  /// Makes the room for it, beside its place.
  Result<void> begin();
  /// `path` within the folder, each once.
  Result<void> add(const std::filesystem::path& path, std::string_view bytes);
  /// Puts the new folder in place; how many files are new or changed. Where nothing is, the old one is left alone.
  Result<int> keep();

 private:
  Result<void> take_over_others();
  Result<void> swap();

  std::filesystem::path folder_, fresh_;  ///< its place; beside it
  std::set<std::string> added_, before_;  ///< paths within it; those of the old one's list
  int changed_ = 0;
  int hold_ = -1;  ///< locks what is being made, so that nobody takes it for left over
};

inline constexpr const char* contents_file = "contents.txt";

}  // namespace base
