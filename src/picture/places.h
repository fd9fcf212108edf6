// Places of a repeated part in words, and which of a lesson's starts are the same again at further places.
#pragma once

#include <string>
#include <vector>

#include "picture/map.h"

namespace picture {

/// "border, second time" where a part is worked more than once, else its name.
std::string part_and_pass(const Sheet& sheet, int trail);

/// "corner stars, each of places 1 to 4": `what`, and where a part is repeated at which of its places, from 0 and rising, at least one.
std::string at_places(const Sheet& sheet, int trail, const std::string& what, const std::vector<int>& places);

/// Of the starts that a close-up speaks for, those at other places than its own.
std::vector<const guide::CountIn*> further_starts(const Sheet& sheet, const guide::CloseUp& close_up);
/// "A2": how such a start is marked on the small picture.
std::string mark_of(const guide::CloseUp& close_up, const guide::PlacedTrail& trail);
/// The close-up on the small picture, with the places that it speaks for.
MapFrame map_frame(const Sheet& sheet, const guide::CloseUp& close_up, const cloth::Box& window);

/// Things said of one trail each: what is said of several places of the same part and pass is one thing, with those places. `Said` has
/// `trail` and `places`; `same` compares two of them that are of the same part and pass.
template <class Said, class Same>
void add_at_place(const Sheet& sheet, Said said, const Same& same, std::vector<Said>& all) {
  const guide::PlacedTrail& own = sheet.trail(said.trail);
  for (Said& other : all) {
    const guide::PlacedTrail& placed = sheet.trail(other.trail);
    if (placed.part != own.part || placed.pass != own.pass || !same(other, said)) continue;
    if (other.places.back() != own.place) other.places.push_back(own.place);
    return;
  }
  said.places = {own.place};
  all.push_back(std::move(said));
}

}  // namespace picture
