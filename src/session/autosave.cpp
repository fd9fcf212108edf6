#include "session/autosave.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <fstream>
#include <sstream>

#include "base/whole_file.h"

namespace session {

std::filesystem::path unsaved_path(const std::filesystem::path& file, const std::filesystem::path& spare) {
  const std::filesystem::path whole = std::filesystem::absolute(file).lexically_normal();
  if (::access(whole.parent_path().c_str(), W_OK) == 0) {
    std::string hidden(1, '.');
    hidden += whole.filename().string();
    return whole.parent_path() / hidden.append(".unsaved");
  }
  std::string name = whole.string();
  for (char& c : name)
    if (c == '/') c = '%';
  return spare / (name + ".unsaved");
}

base::Result<void> keep_unsaved(const std::filesystem::path& kept, std::string_view text) { return base::write_whole(kept, text); }

std::optional<std::string> find_unsaved(const std::filesystem::path& kept, std::string_view on_disk) {
  std::ifstream in(kept, std::ios::binary);
  if (!in) return std::nullopt;
  std::ostringstream text;
  text << in.rdbuf();
  if (text.str() == on_disk) return std::nullopt;
  return text.str();
}

void forget_unsaved(const std::filesystem::path& kept) {
  std::error_code ignored;
  std::filesystem::remove(kept, ignored);
}

std::optional<FileLock> FileLock::take(const std::filesystem::path& beside) {
  const int file = ::open(beside.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
  if (file < 0) return FileLock(-1, {});
  if (::flock(file, LOCK_EX | LOCK_NB) == 0) return FileLock(file, beside);
  ::close(file);
  return std::nullopt;
}

FileLock::FileLock(FileLock&& other) noexcept : file_(std::exchange(other.file_, -1)), path_(std::move(other.path_)) {}

FileLock& FileLock::operator=(FileLock&& other) noexcept {
  std::swap(file_, other.file_);
  std::swap(path_, other.path_);
  return *this;
}

FileLock::~FileLock() {
  if (file_ < 0) return;
  ::unlink(path_.c_str());
  ::close(file_);
}

}  // namespace session
