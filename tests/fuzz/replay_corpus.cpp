// Gives every file of the folders named to the check, without a fuzzer: what once broke something is tried again for ever.
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "check_course.h"

int main(int count, char** folders) {
  std::vector<std::filesystem::path> files;
  for (int i = 1; i < count; ++i)
    for (const auto& entry : std::filesystem::directory_iterator(folders[i])) files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  for (const auto& path : files) {
    std::ifstream in(path, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    std::printf("%s\n", path.filename().c_str());
    std::fflush(stdout);
    fuzz::check_course(bytes);
  }
  std::printf("%zu files\n", files.size());
  return files.empty() ? 1 : 0;
}
