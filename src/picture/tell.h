// The sentences of a lesson's pages, one function a section. All words come from the phrase table; every number from the plan.
#pragma once

#include "picture/close_up.h"
#include "picture/telling.h"

namespace picture {

/// Beside a close-up, by what it shows.
Telling tell_close_up(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture);

// The parts of it.
void tell_start(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture, Telling& telling);
/// Heading, tail, landmark and proof: what a start needs before the first stitch.
void tell_count_in(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture, Telling& telling);
/// What follows the count: the rhythm, where the thread is finished if the picture shows it, and the same start at further places of a
/// repeated part, each with its own count.
void tell_from_one(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
/// Which row or block first, which way, over how many threads.
void tell_rhythm(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_corner(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_second_pass(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_join(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_end(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
// The same where stitches are looped (tell_edge.cpp).
void tell_edge(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_edge_corner(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_edge_join(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_edge_end(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
void tell_edge_thread(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling);
/// Which stitches one row has more in the close-up, and the back stitches that this asks for.
std::string tell_back_stitches(const Sheet& sheet, const guide::CloseUp& close_up);
/// How many stitches lie between this close-up and the one before it; empty where none is before it on the same trail.
std::string stitches_between(const Sheet& sheet, const guide::CloseUp& close_up);
/// "Four times: at each B on the small picture."
std::string times_and_where(const Sheet& sheet, const guide::CloseUp& close_up);
/// "outer", "first": a row's name where "row" is said already.
std::string short_row(const Sheet& sheet, int trail, int run);

/// "22 threads an inch", as the teacher wrote it.
std::string cloth_count(const Sheet& sheet);

// Under the title and further down the sheet.
std::vector<std::string> ready_items(const Sheet& sheet);  ///< one thing each: what is brought to the lesson
std::string have_ready(const Sheet& sheet);
/// Where corners are to be marked beforehand: that this comes first, and under which heading.
std::string marks_first(const Sheet& sheet);
Telling tell_threads(const Sheet& sheet);
Telling tell_marks(const Sheet& sheet);
Telling tell_notes(const Sheet& sheet);
Telling tell_missed(const Sheet& sheet);
/// Washing and cutting out have no pictures, but words and cautions.
/// In a lesson that begins with the cloth, that it is prepared first; else empty.
std::string prepare_first(const Sheet& sheet);
Telling tell_other_work(const Sheet& sheet);

}  // namespace picture
