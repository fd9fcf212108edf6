// Where a round begins: the start whose count-in costs least, as the teacher's own hole, where she gave one and it is a start.
#include <algorithm>
#include <tuple>

#include "guide/guide.h"

namespace guide {
namespace {

constexpr std::size_t all_asked = 2000;  // up to so many starts every one is asked
constexpr std::size_t sampled = 600;     // of more, so many spread evenly, and all those about the best of them and about the outermost
constexpr std::size_t looked_about = 4;

/// Cheapest, then topmost, then leftmost, then first.
struct Asked {
  double cost = 0;
  cloth::Hole hole;
  int stitch = 0;
  friend bool operator<(const Asked& a, const Asked& b) {
    return std::tie(a.cost, a.hole.y, a.hole.x, a.stitch) < std::tie(b.cost, b.hole.y, b.hole.x, b.stitch);
  }
};

class Starts {
 public:
  Starts(const trail::Round& round, const OnCloth& on_cloth, When now) : round_(round), on_cloth_(on_cloth), now_(now) {}

  int best() {
    const std::size_t size = round_.starts.size();
    if (size <= all_asked)
      ask(0, size);
    else
      look_about(sample());
    return best_->stitch;
  }
  int at(cloth::Hole hole) const {
    const auto found = std::find_if(round_.starts.begin(), round_.starts.end(), [&](int s) { return hole_of(s) == hole; });
    return found == round_.starts.end() ? -1 : *found;
  }
  int nearest(cloth::Hole hole) const {
    const auto key = [&](int s) { return std::tuple(cloth::squared(hole_of(s), hole), hole_of(s).y, hole_of(s).x, s); };
    return *std::min_element(round_.starts.begin(), round_.starts.end(), [&](int a, int b) { return key(a) < key(b); });
  }
  cloth::Hole hole_of(int stitch) const { return round_.stitches[stitch].up; }

 private:
  Asked asked(std::size_t i, double enough) const {
    const int stitch = round_.starts[i];
    return {on_cloth_.cost(hole_of(stitch), now_, enough), hole_of(stitch), stitch};
  }

  void keep(const Asked& one) {
    if (!best_ || one < *best_) best_ = one;
  }

  void ask(std::size_t first, std::size_t last) {
    constexpr double just_more = 2e-6;  // costs are whole millionths of a second: equals are told exactly
    for (std::size_t i = first; i < last; ++i) keep(asked(i, best_ ? best_->cost + just_more : std::numeric_limits<double>::infinity()));
  }

  /// Every so-manieth start, with its place, cheapest first.
  std::vector<std::pair<Asked, std::size_t>> sample() {
    const std::size_t size = round_.starts.size();
    std::vector<std::pair<Asked, std::size_t>> samples;
    for (std::size_t k = 0; k < sampled; ++k) {
      const std::size_t i = k * size / sampled;
      samples.emplace_back(asked(i, std::numeric_limits<double>::infinity()), i);
      keep(samples.back().first);
    }
    std::sort(samples.begin(), samples.end());
    return samples;
  }

  void look_about(const std::vector<std::pair<Asked, std::size_t>>& samples) {
    const std::size_t size = round_.starts.size(), apart = size / sampled + 1;
    std::vector<std::size_t> places = outermost();
    for (std::size_t k = 0; k < looked_about; ++k) places.push_back(samples[k].second);
    for (const std::size_t i : places) ask(i - std::min(i, apart), std::min(size, i + apart + 1));
  }

  /// The topmost, lowest, leftmost and rightmost start; of equals the first and the last.
  std::vector<std::size_t> outermost() const {
    std::vector<std::size_t> found;
    for (const auto& [x, y] : {std::pair{0, 1}, {0, -1}, {1, 0}, {-1, 0}}) {
      const auto reach = [&](int s) { return x * hole_of(s).x + y * hole_of(s).y; };
      const auto less = [&](int a, int b) { return reach(a) < reach(b); };
      const auto first = std::min_element(round_.starts.begin(), round_.starts.end(), less);
      const auto last = std::min_element(round_.starts.rbegin(), round_.starts.rend(), less);
      found.push_back(static_cast<std::size_t>(first - round_.starts.begin()));
      found.push_back(round_.starts.size() - 1 - static_cast<std::size_t>(last - round_.starts.rbegin()));
    }
    return found;
  }

  const trail::Round& round_;
  const OnCloth& on_cloth_;
  When now_;
  std::optional<Asked> best_;
};

}  // namespace

Start choose_start(const trail::Round& round, const OnCloth& on_cloth, When now, std::optional<cloth::Hole> begin_at) {
  Starts starts(round, on_cloth, now);
  if (round.starts.empty() || round.stitches.empty()) return {};
  if (!begin_at) return {round.starts.size() == 1 ? round.starts[0] : starts.best(), false, std::nullopt};
  if (const int wanted = starts.at(*begin_at); wanted >= 0) return {wanted, false, std::nullopt};
  const int nearest = starts.nearest(*begin_at);
  return {nearest, true, starts.hole_of(nearest)};
}

}  // namespace guide
