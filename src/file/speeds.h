// The table of assumed speeds (assets/tables/speeds.toml): stitches a minute by kind, for a practised class and for beginners.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "base/result.h"

namespace file {

struct Speeds {
  std::map<std::string, double> practised, beginner;
};
/// Reads a table of that form; trouble names the line of one thing that is wrong.
base::Result<Speeds> read_assumed_speeds(std::string_view text);
/// The program's own table, read once.
const Speeds& assumed_speeds();

}  // namespace file
