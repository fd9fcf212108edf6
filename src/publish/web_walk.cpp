#include "publish/web_walk.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <map>

#include "picture/map.h"
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

/// What is said at each point of one section.
class Teller {
 public:
  Teller(const Making& making, const plan::LessonPlan& lesson, std::pair<int, int> where, say::Hand hand, Sentences& sentences)
      : making_(making),
        lesson_(lesson),
        placed_(making.plan.trails[static_cast<std::size_t>(where.first)]),
        trail_(where.first),
        section_(section_at(making.plan, where)),
        voice_{making.phrases, hand, making.course},
        sentences_(sentences) {}

  std::vector<int> numbers() const {
    std::vector<int> all;
    for (int k = section_.first; k <= section_.last; ++k) {
      all.push_back(sentences_.number_of(k == section_.first ? first() : up(k)));
      all.push_back(sentences_.number_of(down(k)));
    }
    return all;
  }

 private:
  const trail::Worked& worked(int k) const { return placed_.trail.stitches[static_cast<std::size_t>(k)]; }

  std::string first() const {
    for (const guide::CountIn& count_in : making_.plan.count_ins)
      if (count_in.trail == trail_ && count_in.lesson == lesson_.number && count_in.stitch == section_.first)
        return say::count_in(voice_, count_in);
    return say("review.step.first", {});
  }

  /// "{n}: up, 2 threads down, then 1 to the left, from where it went down."
  std::string up(int k) const {
    const bool fresh = std::find(placed_.trail.ends.begin(), placed_.trail.ends.end(), k) != placed_.trail.ends.end();
    const std::string key = worked(k).backward ? "review.step.up-back" : "review.step.up";
    const std::string said = say(key, {{"move", move(worked(k - 1).down, worked(k).up)}});
    return fresh ? say("review.step.new-thread", {{"step", said}}) : said;
  }
  std::string down(int k) const { return say("review.step.down", {{"move", move(worked(k).up, worked(k).down)}}); }

  std::string move(cloth::Hole from, cloth::Hole to) const {
    std::vector<guide::Leg> legs;
    if (to.y != from.y) legs.push_back({to.y < from.y ? cloth::Way::N : cloth::Way::S, std::abs(to.y - from.y)});
    if (to.x != from.x) legs.push_back({to.x > from.x ? cloth::Way::E : cloth::Way::W, std::abs(to.x - from.x)});
    return legs.empty() ? say("review.step.same", {}) : say::legs(voice_, legs);
  }

  /// The number of the point stays open: the page puts it in.
  std::string say(const std::string& key, words::Arguments arguments) const {
    arguments["n"] = std::string("{n}");
    return making_.phrases.say(key, arguments);
  }

  const Making& making_;
  const plan::LessonPlan& lesson_;
  const guide::PlacedTrail& placed_;
  int trail_;
  const guide::Section& section_;
  say::Voice voice_;
  Sentences& sentences_;
};

std::string points_json(const trail::Trail& trail, const guide::Section& section) {
  std::vector<int> all;
  for (int k = section.first; k <= section.last; ++k) {
    const trail::Worked& w = trail.stitches[static_cast<std::size_t>(k)];
    all.insert(all.end(), {w.up.x, w.up.y, w.down.x, w.down.y});
  }
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
  const std::vector<int> of_right = Teller(making, lesson, where, say::Hand::right, right).numbers();
  const std::vector<int> of_left = Teller(making, lesson, where, say::Hand::left, left).numbers();
  return fmt::format(
      R"({{"title":{},"pass":{},"place":{},"first":{},"width":{:.2f},"points":{},"via":{},"starts":{},"words":{{"right":[{}],"left":[{}]}}}})",
      json_text(making.course.parts[static_cast<std::size_t>(placed.part)].name), placed.pass, placed.place, section.first,
      picture::thread_width(making.course, placed.part, picture::Stage::now), points_json(placed.trail, section),
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
  int points = 0;
  for (const auto& where : lesson.sections) points += 2 * (section_at(plan, where).last - section_at(plan, where).first + 1);
  return points;
}

int points_before(const plan::Plan& plan, const plan::LessonPlan& lesson, int trail, int stitch) {
  int points = 0;
  for (const auto& where : lesson.sections) {
    const guide::Section& section = section_at(plan, where);
    if (where.first == trail && section.first <= stitch && stitch <= section.last) return points + 2 * (stitch - section.first);
    points += 2 * (section.last - section.first + 1);
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
