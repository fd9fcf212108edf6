// Courses read from text, their passes planned and begun, told into lessons by the tests themselves; and paths nobody drew.
#pragma once

#include <string>
#include <vector>

#include "course_text.h"
#include "guide/guide.h"
#include "guide/hand_made.h"
#include "guide/outline.h"

namespace worked_course {

struct Whole {
  course::Course course;
  std::vector<guide::PlacedTrail> trails;

  int size(int trail) const { return static_cast<int>(trails[trail].trail.stitches.size()); }
  /// Stitches first..last of a trail (-1: to the end) in a lesson, after what that lesson has.
  void work(int trail, int lesson, int first = 0, int last = -1) {
    int item = 0;
    for (const auto& t : trails)
      for (const auto& s : t.sections) item += s.lesson == lesson ? 1 : 0;
    trails[trail].sections.push_back({lesson, item, first, last < 0 ? size(trail) - 1 : last});
  }
  /// The close-ups of lessons 1 to so many.
  std::vector<guide::CloseUp> close_ups(int lessons) const {
    std::vector<guide::CloseUp> all;
    for (int lesson = 1; lesson <= lessons; ++lesson) {
      auto more = guide::close_ups(course, trails, lesson, all);
      all.insert(all.end(), more.begin(), more.end());
    }
    return all;
  }
};

/// Every pass of every part, begun at its `begin`th possible start.
inline Whole plan(const std::string& parts, int begin = 0) {
  Whole whole{course_of(parts), {}};
  for (std::size_t p = 0; p < whole.course.parts.size(); ++p) {
    const auto& passes = whole.course.parts[p].work.passes;
    for (std::size_t k = 0; k < passes.size(); ++k) {
      const trail::Round round = trail::plan_round(passes[k], {});
      const int start = round.starts[static_cast<std::size_t>(begin) % round.starts.size()];
      whole.trails.push_back({static_cast<int>(p), static_cast<int>(k) + 1, 0, trail::make_trail(round, start, {}, {}), {}});
    }
  }
  return whole;
}

inline std::string cable(const std::string& path, int rows = 2, const std::string& start = "[0, 0]") {
  return part_text("border " + start, "cable", start, "path = \"" + path + "\"\nrows = " + std::to_string(rows) + "\nrows_lie = \"right\"");
}
inline std::string blocks(const std::string& path, const std::string& first = "across") {
  return part_text("ring", "blocks", "[0, 0]", "first = \"" + first + "\"\npath = \"" + path + "\"");
}

inline std::string item(cloth::Way way, int threads) { return std::string(cloth::name(way)) + " " + std::to_string(threads); }

/// Clockwise along squares grown together, with sides of 12 threads and more.
inline std::string outline_path(hand_made::Chance& chance) {
  const std::vector<cloth::Hole> points = hand_made::random_outline(chance, 1 + chance.below(7));
  std::string path;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const cloth::Hole step = points[(i + 1) % points.size()] - points[i];
    path += (i ? ", " : "") + item(*cloth::way_between({0, 0}, step), 12);
  }
  return path;
}

/// Clockwise round a rectangle with cut corners.
inline std::string octagon_path(hand_made::Chance& chance) {
  const int cut[4] = {6 + 2 * chance.below(6), 6 + 2 * chance.below(6), 6 + 2 * chance.below(6), 6 + 2 * chance.below(6)};
  const int width = 40 + 2 * chance.below(8), height = 40 + 2 * chance.below(8);
  std::string path;
  for (int i = 0; i < 4; ++i) {
    const int side = (i % 2 == 0 ? width : height) - cut[i] - cut[(i + 1) % 4];
    path += (i ? ", " : "") + item(cloth::turned(cloth::Way::E, 2 * i), side) + ", " +
            item(cloth::turned(cloth::Way::SE, 2 * i), cut[(i + 1) % 4]);
  }
  return path;
}

/// The same design, the cloth turned a quarter to the right.
inline std::string turned(std::string path) {
  std::string out, word;
  const auto flush = [&] {
    const auto way = cloth::parse_way(word);
    out += way ? std::string(cloth::name(cloth::turned(*way, 2))) : word;
    word.clear();
  };
  for (const char c : path)
    if (std::isalnum(static_cast<unsigned char>(c)))
      word += c;
    else
      flush(), out += c;
  flush();
  return out;
}

}  // namespace worked_course
