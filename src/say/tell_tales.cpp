// Where a wrong start shows, as sentences.
#include <algorithm>

#include "say/hand.h"
#include "say/say.h"

namespace say {
namespace {

bool same_place(const guide::TellTale& a, const guide::TellTale& b) {
  if (!a.shows || !b.shows) return a.shows == b.shows;
  return a.trail == b.trail && a.stitch == b.stitch && a.parted == b.parted && a.other_part == b.other_part;
}

std::string ways(const Voice& voice, const std::vector<cloth::Way>& off) {
  std::string said;
  for (std::size_t i = 0; i < off.size(); ++i) {
    const std::string way = voice.phrases.say("tell-tale.way." + std::string(cloth::name(handed(off[i], voice.hand))));
    said = i == 0 ? way : voice.phrases.say(i + 1 == off.size() ? "list.or" : "list.comma", {{"first", said}, {"second", way}});
  }
  return said;
}

/// The stitch's number in its own section, as a student counts from where the lesson begins.
std::int64_t number_in_section(const plan::Plan& plan, const guide::TellTale& tale) {
  for (const guide::Section& section : plan.trails[tale.trail].sections)
    if (section.first <= tale.stitch && tale.stitch <= section.last) return tale.stitch - section.first + 1;
  return tale.stitch + 1;
}

std::string sentence(const Voice& voice, const plan::Plan& plan, const guide::CountIn& count_in, const guide::TellTale& tale,
                     const std::vector<cloth::Way>& off) {
  words::Arguments arguments{{"ways", ways(voice, off)}};
  if (!tale.shows) return off.size() == 4 ? voice.phrases.say("tell-tale.never.all") : voice.phrases.say("tell-tale.never", arguments);
  arguments["n"] = number_in_section(plan, tale);
  arguments["part"] = voice.course.parts[plan.trails[tale.trail].part].name;
  arguments["other"] = voice.course.parts[tale.other_part].name;
  arguments["lesson"] = std::int64_t{tale.lesson};
  std::string key = tale.parted ? "tell-tale.parted" : "tell-tale.met";
  if (tale.lesson != count_in.lesson)
    key += ".later";
  else if (tale.trail != count_in.trail)
    key += ".other";
  return voice.phrases.say(key, arguments);
}

}  // namespace

std::vector<std::string> tell_tales(const Voice& voice, const plan::Plan& plan, const guide::CountIn& count_in) {
  std::vector<const guide::TellTale*> own;
  for (const guide::TellTale& tale : plan.tell_tales)
    if (plan.count_ins[tale.count_in].trail == count_in.trail && plan.count_ins[tale.count_in].section == count_in.section)
      own.push_back(&tale);
  std::vector<std::string> said;
  std::vector<bool> done(own.size(), false);
  for (std::size_t i = 0; i < own.size(); ++i) {
    std::vector<cloth::Way> off;
    for (std::size_t k = i; k < own.size(); ++k)
      if (!done[k] && same_place(*own[i], *own[k])) off.push_back(own[k]->off), done[k] = true;
    if (!off.empty()) said.push_back(sentence(voice, plan, count_in, *own[i], off));
  }
  return said;
}

}  // namespace say
