// Every edit of a course as a value with a name that undo shows. An edit makes a new text of an old one, or nothing where what it means is not there.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cloth/hole.h"
#include "course/course.h"

namespace session {

struct Edit {
  std::string name;  ///< "lengthen leg"
  std::function<std::optional<std::string>(std::string_view)> change;
  std::uint64_t run = 0;  ///< edits of one drag have the same, not 0: they are one step of undo
};

// ---- lessons --------------------------------------------------------------------------------------------------------

Edit add_lesson(int before, std::string title);  ///< before lesson number `before` (from 0); its number or more: at the end
Edit rename_lesson(int lesson, std::string title);
Edit remove_lesson(int lesson);
Edit move_lesson(int lesson, int to);
/// Takes an entry out of one lesson's work and puts it at the end of another's.
Edit move_work(const course::Course& course, int lesson, int item, int to_lesson);
/// Writes the computed lay-out into the file as lessons, so that it can be changed by hand.
Edit write_lessons(std::vector<std::vector<std::string>> work);

// ---- parts ----------------------------------------------------------------------------------------------------------

struct NewPart {
  std::string name, kind, thread;
  cloth::Hole start;
  std::string path;
  std::vector<std::pair<std::string, std::string>> more;  ///< further keys as TOML
};
Edit add_part(NewPart part);
Edit remove_part(const course::Course& course, int part);  ///< with its work in the lessons
Edit move_part(int part, cloth::Hole start, std::uint64_t run = 0);
Edit change_path(int part, std::string path, std::string name, std::uint64_t run = 0);
Edit copy_part(const course::Course& course, int part, cloth::Hole by);

}  // namespace session
