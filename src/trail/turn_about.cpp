// Two rows worked turn about. Their order is fixed (order.h); what is chosen is the way of each stitch, exactly, on the whole circle or line.
#include <algorithm>

#include "trail/chain.h"
#include "trail/order.h"
#include "trail/rounds.h"

namespace trail {
namespace {

enum Variant { forwards, backwards };

class Rows {
 public:
  Rows(const stitch::Pass& pass, const Clear& clear) : pass_(pass), clear_(clear), slots_(turn_about_order(pass.runs[0], pass.runs[1])) {
    for (const Slot& slot : slots_) corner_.push_back(at_corner(pass.runs[slot.run], slot.place, pass.closed));
    if (pass.closed) begin_clear_of_corners();
  }
  std::size_t size() const { return slots_.size(); }

  int variants(std::size_t) const { return 2; }
  Cost own(std::size_t k, int way) const {
    if (way == forwards) return {};
    return {.away = corner_[k] || slots_[k].over ? 0 : 1, .steps = 1};
  }
  Cost step(std::size_t from, int v, std::size_t to, int w) const {
    const cloth::Hole gone = down(from, v), come = up(to, w);
    if (gone == come) return {.crossing = impossible};
    return {.crossing = clear_.crossed(gone, come) ? 1 : 0, .back = fine(gone, come)};
  }

  Worked worked(std::size_t k, int way) const {
    const Slot& slot = slots_[k];
    return {up(k, way), down(k, way), way == backwards, slot.run, slot.place, pass_.runs[slot.run].legs[slot.place], slot.over};
  }
  bool pair_at(std::size_t k) const { return k + 1 < size() && slots_[k].run == 0 && !slots_[k].over && slots_[k + 1].run == 1 && !slots_[k + 1].over; }
  bool touches_corner(std::size_t k) const { return corner_[k]; }

 private:
  const cloth::Stitch& stitch(std::size_t k) const { return pass_.runs[slots_[k].run].stitches[slots_[k].place]; }
  cloth::Hole up(std::size_t k, int way) const { return way == forwards ? stitch(k).a : stitch(k).b; }
  cloth::Hole down(std::size_t k, int way) const { return way == forwards ? stitch(k).b : stitch(k).a; }

  /// The circle is cut where nothing special happens, so that no corner is planned from its middle.
  void begin_clear_of_corners() {
    for (std::size_t k = 1; k + 1 < size(); ++k) {
      if (!pair_at(k) || corner_[k] || corner_[k - 1] || corner_[k + 1]) continue;
      std::rotate(slots_.begin(), slots_.begin() + static_cast<std::ptrdiff_t>(k), slots_.end());
      std::rotate(corner_.begin(), corner_.begin() + static_cast<std::ptrdiff_t>(k), corner_.end());
      return;
    }
  }

  const stitch::Pass& pass_;
  const Clear& clear_;
  std::vector<Slot> slots_;
  std::vector<bool> corner_;
};

std::vector<int> starts_of(const Rows& rows, const std::vector<Worked>& stitches) {
  std::vector<int> clear_of_corners, any;
  for (std::size_t k = 0; k < rows.size(); ++k) {
    if (!rows.pair_at(k) || stitches[k].backward || stitches[k + 1].backward) continue;
    any.push_back(static_cast<int>(k));
    if (!rows.touches_corner(k) && !rows.touches_corner(k + 1)) clear_of_corners.push_back(static_cast<int>(k));
  }
  if (!clear_of_corners.empty()) return clear_of_corners;
  return any.empty() ? std::vector<int>{0} : any;
}

}  // namespace

Round turn_about(const stitch::Pass& pass, const Clear& clear) {
  const Rows rows(pass, clear);
  const std::vector<std::uint8_t> ways = cheapest(rows, rows.size(), pass.closed ? Ring::closed : Ring::open);
  Round round{.closed = pass.closed, .order = pass.order, .stitches = {}, .starts = {}};
  for (std::size_t k = 0; k < ways.size(); ++k) round.stitches.push_back(rows.worked(k, ways[k]));
  round.starts = pass.closed && !round.stitches.empty() ? starts_of(rows, round.stitches) : std::vector<int>{0};
  return round;
}

}  // namespace trail
