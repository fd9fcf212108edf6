// The window's own time for a frame, without a window, and the time from an edit to its plan, in designs that grow. What a frame costs
// depends on what is seen, so `over_small` (its time over that of the smallest design, measured in the same run) is to stay near 1; an
// edit's `over_plan` says how much of its time is not planning. `submitted_over_visible`: triangles handed over against those that are
// seen.
#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <chrono>
#include <cmath>
#include <filesystem>
#include <map>

#include "app/bare.h"
#include "app/measure.h"
#include "app/window.h"
#include "assets/assets.h"
#include "base/require.h"
#include "design.h"

namespace {

constexpr float wide = 1440, high = 900;
constexpr long small = 1000;

const char* const head =
    "format = 1\n\n[course]\ntitle = \"Growing\"\nfirst_day = 2027-01-12\n\n[cloth]\ncount = 22\n\n[thread.heavy]\npearl = 5\n\n";

std::string ring_and_frame_text(long stitches) {
  const bench::Design ring = bench::design(bench::Kind::blocks, stitches / 2), frame = bench::design(bench::Kind::cable, stitches / 2);
  const auto part = [](const char* name, const bench::Design& design, long x) {
    return "[[part]]\nname = \"" + std::string(name) + "\"\nkind = \"" + design.kind + "\"\nthread = \"heavy\"\nstart = [" +
           std::to_string(x) + ", 0]\n" + design.key + " = \"" + design.value + "\"\npath = \"" + design.path + "\"\n\n";
  };
  return head + part("ring", ring, 0) + part("frame", frame, -20);
}

/// Small rings side by side, so that at the coarsest scale all of them are seen at once.
std::string rings_text(long stitches) {
  constexpr long a_ring = 60, apart = 40;  // stitches; threads
  const long across = std::max(1L, std::lround(std::sqrt(static_cast<double>(stitches) / a_ring)));
  std::string text = head;
  for (long n = 0; n < across * across; ++n)
    text += fmt::format(
        "[[part]]\nname = \"ring {}\"\nkind = \"blocks\"\nthread = \"heavy\"\nstart = [{}, {}]\npath = \"NE 4, SE 3, SW 3, NW 2\"\n\n", n,
        n % across * apart, n / across * apart);
  return text;
}

struct Frames {
  double median = 0, slowest = 0, submitted = 0, visible = 0;  ///< ms; triangles
};

/// The desk with its course planned, in a toolkit without a window.
struct Shown {
  words::Phrases phrases;
  app::Bare bare{wide, high};
  app::Desk desk;
  explicit Shown(const std::string& course_text)
      : phrases(*words::Phrases::read(assets::table("phrases/en.toml"), "en.toml")),
        desk(phrases, std::filesystem::temp_directory_path(), [] {}) {
    desk.fonts = *bare.fonts(1);
    app::set_style(desk.theme, 1);
    desk.session.begin(course_text);
    desk.session.wait();
    base::require(desk.plan() != nullptr, "the design is planned");
  }
};

Frames frames_of(long stitches) {
  Shown shown(rings_text(stitches));
  const app::MeasuredFrames measured =
      app::measure_frames(shown.desk, {"without a window", app::Timed::processor, [] {}, [] {}}, wide, high);
  Frames frames;
  for (const app::FramesAt& at : measured.scales) {
    std::vector<double> ms;
    for (const app::FrameCost& cost : at.frames) {
      ms.push_back(cost.whole_ms);
      frames.submitted += static_cast<double>(cost.submitted);
      frames.visible += static_cast<double>(cost.visible);
    }
    frames.median = std::max(frames.median, app::share(ms, 0.5));
    frames.slowest = std::max(frames.slowest, app::share(ms, 0.99));
  }
  return frames;
}

void frame(benchmark::State& state) {
  static std::map<long, Frames> measured;  // the smallest design's is the baseline of all
  for (auto _ : state)
    for (const long stitches : {small, state.range(0)})
      if (!measured.contains(stitches)) measured[stitches] = frames_of(stitches);
  const Frames &own = measured[state.range(0)], &least = measured[small];
  state.counters["worst_median_ms"] = own.median;
  state.counters["worst_99_ms"] = own.slowest;
  state.counters["over_small"] = own.median / least.median;
  state.counters["submitted_over_visible"] = own.submitted / own.visible;
}

void edit(benchmark::State& state) {
  Shown shown(ring_and_frame_text(state.range(0)));
  const course::Course course = *shown.desk.course();
  std::vector<double> ms;
  double planning = 0;
  for (auto _ : state) {
    ms = app::measure_edits(shown.desk.session);
    const auto start = std::chrono::steady_clock::now();
    benchmark::DoNotOptimize(plan::make_plan(course));
    planning = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
  }
  state.counters["median_ms"] = app::share(ms, 0.5);
  state.counters["99_ms"] = app::share(ms, 0.99);
  state.counters["over_plan"] = app::share(ms, 0.5) / planning;
}

}  // namespace

BENCHMARK(frame)->RangeMultiplier(10)->Range(small, 100000)->Iterations(1)->Unit(benchmark::kMillisecond)->Name("window/frame");
BENCHMARK(edit)->RangeMultiplier(10)->Range(small, 100000)->Iterations(1)->Unit(benchmark::kMillisecond)->Name("window/edit");
