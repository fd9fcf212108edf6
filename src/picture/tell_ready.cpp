// The look-over of each area before it is cut, point by point, to be ticked. Areas of which the same is said are told together.
#include <algorithm>
#include <set>

#include "picture/cut_pages.h"
#include "picture/places.h"

namespace picture {
namespace {

using Lines = std::vector<std::string>;

std::int64_t wide(std::size_t n) { return static_cast<std::int64_t>(n); }

void add_once(Lines& lines, std::string line) {
  if (std::find(lines.begin(), lines.end(), line) == lines.end()) lines.push_back(std::move(line));
}

class Points {
 public:
  Points(const Sheet& sheet, const CutWork& work) : sheet_(sheet), work_(work) {}

  Lines of(const plan::ReadyArea& area) const {
    Lines all;
    for (const auto& held : area.blocks)
      all.push_back(sheet_.say("page.cut.tick.blocks", {{"n", std::int64_t{held.blocks}}, {"number", sheet_.number(held.blocks)}, {"part", name(held.part)}, {"stitches", std::int64_t{held.stitches}}}));
    all.push_back(sheet_.say("page.cut.tick.finished", {{"work", sheet_.all_of(finished(area))}}));
    all.push_back(sheet_.say("page.cut.tick.apart", {{"lengths", sheet_.all_of(lengths(area.area))}}));
    all.push_back(ends(area));
    all.push_back(across(area));
    all.push_back(sheet_.say("page.cut.tick.teacher"));
    return all;
  }

 private:
  std::string name(int part) const { return sheet_.course.parts[static_cast<std::size_t>(part)].name; }

  Lines finished(const plan::ReadyArea& area) const {
    Lines all;
    for (const auto& done : area.finished)
      all.push_back(sheet_.say("page.cut.tick.work", {{"part", name(done.part)}, {"lesson", std::int64_t{done.lesson}}}));
    return all;
  }

  Lines lengths(int area) const {
    std::set<int> apart;
    for (const CutEnd& end : work_.ends)
      if (end.area == area) apart.insert(end.length());
    Lines all;
    for (const int n : apart) all.push_back(std::to_string(n));
    return all;
  }

  std::string ends(const plan::ReadyArea& area) const {
    if (area.tails.empty()) return sheet_.say("page.cut.tick.no-ends");
    Lines parts;
    for (const plan::ReadyArea::Tail& tail : area.tails) add_once(parts, sheet_.part(tail.trail).name);
    return sheet_.say("page.cut.tick.ends", {{"n", wide(area.tails.size())}, {"number", sheet_.number(static_cast<int>(area.tails.size()))}, {"parts", sheet_.all_of(parts)}});
  }

  std::string across(const plan::ReadyArea& area) const {
    if (area.across.empty()) return sheet_.say("page.cut.tick.back");
    Lines parts;
    for (const plan::ReadyArea::Across& one : area.across) add_once(parts, part_and_pass(sheet_, one.trail));
    return sheet_.say("page.cut.tick.across", {{"n", wide(area.across.size())}, {"number", sheet_.number(static_cast<int>(area.across.size()))}, {"parts", sheet_.all_of(parts)}});
  }

  const Sheet& sheet_;
  const CutWork& work_;
};

}  // namespace

std::vector<Telling> tell_ready(const Sheet& sheet, const CutWork& work) {
  const Points points(sheet, work);
  std::vector<std::pair<Lines, Lines>> alike;  // what is said, and the numbers of the areas
  for (const plan::ReadyArea& area : work.cut->ready) {
    Lines said = points.of(area);
    auto found = std::find_if(alike.begin(), alike.end(), [&](const auto& one) { return one.first == said; });
    if (found == alike.end()) found = alike.insert(alike.end(), {std::move(said), {}});
    found->second.push_back(std::to_string(area.area + 1));
  }
  std::vector<Telling> all;
  for (const auto& [said, areas] : alike) {
    Telling& telling = all.emplace_back();
    telling.heading(work.areas() == 1 ? sheet.say("page.cut.tick")
                                      : sheet.say("page.cut.tick.areas", {{"n", wide(areas.size())}, {"areas", sheet.all_of(areas)}}));
    for (const std::string& point : said) telling.ticked(point);
  }
  return all;
}

}  // namespace picture
