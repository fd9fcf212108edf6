// A folder replaced at one stroke: whole before, whole after, and nobody's own files lost.
#include "base/whole_folder.h"

#include <doctest/doctest.h>

#include "folder.h"

namespace {

int put(const std::filesystem::path& folder, const std::vector<std::pair<std::string, std::string>>& files) {
  base::WholeFolder whole(folder);
  REQUIRE(whole.begin());
  for (const auto& [path, bytes] : files) REQUIRE(whole.add(path, bytes));
  const auto changed = whole.keep();
  REQUIRE(changed);
  return *changed;
}

}  // namespace

TEST_CASE("files appear, only what changed is written, what is no longer in it goes, and a stranger's file stays") {
  const TestFolder folder;
  const auto packet = folder / "packet";
  CHECK(put(packet, {{"a.txt", "one"}, {"deep/er/b.txt", "two"}}) == 2);
  CHECK(bytes_of(packet / "deep/er/b.txt") == "two");
  CHECK(bytes_of(packet / "contents.txt") == "a.txt\ndeep/er/b.txt\n");
  std::ofstream(packet / "deep/own.txt") << "hers";
  const auto time = std::filesystem::last_write_time(packet / "a.txt");
  CHECK(put(packet, {{"a.txt", "one"}, {"c.txt", "three"}}) == 1);
  CHECK(std::filesystem::last_write_time(packet / "a.txt") == time);
  CHECK(!std::filesystem::exists(packet / "deep/er/b.txt"));
  CHECK(bytes_of(packet / "deep/own.txt") == "hers");
  CHECK(bytes_of(packet / "c.txt") == "three");
  const auto place = std::filesystem::last_write_time(packet);
  CHECK(put(packet, {{"a.txt", "one"}, {"c.txt", "three"}}) == 0);
  CHECK(std::filesystem::last_write_time(packet) == place);
  CHECK(folder.files() == 4);  // a, c, contents, hers: nothing is left beside it
}

TEST_CASE("given up, the old one is as it was; a file in its place is told") {
  const TestFolder folder;
  const auto packet = folder / "packet";
  put(packet, {{"a.txt", "one"}});
  {
    base::WholeFolder whole(packet);
    REQUIRE(whole.begin());
    REQUIRE(whole.add("a.txt", "changed"));
  }
  CHECK(bytes_of(packet / "a.txt") == "one");
  CHECK(folder.files() == 2);
  std::ofstream(folder / "file") << "x";
  base::WholeFolder wrong(folder / "file");
  const auto begun = wrong.begin();
  REQUIRE(!begun);
  CHECK(begun.error().what.find("Not a directory") != std::string::npos);
}
