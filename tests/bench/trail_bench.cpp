// Planning one pass: needle order, start and working lengths. Aims: time a stitch stays the same as designs grow; 100,000 stitches within a
// third of a second; memory under 400 bytes a stitch. `over_bound` is the round's back thread over the least that any order of the same
// front could have (see ../trail/matching.h): 1 for a row worked alone; for turn-about rows and blocks other laws bind.
#include <benchmark/benchmark.h>

#include "base/require.h"
#include "design.h"
#include "matching.h"
#include "memory.h"
#include "trail/trail.h"

namespace {

stitch::Pass pass_of(bench::Kind kind, long stitches) {
  const bench::Design design = bench::design(kind, stitches);
  const stitch::Kind* found = stitch::find_kind(design.kind);
  base::require(found != nullptr, "the kind is there");
  stitch::Values values{{"start", cloth::Hole{0, 0}}, {"path", design.path}, {design.key, design.value}};
  for (const stitch::KeySpec& key : found->keys)
    if (key.fallback) values.try_emplace(std::string(key.name), *key.fallback);
  stitch::Outcome outcome = found->build(values);
  base::require(outcome.faults.empty() && outcome.work.passes.size() == 1, "the design is right");
  return std::move(outcome.work.passes[0]);
}

/// The first row alone.
stitch::Pass row_of(long stitches) {
  stitch::Pass pass = pass_of(bench::Kind::cable, 2 * stitches);
  pass.runs.pop_back();
  pass.order = stitch::Order::in_turn;
  return pass;
}

trail::Trail plan(const stitch::Pass& pass) {
  const trail::Round round = trail::plan_round(pass, {});
  return trail::make_trail(round, round.starts.front(), {}, {300, 40});
}

double back_thread(const trail::Round& round) {
  double back = 0;
  const auto& s = round.stitches;
  for (std::size_t k = 0; k < s.size(); ++k) back += cloth::distance(s[k > 0 ? k - 1 : s.size() - 1].down, s[k].up);
  return back;
}

double least_back_thread(const stitch::Pass& pass) {
  std::vector<matching::End> ends;
  for (const stitch::Run& run : pass.runs)
    for (const cloth::Stitch& s : run.stitches)
      for (const cloth::Hole hole : {s.a, s.b}) ends.push_back({hole.x, hole.y});
  const matching::Least least = matching::least_back(ends, matching::Back::closed, 6);
  base::require(least.proven, "the bound is proven");
  return least.threads;
}

void measure(benchmark::State& state, const stitch::Pass& pass) {
  for (auto _ : state) benchmark::DoNotOptimize(plan(pass));
  std::size_t stitches = 0;
  for (const stitch::Run& run : pass.runs) stitches += run.stitches.size();
  const auto n = static_cast<double>(stitches);
  state.counters["stitches"] = n;
  state.counters["time_a_stitch"] = benchmark::Counter(n, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  state.counters["bytes_a_stitch"] = static_cast<double>(bench::peak_of([&] { benchmark::DoNotOptimize(plan(pass)); })) / n;
  if (stitches <= 20000) state.counters["over_bound"] = back_thread(trail::plan_round(pass, {})) / least_back_thread(pass);
}

void plan_cable(benchmark::State& state) { measure(state, pass_of(bench::Kind::cable, state.range(0))); }
void plan_blocks(benchmark::State& state) { measure(state, pass_of(bench::Kind::blocks, state.range(0))); }
void plan_row(benchmark::State& state) { measure(state, row_of(state.range(0))); }

}  // namespace

BENCHMARK(plan_cable)->RangeMultiplier(10)->Range(1000, 100000)->Unit(benchmark::kMillisecond)->Name("trail/cable");
BENCHMARK(plan_blocks)->RangeMultiplier(10)->Range(1000, 100000)->Unit(benchmark::kMillisecond)->Name("trail/blocks");
BENCHMARK(plan_row)->RangeMultiplier(10)->Range(1000, 100000)->Unit(benchmark::kMillisecond)->Name("trail/row_alone");
