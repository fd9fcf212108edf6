#include "cutwork/needlework.h"

#include <algorithm>
#include <cmath>

#include "cloth/size.h"
#include "cutwork/after_route.h"
#include "cutwork/filling_work.h"
#include "cutwork/route.h"

namespace cutwork {
namespace {

using stitch::Filling;

constexpr double round_a_bar = 2;  // times its threads: over it and under it (geometry of a flat bar)
constexpr double a_picot = 4;      // threads of the cloth for the twist and the way back (an assumption, no source)
constexpr int fewest_weaves = 2;

double length_of(const Bar& bar, double tall) { return bar.axis == Axis::h ? bar.box.width() : tall * bar.box.height(); }
double width_of(const Bar& bar, double tall) { return bar.axis == Axis::h ? tall * bar.box.height() : bar.box.width(); }

std::array<cloth::Hole, 2> ends_of(const Bar& bar) {
  const cloth::Hole middle = middle_of(bar);
  if (bar.axis == Axis::h) return {{{bar.box.x0, middle.y}, {bar.box.x1, middle.y}}};
  return {{{middle.x, bar.box.y0}, {middle.x, bar.box.y1}}};
}

class Worker {
 public:
  Worker(const Cutting& cutting, const Wish& wish) : cutting_(cutting), wish_(wish), sides_(sides_of(cutting)) {
    work_.fillings = fillings_of(cutting, wish, work_.not_filled);
  }

  Needlework work() {
    for (const BarStep& step : bar_route(cutting_.bars, static_cast<int>(cutting_.crossings.size()))) add_bar(step);
    add_eyes();
    for (RouteItem& item : work_.bars) finish(item);
    measure(work_.bars);
    work_.after = after_route(cutting_, sides_, work_.fillings, wish_.tall);
    for (RouteItem& item : work_.after) item.threads = item.fillings[0].threads;
    measure(work_.after);
    return std::move(work_);
  }

 private:
  void add_bar(const BarStep& step) {
    const Bar& bar = cutting_.bars[static_cast<std::size_t>(step.bar)];
    RouteItem item;
    item.bar = step.bar;
    item.from_low = step.from_low;
    item.behind = step.behind;
    item.straight = step.straight;
    const auto ends = ends_of(bar);
    item.from = ends[step.from_low ? 0 : 1];
    item.to = ends[step.from_low ? 1 : 0];
    for (const std::size_t side : {0U, 1U}) {
      const Filling beside = work_.fillings[static_cast<std::size_t>(bar.openings[side])];
      item.picots[side] = beside == Filling::picots || (wish_.picots && beside != Filling::doves_eye);
    }
    work_.bars.push_back(std::move(item));
  }

  /// Each dove's eye to the last of its bars.
  void add_eyes() {
    std::vector<std::pair<int, int>> last(cutting_.openings.size(), {-1, -1});  // item, side
    std::vector<int> item_of(cutting_.bars.size(), -1);
    for (std::size_t i = 0; i < work_.bars.size(); ++i) item_of[static_cast<std::size_t>(work_.bars[i].bar)] = static_cast<int>(i);
    for (std::size_t o = 0; o < last.size(); ++o)
      for (int side = 0; side < 4; ++side)
        if (const int bar = sides_[o][static_cast<std::size_t>(side)]; bar >= 0)
          last[o] = std::max(last[o], {item_of[static_cast<std::size_t>(bar)], side});
    for (std::size_t o = 0; o < last.size(); ++o)
      if (work_.fillings[o] == Filling::doves_eye && last[o].first >= 0)
        work_.bars[static_cast<std::size_t>(last[o].first)].fillings.push_back(
            doves_eye(cutting_, static_cast<int>(o), sides_[o], last[o].second, wish_.tall));
  }

  void finish(RouteItem& item) const {
    const Bar& bar = cutting_.bars[static_cast<std::size_t>(item.bar)];
    const int fit = std::max(fewest_weaves, static_cast<int>(std::floor(length_of(bar, wish_.tall) / wish_.thickness + 1e-9)));
    item.weaves = wish_.weaves > 0 ? wish_.weaves : fit;
    if (item.halved()) item.weaves = std::max(fewest_weaves, item.weaves - item.weaves % 2);
    item.threads = item.weaves * round_a_bar * width_of(bar, wish_.tall);
    for (const bool picot : item.picots) item.threads += picot ? a_picot : 0;
    for (const FillingWork& filling : item.fillings) item.threads += filling.threads;
  }

  /// Adds the ways between the items.
  void measure(std::vector<RouteItem>& items) const {
    for (std::size_t i = 1; i < items.size(); ++i) {
      if (items[i].behind < 0) continue;
      cloth::Hole at = items[i - 1].to;
      for (const cloth::Hole next : items[i].via) {
        items[i].threads += cloth::distance(at, next, wish_.tall);
        at = next;
      }
      items[i].threads += cloth::distance(at, items[i].from, wish_.tall);
    }
  }

  const Cutting& cutting_;
  const Wish& wish_;
  std::vector<Sides> sides_;
  Needlework work_;
};

}  // namespace

Needlework plan_needlework(const Cutting& cutting, const Wish& wish) {
  if (cutting.openings.empty()) return {};
  return Worker(cutting, wish).work();
}

}  // namespace cutwork
