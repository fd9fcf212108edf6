#include "picture/step_words.h"

#include <algorithm>
#include <cstdlib>

namespace picture {

using Does = NeedlePoint::Does;

std::string StepWords::at(const std::vector<NeedlePoint>& points, std::size_t i) const {
  const NeedlePoint& point = points[i];
  if (point.does == Does::begins) return begins(point);
  const std::string way = move(points[i - 1].hole, point.hole);
  switch (point.does) {
    case Does::up:
      return up(point.stitch, way);
    case Does::loops:
      return say("review.step.loop", {{"move", way}});
    case Does::old_down:
      return say("review.step.thread-ends", {{"move", way}});
    case Does::new_up:
      return say("review.step.thread-begins", {});
    case Does::closes:
      return say(trail().closed ? "review.step.ridge-closes" : "review.step.ridge-ends", {{"move", way}});
    default:
      return say("review.step.down", {{"move", way}});
  }
}

std::string StepWords::begins(const NeedlePoint& point) const {
  if (point.stitch == section_.first)
    for (const guide::CountIn& count_in : plan_.count_ins)
      if (count_in.trail == trail_ && count_in.lesson == lesson_ && count_in.stitch == section_.first && count_in.hole == point.hole)
        return say::count_in(voice_, count_in);
  const bool came_up = trail().order == stitch::Order::looped && point.hole != trail().stitches[static_cast<std::size_t>(point.stitch)].up;
  return say(came_up ? "review.step.came-up" : "review.step.first", {});
}

std::string StepWords::up(int stitch, const std::string& move) const {
  const bool fresh = std::binary_search(trail().ends.begin(), trail().ends.end(), stitch);
  const bool backward = trail().stitches[static_cast<std::size_t>(stitch)].backward;
  const std::string said = say(backward ? "review.step.up-back" : "review.step.up", {{"move", move}});
  return fresh ? say("review.step.new-thread", {{"step", said}}) : said;
}

std::string StepWords::move(cloth::Hole from, cloth::Hole to) const {
  std::vector<guide::Leg> legs;
  if (to.y != from.y) legs.push_back({to.y < from.y ? cloth::Way::N : cloth::Way::S, std::abs(to.y - from.y)});
  if (to.x != from.x) legs.push_back({to.x > from.x ? cloth::Way::E : cloth::Way::W, std::abs(to.x - from.x)});
  return legs.empty() ? say("review.step.same", {}) : say::legs(voice_, legs);
}

std::string StepWords::say(const std::string& key, words::Arguments arguments) const {
  arguments["n"] = std::string("{n}");
  return voice_.phrases.say(key, arguments);
}

std::string with_number(std::string words, int n) {
  for (std::size_t at; (at = words.find("{n}")) != std::string::npos;) words.replace(at, 3, std::to_string(n));
  return words;
}

}  // namespace picture
