// Facts that sentences on a page need and that lie in the trails: which way round, corners by sort, where thread begins and ends.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "picture/sheet.h"

namespace picture {

/// Which way a closed trail goes round as it is seen on the page (mirrored for the left hand).
bool clockwise_on_page(const Sheet& sheet, int trail);
/// The way an open trail sets out, as seen on the page; none where it has one hole.
std::optional<cloth::Way> sets_out(const Sheet& sheet, int trail, int stitch);

/// Corners of one sort: between which sides, how many in the section, and in how many of them a stitch is worked backwards.
struct CornerSort {
  bool from_slant = false, to_slant = false;
  int corners = 0, with_back = 0;
};
std::vector<CornerSort> corner_sorts(const trail::Trail& trail, const guide::Section& section);
/// Which corners of the section, counted from 1 in needle order, have their first row's corner hole among these; empty where one is not
/// found.
std::vector<int> corner_numbers(const trail::Trail& trail, const guide::Section& section, const std::vector<cloth::Hole>& holes);
int corners_in(const std::vector<CornerSort>& sorts);

const guide::Section& section_of(const Sheet& sheet, const guide::CloseUp& close_up);
bool whole(const guide::PlacedTrail& trail, const guide::Section& section);

/// Does a stitch of row `run` of this trail lie on one that an earlier pass of the part has worked?
bool row_is_there(const Sheet& sheet, int trail, int run);

/// Working length of a part's thread in cm.
double length_cm(const course::Course& course, const course::Part& part);
/// Do the stitches of this section begin with a new thread?
bool new_thread_at(const trail::Trail& trail, int stitch);
/// Stitches on each whole thread of the section, in order; the last one's rest is not counted.
std::vector<int> stitches_a_thread(const trail::Trail& trail, const guide::Section& section);
const guide::Anchor* anchor_at(const plan::Plan& plan, int trail, int stitch, bool start);

}  // namespace picture
