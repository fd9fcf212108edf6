// What must hold of a lesson's close-ups, each told in words where it does not.
#pragma once

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "guide/naive_corners.h"

namespace close_up_checks {

inline std::string shows(const guide::CloseUp& c) {
  static const char* const words[] = {"start", "corner", "step back", "second pass", "new thread", "join", "end"};
  return words[static_cast<int>(c.shows)];
}

/// "A start 1, B corner 4, ..."
inline std::string list(const std::vector<guide::CloseUp>& close_ups, int lesson = 1) {
  std::string text;
  for (const guide::CloseUp& c : close_ups)
    if (c.lesson == lesson) text += (text.empty() ? "" : ", ") + c.letter + " " + shows(c) + " " + std::to_string(c.stands_for.size());
  return text;
}

inline bool of_corner(const guide::CloseUp& c) {
  return c.shows == guide::Shows::corner || c.shows == guide::Shows::step_back || c.shows == guide::Shows::second_pass;
}

inline bool worked_in(const worked_course::Whole& whole, int trail, int stitch, int lesson) {
  const auto& sections = whole.trails[trail].sections;
  return std::any_of(sections.begin(), sections.end(),
                     [&](const auto& s) { return s.lesson == lesson && s.first <= stitch && stitch <= s.last; });
}

/// What holds of every close-up of a lesson. Empty where all is well.
inline std::string trouble(const worked_course::Whole& whole, const std::vector<guide::CloseUp>& close_ups, int lesson) {
  std::string text;
  const auto tell = [&](const guide::CloseUp& c, const std::string& what) { text += c.letter + ": " + what + "; "; };
  std::set<std::string> letters;
  for (const guide::CloseUp& c : close_ups) {
    if (c.lesson != lesson) continue;
    if (!letters.insert(c.letter).second) tell(c, "letter used twice");
    const auto& stitches = whole.trails[c.trail].trail.stitches;
    if (c.first < 0 || c.last < c.first || c.last >= static_cast<int>(stitches.size())) return c.letter + " numbers no stitches";
    if (c.window.width() < 12 || c.window.height() < 10) tell(c, "small window");
    for (int k = c.first; k <= c.last; ++k) {
      if (!c.window.widened(-2).holds(stitches[k].up) || !c.window.widened(-2).holds(stitches[k].down)) tell(c, "point outside");
      if (!worked_in(whole, c.trail, k, lesson)) tell(c, "stitch of another lesson numbered");
    }
    std::vector<int> back;
    for (int k = c.first; k <= c.last; ++k)
      if (stitches[k].backward) back.push_back(k);
    if (back != c.steps_back) tell(c, "steps back");
    if (c.stands_for.empty()) tell(c, "stands for nothing");
  }
  return text;
}

/// Corners of the lesson on trails worked turn about, those cut by its sections included.
inline std::vector<naive::Corner> corners_of(const worked_course::Whole& whole, int lesson) {
  std::vector<naive::Corner> of_lesson;
  for (int t = 0; t < static_cast<int>(whole.trails.size()); ++t)
    for (const naive::Corner& c : naive::corners(whole, t))
      if (worked_in(whole, t, c.turn, lesson) && worked_in(whole, t, c.turn - 1, lesson)) of_lesson.push_back(c);
  return of_lesson;
}

/// Is all that is to be shown round the corner worked in the lesson?
inline bool whole_corner(const worked_course::Whole& whole, const naive::Corner& c, int lesson) {
  for (int k = c.first; k < c.first + static_cast<int>(c.around.size()); ++k)
    if (!worked_in(whole, c.trail, k, lesson)) return false;
  return true;
}

/// Is every corner in exactly one window, like ones together and unlike ones apart?
inline std::string mix_up(const worked_course::Whole& whole, const std::vector<guide::CloseUp>& close_ups, int lesson) {
  const std::vector<naive::Corner> corners = corners_of(whole, lesson);
  std::multimap<cloth::Hole, int> holes;
  for (std::size_t i = 0; i < close_ups.size(); ++i)
    if (close_ups[i].lesson == lesson && of_corner(close_ups[i]))
      for (const cloth::Hole h : close_ups[i].stands_for) holes.emplace(h, static_cast<int>(i));
  if (holes.size() != corners.size()) return "corners " + std::to_string(corners.size()) + ", places " + std::to_string(holes.size());
  std::vector<int> window;
  for (const naive::Corner& c : corners) {
    if (holes.count(c.hole) != 1) return "a corner in no window, or in two";
    window.push_back(holes.find(c.hole)->second);
  }
  for (std::size_t i = 0; i < corners.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (naive::alike(corners[i], corners[k]) != (window[i] == window[k]))
        return "corners that differ share a window, or like ones do not";
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const guide::CloseUp& shown = close_ups[window[i]];
    if (whole_corner(whole, corners[i], lesson) && shown.last - shown.first + 1 != static_cast<int>(corners[i].around.size()))
      return "a window cut short where a like corner is whole";
  }
  return "";
}

inline std::string check(const worked_course::Whole& whole, const std::vector<guide::CloseUp>& close_ups, int lesson) {
  return trouble(whole, close_ups, lesson) + mix_up(whole, close_ups, lesson);
}

}  // namespace close_up_checks
