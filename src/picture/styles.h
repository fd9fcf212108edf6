// How pages look: colours, line widths, type. Contrasts are held by tests against WCAG 2.2: what must be seen on white
// has 3 at the least, type 4.5; whatever must be told apart differs by its shape too.
#pragma once

#include "list/list.h"
#include "list/measure.h"
#include "picture/handout.h"

namespace picture {

namespace colour {
inline constexpr list::Colour white{0xFF, 0xFF, 0xFF};
inline constexpr list::Colour ink{0x16, 0x23, 0x3A};
inline constexpr list::Colour grid{0xD3, 0xDA, 0xE3};
inline constexpr list::Colour grid_fourth{0xA9, 0xB6, 0xC6};
inline constexpr list::Colour now{0x1B, 0x32, 0x5F};     ///< this lesson's stitches
inline constexpr list::Colour before{0x82, 0x94, 0xAC};  ///< stitched before
inline constexpr list::Colour later{0x82, 0x94, 0xAC};   ///< not yet: thin
inline constexpr list::Colour accent{0xC4, 0x50, 0x1F};  ///< the count-in, and what is cut
inline constexpr list::Colour gone{0xDF, 0xE4, 0xEB};    ///< where threads are taken out
inline constexpr list::Colour rule{0xA9, 0xB6, 0xC6};    ///< lines between rows of a table
}  // namespace colour

/// Widths and radii of what is drawn on the cloth, in threads of the picture, so that every picture has the same proportions.
namespace ratio {
inline constexpr double widest_now = 0.40, widest_before = 0.60, later = 0.10;
inline constexpr double back = 0.075;      ///< the broken line
inline constexpr double gap = 0.09;        ///< from a stitch's round end to the middle of its hole
inline constexpr double dot = 0.27;        ///< radius of a mark at a hole, larger than half of any stitch's width
inline constexpr double mark_room = 0.36;  ///< radius that any mark keeps free
}  // namespace ratio

/// Sizes of type and what hangs on them. Text never below 12 pt, numbers never below 7 pt.
struct Styles {
  list::TypeStyle body, strong, heading, title, head, letter, number, ruler;
  double scale_wanted = 4.2;  ///< mm a thread
  double scale_least = 3.0;   ///< smallest scale at which stitches are numbered
  double number_least_pt = 7;
  bool key_aside = false;     ///< the key stands beside the picture and the words under it: for large type
  double text_least_mm = 74;  ///< narrowest column of running text
  double text_most_mm = 150;  ///< widest: some 70 letters a line
};
Styles styles_for(Print print);

/// From one base line to the next.
inline double line_height(list::TypeStyle style) { return style.size_pt * list::mm_per_pt * 1.36; }
inline double em(list::TypeStyle style) { return style.size_pt * list::mm_per_pt; }

}  // namespace picture
