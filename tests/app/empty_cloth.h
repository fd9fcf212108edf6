// A desk with an empty cloth, for tests that draw.
#pragma once

#include "app/windowless.h"
#include "file/course_file.h"

/// A desk with an empty course and a cloth of 12 pixels a thread, the hole (0, 0) well within it.
struct Empty : Windowless {
  Empty() : Windowless(std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml") {
    desk->session.begin("format = 1\n\n[course]\ntitle = \"Mine\"\nfirst_day = 2027-01-12\n\n[cloth]\ncount = 22\n\n[thread.heavy]\npearl = 5\n\n[thread.fine]\npearl = 8\n");
    settle();
    desk->view = {-20, -20, 12, false, false, false, 0, 0};
    settle();
  }
  course::Course course() const { return file::read(desk->session.text()).course; }
};
