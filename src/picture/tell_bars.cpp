// The words of bars and fillings.
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "picture/bar_pages.h"

namespace picture {
namespace {

std::int64_t wide(std::ptrdiff_t n) { return static_cast<std::int64_t>(n); }

std::string_view stage(const BarWork& work) { return work.bars() ? "bars" : "fillings"; }

/// Numbers of the items with which a thread begins.
std::vector<int> starts_of(const BarWork& work) {
  std::vector<int> starts;
  for (const int start : work.route->starts)
    if (work.first <= start && start <= work.last) starts.push_back(start + 1);
  return starts;
}

std::string numbers_words(const Sheet& sheet, const std::vector<int>& numbers) {
  constexpr std::size_t most = 16;
  if (numbers.size() > most) return sheet.say("page.bars.starts.many", {{"n", wide(static_cast<std::ptrdiff_t>(numbers.size()))}});
  std::vector<std::string> said;
  for (const int n : numbers) said.push_back(std::to_string(n));
  return sheet.all_of(said);
}

/// How many weaves bars have, fewest and most.
std::pair<int, int> weaves_of(const BarWork& work) {
  int least = work.item(work.first).weaves, most = least;
  for (int i = work.first; i <= work.last; ++i) {
    least = std::min(least, work.item(i).weaves);
    most = std::max(most, work.item(i).weaves);
  }
  return {least, most};
}

std::string_view kind_key(stitch::Filling kind) {
  switch (kind) {
    case stitch::Filling::doves_eye: return "doves-eye";
    case stitch::Filling::square_filet: return "square-filet";
    default: return "wheel";
  }
}

}  // namespace

Telling tell_bar_map(const Sheet& sheet, const BarWork& work, bool several) {
  Telling telling;
  const std::string name = sheet.course.parts[static_cast<std::size_t>(work.route->part)].name;
  telling.accent_heading(sheet.say(fmt::format("page.{}.map{}", stage(work), several ? ".part" : ""), {{"part", name}}));
  telling.paragraph(sentences({sheet.say(fmt::format("page.{}.map.order", stage(work)), {{"first", std::int64_t{work.first + 1}}, {"last", std::int64_t{work.last + 1}}}),
                               sheet.say(fmt::format("page.{}.map.behind", stage(work)))}));
  telling.paragraph(sheet.say("page.bars.starts", {{"numbers", numbers_words(sheet, starts_of(work))}, {"n", wide(static_cast<std::ptrdiff_t>(starts_of(work).size()))}}));
  return telling;
}

Telling tell_bar(const Sheet& sheet, const BarWork& work, int item) {
  Telling telling;
  const char* how = work.wrapped ? "wrapped" : "woven";
  const auto [least, most] = weaves_of(work);
  telling.heading(sheet.say(fmt::format("page.bars.{}", how), {{"n", std::int64_t{item + 1}}}));
  int number = 0;
  for (const char* step : {"start", "go", "on", "close"}) telling.numbered(++number, sheet.say(fmt::format("page.bars.{}.{}", how, step)));
  telling.paragraph(sheet.say(fmt::format("page.bars.{}.count{}", how, least == most ? "" : ".halved"), {{"n", std::int64_t{most}}, {"least", std::int64_t{least}}}));
  return telling;
}

Telling tell_filling(const Sheet& sheet, const BarWork& work, int item, int filling, int alike) {
  const cutwork::RouteItem& worked = work.item(item);
  const cutwork::FillingWork& one = worked.fillings[static_cast<std::size_t>(filling)];
  const std::string key = fmt::format("page.filling.{}", kind_key(one.kind));
  const bool blocks = !one.sides.empty() && std::count(one.sides.begin(), one.sides.end(), -1) > 0;
  Telling telling;
  telling.heading(sheet.say(key));
  if (worked.bar >= 0)
    telling.paragraph(sheet.say("page.filling.from-bar", {{"n", std::int64_t{item + 1}}, {"half", std::int64_t{worked.weaves / 2}}}));
  else
    telling.paragraph(sheet.say("page.filling.by-itself", {{"n", std::int64_t{item + 1}}}));
  for (int step = 1; step <= 4; ++step) telling.numbered(step, sheet.say(fmt::format("{}.{}", key, step)));
  if (blocks) telling.paragraph(sheet.say("page.filling.doves-eye.block"));
  if (worked.bar >= 0) telling.paragraph(sheet.say("page.filling.other-half", {{"half", std::int64_t{worked.weaves / 2}}}));
  telling.paragraph(sheet.say("page.filling.alike", {{"n", std::int64_t{alike}}}));
  return telling;
}

Telling tell_picot(const Sheet& sheet, const BarWork& work, int item) {
  Telling telling;
  const int half = work.item(item).weaves / 2;
  telling.heading(sheet.say("page.picot"));
  telling.numbered(1, sheet.say("page.picot.1", {{"half", std::int64_t{half}}}));
  telling.numbered(2, sheet.say("page.picot.2", {{"half", std::int64_t{half}}}));
  std::int64_t bars = 0;
  for (int i = work.first; i <= work.last; ++i) bars += work.item(i).picots[0] || work.item(i).picots[1] ? 1 : 0;
  telling.paragraph(sheet.say("page.picot.bars", {{"n", bars}}));
  return telling;
}

Telling tell_bar_ends(const Sheet& sheet, const BarWork& work) {
  Telling telling;
  const course::Habits& habits = sheet.course.choices.habits;
  const auto own = habits.length_cm.find(sheet.course.parts[static_cast<std::size_t>(work.route->part)].kind);
  const double cm = own == habits.length_cm.end() ? habits.working_length_cm : own->second;
  const auto lengths = std::count_if(work.route->lengths.begin(), work.route->lengths.end(), [&](int i) { return work.first <= i && i <= work.last; });
  telling.strong(sheet.say("page.bars.ends"));
  const bool over = wide(lengths) < wide(static_cast<std::ptrdiff_t>(starts_of(work).size()));
  telling.paragraph(sentences({sheet.say("page.bars.lengths", {{"n", std::max<std::int64_t>(1, wide(lengths))}, {"cm", words::Decimal{cm, 0}}}),
                               over ? sheet.say("page.bars.lengths.over") : ""}));
  telling.paragraph(sheet.say("page.bars.ends.text"));
  telling.strong(sheet.say("page.caution.title"));
  telling.paragraph(sheet.say("page.bars.caution"));
  return telling;
}

}  // namespace picture
