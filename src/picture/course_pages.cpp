#include "picture/course_pages.h"

#include <algorithm>

#include "picture/text_pages.h"
#include "say/supplies.h"

namespace picture {
namespace {

void add_steps(const say::Voice& voice, const std::string& key, const std::vector<std::string>& steps, Telling& telling) {
  telling.heading(voice.phrases.say(key + ".title"));
  int n = 0;
  for (const std::string& step : steps) telling.numbered(++n, step);
}

std::vector<std::string> cloth_steps(const course::Course& course, const say::Voice& voice) {
  const auto step = [&](const char* key) { return voice.phrases.say(std::string("page.preparing.cloth.") + key); };
  std::vector<std::string> steps{voice.phrases.say("page.preparing.cloth.1", {{"size", say::cloth_size(voice)}}), step("2"), step("3"),
                                 step("4"), step("5")};
  if (course.choices.begin == course::Begin::middle) steps.push_back(step("count"));
  return steps;
}

bool has_edge(const course::Course& course) {
  return std::any_of(course.parts.begin(), course.parts.end(), [](const course::Part& part) {
    const stitch::Kind* kind = stitch::find_kind(part.kind);
    return kind && kind->by_edge_habit;
  });
}

/// Only what this piece has: whiskers and openings where cloth is cut, a ridge where there is an edge.
std::vector<std::string> finish_steps(const course::Course& course, const plan::Plan& plan, const say::Voice& voice) {
  const auto step = [&](const char* key) { return voice.phrases.say(std::string("page.preparing.finish.") + key); };
  const bool open = !plan.cuttings.empty();
  std::vector<std::string> steps{step(open ? "look-open" : "look"), step("colours"), step("soak"), step("press")};
  if (open) steps.push_back(step("trim"));
  if (has_edge(course)) steps.push_back(step("cut-out"));
  return steps;
}

}  // namespace

CoursePages shopping_pages(const course::Course& course, const plan::Plan& plan, const say::Voice& voice, const list::Measure& measure,
                           PageSize page, Print print) {
  const say::SuppliesTold told = say::supplies(voice, plan);
  const auto head = [&](const char* key) { return words::capitalised(voice.phrases.say(std::string("supplies.head.") + key)); };
  CoursePages made{voice.phrases.say("page.shopping.title"), {}};
  TextPages pages(course.title, made.title, styles_for(print), page, measure);
  Telling sets;
  sets.paragraph(voice.phrases.say("supplies.for", {{"sets", told.sets}}));
  pages.add(sets);
  const bool costs = !told.sums.empty();
  const std::vector<double> shares = costs ? std::vector{0.36, 0.26, 0.2, 0.18} : std::vector{0.42, 0.32, 0.26};
  std::vector<std::string> heads{head("what"), head("one"), head("all")};
  if (costs) heads.push_back(head("cost"));
  pages.add_row(heads, shares, TextPages::Weight::strong);
  for (const say::SupplyRow& row : told.rows) {
    std::vector<std::string> cells{words::capitalised(row.what), row.one, row.all};
    if (costs) cells.push_back(row.cost);
    pages.add_row(cells, shares, TextPages::Weight::plain);
  }
  Telling notes;
  for (const std::string& sum : told.sums) notes.strong(sum);
  if (!told.notes.empty()) notes.heading(voice.phrases.say("page.shopping.how"));
  for (const std::string& note : told.notes) notes.paragraph(words::capitalised(note));
  pages.add(notes);
  made.pages = pages.finish();
  return made;
}

CoursePages preparing_pages(const course::Course& course, const plan::Plan& plan, const say::Voice& voice, const list::Measure& measure,
                            PageSize page, Print print) {
  CoursePages made{voice.phrases.say("page.preparing.title"), {}};
  TextPages pages(course.title, made.title, styles_for(print), page, measure);
  Telling before, after;
  add_steps(voice, "page.preparing.cloth", cloth_steps(course, voice), before);
  if (voice.hand == say::Hand::left && !course::mirror_alike(course)) before.paragraph(voice.phrases.say("page.preparing.mirrored"));
  add_steps(voice, "page.preparing.finish", finish_steps(course, plan, voice), after);
  after.strong(voice.phrases.say("page.caution.title"));
  after.paragraph(voice.phrases.say("page.caution.scissors"));
  pages.add(before);
  pages.add(after);
  made.pages = pages.finish();
  return made;
}

}  // namespace picture
