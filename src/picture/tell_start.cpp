// The start of a section: the tail, the count, the count to be sure, where a wrong start shows.
#include <cmath>

#include "picture/facts.h"
#include "picture/numbering.h"
#include "picture/places.h"
#include "picture/tell.h"

namespace picture {
namespace {

std::string heading(const Sheet& sheet, const guide::CloseUp& close_up) {
  return say::start_heading(sheet.voice, sheet.trail(close_up.trail), section_of(sheet, close_up), sheet.lesson.sections.size() > 1);
}

std::string tail(const Sheet& sheet, int t, int first) {
  if (!new_thread_at(sheet.trail(t).trail, first)) return sheet.say("page.tail.goes-on");
  const guide::Anchor* anchor = anchor_at(sheet.plan, t, first, true);
  if (anchor && !anchor->later && !anchor->under.empty())
    return sheet.say("page.tail.under", {{"n", static_cast<std::int64_t>(anchor->under.size())},
                                         {"cm", words::Decimal{sheet.course.choices.habits.tail_cm, 0}}});
  return sheet.say("page.tail.waste", {{"cm", words::Decimal{sheet.course.choices.habits.first_tail_cm, 0}}});
}

void tell_proof(const Sheet& sheet, const guide::Count* proof, Telling& telling) {
  if (!proof) return;
  telling.strong(sheet.say("page.to-be-sure"));
  telling.paragraph(say::proof(sheet.voice, *proof));
}

std::string if_wrong(const Sheet& sheet, const guide::CountIn& count_in) {
  return sentences(say::tell_tales(sheet.voice, sheet.plan, count_in));
}

std::string if_wrong_at_first(const Sheet& sheet, const guide::CloseUp& close_up) {
  for (const guide::CountIn& count_in : sheet.plan.count_ins)
    if (count_in.trail == close_up.trail && count_in.lesson == close_up.lesson && count_in.hole == close_up.stands_for.front())
      return if_wrong(sheet, count_in);
  return {};
}

/// Tail and tell-tales are said again only where they differ from what was told last.
void tell_further_places(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const std::string first_tail = tail(sheet, close_up.trail, close_up.first);
  std::string told_wrong = if_wrong_at_first(sheet, close_up);
  for (const guide::CountIn* start : further_starts(sheet, close_up)) {
    const guide::PlacedTrail& trail = sheet.trail(start->trail);
    const std::string begins = tail(sheet, start->trail, trail.sections[static_cast<std::size_t>(start->section)].first);
    telling.strong(sheet.say("page.start.again", {{"place", std::int64_t{trail.place + 1}}, {"mark", mark_of(close_up, trail)}}));
    telling.paragraph(sentences({begins == first_tail ? std::string() : begins, say::count_in(sheet.voice, *start)}));
    tell_proof(sheet, start->proof ? &*start->proof : nullptr, telling);
    const std::string wrong = if_wrong(sheet, *start);
    if (wrong == told_wrong) continue;
    told_wrong = wrong;
    telling.strong(sheet.say("page.if-wrong"));
    telling.paragraph(wrong);
  }
}

/// Does the trail end with the stitches that the close-up numbers?
bool finished(const Sheet& sheet, const guide::CloseUp& close_up) {
  const trail::Trail& trail = sheet.trail(close_up.trail).trail;
  return !trail.closed && !sheet.looped(close_up.trail) && close_up.last + 1 == static_cast<int>(trail.stitches.size());
}

}  // namespace

void tell_count_in(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture, Telling& telling) {
  telling.accent_heading(heading(sheet, close_up));
  std::vector<std::string> said{tail(sheet, close_up.trail, close_up.first)};
  if (picture.count_in) said.push_back(say::count_in(sheet.voice, *picture.count_in));
  telling.paragraph(sentences(said));
  tell_proof(sheet, picture.proof, telling);
  if (!picture.count_in) return;
  telling.strong(sheet.say("page.if-wrong"));
  telling.paragraph(if_wrong(sheet, *picture.count_in));
}

void tell_from_one(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  tell_rhythm(sheet, close_up, telling);
  if (finished(sheet, close_up))
    telling.paragraph(sheet.say("page.end.last", {{"down", std::int64_t{down_number(close_up.last, close_up.first)}}}));
  tell_further_places(sheet, close_up, telling);
}

void tell_start(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture, Telling& telling) {
  tell_count_in(sheet, close_up, picture, telling);
  tell_from_one(sheet, close_up, telling);
}

}  // namespace picture
