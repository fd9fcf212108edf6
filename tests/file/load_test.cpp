// Reading bytes: files, pipes, standard input, and what cannot be read.
#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <thread>

#include "file/course_file.h"

namespace {

/// A folder of its own that goes when the test is over.
class Folder {
 public:
  Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "tellekant-load-XXXXXX").string();
    path_ = ::mkdtemp(pattern.data());
  }
  ~Folder() { std::filesystem::remove_all(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string file(const std::string& name, const std::string& bytes = "") const {
    const auto path = path_ / name;
    if (!bytes.empty()) std::ofstream(path, std::ios::binary) << bytes;
    return path.string();
  }

 private:
  std::filesystem::path path_;
};

std::string trouble(const std::string& path) {
  const auto text = file::load(path);
  REQUIRE(!text);
  CHECK(text.error().kind == base::TroubleKind::input);
  return text.error().what;
}

void write_all(int descriptor, const std::string& bytes) {
  for (std::size_t at = 0; at < bytes.size();) {
    const ::ssize_t n = ::write(descriptor, bytes.data() + at, bytes.size() - at);
    if (n < 0) break;
    at += static_cast<std::size_t>(n);
  }
  ::close(descriptor);
}

}  // namespace

TEST_CASE("a file is read whole") {
  const Folder folder;
  const std::string bytes = "# \u00E6\r\n" + std::string(200000, 'x') + "\n";
  CHECK(file::load(folder.file("a.course.toml", bytes)).value() == bytes);
  const std::string empty = folder.file("empty");
  std::ofstream(empty).flush();
  CHECK(file::load(empty).value() == "");
}

TEST_CASE("what is no file") {
  const Folder folder;
  const std::string missing = folder.file("missing");
  CHECK(trouble(missing) == missing + ": there is no such file");
  const std::string within = folder.file("plain", "x") + "/below";
  CHECK(trouble(within) == within + ": there is no such file: a part of its path is not a folder");
  const std::string here = std::filesystem::path(missing).parent_path().string();
  CHECK(trouble(here) == here + ": it is a folder; a course file is needed");
  CHECK(trouble("") == ": there is no such file");
  CHECK(trouble(std::string("a\0b", 3)).find("holds a NUL") != std::string::npos);
  CHECK(trouble(std::string(5000, 'x')).find("the name is too long") != std::string::npos);
}

TEST_CASE("a file that may not be read") {
  const Folder folder;
  const std::string path = folder.file("secret", "x");
  ::chmod(path.c_str(), 0);
  if (::access(path.c_str(), R_OK) == 0) return;  // root may read anything
  CHECK(trouble(path) == path + ": it may not be read (permission denied)");
}

TEST_CASE("a file that is too large, without end, or no text") {
  const Folder folder;
  const std::string large = folder.file("large", std::string(file::byte_limit + 1, 'x'));
  CHECK(trouble(large) == large + ": it is larger than 4 MB; a course file holds at most that");
  CHECK(file::load(folder.file("full", std::string(file::byte_limit, 'x'))).value().size() == file::byte_limit);
  CHECK(trouble("/dev/zero") == "/dev/zero: it is larger than 4 MB; a course file holds at most that");
  const std::string latin = folder.file("latin", "a = 1\nb = \"\xE9\"\n");
  CHECK(trouble(latin) == latin + ": line 2, column 6: found the byte 0xE9, which is not UTF-8 here; expected a text saved as UTF-8");
}

TEST_CASE("a pipe is read to its end") {
  const Folder folder;
  const std::string pipe = folder.file("pipe");
  REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
  const std::string bytes(300000, 'y');
  std::thread writer([&] { write_all(::open(pipe.c_str(), O_WRONLY), bytes); });
  const auto text = file::load(pipe);
  writer.join();
  CHECK(text.value() == bytes);
}

TEST_CASE("a dash is standard input") {
  int ends[2];
  REQUIRE(::pipe(ends) == 0);
  const int kept = ::dup(STDIN_FILENO);
  ::dup2(ends[0], STDIN_FILENO);
  ::close(ends[0]);
  const std::string bytes = "format = 1\n" + std::string(100000, '#');
  std::thread writer([&] { write_all(ends[1], bytes); });
  const auto text = file::load("-");
  writer.join();
  if (kept >= 0) ::dup2(kept, STDIN_FILENO);
  CHECK(text.value() == bytes);
}
