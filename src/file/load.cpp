// The bytes of a file, a pipe or standard input. Reads to the end or to the limit, whichever comes first.
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "file/course_file.h"
#include "file/text_check.h"

namespace file {
namespace {

/// A file descriptor that is closed when done, unless it is standard input.
class Open {
 public:
  explicit Open(const std::string& path)
      : own_(path != "-"), descriptor_(own_ ? ::open(path.c_str(), O_RDONLY | O_CLOEXEC) : STDIN_FILENO) {}
  ~Open() {
    if (own_ && descriptor_ >= 0) ::close(descriptor_);
  }
  Open(const Open&) = delete;
  Open& operator=(const Open&) = delete;
  int descriptor() const { return descriptor_; }

 private:
  bool own_;
  int descriptor_;
};

std::string why(int error) {
  switch (error) {
    case ENOENT: return "there is no such file";
    case EACCES: case EPERM: return "it may not be read (permission denied)";
    case ENOTDIR: return "there is no such file: a part of its path is not a folder";
    case EISDIR: return "it is a folder; a course file is needed";
    case ENAMETOOLONG: return "the name is too long";
    default: return std::generic_category().message(error);
  }
}

/// Reads at most one byte more than the limit; false with errno set where it fails.
bool read_all(int descriptor, std::string& text) {
  constexpr std::size_t step = 64 * 1024;
  while (text.size() <= byte_limit) {
    const std::size_t had = text.size();
    text.resize(had + step);
    const ::ssize_t got = ::read(descriptor, text.data() + had, step);
    const int error = errno;
    text.resize(had + static_cast<std::size_t>(got > 0 ? got : 0));
    if (got == 0) return true;
    if (got < 0 && error != EINTR) {
      errno = error;
      return false;
    }
  }
  return true;
}

bool is_folder(int descriptor) {
  struct ::stat status {};
  return ::fstat(descriptor, &status) == 0 && S_ISDIR(status.st_mode);
}

}  // namespace

base::Result<std::string> load(const std::string& path) {
  const std::string name = path == "-" ? "standard input" : path;
  const auto fails = [&](const std::string& reason) {
    return base::trouble(base::TroubleKind::input, fmt::format("{}: {}", name, reason));
  };
  if (path.find('\0') != std::string::npos) return fails("the name holds a NUL");
  const Open file(path);
  if (file.descriptor() < 0) return fails(why(errno));
  if (is_folder(file.descriptor())) return fails(why(EISDIR));
  std::string text;
  if (!read_all(file.descriptor(), text)) return fails(why(errno));
  if (text.size() > byte_limit) return fails("it is larger than 4 MB; a course file holds at most that");
  if (const auto fault = check_text(text))
    return fails(
        fmt::format("line {}, column {}: found {}; expected {}", fault->place.line, fault->place.column, fault->found, fault->expected));
  return text;
}

}  // namespace file
