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

int next_corner(const Desk& desk) {
  const auto place = walk_place(desk);
  if (!place) return 0;
  const auto& stitches = desk.plan()->trails[static_cast<std::size_t>(place->trail)].trail.stitches;
  int k = place->stitch + 1;
  while (k < place->last && stitches[static_cast<std::size_t>(k)].leg == stitches[static_cast<std::size_t>(k - 1)].leg) ++k;
  return std::min(walk_length(desk) - 1, desk.walk.step + k - place->stitch);
}

}  // namespace app
