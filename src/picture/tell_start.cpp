// The start of a section: the tail, the count, the count to be sure, where a wrong start shows.
#include <cmath>

#include "picture/facts.h"
#include "picture/tell.h"

namespace picture {
namespace {

std::string heading(const Sheet& sheet, const guide::CloseUp& close_up) {
  return say::start_heading(sheet.voice, sheet.trail(close_up.trail), section_of(sheet, close_up), sheet.lesson.sections.size() > 1);
}

std::string tail(const Sheet& sheet, const guide::CloseUp& close_up) {
  const trail::Trail& trail = sheet.trail(close_up.trail).trail;
  if (!new_thread_at(trail, close_up.first)) return sheet.say("page.tail.goes-on");
  const guide::Anchor* anchor = anchor_at(sheet.plan, close_up.trail, close_up.first, true);
  if (anchor && !anchor->later && !anchor->under.empty())
    return sheet.say("page.tail.under", {{"n", static_cast<std::int64_t>(anchor->under.size())},
                                         {"cm", words::Decimal{sheet.course.choices.habits.tail_cm, 0}}});
  return sheet.say("page.tail.waste", {{"cm", words::Decimal{sheet.course.choices.habits.first_tail_cm, 0}}});
}

/// Where the same start is made at further places of a repeated part: each with its own count.
void tell_further_places(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const guide::PlacedTrail& own = sheet.trail(close_up.trail);
  for (std::size_t i = 1; i < close_up.stands_for.size(); ++i)
    for (const guide::CountIn& count_in : sheet.plan.count_ins) {
      const guide::PlacedTrail& other = sheet.trail(count_in.trail);
      if (count_in.lesson != close_up.lesson || count_in.hole != close_up.stands_for[i] || other.part != own.part || other.pass != own.pass ||
          other.place == own.place)
        continue;
      telling.strong(sheet.say("page.start.again", {{"place", std::int64_t{other.place + 1}}}));
      telling.paragraph(say::count_in(sheet.voice, count_in));
      if (!count_in.proof) continue;
      telling.strong(sheet.say("page.to-be-sure"));
      telling.paragraph(say::proof(sheet.voice, *count_in.proof));
    }
}

}  // namespace

void tell_count_in(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture, Telling& telling) {
  telling.accent_heading(heading(sheet, close_up));
  std::vector<std::string> said{tail(sheet, close_up)};
  if (picture.count_in) said.push_back(say::count_in(sheet.voice, *picture.count_in));
  telling.paragraph(sentences(said));
  if (picture.proof) {
    telling.strong(sheet.say("page.to-be-sure"));
    telling.paragraph(say::proof(sheet.voice, *picture.proof));
  }
  if (picture.count_in) {
    telling.strong(sheet.say("page.if-wrong"));
    telling.paragraph(sentences(say::tell_tales(sheet.voice, sheet.plan, *picture.count_in)));
  }
  tell_further_places(sheet, close_up, telling);
}

void tell_start(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture, Telling& telling) {
  tell_count_in(sheet, close_up, picture, telling);
  tell_rhythm(sheet, close_up, telling);
}

}  // namespace picture
