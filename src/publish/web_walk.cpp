#include "publish/web_walk.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <map>

#include "picture/map.h"
#include "picture/step_words.h"
#include "publish/fill.h"

namespace publish {
namespace {

constexpr int margin = 6;                 // threads of cloth round the walk
constexpr std::size_t most_lines = 4000;  // of other lessons: more are too many for a phone, and nothing that must be seen

const guide::Section& section_at(const plan::Plan& plan, std::pair<int, int> where) {
  return plan.trails[static_cast<std::size_t>(where.first)].sections[static_cast<std::size_t>(where.second)];
}

/// Sentences, each kept once; a page names them by number.
class Sentences {
 public:
  int number_of(std::string text) {
    const auto [at, fresh] = numbers_.emplace(std::move(text), static_cast<int>(numbers_.size()));
    if (fresh) order_.push_back(at->first);
    return at->second;
  }
  std::string json() const {
    std::vector<std::string> texts;
    for (const std::string& text : order_) texts.push_back(json_text(text));
    return fmt::format("[{}]", fmt::join(texts, ","));
  }

 private:
  std::map<std::string, int> numbers_;
  std::vector<std::string> order_;
};

/// To the end of an edge its last point, which closes the ridge.
std::vector<picture::NeedlePoint> points_in(const plan::Plan& plan, std::pair<int, int> where) {
  const trail::Trail& trail = plan.trails[static_cast<std::size_t>(where.first)].trail;
  const guide::Section& section = section_at(plan, where);
  const bool ends = section.last + 1 == static_cast<int>(trail.stitches.size());
  return picture::points_of(trail, section.first, section.last, ends ? picture::Ending::numbered : picture::Ending::left_out);
}

/// Which sentence is said at each point of a section.
std::vector<int> said_at(const Making& making, const plan::LessonPlan& lesson, std::pair<int, int> where, say::Hand hand, Sentences& sentences) {
  const picture::StepWords words(making.plan, {making.phrases, hand, making.course}, lesson.number, where.first, section_at(making.plan, where));
  const auto points = points_in(making.plan, where);
  std::vector<int> all;
  for (std::size_t i = 0; i < points.size(); ++i) all.push_back(sentences.number_of(words.at(points, i)));
  return all;
}

std::string points_json(const std::vector<picture::NeedlePoint>& points) {
  std::vector<int> all;
  for (const picture::NeedlePoint& point : points) all.insert(all.end(), {point.hole.x, point.hole.y});
  return fmt::format("[{}]", fmt::join(all, ","));
}

std::string via_json(const trail::Trail& trail, const guide::Section& section) {
  std::vector<std::string> all;
  for (const trail::Under& under : trail.under) {
    if (under.stitch <= section.first || under.stitch > section.last) continue;
    std::vector<int> holes;
    for (const cloth::Hole hole : under.via) holes.insert(holes.end(), {hole.x, hole.y});
    all.push_back(fmt::format("\"{}\":[{}]", under.stitch - section.first, fmt::join(holes, ",")));
  }
  return fmt::format("{{{}}}", fmt::join(all, ","));
}

std::string starts_json(const trail::Trail& trail, const guide::Section& section) {
  std::vector<int> all;
  for (const int k : trail.ends)
    if (k >= section.first && k <= section.last) all.push_back(k - section.first);
  return fmt::format("[{}]", fmt::join(all, ","));
}

std::string section_json(const Making& making, const plan::LessonPlan& lesson, std::pair<int, int> where, Sentences& right,
                         Sentences& left) {
  const guide::PlacedTrail& placed = making.plan.trails[static_cast<std::size_t>(where.first)];
  const guide::Section& section = section_at(making.plan, where);
  const std::vector<int> of_right = said_at(making, lesson, where, say::Hand::right, right);
  const std::vector<int> of_left = said_at(making, lesson, where, say::Hand::left, left);
  return fmt::format(
      R"({{"title":{},"pass":{},"place":{},"first":{},"width":{:.2f},"looped":{},"points":{},"via":{},"starts":{},"words":{{"right":[{}],"left":[{}]}}}})",
      json_text(making.course.parts[static_cast<std::size_t>(placed.part)].name), placed.pass, placed.place, section.first,
      picture::thread_width(making.course, placed.part, picture::Stage::now), placed.trail.order == stitch::Order::looped,
      points_json(points_in(making.plan, where)),
      via_json(placed.trail, section), starts_json(placed.trail, section), fmt::join(of_right, ","), fmt::join(of_left, ","));
}

std::string labels_json(const words::Phrases& phrases) {
  return fmt::format(R"("play":{},"pause":{},"count":{})", json_text(phrases.say("review.play")), json_text(phrases.say("review.pause")),
                     json_text(phrases.say("review.count", {{"part", "{part}"}, {"n", "{n}"}, {"of", "{of}"}})));
}

/// Lines of one stage and width as one path.
std::string path_of(const std::vector<picture::Seen>& lines, picture::Stage stage) {
  std::map<int, std::string> by_width;  // hundredths of a thread
  for (const picture::Seen& line : lines)
    if (line.stage == stage)
      by_width[static_cast<int>(100 * line.width)] += fmt::format("M{} {}l{} {}", line.stitch.a.x, line.stitch.a.y,
                                                                  line.stitch.b.x - line.stitch.a.x, line.stitch.b.y - line.stitch.a.y);
  std::string paths;
  for (const auto& [width, d] : by_width)
    paths += stage == picture::Stage::later ? fmt::format("<path class=\"later\" d=\"{}\"/>", d)
                                            : fmt::format("<path class=\"before\" stroke-width=\"{:.2f}\" d=\"{}\"/>", width / 100.0, d);
  return paths;
}

}  // namespace

cloth::Box walk_box(const plan::Plan& plan, const plan::LessonPlan& lesson) {
  const auto& first = plan.trails[static_cast<std::size_t>(lesson.sections.front().first)].trail.stitches.front();
  cloth::Box box{first.up.x, first.up.y, first.up.x, first.up.y};
  bool begun = false;
  for (const auto& where : lesson.sections) {
    const guide::Section& section = section_at(plan, where);
    for (int k = section.first; k <= section.last; ++k) {
      const trail::Worked& w = plan.trails[static_cast<std::size_t>(where.first)].trail.stitches[static_cast<std::size_t>(k)];
      if (!std::exchange(begun, true)) box = {w.up.x, w.up.y, w.up.x, w.up.y};
      box.grow(w.up);
      box.grow(w.down);
    }
  }
  return box.widened(margin);
}

int walk_points(const plan::Plan& plan, const plan::LessonPlan& lesson) {
  std::size_t points = 0;
  for (const auto& where : lesson.sections) points += points_in(plan, where).size();
  return static_cast<int>(points);
}

int points_before(const plan::Plan& plan, const plan::LessonPlan& lesson, int trail, int stitch) {
  int before = 0;
  for (const auto& where : lesson.sections) {
    const guide::Section& section = section_at(plan, where);
    const auto points = points_in(plan, where);
    if (where.first == trail && section.first <= stitch && stitch <= section.last) {
      const auto down = std::find_if(points.begin(), points.end(), [&](const picture::NeedlePoint& p) {
        return p.stitch == stitch && p.does == picture::NeedlePoint::Does::down;
      });
      return before + static_cast<int>(down - points.begin()) - 1;  // where the needle came up for it
    }
    before += static_cast<int>(points.size());
  }
  return -1;
}

std::string walk_json(const Making& making, const plan::LessonPlan& lesson) {
  const std::string head = fmt::format(R"("course":{},"lesson":{})", json_text(file_stem(making.course.title)), lesson.number);
  if (lesson.sections.empty()) return fmt::format("{{{}}}", head);
  Sentences right, left;
  std::vector<std::string> sections;
  for (const auto& where : lesson.sections) sections.push_back(section_json(making, lesson, where, right, left));
  const cloth::Box box = walk_box(making.plan, lesson);
  return fmt::format(R"({{{},"box":[{},{},{},{}],"sections":[{}],"say":{{"right":{},"left":{},{}}}}})", head, box.x0, box.y0, box.width(),
                     box.height(), fmt::join(sections, ","), right.json(), left.json(), labels_json(making.phrases));
}

std::string walk_cloth(const Making& making, const plan::LessonPlan& lesson) {
  auto lines =
      picture::run_together(picture::stitches_in(making.course, making.plan, walk_box(making.plan, lesson), {lesson.number, -1, -1, 0}));
  std::erase_if(lines, [](const picture::Seen& line) { return line.stage == picture::Stage::now; });
  if (lines.size() > most_lines) std::erase_if(lines, [](const picture::Seen& line) { return line.stage == picture::Stage::later; });
  if (lines.size() > most_lines) lines.resize(most_lines);
  return path_of(lines, picture::Stage::later) + path_of(lines, picture::Stage::before);
}

}  // namespace publish
