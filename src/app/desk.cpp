#include "app/desk.h"

#include <algorithm>

#include "app/panels.h"
#include "app/settings.h"

namespace app {

void Desk::apply(const session::Edit& edit) {
  message.clear();
  report(session.apply(edit));
}

void Desk::report(const base::Result<void>& result) {
  if (!result) message = result.error().what;
}

void Desk::set_light(Light light_) {
  light = light_;
  theme = app::theme(light);
  set_style(theme, scale);
}

void Desk::speak(std::string_view language_) {
  language = language_;
  phrases = publish::phrases_in(language.empty() ? system_language() : language);
}

std::string Desk::edit_words(std::string_view name) const {
  std::string key = "edit." + std::string(name);
  std::replace(key.begin(), key.end(), ' ', '-');
  if (phrases.get().has(key)) return say(key);
  for (const std::string does : {"change", "add"}) {  // a key of the course file, or a kind
    if (!name.starts_with(does + " ")) continue;
    const std::string what(name.substr(does.size() + 1));
    return say("edit." + does, {{"what", phrases.get().has("kind." + what) ? say::kind_name(phrases, what) : what}});
  }
  return std::string(name);
}

void Desk::saved_or_ask() {
  if (session.saved()) quit = true;
  else asking = Asking::unsaved_quit;
}

void scale_by(Desk& desk, float times) { desk.wanted_scale = std::clamp((desk.wanted_scale > 0 ? desk.wanted_scale : desk.scale) * times, least_scale, most_scale); }

std::optional<WalkPlace> walk_place(const Desk& desk) {
  const plan::Plan* plan = desk.plan();
  if (!plan || desk.lesson < 1 || desk.lesson > static_cast<int>(plan->lessons.size())) return std::nullopt;
  int step = desk.walk.step;
  for (const auto& [t, s] : plan->lessons[static_cast<std::size_t>(desk.lesson - 1)].sections) {
    const guide::Section& section = plan->trails[static_cast<std::size_t>(t)].sections[static_cast<std::size_t>(s)];
    const int n = section.last - section.first + 1;
    if (step < n) return WalkPlace{t, section.first + step, section.first, section.last, step};
    step -= n;
  }
  return std::nullopt;
}

int walk_length(const Desk& desk) {
  const plan::Plan* plan = desk.plan();
  if (!plan || desk.lesson < 1 || desk.lesson > static_cast<int>(plan->lessons.size())) return 0;
  return plan->lessons[static_cast<std::size_t>(desk.lesson - 1)].stitches;
}

std::vector<int> corners_of_lesson(const Desk& desk) {
  std::vector<int> corners;
  if (walk_length(desk) == 0) return corners;
  int step = 0;
  for (const auto& [t, s] : desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)].sections) {
    const guide::PlacedTrail& trail = desk.plan()->trails[static_cast<std::size_t>(t)];
    const guide::Section& section = trail.sections[static_cast<std::size_t>(s)];
    for (int k = section.first; k <= section.last; ++k, ++step)
      if (k > section.first && trail.trail.stitches[static_cast<std::size_t>(k)].leg != trail.trail.stitches[static_cast<std::size_t>(k - 1)].leg) corners.push_back(step);
  }
  return corners;
}

int next_corner(const Desk& desk) {
  const auto place = walk_place(desk);
  if (!place) return 0;
  const auto& stitches = desk.plan()->trails[static_cast<std::size_t>(place->trail)].trail.stitches;
  int k = place->stitch + 1;
  while (k < place->last && stitches[static_cast<std::size_t>(k)].leg == stitches[static_cast<std::size_t>(k - 1)].leg) ++k;
  return std::min(walk_length(desk) - 1, desk.walk.step + k - place->stitch);
}

int snips_of_lesson(const Desk& desk) { return desk.cuts ? desk.cuts->snips(desk.lesson) : 0; }

void show_cutting(Desk& desk, bool shown) {
  desk.cut = {shown, snips_of_lesson(desk)};
  desk.walk.playing = false;
}

void choose_lesson(Desk& desk, int lesson) {
  desk.lesson = lesson;
  desk.walk = {};
  desk.alternative = 0;
  // A lesson that only cuts has nothing else to go over; before anything is cut there is no cutting to show.
  const bool only_cuts = snips_of_lesson(desk) > 0 && walk_length(desk) == 0;
  show_cutting(desk, only_cuts || (desk.cut.shown && desk.cuts && desk.cuts->any_until(lesson)));
}

bool over_snips(const Desk& desk) { return desk.cut.shown && snips_of_lesson(desk) > 0; }

int slider_places(const Desk& desk) { return over_snips(desk) ? snips_of_lesson(desk) + 1 : walk_length(desk); }

int slider_at(const Desk& desk) { return over_snips(desk) ? desk.cut.snips : desk.walk.step; }

void slide_to(Desk& desk, int place) {
  const int at = std::clamp(place, 0, std::max(0, slider_places(desk) - 1));
  (over_snips(desk) ? desk.cut.snips : desk.walk.step) = at;
}

int next_halt(const Desk& desk) {
  if (!over_snips(desk)) return next_corner(desk);
  const int all = snips_of_lesson(desk);
  if (desk.cut.snips >= all) return all;
  const auto cutting = [&](int n) {
    const picture::CutIndex::Snip snip = desk.cuts->snip(desk.lesson, n);
    return std::pair{snip.strand->cutting, snip.cut().cutting};
  };
  int next = desk.cut.snips + 1;
  while (next < all && cutting(next) == cutting(desk.cut.snips)) ++next;
  return next;
}

}  // namespace app
