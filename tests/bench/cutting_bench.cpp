// The cutting of many rings at once, both proofs included, and the order of its bars. Aims: 1,000 rings of 28 blocks in under 2 s; time a
// block stays the same as the cloth fills.
#include <benchmark/benchmark.h>

#include "base/require.h"
#include "cutwork/route.h"
#include "stitch/kind.h"

namespace {

/// Rings of eight blocks a side (28 blocks), `rings` of them in rows of fifty, clear of one another.
cutwork::Request cloth_of(long rings) {
  cutwork::Request request;
  for (long r = 0; r < rings; ++r) {
    const cloth::Hole start{static_cast<int>(r % 50 * 80), static_cast<int>(r / 50 * 80)};
    const stitch::Outcome outcome = stitch::find_kind("blocks")->build({{"start", start},
                                                                        {"first", std::string("across")},
                                                                        {"path", std::string("NE 8, SE 7, SW 7, NW 6")},
                                                                        {"cut_side", std::string("down")}});
    base::require(outcome.faults.empty(), "the design is right");
    for (const stitch::Feature& feature : outcome.work.features)
      if (feature.shape == stitch::Shape::bundle) request.blocks.push_back({feature.stitches, 0});
  }
  return request;
}

void plan_and_prove(benchmark::State& state) {
  const cutwork::Request request = cloth_of(state.range(0));
  std::size_t cuts = 0, bars = 0;
  for (auto _ : state) {
    const cutwork::Cutting cutting = cutwork::plan_cutting(request);
    base::require(cutting.problems.empty(), "every ring can be cut");
    cuts = cutting.cuts.size();
    bars = cutwork::bar_route(cutting.bars, static_cast<int>(cutting.crossings.size())).size();
  }
  const auto blocks = static_cast<double>(request.blocks.size());
  state.counters["blocks"] = blocks;
  state.counters["cuts"] = static_cast<double>(cuts);
  state.counters["bars"] = static_cast<double>(bars);
  state.counters["time_a_block"] = benchmark::Counter(blocks, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

}  // namespace

BENCHMARK(plan_and_prove)->RangeMultiplier(10)->Range(10, 1000)->Unit(benchmark::kMillisecond)->Name("cutwork/rings");
