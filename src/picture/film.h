// Stills for a film: a close-up on a wide picture, its needle points appearing one after another, each with its words in type that is read
// on a telephone at arm's length.
#pragma once

#include <string>
#include <vector>

#include "list/measure.h"
#include "plan/plan.h"
#include "say/say.h"

namespace picture {

inline constexpr double film_width = 320, film_height = 180;  ///< mm: 16 to 9
inline constexpr double film_type = film_height / 22;         ///< mm: no type is smaller

struct Still {
  std::string letter;  ///< of the close-up; of a map its name
  bool needle = true;  ///< a needle point; else cutting, bars or fillings, step by step in words
  int number = 1;      ///< within the close-up, from 1
  std::string title;   ///< of the close-up
  std::string words;   ///< what is said
  double seconds = 3;  ///< how long it should stay, in tenths
  list::List list;     ///< film_width by film_height; nothing nearer to an edge than a twentieth of it
};

/// All stills of a lesson in order. Seconds: as long as a hand needs for half a stitch of its kind, at a start the count by its counting
/// costs with it; of cutting, bars and fillings as long as one of their steps; and never less than the words take to be read aloud (two and a half words a second; common practice, no source).
std::vector<Still> film(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                        const list::Measure& measure);

}  // namespace picture
