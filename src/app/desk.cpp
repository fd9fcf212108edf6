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

}  // namespace app
