#include "picture/places.h"

#include <fmt/format.h>

namespace picture {
namespace {

/// "2", "1 and 3", "1 to 4"
std::string numbers_of(const Sheet& sheet, const std::vector<int>& places) {
  constexpr std::size_t run = 3;  // fewer are named one by one
  if (places.size() >= run && places.back() - places.front() + 1 == static_cast<int>(places.size()))
    return sheet.say("list.to", {{"first", std::to_string(places.front() + 1)}, {"last", std::to_string(places.back() + 1)}});
  std::vector<std::string> numbers;
  for (const int place : places) numbers.push_back(std::to_string(place + 1));
  return sheet.all_of(numbers);
}

}  // namespace

std::string part_and_pass(const Sheet& sheet, int trail) {
  const course::Part& part = sheet.part(trail);
  return sheet.say(part.work.passes_a_place() > 1 ? "lesson-title.pass.whole" : "lesson-title.part.whole",
                   {{"part", part.name}, {"pass", words::Ordinal{sheet.trail(trail).pass}}});
}

std::string at_places(const Sheet& sheet, int trail, const std::string& what, const std::vector<int>& places) {
  if (sheet.part(trail).work.places < 2) return what;
  return sheet.say("page.at-places",
                   {{"what", what}, {"places", numbers_of(sheet, places)}, {"n", static_cast<std::int64_t>(places.size())}});
}

std::vector<const guide::CountIn*> further_starts(const Sheet& sheet, const guide::CloseUp& close_up) {
  std::vector<const guide::CountIn*> starts;
  if (close_up.shows != guide::Shows::start) return starts;
  const guide::PlacedTrail& own = sheet.trail(close_up.trail);
  for (std::size_t i = 1; i < close_up.stands_for.size(); ++i)
    for (const guide::CountIn& count_in : sheet.plan.count_ins) {
      const guide::PlacedTrail& other = sheet.trail(count_in.trail);
      if (count_in.lesson == close_up.lesson && count_in.hole == close_up.stands_for[i] && other.part == own.part &&
          other.pass == own.pass && other.place != own.place)
        starts.push_back(&count_in);
    }
  return starts;
}

std::string mark_of(const guide::CloseUp& close_up, const guide::PlacedTrail& trail) {
  return fmt::format("{}{}", close_up.letter, trail.place + 1);
}

MapFrame map_frame(const Sheet& sheet, const guide::CloseUp& close_up, const cloth::Box& window) {
  MapFrame frame{close_up.letter, window, {}, {}};
  if (close_up.shows != guide::Shows::start) frame.places = close_up.stands_for;
  for (const guide::CountIn* start : further_starts(sheet, close_up)) {
    frame.places.push_back(start->hole);
    frame.marks.push_back(mark_of(close_up, sheet.trail(start->trail)));
  }
  return frame;
}

}  // namespace picture
