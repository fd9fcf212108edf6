// Every package that the set-up installs is explained in packages.md with its licence, and the other way round.
#include <doctest/doctest.h>

#include <set>

#include "base/sources.h"

namespace {

std::string table(const char* name) { return house::read_file(std::string(TELLEKANT_ROOT) + "/third_party/" + name); }

/// Packages of packages.txt; every line has a known group, a package and a reason.
std::set<std::string> listed() {
  std::set<std::string> packages;
  for (const std::string& line : house::lines_of(table("packages.txt"))) {
    if (line.empty() || line.starts_with('#')) continue;
    std::istringstream stream(line);
    std::string group, package, why;
    stream >> group >> package >> why;
    CAPTURE(line);
    CHECK((group == "build" || group == "test" || group == "optional"));
    CHECK_FALSE(why.empty());
    CHECK(packages.insert(package).second);
  }
  return packages;
}

/// First cells of the tables of packages.md; no row has an empty cell.
std::set<std::string> explained() {
  std::set<std::string> packages;
  for (const std::string& line : house::lines_of(table("packages.md"))) {
    if (!line.starts_with("| ") || line.starts_with("| package ")) continue;
    CAPTURE(line);
    CHECK(std::count(line.begin(), line.end(), '|') == 5);
    CHECK(line.find("|  |") == std::string::npos);
    packages.insert(line.substr(2, line.find(' ', 2) - 2));
  }
  return packages;
}

}  // namespace

TEST_CASE("packages that are installed are explained, and no others") {
  const std::set<std::string> packages = listed();
  CHECK(packages.size() > 15);
  CHECK(packages == explained());
}

TEST_CASE("the licence of the project stands in the README") {
  const std::string readme = house::read_file(std::string(TELLEKANT_ROOT) + "/README.md");
  CHECK(readme.find("MIT License") != std::string::npos);
  CHECK(readme.find("Permission is hereby granted, free of charge") != std::string::npos);
}
