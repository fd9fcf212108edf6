// What to have ready, new threads and the end, marks beforehand, the teacher's own notes.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "picture/facts.h"
#include "picture/places.h"
#include "picture/tell.h"
#include "say/supplies.h"

namespace picture {
namespace {

/// Threads of the lesson by name and working length, in the order in which they are first used.
struct ThreadUse {
  const course::Part* part = nullptr;
  double cm = 50;
  int lengths = 0;
};

/// Bars and fillings: the lengths that are begun in the stretch, and the one that goes on into it.
void add_route(const Sheet& sheet, const plan::PartRoute& route, std::size_t s, std::vector<ThreadUse>& uses) {
  const guide::Section& section = route.sections[s];
  const course::Part& part = sheet.course.parts[static_cast<std::size_t>(route.part)];
  const double cm = length_cm(sheet.course, part);
  auto use = std::find_if(uses.begin(), uses.end(), [&](const ThreadUse& u) { return u.part->thread == part.thread && std::abs(u.cm - cm) < 0.01; });
  if (use == uses.end()) use = uses.insert(uses.end(), {&part, cm, 0});
  const auto begun = std::count_if(route.lengths.begin(), route.lengths.end(), [&](int i) { return section.first <= i && i <= section.last; });
  use->lengths += static_cast<int>(begun) + (std::binary_search(route.lengths.begin(), route.lengths.end(), section.first) ? 0 : 1);
}

std::vector<ThreadUse> thread_uses(const Sheet& sheet) {
  std::vector<ThreadUse> uses;
  for (const auto& [t, s] : sheet.lesson.sections) {
    const guide::PlacedTrail& trail = sheet.trail(t);
    const guide::Section& section = trail.sections[s];
    const course::Part& part = sheet.part(t);
    const double cm = length_cm(sheet.course, part);
    const auto begun =
        std::count_if(trail.trail.ends.begin(), trail.trail.ends.end(), [&](int k) { return section.first <= k && k <= section.last; });
    auto use = std::find_if(uses.begin(), uses.end(),
                            [&](const ThreadUse& u) { return u.part->thread == part.thread && std::abs(u.cm - cm) < 0.01; });
    if (use == uses.end()) use = uses.insert(uses.end(), {&part, cm, 0});
    use->lengths += static_cast<int>(begun) + (new_thread_at(trail.trail, section.first) ? 0 : 1);
  }
  for (const auto& [r, s] : sheet.lesson.routes) add_route(sheet, sheet.plan.routes[static_cast<std::size_t>(r)], static_cast<std::size_t>(s), uses);
  return uses;
}

words::Decimal number_of(double value) { return {value, std::abs(value - std::round(value)) < 0.05 ? 0 : 1}; }

/// "pearl cotton 8"; with the teacher's own name where two threads of the course have the same size.
std::string thread_name(const Sheet& sheet, const std::string& name) {
  const course::Thread* thread = course::find_thread(sheet.course, name);
  if (!thread || !thread->pearl) return sheet.say("page.thread.own", {{"name", name}});
  const auto same = std::count_if(sheet.course.threads.begin(), sheet.course.threads.end(),
                                  [&](const course::Thread& t) { return t.pearl == thread->pearl; });
  return sheet.say(same > 1 ? "page.thread.pearl-named" : "page.thread.pearl", {{"size", std::int64_t{*thread->pearl}}, {"name", name}});
}

std::string lengths_words(const Sheet& sheet, const ThreadUse& use) {
  return sheet.say("page.ready.lengths", {{"thread", thread_name(sheet, use.part->thread)},
                                          {"n", std::int64_t{use.lengths}},
                                          {"number", sheet.number(use.lengths)},
                                          {"cm", number_of(use.cm)}});
}

std::vector<int> needles(const Sheet& sheet, const std::vector<ThreadUse>& uses) {
  std::vector<int> sizes;
  for (const ThreadUse& use : uses)
    if (const course::Thread* thread = course::find_thread(sheet.course, use.part->thread)) sizes.push_back(course::needle_size(*thread));
  std::sort(sizes.begin(), sizes.end());
  sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
  return sizes;
}

bool has_marks(const Sheet& sheet) {
  return std::any_of(sheet.plan.marks.begin(), sheet.plan.marks.end(),
                     [&](const guide::Mark& m) { return m.lesson == sheet.lesson.number; });
}

std::string cloth(const Sheet& sheet) {
  return sheet.say("page.ready.cloth", {{"count", cloth_count(sheet)}, {"size", say::cloth_size(sheet.voice)}});
}

/// After how many stitches a new thread is taken, at how many places.
struct OneLength {
  int trail = 0, stitches = 0;
  std::vector<int> places{};
};

/// "Take a new thread after about 66 stitches"; with the part's name where the lesson has several.
std::string one_length(const Sheet& sheet, const OneLength& length) {
  const int t = length.trail;
  const std::string key =
      fmt::format("page.threads.after.{}{}", sheet.by_rows(t) ? "rows" : sheet.pieces(t), sheet.lesson.sections.size() > 1 ? ".part" : "");
  return sheet.say(key, {{"n", std::int64_t{length.stitches}},
                         {"part", words::capitalised(at_places(sheet, t, part_and_pass(sheet, t), length.places))}});
}

std::vector<std::string> lengths_said(const Sheet& sheet) {
  std::vector<OneLength> all;
  const auto same = [](const OneLength& a, const OneLength& b) { return a.stitches == b.stitches; };
  for (const auto& [t, s] : sheet.lesson.sections) {
    const std::vector<int> whole = stitches_a_thread(sheet.trail(t).trail, sheet.trail(t).sections[s]);
    if (whole.empty()) continue;
    const int sum = std::accumulate(whole.begin(), whole.end(), 0);
    add_at_place(sheet, OneLength{t, sum / static_cast<int>(whole.size())}, same, all);
  }
  std::vector<std::string> said;
  for (const OneLength& length : all) said.push_back(one_length(sheet, length));
  return said;
}

struct Weaving {
  int least = 0, most = 0;  ///< stitches under which an end goes
  bool waste = false;       ///< a first tail is woven in afterwards
};

void add_weaving(const Sheet& sheet, int t, const guide::Section& section, Weaving& weaving) {
  for (const guide::Anchor& anchor : sheet.plan.anchors[t]) {
    if (anchor.stitch < section.first || anchor.stitch > section.last || anchor.under.empty()) continue;
    const int n = static_cast<int>(anchor.under.size());
    weaving.waste = weaving.waste || (anchor.later && anchor.start);
    weaving.least = weaving.least == 0 ? n : std::min(weaving.least, n);
    weaving.most = std::max(weaving.most, n);
  }
}

std::string weave(const Sheet& sheet, const Weaving& weaving) {
  if (weaving.most == 0) return {};
  const std::string key = weaving.least == weaving.most ? "page.threads.weave.same" : "page.threads.weave";
  return sentences({sheet.say(key, {{"least", sheet.number(weaving.least)},
                                    {"most", sheet.number(weaving.most)},
                                    {"n", std::int64_t{weaving.most}},
                                    {"cm", number_of(sheet.course.choices.habits.tail_cm)}}),
                    weaving.waste ? sheet.say("page.threads.waste") : std::string()});
}

/// Does the section's last thread go on in a later lesson?
bool hangs(const Sheet& sheet, int t, const guide::Section& section) {
  const trail::Trail& trail = sheet.trail(t).trail;
  return section.last + 1 < static_cast<int>(trail.stitches.size()) && !new_thread_at(trail, section.last + 1);
}

/// "The stitches take 2.3 m of pearl cotton 8; three lengths of 50 cm hold that and the ends."
void tell_metres(const Sheet& sheet, const std::vector<ThreadUse>& uses, Telling& telling) {
  for (const auto& [name, mm] : sheet.lesson.thread_mm) {
    std::vector<std::string> lengths;
    for (const ThreadUse& use : uses)
      if (use.part->thread == name)
        lengths.push_back(sheet.say("page.threads.lengths",
                                    {{"n", std::int64_t{use.lengths}}, {"number", sheet.number(use.lengths)}, {"cm", number_of(use.cm)}}));
    if (lengths.empty()) continue;
    telling.paragraph(sheet.say(
        "page.threads.metres",
        {{"thread", thread_name(sheet, name)}, {"m", words::Decimal{std::ceil(mm / 100) / 10, 1}}, {"lengths", sheet.all_of(lengths)}}));
  }
}

bool does(const Sheet& sheet, plan::Finish finish) {
  const auto& all = sheet.plan.finishing;
  return std::any_of(all.begin(), all.end(), [&](const plan::Finishing& step) { return step.finish == finish && step.lesson == sheet.lesson.number; });
}

}  // namespace

std::string cloth_count(const Sheet& sheet) {
  return say::cloth_count(sheet.voice);
}

std::vector<std::string> ready_items(const Sheet& sheet) {
  const std::vector<ThreadUse> uses = thread_uses(sheet);
  std::vector<std::string> items;
  if (sheet.lesson.number == 1) items.push_back(cloth(sheet));
  for (const ThreadUse& use : uses) items.push_back(lengths_words(sheet, use));
  for (const int size : needles(sheet, uses)) items.push_back(sheet.say("page.ready.needle", {{"size", std::int64_t{size}}}));
  if (has_marks(sheet)) items.push_back(sheet.say("page.ready.tacking"));
  const bool washes = does(sheet, plan::Finish::wash), cuts_out = does(sheet, plan::Finish::cut_out);
  if (washes) items.push_back(sheet.say("page.ready.wash"));
  if (sheet.lesson.cuttings.empty()) {
    if (cuts_out) items.push_back(sheet.say("page.ready.sharp-scissors"));
    else if (!uses.empty() || items.empty()) items.push_back(sheet.say("page.ready.scissors"));
    return items;
  }
  if (uses.empty()) items.push_back(sheet.say("page.ready.needle-to-draw"));
  for (const char* key : {"page.ready.sharp-scissors", "page.ready.light", "page.ready.scrap"}) items.push_back(sheet.say(key));
  return items;
}

std::string have_ready(const Sheet& sheet) {
  const std::vector<std::string> items = ready_items(sheet);
  std::string all = items[0];
  for (std::size_t i = 1; i < items.size(); ++i) all = sheet.say("page.dot", {{"first", all}, {"second", items[i]}});
  return sheet.say("page.ready", {{"items", all}});
}

std::string marks_first(const Sheet& sheet) {
  const bool at_once = sheet.styles.key_aside;  // large type has them under the title
  return has_marks(sheet) && !at_once ? sheet.say("page.marks.first", {{"title", sheet.say("page.marks.title")}}) : std::string();
}

Telling tell_threads(const Sheet& sheet) {
  Telling telling;
  const std::vector<ThreadUse> uses = thread_uses(sheet);
  if (uses.empty() || sheet.lesson.sections.empty()) return telling;
  telling.strong(sheet.say("page.threads.title"));
  Weaving weaving;
  bool hanging = false;
  for (const auto& [t, s] : sheet.lesson.sections) {
    const guide::Section& section = sheet.trail(t).sections[s];
    add_weaving(sheet, t, section, weaving);
    hanging = hanging || hangs(sheet, t, section);
  }
  telling.paragraph(sentences(lengths_said(sheet)));
  telling.paragraph(sentences({weave(sheet, weaving), hanging ? sheet.say("page.threads.hang") : std::string()}));
  tell_metres(sheet, uses, telling);
  return telling;
}

Telling tell_marks(const Sheet& sheet) {
  Telling telling;
  if (!has_marks(sheet)) return telling;
  telling.heading(sheet.say("page.marks.title"));
  telling.paragraph(sheet.say("page.marks.text"));
  int number = 0;
  for (const guide::Mark& mark : sheet.plan.marks)
    if (mark.lesson == sheet.lesson.number) telling.numbered(++number, say::mark(sheet.voice, mark));
  return telling;
}

Telling tell_notes(const Sheet& sheet) {
  Telling telling;
  if (!sheet.lesson.notes.empty()) {
    telling.strong(sheet.say("page.notes"));
    telling.paragraph(sheet.lesson.notes);
  }
  return telling;
}

Telling tell_missed(const Sheet& sheet) {
  Telling telling;
  if (const auto missed = say::missed(sheet.voice, sheet.plan, sheet.lesson); !missed.empty()) {
    telling.strong(say::missed_heading(sheet.voice, sheet.lesson));
    for (const std::string& sentence : missed) telling.paragraph(sentence);
  }
  return telling;
}

std::string prepare_first(const Sheet& sheet) {
  const double minutes = sheet.lesson.prepare_minutes;
  return minutes > 0 ? sheet.say("page.prepare-first", {{"n", static_cast<std::int64_t>(std::lround(minutes))}}) : std::string();
}

Telling tell_other_work(const Sheet& sheet) {
  Telling telling;
  if (const std::string first = prepare_first(sheet); !first.empty()) telling.paragraph(first);
  for (const std::string& work : sheet.lesson.work) {
    const std::string key = work == "wash" ? "page.work.wash" : work == "cut out" ? "page.work.cut-out" : "";
    if (key.empty()) continue;
    telling.heading(sheet.say(key + ".title"));
    telling.paragraph(sheet.say(key));
    if (work == "cut out") telling.strong(sheet.say("page.caution.title")), telling.paragraph(sheet.say("page.caution.scissors"));
  }
  return telling;
}

}  // namespace picture
