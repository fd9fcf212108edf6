#include "base/whole_folder.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <sstream>

#include "base/whole_file.h"

namespace base {
namespace {

namespace fs = std::filesystem;

tl::unexpected<Trouble> failed(const fs::path& path, const std::string& why) {
  return trouble(TroubleKind::output, fmt::format("cannot write {}: {}", path.string(), why));
}

std::string bytes_in(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

bool same(const fs::path& path, std::string_view bytes) {
  std::error_code ignored;
  return fs::is_regular_file(fs::symlink_status(path, ignored)) && fs::file_size(path, ignored) == bytes.size() && bytes_in(path) == bytes;
}

/// Locked while this process lives; -1 where another one has it.
int hold(const fs::path& folder) {
  const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file >= 0 && ::flock(file, LOCK_EX | LOCK_NB) == 0) return file;
  if (file >= 0) ::close(file);
  return -1;
}

/// Folders of this beginning that nobody holds any more.
void clear_left_over(const fs::path& above, const std::string& beginning) {
  std::error_code error;
  for (const fs::directory_entry& entry : fs::directory_iterator(above, error)) {
    if (!entry.path().filename().string().starts_with(beginning)) continue;
    const int file = hold(entry.path());
    if (file < 0) continue;
    fs::remove_all(entry.path(), error);
    ::close(file);
  }
}

/// The very file under another name, or a copy where the disk has no links.
std::error_code link_or_copy(const fs::path& from, const fs::path& to) {
  std::error_code error;
  fs::create_directories(to.parent_path(), error);
  if (error) return error;
  if (!fs::is_symlink(fs::symlink_status(from, error))) {
    fs::create_hard_link(from, to, error);
    if (!error) return error;
  }
  error.clear();
  fs::copy(from, to, fs::copy_options::copy_symlinks, error);
  return error;
}

}  // namespace

WholeFolder::WholeFolder(fs::path folder) : folder_(std::move(folder)) {
  if (!folder_.has_filename()) folder_ = folder_.parent_path();  // "packet/"
  std::istringstream lines(bytes_in(folder_ / contents_file));
  for (std::string line; std::getline(lines, line);) before_.insert(line);
}

WholeFolder::~WholeFolder() {
  std::error_code ignored;
  if (!fresh_.empty()) fs::remove_all(fresh_, ignored);
  if (hold_ >= 0) ::close(hold_);
}

Result<void> WholeFolder::begin() {
  std::error_code error;
  if (fs::exists(folder_, error) && !fs::is_directory(folder_, error)) return failed(folder_, std::strerror(ENOTDIR));
  const fs::path above = folder_.has_parent_path() ? folder_.parent_path() : fs::path(".");
  if (auto made = make_folder(above); !made) return made;
  const std::string beginning = fmt::format(".{}.part-", folder_.filename().string());
  clear_left_over(above, beginning);
  std::string name = (above / (beginning + "XXXXXX")).string();
  if (!::mkdtemp(name.data()) || ::chmod(name.c_str(), 0755) != 0) return failed(folder_, std::strerror(errno));
  fresh_ = name;
  hold_ = hold(fresh_);
  return {};
}

Result<void> WholeFolder::add(const fs::path& path, std::string_view bytes) {
  added_.insert(path.string());
  if (same(folder_ / path, bytes)) {
    if (const std::error_code error = link_or_copy(folder_ / path, fresh_ / path)) return failed(folder_ / path, error.message());
    return {};
  }
  ++changed_;
  if (auto made = make_folder((fresh_ / path).parent_path()); !made) return made;
  return write_whole(fresh_ / path, bytes);
}

Result<void> WholeFolder::take_over_others() {
  std::error_code error;
  if (!fs::is_directory(folder_, error)) return {};
  for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder_, error)) {
    const fs::path path = fs::relative(entry.path(), folder_, error);
    if (entry.is_directory() && !entry.is_symlink()) continue;
    if (added_.contains(path.string()) || before_.contains(path.string()) || path == contents_file) continue;
    if (const std::error_code linked = link_or_copy(entry.path(), fresh_ / path)) return failed(folder_ / path, linked.message());
  }
  if (error) return failed(folder_, error.message());
  return {};
}

/// The two folders change places; where the disk cannot do that at one stroke, one after the other.
Result<void> WholeFolder::swap() {
  std::error_code error;
  if (!fs::exists(folder_, error)) {
    fs::rename(fresh_, folder_, error);
    if (error) return failed(folder_, error.message());
    fresh_.clear();
    return {};
  }
  if (::renameat2(AT_FDCWD, fresh_.c_str(), AT_FDCWD, folder_.c_str(), RENAME_EXCHANGE) == 0) return {};
  if (errno != EINVAL && errno != ENOSYS) return failed(folder_, std::strerror(errno));
  const fs::path old = fresh_.string() + "-old";
  fs::rename(folder_, old, error);
  if (!error) fs::rename(fresh_, folder_, error);
  if (error) return failed(folder_, error.message());
  fresh_ = old;
  return {};
}

Result<int> WholeFolder::keep() {
  std::string contents;
  for (const std::string& path : added_) contents += path + '\n';
  if (changed_ == 0 && before_ == added_) return 0;
  if (auto written = write_whole(fresh_ / contents_file, contents); !written) return tl::make_unexpected(written.error());
  if (auto taken = take_over_others(); !taken) return tl::make_unexpected(taken.error());
  if (auto swapped = swap(); !swapped) return tl::make_unexpected(swapped.error());
  return changed_;
}

}  // namespace base
