// Reads a text and gives its faults as a person sees them.
#pragma once

#include <string>
#include <string_view>

#include "file/course_file.h"

/// A small right course without parts; what a test is about is added to it or put in its place.
inline constexpr std::string_view small_course = R"(format = 1
[course]
title = "Small"
[cloth]
count = 22
[thread.heavy]
pearl = 5
)";

inline std::string faults_of(std::string_view text) {
  std::string out;
  for (const base::Fault& fault : file::read(text).faults) out += base::render("x", text, fault);
  return out;
}

/// The faults of the small course with more lines behind it.
inline std::string faults_with(std::string_view more) { return faults_of(std::string(small_course) + std::string(more)); }
