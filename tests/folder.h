// A folder of its own for a test, taken away afterwards.
#pragma once

#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

struct TestFolder {
  std::filesystem::path path;
  TestFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "tellekant-test-XXXXXX").string();
    path = mkdtemp(name.data());
  }
  ~TestFolder() {
    std::error_code ignored;
    std::filesystem::permissions(path, std::filesystem::perms::owner_all, ignored);
    std::filesystem::remove_all(path, ignored);
  }
  TestFolder(const TestFolder&) = delete;
  TestFolder& operator=(const TestFolder&) = delete;
  std::filesystem::path operator/(const std::string& name) const { return path / name; }
  std::size_t files() const {
    std::size_t n = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(path)) n += entry.is_regular_file() ? 1 : 0;
    return n;
  }
};

inline std::string bytes_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}
