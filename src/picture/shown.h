// A lesson in pieces, for files and screens that have no pages: each picture by itself with its words, and the words that need none.
#pragma once

#include <string>
#include <vector>

#include "picture/handout.h"
#include "picture/telling.h"

namespace picture {

/// One picture, its upper left corner (0, 0), room for its letter round it.
struct Shown {
  std::string letter;  ///< of the close-up; "" for the map
  std::string name;    ///< for files: "a", "a-count", "map"
  std::string title;   ///< "B: At each corner"
  list::List list;
  Telling before;                       ///< what is read before it: what is looked over before anything is cut
  Telling telling;                      ///< its heading first
  int trail = -1, first = 0, last = 0;  ///< stitches that are numbered; -1: none
};

struct ShownLesson {
  std::string title, line, ready;  ///< line: which lesson, day, minutes; ready: what to have ready
  std::vector<Shown> pictures;     ///< the map last
  std::vector<Telling> rest;       ///< threads, corners to mark, notes
};

/// How large the pictures may be, in mm.
struct ShownSize {
  double width = 170, height = 150;
  Print print = Print::normal;
};

ShownLesson show_lesson(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                        const list::Measure& measure, const ShownSize& size);

/// What to have ready for a lesson, as on its page.
std::string ready_for(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice, const list::Measure& measure);

/// The words without their headings' breaks: one paragraph a piece.
std::string plain(const Telling& telling);

}  // namespace picture
