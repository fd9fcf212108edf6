#include "base/whole_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>


namespace base {
namespace {

tl::unexpected<Trouble> failed(std::string_view doing, const std::filesystem::path& path, int error) {
  return trouble(TroubleKind::output, fmt::format("{} {}: {}", doing, path.string(), std::strerror(error)));
}

int write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(file, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(n));
  }
  return 0;
}

void sync_folder(const std::filesystem::path& folder) {
  const int file = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0) return;
  ::fsync(file);
  ::close(file);
}

}  // namespace

Batch::~Batch() {
  for (const Waiting& file : waiting_) ::unlink(file.temporary.c_str());
}

Result<void> Batch::add(const std::filesystem::path& path, std::string_view bytes) {
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored)) return failed("cannot write", path, EISDIR);
  std::string name = (path.parent_path() / fmt::format(".{}.part-XXXXXX", path.filename().string().substr(0, 200))).string();
  const int file = ::mkostemp(name.data(), O_CLOEXEC);
  if (file < 0) return failed("cannot write", path, errno);
  waiting_.push_back({name, path});
  int error = write_all(file, bytes);
  if (error == 0 && ::fchmod(file, 0644) != 0) error = errno;
  if (error == 0 && ::fsync(file) != 0) error = errno;
  if (::close(file) != 0 && error == 0) error = errno;
  if (error != 0) return failed("cannot write", path, error);
  return {};
}

Result<std::vector<std::filesystem::path>> Batch::keep() {
  std::vector<std::filesystem::path> written;
  while (!waiting_.empty()) {
    const Waiting file = waiting_.front();
    if (::rename(file.temporary.c_str(), file.final_path.c_str()) != 0) return failed("cannot write", file.final_path, errno);
    waiting_.erase(waiting_.begin());
    written.push_back(file.final_path);
    if (waiting_.empty() || waiting_.front().final_path.parent_path() != file.final_path.parent_path())
      sync_folder(file.final_path.parent_path());
  }
  return written;
}

Result<void> Batch::keep_new() {
  for (const Waiting& file : waiting_)  // a link fails where the name exists, at one stroke
    if (::link(file.temporary.c_str(), file.final_path.c_str()) != 0) return failed("cannot make", file.final_path, errno);
  return {};
}

Result<void> make_folder(const std::filesystem::path& folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error) return failed("cannot make the folder", folder, error.value());
  if (!std::filesystem::is_directory(folder, error)) return failed("not a folder:", folder, ENOTDIR);
  return {};
}

Result<void> write_whole(const std::filesystem::path& path, std::string_view bytes) {
  Batch batch;
  if (auto added = batch.add(path, bytes); !added) return added;
  if (auto kept = batch.keep(); !kept) return tl::make_unexpected(kept.error());
  return {};
}

Result<void> write_new(const std::filesystem::path& path, std::string_view bytes) {
  Batch batch;
  if (auto added = batch.add(path, bytes); !added) return added;
  return batch.keep_new();
}

}  // namespace base
