#include "publish/zip.h"

#include <archive.h>
#include <archive_entry.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <fstream>

#include "base/whole_file.h"

namespace publish {
namespace {

namespace fs = std::filesystem;
using Writer = std::unique_ptr<archive, decltype(&archive_write_free)>;
using Reader = std::unique_ptr<archive, decltype(&archive_read_free)>;
using Entry = std::unique_ptr<archive_entry, decltype(&archive_entry_free)>;

bool is_packed(const fs::path& path) { return path.extension() == ".png" || path.extension() == ".pdf"; }

bool same_files(const fs::path& one, const fs::path& other) {
  std::error_code error;
  if (!fs::is_regular_file(other, error) || fs::file_size(one, error) != fs::file_size(other, error) || error) return false;
  std::ifstream a(one, std::ios::binary), b(other, std::ios::binary);
  std::array<char, 65536> some, more;
  while (a && b) {
    a.read(some.data(), some.size());
    b.read(more.data(), more.size());
    if (a.gcount() != b.gcount() || std::memcmp(some.data(), more.data(), static_cast<std::size_t>(a.gcount())) != 0) return false;
  }
  return true;
}

}  // namespace

struct ZipFile::Inside {
  Writer out{archive_write_new(), archive_write_free};
  fs::path temporary;
  int file = -1;
  ~Inside() {
    out.reset();
    if (file >= 0) ::close(file);
    if (!temporary.empty()) ::unlink(temporary.c_str());
  }
};

ZipFile::ZipFile(fs::path path, std::string folder)
    : path_(std::move(path)), folder_(std::move(folder)), inside_(std::make_unique<Inside>()) {}
ZipFile::~ZipFile() = default;

base::Result<void> ZipFile::begin() {
  const fs::path above = path_.has_parent_path() ? path_.parent_path() : fs::path(".");
  if (auto made = base::make_folder(above); !made) return made;
  std::string name = (above / fmt::format(".{}.part-XXXXXX", path_.filename().string())).string();
  inside_->file = ::mkostemp(name.data(), O_CLOEXEC);
  if (inside_->file < 0)
    return base::trouble(base::TroubleKind::output, fmt::format("cannot write {}: {}", path_.string(), std::strerror(errno)));
  inside_->temporary = name;
  archive* out = inside_->out.get();
  archive_write_set_format_zip(out);
  archive_write_set_bytes_in_last_block(out, 1);
  if (archive_write_open_fd(out, inside_->file) == ARCHIVE_OK) return {};
  return base::trouble(base::TroubleKind::output, fmt::format("cannot write {}: {}", path_.string(), archive_error_string(out)));
}

base::Result<void> ZipFile::add(const fs::path& path, std::string_view bytes) {
  archive* out = inside_->out.get();
  const Entry entry(archive_entry_new(), archive_entry_free);
  archive_entry_set_pathname(entry.get(), (folder_ + "/" + path.string()).c_str());
  archive_entry_set_size(entry.get(), static_cast<la_int64_t>(bytes.size()));
  archive_entry_set_filetype(entry.get(), AE_IFREG);
  archive_entry_set_perm(entry.get(), 0644);  // and no time: that would change the bytes
  if (is_packed(path))
    archive_write_zip_set_compression_store(out);
  else
    archive_write_zip_set_compression_deflate(out);
  if (archive_write_header(out, entry.get()) == ARCHIVE_OK &&
      archive_write_data(out, bytes.data(), bytes.size()) == static_cast<la_ssize_t>(bytes.size()))
    return {};
  return base::trouble(base::TroubleKind::output, fmt::format("cannot write {}: {}", path_.string(), archive_error_string(out)));
}

base::Result<void> ZipFile::keep() {
  const auto failed = [&](const char* why) {
    return base::trouble(base::TroubleKind::output, fmt::format("cannot write {}: {}", path_.string(), why));
  };
  if (archive_write_close(inside_->out.get()) != ARCHIVE_OK) return failed(archive_error_string(inside_->out.get()));
  if (same_files(inside_->temporary, path_)) return {};
  if (::fchmod(inside_->file, 0644) != 0 || ::fsync(inside_->file) != 0) return failed(std::strerror(errno));
  if (::rename(inside_->temporary.c_str(), path_.c_str()) != 0) return failed(std::strerror(errno));
  inside_->temporary.clear();
  return {};
}

std::string from_zip(const fs::path& file, const std::string& path) {
  const Reader in(archive_read_new(), archive_read_free);
  archive_read_support_format_zip(in.get());
  if (archive_read_open_filename(in.get(), file.c_str(), 65536) != ARCHIVE_OK) return {};
  for (archive_entry* entry = nullptr; archive_read_next_header(in.get(), &entry) == ARCHIVE_OK;) {
    const char* name = archive_entry_pathname(entry);
    if (!name || !std::string_view(name).ends_with("/" + path)) continue;
    std::string text;
    char some[4096];
    for (la_ssize_t n; (n = archive_read_data(in.get(), some, sizeof some)) > 0;) text.append(some, static_cast<std::size_t>(n));
    return text;
  }
  return {};
}

}  // namespace publish
