// One pass from runs to needle points: order, ways, and where a trail may begin.
#include "base/require.h"
#include "trail/links.h"
#include "trail/looped.h"
#include "trail/scattered.h"
#include "trail/starts.h"
#include "trail/trail.h"
#include "trail/unit.h"
#include "trail/ways.h"

namespace trail {
namespace {

void check(const stitch::Pass& pass) {
  for (const stitch::Run& run : pass.runs) base::require(run.legs.size() == run.stitches.size(), "every stitch of a run has its leg");
}

void write_out(const Units& units, const stitch::Pass& pass, const Links& links, const std::vector<Way>& ways, Round& round) {
  for (std::size_t u = 0; u < units.size(); ++u) {
    const Unit& unit = units[u];
    const stitch::Run& run = pass.runs[static_cast<std::size_t>(unit.run)];
    for (int i = 0; i < unit.count; ++i) {
      const cloth::Stitch stitch = links.worked(u, ways[u], i);
      const int place = links.place(u, ways[u], i);
      const bool backward = unit.each_way && ways[u] != 0;
      round.stitches.push_back({stitch.a, stitch.b, backward, unit.run, place, run.legs[static_cast<std::size_t>(place)], unit.over});
    }
  }
}

}  // namespace

Round plan_round(const stitch::Pass& pass, const Rules& rules) {
  check(pass);
  if (pass.order == stitch::Order::scattered) return scattered_round(pass, rules);
  if (pass.order == stitch::Order::looped) return looped_round(pass);
  Units units = pass.order == stitch::Order::turn_about ? turn_about(pass) : in_turn(pass);
  mark_corners(pass, units);
  const Links links(pass, units, rules);
  const std::vector<Way> ways = cheapest_ways(links, pass.closed ? quietest(pass, units) : 0);
  Round round{.closed = pass.closed, .order = pass.order, .stitches = {}, .starts = {}};
  std::size_t stitches = 0;
  for (const stitch::Run& run : pass.runs) stitches += run.stitches.size();
  round.stitches.reserve(stitches);
  write_out(units, pass, links, ways, round);
  round.starts = starts_of(pass, round);
  return round;
}

}  // namespace trail
