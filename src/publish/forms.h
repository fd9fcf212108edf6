// What each form of the handouts adds to the files that are made. A form is one file form_NAME.cpp and one line in handouts.cpp.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "publish/press.h"

namespace publish {

/// All lessons' pages for one hand, laid out.
struct HandPages {
  say::Hand hand = say::Hand::right;
  std::filesystem::path folder;
  struct Lesson {
    int number = 1;
    std::string title, stem;  ///< "lesson-03-the-border-cable"
    std::vector<list::List> pages;
  };
  std::vector<Lesson> lessons;
  std::vector<Lesson> of_course;  ///< pages of the course as a whole (number 0), in PNG and PDF only: what to buy; preparing and finishing
};

/// What the forms are made from. Jobs hold references to it: it must outlive them.
struct Making {
  const course::Course& course;
  const plan::Plan& plan;
  const words::Phrases& phrases;
  const HandoutOrder& order;
};

/// The list as it is to be printed.
list::List inked(list::List list, Ink ink);

void add_png(const Making& making, const HandPages& pages, std::vector<Job>& jobs);
/// One file a lesson and, where the whole course is asked for, one of all.
void add_pdf(const Making& making, const HandPages& pages, std::vector<Job>& jobs);

/// Each close-up and map by itself. Pictures are laid out here, so that their names are known.
base::Result<void> add_svg(const Making& making, const HandPages& pages, Types& types, const std::stop_token& stop, std::vector<Job>& jobs);

/// One page a lesson for both hands, straight in the folder, and an index of them.
void add_web(const Making& making, const HandPages& pages, const std::filesystem::path& into, std::vector<Job>& jobs);

/// Every needle point of every close-up for a film, a folder for each size, with the cue sheet.
base::Result<void> add_stills(const Making& making, const HandPages& pages, Types& types, const std::stop_token& stop, std::vector<Job>& jobs);

}  // namespace publish
