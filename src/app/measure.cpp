#include "app/measure.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <ctime>
#include <thread>

#include "app/sight.h"

namespace app {
namespace {

using Clock = std::chrono::steady_clock;

constexpr float finest = 0.5F, coarsest = 80;  // pixels of a thread: the ends of what can be zoomed to
constexpr int scales = 12, frames_a_scale = 100, edits = 20;

double ms_since(Clock::time_point start) { return std::chrono::duration<double, std::milli>(Clock::now() - start).count(); }

double now_ms(Timed timed) {
  timespec time{};
  clock_gettime(timed == Timed::processor ? CLOCK_THREAD_CPUTIME_ID : CLOCK_MONOTONIC, &time);
  return 1e3 * static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_nsec);
}

FrameCost one_frame(Desk& desk, const Stage& stage, float width, float height) {
  FrameCost cost;
  const double start = now_ms(stage.timed);
  stage.begin();
  ImGui::NewFrame();
  const double panels = now_ms(stage.timed);
  frame(desk, width, height, 1.0 / 60);
  const double of_panels = now_ms(stage.timed) - panels;
  ImGui::Render();
  stage.show();
  cost.whole_ms = now_ms(stage.timed) - start;
  cost.toolkit_ms = cost.whole_ms - of_panels;
  count_triangles(*ImGui::GetDrawData(), cost);
  return cost;
}

/// The middle of what is seen goes in a slant over the design, from one corner to the other.
void look_at_share(Desk& desk, Area area, const cloth::Box& box, double share) {
  desk.view.fit = false;
  desk.view.x = box.x0 + share * box.width() - area.w / desk.view.pixels / 2;
  desk.view.y = box.y0 + share * box.height() - area.h / desk.view.pixels / 2;
}

bool visible(const ImVec4& clip, ImVec2 a, ImVec2 b, ImVec2 c) {
  const float x0 = std::min({a.x, b.x, c.x}), x1 = std::max({a.x, b.x, c.x}), y0 = std::min({a.y, b.y, c.y}),
              y1 = std::max({a.y, b.y, c.y});
  return x1 >= clip.x && x0 <= clip.z && y1 >= clip.y && y0 <= clip.w && (b.x - a.x) * (c.y - a.y) != (c.x - a.x) * (b.y - a.y);
}

}  // namespace

void count_triangles(const ImDrawData& drawn, FrameCost& cost) {
  for (int n = 0; n < drawn.CmdListsCount; ++n) {
    const ImDrawList& lists = *drawn.CmdLists[n];
    for (const ImDrawCmd& command : lists.CmdBuffer) {
      const auto at = [&](unsigned i) {
        return lists.VtxBuffer[static_cast<int>(command.VtxOffset + lists.IdxBuffer[static_cast<int>(command.IdxOffset + i)])].pos;
      };
      for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
        ++cost.submitted;
        cost.visible += visible(command.ClipRect, at(i), at(i + 1), at(i + 2)) ? 1 : 0;
      }
    }
  }
}

MeasuredFrames measure_frames(Desk& desk, const Stage& stage, float width, float height) {
  MeasuredFrames measured{stage.where, {}};
  one_frame(desk, stage, width, height);  // before a first frame the toolkit has no type to measure with
  const Area area = cloth_area(desk, width, height);
  const cloth::Box box = course::extent(*desk.course());
  for (int s = 0; s < scales; ++s) {
    FramesAt at{finest * std::pow(coarsest / finest, static_cast<float>(s) / (scales - 1)), {}};
    desk.view.pixels = at.pixels;
    look_at_share(desk, area, box, 0);
    one_frame(desk, stage, width, height);  // what is made only once at a scale does not count
    for (int f = 0; f < frames_a_scale; ++f) {
      look_at_share(desk, area, box, static_cast<double>(f) / (frames_a_scale - 1));
      at.frames.push_back(one_frame(desk, stage, width, height));
    }
    measured.scales.push_back(std::move(at));
  }
  return measured;
}

std::vector<double> measure_edits(session::Session& session) {
  std::vector<double> times;
  session.wait();
  const session::Seen first = session.seen();
  if (!first || first->course.parts.empty()) return times;
  for (int n = 0; n < edits; ++n) {
    const auto start = Clock::now();
    if (!session.apply(session::move_part(first->course, 0, {1, 0}))) return times;
    while (session.planning()) {
      if (!session.poll()) std::this_thread::sleep_for(std::chrono::microseconds(100));
    }
    times.push_back(ms_since(start));
    session.undo();
    session.wait();
  }
  return times;
}

double share(std::vector<double> values, double part) {
  if (values.empty()) return 0;
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1,
                         static_cast<std::size_t>(std::ceil(part * static_cast<double>(values.size()))) - (part > 0 ? 1 : 0))];
}

}  // namespace app
