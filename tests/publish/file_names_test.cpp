// Titles to file names: ASCII letters, digits and hyphens, 40 at the most.
#include <doctest/doctest.h>

#include <algorithm>

#include "publish/publish.h"

TEST_CASE("titles become plain names") {
  CHECK(publish::file_stem("The border cable, first time round") == "the-border-cable-first-time-round");
  CHECK(publish::file_stem("Bl\xC3\xA5 \xC3\xB8y & \xC3\x86ra") == "bla-oy-aera");
  CHECK(publish::file_stem("teacher's own") == "teachers-own");
}

TEST_CASE("nothing of a title can leave the folder or be empty") {
  CHECK(publish::file_stem("../../etc/passwd") == "etc-passwd");
  CHECK(publish::file_stem("\"; rm -rf / #") == "rm-rf");
  CHECK(publish::file_stem("") == "lesson");
  CHECK(publish::file_stem("\xF0\x9F\xA7\xB5\xF0\x9F\xAA\xA1") == "lesson");
  CHECK(publish::file_stem("\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D") == "lesson");
  CHECK(publish::file_stem("...") == "lesson");
  CHECK(publish::file_stem("\xC3") == "lesson");
}

TEST_CASE("long titles are cut at 40 and never end in a hyphen") {
  const std::string stem = publish::file_stem(std::string(39, 'a') + " " + std::string(300, 'b'));
  CHECK(stem == std::string(39, 'a'));
  CHECK(publish::file_stem(std::string(300, 'x')).size() == 40);
}
