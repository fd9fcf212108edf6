// tellekant mistake FILE
#include <fmt/format.h>

#include <charconv>
#include <cstdio>

#include "cli/open_course.h"
#include "cli/output.h"
#include "say/mistake.h"

namespace cli {
namespace {

/// "1 E", "2 N": threads and a way, as the chart has it for either hand.
std::optional<cloth::Hole> off_of(const std::vector<std::string>& written) {
  cloth::Hole off;
  for (const std::string& one : written) {
    int n = 0;
    const char* end = one.data() + one.size();
    const auto [rest, error] = std::from_chars(one.data(), end, n);
    std::string_view way(rest, static_cast<std::size_t>(end - rest));
    while (way.starts_with(' ')) way.remove_prefix(1);
    bool known = false;
    for (const cloth::Way w : {cloth::Way::N, cloth::Way::E, cloth::Way::S, cloth::Way::W})
      if (way == cloth::name(w)) off = off + n * cloth::step(w), known = true;
    if (error != std::errc{} || n < 1 || n > 1000 || !known) return std::nullopt;
  }
  return off;
}

int wrong_call(const std::string& what) {
  fmt::print(stderr, "tellekant: {}\n", what);
  return bad_call;
}

/// The trail that is meant; -1 where there is none.
int trail_of(const course::Course& course, const plan::Plan& plan, const MistakeMade& made) {
  for (std::size_t t = 0; t < plan.trails.size(); ++t) {
    const guide::PlacedTrail& trail = plan.trails[t];
    if (course.parts[trail.part].name == made.part && trail.pass == made.pass && trail.place + 1 == made.place) return static_cast<int>(t);
  }
  return -1;
}

/// Worked so far: as told, else to the end of what that lesson works.
int last_of(const guide::PlacedTrail& trail, const MistakeMade& made) {
  if (made.done) return *made.done - 1;
  for (const guide::Section& section : trail.sections)
    if (section.first <= made.from - 1 && made.from - 1 <= section.last) return section.last;
  return static_cast<int>(trail.trail.stitches.size()) - 1;
}

}  // namespace

int run_mistake(const Options& options) {
  const MistakeMade& made = options.mistake;
  const auto off = off_of(made.off);
  if (!off || *off == cloth::Hole{0, 0})
    return wrong_call("--off asks for threads and a way, as in --off \"1 E\"; two of them for a slant: --off \"1 E\" \"2 N\"");
  const auto course = open_course(options.files[0], options);
  if (!course) return bad_call;
  const auto checked = plan_and_check(*course, options);
  if (!checked) return not_written;
  const int trail = trail_of(*course, checked->plan, made);
  if (trail < 0)
    return wrong_call(fmt::format("the course works no part \"{}\" with pass {} at place {}", made.part, made.pass, made.place));
  const guide::PlacedTrail& placed = checked->plan.trails[static_cast<std::size_t>(trail)];
  const plan::Mistake mistake{trail, made.from - 1, last_of(placed, made), *off};
  const auto taken = plan::take_in(*course, checked->plan, mistake);
  if (!taken) return wrong_call(fmt::format("{}: there are stitches 1 to {}", taken.error().what, placed.trail.stitches.size()));
  const bool left = options.hand ? *options.hand == "left" : course->choices.hand == course::Hand::left;
  std::string text;
  for (const std::string& sentence :
       say::mistake({phrases(*course), left ? say::Hand::left : say::Hand::right, *course}, checked->plan, mistake, *taken))
    text += sentence + "\n";
  if (!print_out(text)) return not_written;
  return taken->matters() ? stopped : fine;
}

}  // namespace cli
