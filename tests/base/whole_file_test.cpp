// Files are whole or as they were.
#include <doctest/doctest.h>

#include "folder.h"
#include "base/whole_file.h"

TEST_CASE("a file is written whole and replaces the older one") {
  const TestFolder folder;
  REQUIRE(base::write_whole(folder / "a.txt", "first"));
  REQUIRE(base::write_whole(folder / "a.txt", "second"));
  CHECK(bytes_of(folder / "a.txt") == "second");
  CHECK(folder.files() == 1);
}

TEST_CASE("a new file never takes the place of another") {
  const TestFolder folder;
  REQUIRE(base::write_new(folder / "a.txt", "mine"));
  const auto again = base::write_new(folder / "a.txt", "other");
  REQUIRE(!again);
  CHECK(again.error().what == "cannot make " + (folder / "a.txt").string() + ": File exists");
  CHECK(bytes_of(folder / "a.txt") == "mine");
  CHECK(folder.files() == 1);
}

TEST_CASE("a batch that is not kept leaves nothing, and older files as they were") {
  const TestFolder folder;
  REQUIRE(base::write_whole(folder / "a.txt", "old"));
  {
    base::Batch batch;
    REQUIRE(batch.add(folder / "a.txt", "new"));
    REQUIRE(batch.add(folder / "b.txt", "new"));
    CHECK(folder.files() == 3);
  }
  CHECK(folder.files() == 1);
  CHECK(bytes_of(folder / "a.txt") == "old");
}

TEST_CASE("a missing folder, a folder in the file's place") {
  const TestFolder folder;
  CHECK(!base::write_whole(folder / "nowhere/a.txt", "x"));
  std::filesystem::create_directory(folder / "a.txt");
  const auto result = base::write_whole(folder / "a.txt", "x");
  REQUIRE(!result);
  CHECK(result.error().what == "cannot write " + (folder / "a.txt").string() + ": Is a directory");
  CHECK(folder.files() == 0);
}

TEST_CASE("folders are made with those above them; a file in the way is told") {
  const TestFolder folder;
  REQUIRE(base::make_folder(folder / "a/b/c"));
  CHECK(std::filesystem::is_directory(folder / "a/b/c"));
  REQUIRE(base::write_whole(folder / "file", "x"));
  CHECK(!base::make_folder(folder / "file/below"));
  CHECK(!base::make_folder(folder / "file"));
}
