#include "picture/numbering.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "picture/points.h"

namespace picture {

HoleUse HoleNumbers::use() const {
  const auto ups = std::count_if(numbers.begin(), numbers.end(), [](int n) { return n % 2 == 1; });
  const auto downs = static_cast<std::ptrdiff_t>(numbers.size()) - ups;
  if (ups > 0 && downs > 0) return HoleUse::both;
  if (ups > 0) return ups > 1 ? HoleUse::twice_up : HoleUse::up;
  return downs > 1 ? HoleUse::twice_down : HoleUse::down;
}

std::string HoleNumbers::text() const {
  std::string text;
  constexpr std::size_t most_listed = 3, most_told = 8;
  if (numbers.size() > most_told) return {};
  if (numbers.size() > most_listed && use() != HoleUse::both &&
      numbers.back() - numbers.front() == 2 * static_cast<int>(numbers.size() - 1))
    return fmt::format("{}, {} … {}", numbers[0], numbers[1], numbers.back());
  for (const int n : numbers) text += (text.empty() ? "" : ", ") + std::to_string(n);
  return text;
}

int loop_down_number(const trail::Trail& trail, int k, int first) {
  const auto changes = std::upper_bound(trail.ends.begin(), trail.ends.end(), k) - std::upper_bound(trail.ends.begin(), trail.ends.end(), first);
  return 2 * (k - first) + 2 + 2 * static_cast<int>(changes);
}

std::vector<HoleNumbers> numbers_of(const trail::Trail& trail, int first, int last, Ending ending) {
  std::vector<HoleNumbers> holes;
  std::map<cloth::Hole, std::size_t> place;
  for (const NeedlePoint& point : points_of(trail, first, last, ending)) {
    const auto [found, fresh] = place.try_emplace(point.hole, holes.size());
    if (fresh) holes.push_back({point.hole, {}});
    holes[found->second].numbers.push_back(point.number);
  }
  return holes;
}

cloth::Hole first_loop_hole(const trail::Trail& trail, int first) {
  const bool fresh = first == 0 || std::binary_search(trail.ends.begin(), trail.ends.end(), first);
  return trail.stitches[fresh ? first : first - 1].up;
}

std::vector<cloth::Hole> back_before(const trail::Trail& trail, int k) {
  if (k <= 0 || std::binary_search(trail.ends.begin(), trail.ends.end(), k)) return {};
  std::vector<cloth::Hole> way{trail.stitches[k - 1].down};
  const auto under = std::find_if(trail.under.begin(), trail.under.end(), [&](const trail::Under& u) { return u.stitch == k; });
  if (under != trail.under.end()) way.insert(way.end(), under->via.begin(), under->via.end());
  way.push_back(trail.stitches[k].up);
  return way;
}

}  // namespace picture
