// The whole plan of a course with one large part, without its reading: lessons, starts, counts, close-ups and supplies. Aims: 100,000
// stitches within a second on one core; under 400 bytes a stitch; time a stitch stays the same.
#include <benchmark/benchmark.h>

#include "base/require.h"
#include "design.h"
#include "file/course_file.h"
#include "memory.h"
#include "plan/plan.h"

namespace {

course::Course course_of(bench::Kind kind, long stitches) {
  const bench::Design design = bench::design(kind, stitches);
  const file::Read read = file::read(
      "format = 1\n[course]\ntitle = \"Measured\"\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n"
      "[[part]]\nname = \"frame\"\nkind = \"" +
      design.kind + "\"\nthread = \"heavy\"\nstart = [0, 0]\npath = \"" + design.path + "\"\n" + design.key + " = \"" + design.value +
      "\"\n");
  base::require(read.faults.empty(), "the course is right");
  return read.course;
}

void measure(benchmark::State& state, bench::Kind kind) {
  const course::Course course = course_of(kind, state.range(0));
  double stitches = 0;
  for (auto _ : state) {
    const auto plan = plan::make_plan(course);
    base::require(plan.has_value(), "a plan is made");
    stitches = 0;
    for (const auto& trail : plan->trails) stitches += static_cast<double>(trail.trail.stitches.size());
  }
  state.counters["stitches"] = stitches;
  state.counters["time_a_stitch"] =
      benchmark::Counter(stitches, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  state.counters["bytes_a_stitch"] =
      static_cast<double>(bench::peak_of([&] { benchmark::DoNotOptimize(plan::make_plan(course)); })) / stitches;
}

void plan_cable(benchmark::State& state) { measure(state, bench::Kind::cable); }
void plan_blocks(benchmark::State& state) { measure(state, bench::Kind::blocks); }

}  // namespace

BENCHMARK(plan_cable)->RangeMultiplier(10)->Range(1000, 100000)->Unit(benchmark::kMillisecond)->Name("plan/cable");
BENCHMARK(plan_blocks)->RangeMultiplier(10)->Range(1000, 100000)->Unit(benchmark::kMillisecond)->Name("plan/blocks");
