#include "plan/ready.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "plan/cuttings.h"

namespace plan {
namespace {

constexpr int beside = 4;  // threads: the depth of a block, under which ends are woven in

using Place = std::tuple<cutwork::Axis, int, int>;

/// Threads of one area that are withdrawn, as boxes of the cloth.
struct Ground {
  std::vector<cloth::Box> threads;
  cloth::Box box;

  void add(const cutwork::Span& span) {
    const cloth::Box one = span.axis == cutwork::Axis::v ? cloth::Box{span.thread, span.from, span.thread + 1, span.to}
                                                         : cloth::Box{span.from, span.thread, span.to, span.thread + 1};
    if (threads.empty()) box = one;
    box.grow({one.x0, one.y0});
    box.grow({one.x1, one.y1});
    threads.push_back(one);
  }
  bool near(cloth::Hole hole) const {
    return box.widened(beside).holds(hole) &&
           std::any_of(threads.begin(), threads.end(), [&](const cloth::Box& one) { return one.widened(beside).holds(hole); });
  }
  bool under(cloth::Stitch back) const {
    return cloth::touches(back, box) &&
           std::any_of(threads.begin(), threads.end(), [&](const cloth::Box& one) { return cloth::crosses(back, one); });
  }
};

/// By area: a withdrawn thread belongs to the area of the snip at its end.
std::vector<Ground> grounds_of(const cutwork::Cutting& cutting) {
  std::map<Place, int> area_at;
  int areas = 0;
  for (const cutwork::Cut& cut : cutting.cuts) {
    area_at[{cut.axis, cut.thread, cut.axis == cutwork::Axis::v ? cut.at.y : cut.at.x}] = cut.area;
    areas = std::max(areas, cut.area + 1);
  }
  std::vector<Ground> grounds(static_cast<std::size_t>(areas));
  for (const cutwork::Span& span : cutting.withdrawn) {
    auto found = area_at.find({span.axis, span.thread, span.from});
    if (found == area_at.end()) found = area_at.find({span.axis, span.thread, span.to});
    if (found != area_at.end()) grounds[static_cast<std::size_t>(found->second)].add(span);
  }
  return grounds;
}

class Looking {
 public:
  Looking(const course::Course& course, const Plan& plan, const PartCutting& cut) : course_(course), plan_(plan), cut_(cut) {}

  std::vector<ReadyArea> areas() const {
    const std::vector<Ground> grounds = grounds_of(cut_.cutting);
    std::vector<ReadyArea> all(grounds.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
      all[i].area = static_cast<int>(i);
      count_blocks(all[i]);
      finished(all[i], grounds[i]);
    }
    for (int t = 0; t < static_cast<int>(plan_.trails.size()); ++t)
      for (const guide::Section& section : plan_.trails[static_cast<std::size_t>(t)].sections)
        if (guide::When{section.lesson, section.item, 0} < guide::When{cut_.lesson, cut_.item, 0}) back_of(t, section, grounds, all);
    return all;
  }

 private:
  void count_blocks(ReadyArea& area) const {
    std::set<int> seen;
    for (const cutwork::Cut& cut : cut_.cutting.cuts) {
      if (cut.area != area.area) continue;
      if (area.first_cutting == 0) area.first_cutting = cut.cutting;
      area.last_cutting = cut.cutting;
      ++area.snips;
      if (!seen.insert(cut.block).second) continue;
      const cutwork::Bundle& block = cut_.blocks[static_cast<std::size_t>(cut.block)];
      auto of = std::find_if(area.blocks.begin(), area.blocks.end(), [&](const auto& b) { return b.part == block.part; });
      if (of == area.blocks.end()) of = area.blocks.insert(of, {block.part, 0, 0});
      ++of->blocks;
      of->stitches += static_cast<int>(block.stitches.size());
    }
  }

  /// Parts that hold the area or lie beside it, with the lesson that finishes them.
  void finished(ReadyArea& area, const Ground& ground) const {
    for (int p = 0; p < static_cast<int>(course_.parts.size()); ++p) {
      const auto& stitches = course_.parts[static_cast<std::size_t>(p)].work.stitches;
      const bool holds = std::any_of(area.blocks.begin(), area.blocks.end(), [&](const auto& b) { return b.part == p; });
      const auto close = [&](const cloth::Stitch& s) { return cloth::touches(s, ground.box.widened(near_by)); };
      if (!holds && std::none_of(stitches.begin(), stitches.end(), close)) continue;
      int lesson = 0;
      for (const guide::PlacedTrail& trail : plan_.trails)
        for (const guide::Section& section : trail.sections)
          if (trail.part == p) lesson = std::max(lesson, section.lesson);
      area.finished.push_back({p, lesson});
    }
  }

  void back_of(int t, const guide::Section& section, const std::vector<Ground>& grounds, std::vector<ReadyArea>& areas) const {
    const trail::Trail& trail = plan_.trails[static_cast<std::size_t>(t)].trail;
    const int last = static_cast<int>(trail.stitches.size()) - 1;
    for (int k = section.first; k <= section.last; ++k) {
      const bool begins = std::binary_search(trail.ends.begin(), trail.ends.end(), k);
      const bool ends = k == last || std::binary_search(trail.ends.begin(), trail.ends.end(), k + 1);
      const trail::Worked& stitch = trail.stitches[static_cast<std::size_t>(k)];
      for (std::size_t i = 0; i < areas.size(); ++i) {
        if (begins && grounds[i].near(stitch.up)) areas[i].tails.push_back({t, k, true});
        if (ends && grounds[i].near(stitch.down)) areas[i].tails.push_back({t, k, false});
        if (!begins && runs_under(trail, k, grounds[i])) areas[i].across.push_back({t, k});
      }
    }
  }

  /// The thread on the back that leads to the stitch. Of looped stitches it lies along the ridge.
  static bool runs_under(const trail::Trail& trail, int k, const Ground& ground) {
    if (trail.order == stitch::Order::looped) return false;
    std::vector<cloth::Hole> way{trail.stitches[static_cast<std::size_t>(k - 1)].down};
    for (const trail::Under& under : trail.under)
      if (under.stitch == k) way.insert(way.end(), under.via.begin(), under.via.end());
    way.push_back(trail.stitches[static_cast<std::size_t>(k)].up);
    for (std::size_t i = 1; i < way.size(); ++i)
      if (way[i - 1] != way[i] && ground.under({way[i - 1], way[i]})) return true;
    return false;
  }

  const course::Course& course_;
  const Plan& plan_;
  const PartCutting& cut_;
};

}  // namespace

std::vector<ReadyArea> ready_to_cut(const course::Course& course, const Plan& plan, const PartCutting& cut) {
  return cut.cutting.cuts.empty() ? std::vector<ReadyArea>{} : Looking(course, plan, cut).areas();
}

}  // namespace plan
