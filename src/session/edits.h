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

/// The work that split_again found, into the lessons that are not locked; further lessons behind the last.
Edit take_split(const course::Course& course, std::vector<std::vector<std::string>> work);
Edit lock_lesson(int lesson, bool locked);
Edit change_notes(int lesson, std::string notes);  ///< empty: none

// ---- the course -----------------------------------------------------------------------------------------------------

/// A key of [course] set to a value written as TOML; `name` is the edit's.
Edit change_course(std::string key, std::string value, std::string name);
/// A key of [habits], likewise.
Edit change_habit(std::string key, std::string value, std::string name);
Edit change_pace(course::Pace pace);
Edit add_student();
/// The n-th of the class list (from 0). Neither name nor hand needs to be written: an empty name and the right hand are left out.
Edit change_student(int number, std::string name, course::Hand hand);
Edit remove_student(int number);
/// Stitches a minute of a kind (or bars, or fillings), the teacher's own; none: as assumed for the class's pace.
Edit change_speed(std::string kind, std::optional<double> speed);

// ---- parts ----------------------------------------------------------------------------------------------------------

struct NewPart {
  std::string name, kind, thread;
  stitch::Values values;  ///< of the kind's keys; those that are as by default are not written
};
Edit add_part(NewPart part);
/// The name, or "name 2", "name 3"... where parts have it already.
std::string free_name(const course::Course& course, const std::string& name);
std::string value_in_toml(const stitch::Value& value);
Edit rename_part(const course::Course& course, int part, std::string name);  ///< in the lessons' work and where other parts name it too
/// With its work in the lessons, and its name in other parts; where it is the only one that a part names, the edit makes faults.
Edit remove_part(const course::Course& course, int part);
/// Every hole of it moves: the kind's own holes and its `begin_at`; not the landmark it is counted from.
Edit move_part(const course::Course& course, int part, cloth::Hole by, std::uint64_t run = 0);
/// A key of the part set to a value written as TOML.
Edit change_key(int part, std::string key, std::string value, std::string name, std::uint64_t run = 0);
Edit remove_key(int part, std::string key, std::string name);
/// Every key of its kind as in `values`; a key that is not there is taken out.
Edit change_values(int part, stitch::Values values, std::string name, std::uint64_t run = 0);
Edit change_path(int part, std::string path, std::string name, std::uint64_t run = 0);
/// The part repeated otherwise, or no longer. `repeat` must fit (stitch::fits).
Edit change_repeat(int part, const stitch::Repeat& repeat);
Edit copy_part(const course::Course& course, int part, cloth::Hole by);

}  // namespace session
