// The reference for teachers (assets/course-file.md) holds: its files are right, its wrong ones have the faults it shows, it names every
// key. The samples of the project and of older formats are read as well.
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "describe.h"
#include "file/schema.h"
#include "read_faults.h"

namespace {

std::string bytes_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  REQUIRE(in);
  return {std::istreambuf_iterator<char>(in), {}};
}

std::string reference() { return bytes_of(TELLEKANT_ROOT "/assets/course-file.md"); }

/// The texts between ```MARK and ```.
std::vector<std::string> fenced(const std::string& text, const std::string& mark) {
  std::vector<std::string> found;
  const std::string opening = "\n```" + mark + '\n';
  for (std::size_t at = text.find(opening); at != std::string::npos; at = text.find(opening, at + 1)) {
    const std::size_t begin = at + opening.size();
    found.push_back(text.substr(begin, text.find("\n```\n", begin) + 1 - begin));
  }
  return found;
}

}  // namespace

TEST_CASE("the files of the reference are right and tidy") {
  const auto files = fenced(reference(), "toml");
  REQUIRE(files.size() == 1);
  for (const std::string& file : files) {
    CHECK(faults_of(file) == "");
    CHECK(file::tidy(file) == file);
  }
}

TEST_CASE("the wrong files of the reference have the faults that it shows") {
  const auto files = fenced(reference(), "toml wrong"), faults = fenced(reference(), "text");
  REQUIRE(files.size() == 2);
  REQUIRE(faults.size() == files.size());
  for (std::size_t i = 0; i < files.size(); ++i) CHECK(faults_of(files[i]) == faults[i]);
}

TEST_CASE("the reference names every key, and the keys of one table in the order of the tidy form") {
  const std::string text = reference();
  const auto named = [&](const std::string& key, std::size_t from) { return text.find('`' + key + '`', from); };
  struct Section {
    std::string heading;
    file::Keys keys;
  };
  file::Keys blocks, cable;
  for (const auto& key : stitch::find_kind("blocks")->keys) blocks.emplace_back(key.name);
  for (const auto& key : stitch::find_kind("cable")->keys) cable.emplace_back(key.name);
  for (const Section& section : {Section{"## The course\n", file::course_keys()},
                                 {"## The cloth\n", file::cloth_keys()},
                                 {"## Threads\n", file::thread_keys()},
                                 {"## Habits\n", file::habits_keys()},
                                 {"[habits.count_cost]", file::count_cost_keys()},
                                 {"## Parts of the design\n", file::part_keys()},
                                 {"### Blocks\n", blocks},
                                 {"### Cable\n", cable},
                                 {"## Lessons\n", file::lesson_keys()},
                                 {"## The class\n", file::student_keys()}}) {
    std::size_t at = text.find(section.heading);
    REQUIRE(at != std::string::npos);
    at = text.find("|---|---|", at);
    for (const std::string& key : section.keys) {
      if (key == "stitches_a_minute" || key == "count_cost") continue;  // tables of their own
      CAPTURE(key);
      const std::size_t found = named(key, at);
      REQUIRE(found != std::string::npos);
      REQUIRE(found < text.find("\n#", at));
      at = found;
    }
  }
}

TEST_CASE("samples are right, and so is their tidy form") {
  int files = 0;
  for (const char* folder : {TELLEKANT_ROOT "/lessons", TELLEKANT_ROOT "/assets"})
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
      if (entry.path().extension() != ".toml") continue;
      const std::string text = bytes_of(entry.path());
      CAPTURE(entry.path().string());
      CHECK(faults_of(text) == "");
      CHECK(describe::course(file::read(file::tidy(text)).course) == describe::course(file::read(text).course));
      ++files;
    }
  CHECK(files > 0);
}

TEST_CASE("each part has the work that its kind makes of its keys") {
  const course::Course course = file::read(fenced(reference(), "toml").at(0)).course;
  REQUIRE(course.parts.size() == 2);
  for (const course::Part& part : course.parts) {
    const stitch::Outcome outcome = stitch::find_kind(part.kind)->build(part.values);
    CHECK(!part.work.stitches.empty());
    CHECK(part.work.stitches == outcome.work.stitches);
    CHECK(part.work.passes.size() == (part.kind == "cable" ? 2 : 1));
  }
}

namespace {

/// The description without keys that came later, where they have the value that an older file meant.
std::string as_on_the_day(std::string described) {
  for (const std::string later : {" cut_side=<down>", " step_back=<end>"})
    for (std::size_t at; (at = described.find(later)) != std::string::npos;) described.erase(at, later.size());
  return described;
}

}  // namespace

TEST_CASE("files of every format there was are read as on the day they were written") {
  int files = 0;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(TELLEKANT_ROOT "/tests/file/formats")) {
    if (entry.path().extension() != ".toml") continue;
    CAPTURE(entry.path().string());
    const std::string text = bytes_of(entry.path());
    CHECK(faults_of(text) == "");
    std::filesystem::path wanted = entry.path();
    wanted.replace_extension(".txt");
    CHECK(as_on_the_day(describe::course(file::read(text).course)) == bytes_of(wanted));
    CHECK(as_on_the_day(describe::course(file::read(file::tidy(text)).course)) == bytes_of(wanted));
    ++files;
  }
  CHECK(files >= 4);
}
