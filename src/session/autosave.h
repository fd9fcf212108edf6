// What was not saved, kept beside the file (or in another folder where that one cannot be written) so that a crash or a power cut loses nothing, and a
// lock against a second window on the same file.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "base/result.h"

namespace session {

/// ".frost.course.toml.unsaved" beside the file, or under `spare` with a name made from the whole path where the file's folder is read-only.
std::filesystem::path unsaved_path(const std::filesystem::path& file, const std::filesystem::path& spare);

/// Keeps the text, synced to the disk.
base::Result<void> keep_unsaved(const std::filesystem::path& kept, std::string_view text);
/// What an earlier session kept and did not save; nothing where there is none or it is the same as the file.
std::optional<std::string> find_unsaved(const std::filesystem::path& kept, std::string_view on_disk);
void forget_unsaved(const std::filesystem::path& kept);

/// Held as long as it lives; let go by the system when the program dies.
class FileLock {
 public:
  /// Nothing when another program holds it. A folder that cannot be written gives a lock that holds nothing.
  static std::optional<FileLock> take(const std::filesystem::path& beside);
  FileLock(FileLock&& other) noexcept;
  FileLock& operator=(FileLock&& other) noexcept;
  FileLock(const FileLock&) = delete;
  FileLock& operator=(const FileLock&) = delete;
  ~FileLock();

 private:
  FileLock(int file, std::filesystem::path path) : file_(file), path_(std::move(path)) {}
  int file_ = -1;
  std::filesystem::path path_;
};

}  // namespace session
