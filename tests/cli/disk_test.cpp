// Folders that cannot be written, a disk that is full, Ctrl-C: a clear error, nothing half-written, older files untouched.
#include <doctest/doctest.h>

#include "cli/call.h"

namespace {

/// Can this user make a name space of its own (for a small tmpfs)?
bool can_unshare() { return std::system("unshare -rm true >/dev/null 2>&1") == 0; }

}  // namespace

TEST_CASE("a full disk: older pages stay, no part stays, exit 3") {
  if (!can_unshare()) {
    MESSAGE("skipped: unshare -rm is not allowed here");
    return;
  }
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  std::filesystem::create_directory(folder / "disk");
  // 96 kB hold no page of 300 dpi; the old page and the verdict are copied out before the name space goes.
  put(folder, "try.sh", std::string("mount -t tmpfs -o size=96k tmpfs disk && echo old > disk/lesson-01-ring-p1.png && ") + TELLEKANT_PROGRAM +
                            " handouts a.course.toml --into disk 2>said; echo $? >code; ls -A disk >list; cat disk/lesson-01-ring-p1.png >page\n");
  CHECK(std::system(("cd '" + folder.path.string() + "' && unshare -rm sh try.sh").c_str()) == 0);
  CHECK(bytes_of(folder / "code") == "3\n");
  CHECK(bytes_of(folder / "said").find("No space left on device") != std::string::npos);
  CHECK(bytes_of(folder / "list") == "lesson-01-ring-p1.png\n");
  CHECK(bytes_of(folder / "page") == "old\n");
}

TEST_CASE("a folder without the right to write: a clear error, exit 3") {
  if (!can_unshare()) {
    MESSAGE("skipped: unshare -rm is not allowed here");
    return;
  }
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  std::filesystem::create_directory(folder / "disk");
  put(folder, "try.sh", std::string("mount -t tmpfs tmpfs disk && mount -o remount,ro disk && ") + TELLEKANT_PROGRAM +
                            " handouts a.course.toml --into disk --dpi 72 2>said; echo $? >code\n");
  CHECK(std::system(("cd '" + folder.path.string() + "' && unshare -rm sh try.sh").c_str()) == 0);
  CHECK(bytes_of(folder / "code") == "3\n");
  CHECK(bytes_of(folder / "said").find("Read-only file system") != std::string::npos);
}

TEST_CASE("Ctrl-C while pages are made leaves whole files or none") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  put(folder, "try.sh", std::string(TELLEKANT_PROGRAM) + " handouts a.course.toml --into pages --dpi 600 2>said & p=$!; sleep 0.15; kill -INT $p; wait $p; echo $? >code\n");
  CHECK(std::system(("cd '" + folder.path.string() + "' && bash -m try.sh").c_str()) == 0);
  const std::string code = bytes_of(folder / "code");
  CHECK((code == "3\n" || code == "0\n"));
  if (!std::filesystem::exists(folder / "pages")) return;
  std::size_t parts = 0;
  for (const auto& entry : std::filesystem::directory_iterator(folder / "pages")) parts += entry.path().filename().string().find(".part") != std::string::npos ? 1 : 0;
  CHECK(parts == 0);
}

TEST_CASE("killed while a packet is made, the old one stays whole; the next one clears up and is whole") {
  const TestFolder folder;
  std::string one = small_course;
  one.replace(one.find("NE 2, SE 1, SW 1"), 16, "NE 2");
  put(folder, "a.course.toml", one);
  REQUIRE(call(folder, "handouts a.course.toml --into mail --as packet --dpi 72 --quiet").code == 0);
  const std::string sums = "(cd mail/two-rings-packet && find . -type f | sort | xargs sha256sum)";
  std::string changed = one;
  changed.replace(changed.find("count = 22"), 10, "count = 25");
  put(folder, "b.course.toml", changed);
  put(folder, "try.sh", sums + " >before; " + TELLEKANT_PROGRAM + " handouts b.course.toml --into mail --as packet --dpi 72 --quiet & p=$!; " +
                            "for i in $(seq 200); do ls -d mail/.two-rings-packet.part-* 2>/dev/null && break; sleep 0.01; done >found; kill -KILL $p; wait $p; " + sums + " >after\n");
  CHECK(std::system(("cd '" + folder.path.string() + "' && bash try.sh 2>/dev/null").c_str()) == 0);
  CHECK(bytes_of(folder / "found") != "");
  CHECK(bytes_of(folder / "before") == bytes_of(folder / "after"));
  CHECK(call(folder, "handouts b.course.toml --into mail --as packet --dpi 72 --quiet").code == 0);
  put(folder, "look.sh", "ls -A mail >list; " + sums + " >now\n");
  CHECK(std::system(("cd '" + folder.path.string() + "' && bash look.sh").c_str()) == 0);
  CHECK(bytes_of(folder / "list") == "two-rings-packet\n");
  CHECK(bytes_of(folder / "now") != bytes_of(folder / "before"));
}

TEST_CASE("standard output that is full is told") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  put(folder, "try.sh", std::string(TELLEKANT_PROGRAM) + " plan a.course.toml >/dev/full 2>said; echo $? >code\n");
  CHECK(std::system(("cd '" + folder.path.string() + "' && sh try.sh").c_str()) == 0);
  CHECK(bytes_of(folder / "code") == "3\n");
  CHECK(bytes_of(folder / "said") == "tellekant: cannot write the plan to standard output\n");
}
