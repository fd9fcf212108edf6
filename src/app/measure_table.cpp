// The table of what was measured, for a terminal.
#include <fmt/format.h>

#include <algorithm>

#include "app/measure.h"

namespace app {
namespace {

template <class Of>
std::vector<double> each(const std::vector<FrameCost>& frames, const Of& of) {
  std::vector<double> all;
  for (const FrameCost& cost : frames) all.push_back(of(cost));
  return all;
}

double sum(const std::vector<double>& values) {
  double all = 0;
  for (const double v : values) all += v;
  return all;
}

std::string row(const std::string& name, const std::vector<FrameCost>& frames) {
  const auto whole = each(frames, [](const FrameCost& c) { return c.whole_ms; });
  const auto submitted = each(frames, [](const FrameCost& c) { return static_cast<double>(c.submitted); });
  const auto visible = each(frames, [](const FrameCost& c) { return static_cast<double>(c.visible); });
  const double toolkit = sum(each(frames, [](const FrameCost& c) { return c.toolkit_ms; }));
  const double most = *std::max_element(submitted.begin(), submitted.end());
  return fmt::format("{:>14} {:>10.2f} {:>10.2f} {:>9.0f} % {:>11.0f} {:>11.0f} {:>9.3f}\n", name, share(whole, 0.5), share(whole, 0.99),
                     100 * toolkit / std::max(1e-9, sum(whole)), share(submitted, 0.5), most, sum(submitted) / std::max(1.0, sum(visible)));
}

}  // namespace

std::string table_of(const MeasuredFrames& measured) {
  std::string text = fmt::format("Frames {}, {} at each scale\n{:>14} {:>10} {:>10} {:>11} {:>11} {:>11} {:>9}\n", measured.where,
                                 measured.scales.front().frames.size(), "pixels/thread", "median ms", "99 % ms", "toolkit", "triangles",
                                 "at most", "/ visible");
  std::vector<FrameCost> all;
  for (const FramesAt& at : measured.scales) {
    text += row(fmt::format("{:.1f}", at.pixels), at.frames);
    all.insert(all.end(), at.frames.begin(), at.frames.end());
  }
  return text + row("all", all);
}

std::string table_of_edits(const std::vector<double>& ms, std::size_t stitches) {
  if (ms.empty()) return "Edits: the course has no part to move\n";
  return fmt::format("From an edit to its plan and snags, {} stitches, {} edits: median {:.1f} ms, 99 % {:.1f} ms\n", stitches, ms.size(),
                     share(ms, 0.5), share(ms, 0.99));
}

}  // namespace app
