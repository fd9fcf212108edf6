// What must hold for any bytes at all that are given as a course file.
#pragma once

#include <cstddef>
#include <string_view>

namespace fuzz {

/// Reads, shows the faults, tidies; stops the program where a promise is broken: faults in order and inside the text, at least one or none
/// with a right course, the canonical form one and the same course.
void check_course(std::string_view bytes);

}  // namespace fuzz
