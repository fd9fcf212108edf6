// The table of pearl cottons as they are sold (assets/tables/threads.toml): metres, grams and needle of each size.
#pragma once

#include <string_view>
#include <vector>

#include "base/result.h"
#include "course/course.h"

namespace file {

/// Reads a table of that form; trouble names the line of one thing that is wrong.
base::Result<std::vector<course::SoldAs>> read_thread_sizes(std::string_view text);
/// The program's own table, read once.
const std::vector<course::SoldAs>& thread_sizes();
/// How that pearl cotton is sold; of a size that is not in the table the needle of the nearest one, and nothing else.
course::SoldAs sold_as(const std::vector<course::SoldAs>& sizes, int pearl);

}  // namespace file
