// A ZIP written by libarchive, one file after another, beside its place: the same files give the same bytes, whatever the time and place.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include "base/result.h"

namespace publish {

class ZipFile {
 public:
  /// All its files lie in a folder of this name.
  ZipFile(std::filesystem::path path, std::string folder);
  ~ZipFile();
  base::Result<void> begin();
  /// `path` within the folder, each once. What is packed already (PNG, PDF) is stored as it is.
  base::Result<void> add(const std::filesystem::path& path, std::string_view bytes);
  /// Puts it in place; where the same ZIP is there already, that one is left alone.
  base::Result<void> keep();

 private:
  struct Inside;
  std::filesystem::path path_;
  std::string folder_;
  std::unique_ptr<Inside> inside_;
};

/// One file of a ZIP, or "".
std::string from_zip(const std::filesystem::path& archive, const std::string& path);

}  // namespace publish
