// Up to eight pieces: every order at once, by dynamic programming over the set worked so far, the last piece and the hole it ends in. More:
// nearest first, then swaps and reversals of stretches of the order; the ways of the pieces in the stretch are chosen anew each time.
#include "trail/scattered.h"

#include <algorithm>
#include <bit>
#include <numeric>

#include "trail/pieces.h"

namespace trail {
namespace {

constexpr int exact_to = 8;
constexpr int near_in_order = 12;  // pieces of the order that a swap or reversal reaches over
constexpr int rounds_at_most = 50;

/// The hole from which the piece, gone down at last in `hole`, costs just so much.
std::optional<cloth::Hole> leading(const Pieces& pieces, const Pieces::Ends& before, int piece, cloth::Hole hole, const Cost& wanted) {
  std::optional<std::pair<int, cloth::Hole>> found;
  for (const auto& from : before) {
    const auto ends = pieces.after({from}, piece);
    const auto end = ends.find(hole);
    const bool leads = end != ends.end() && end->second.cost == wanted;
    if (leads && (!found || from.second.way < found->first)) found = {from.second.way, from.first};
  }
  return found ? std::optional(found->second) : std::nullopt;
}

/// The best order of a few pieces; of equals that which keeps to the listed one longest.
std::vector<int> exact_order(const Pieces& pieces) {
  const auto n = static_cast<unsigned>(pieces.size());
  const unsigned all = (1u << n) - 1;
  std::vector<std::vector<Pieces::Ends>> reached(all + 1, std::vector<Pieces::Ends>(n));
  for (unsigned set = 1; set <= all; ++set)
    for (unsigned last = 0; last < n; ++last) {
      if ((set >> last & 1u) == 0) continue;
      const unsigned before = set & ~(1u << last);
      if (before == 0) reached[set][last] = pieces.after({}, static_cast<int>(last));
      Pieces::Ends& here = reached[set][last];
      for (unsigned p = 0; p < n; ++p)
        if ((before >> p & 1u) != 0)
          for (const auto& [hole, there] : pieces.after(reached[before][p], static_cast<int>(last))) {
            const auto [end, fresh] = here.emplace(hole, there);
            if (!fresh && there.cost < end->second.cost) end->second.cost = there.cost;
          }
    }
  std::vector<int> order;
  unsigned set = all, last = n;
  cloth::Hole hole;
  std::optional<Pieces::Reached> best;
  for (unsigned piece = n; piece-- > 0;)
    for (const auto& [end, there] : reached[all][piece])
      if (!best || there.cost < best->cost || (piece == last && there < *best)) best = there, last = piece, hole = end;
  for (;;) {
    order.push_back(static_cast<int>(last));
    const Cost wanted = reached[set][last].at(hole).cost;
    set &= ~(1u << last);
    if (set == 0) break;
    for (unsigned p = n; p-- > 0;) {
      if ((set >> p & 1u) == 0) continue;
      const auto from = leading(pieces, reached[set][p], static_cast<int>(last), hole, wanted);
      if (!from) continue;
      hole = *from;
      last = p;
      break;
    }
  }
  std::reverse(order.begin(), order.end());
  return order;
}

/// Always on to the piece whose beginning is nearest.
std::vector<int> nearest_order(const Pieces& pieces) {
  std::vector<int> left(static_cast<std::size_t>(pieces.size()));
  std::iota(left.begin(), left.end(), 0);
  constexpr std::size_t searched = 3000;  // of more, the listed order is where the search begins
  if (left.size() > searched) return left;
  std::vector<int> order{0};
  left.erase(left.begin());
  Pieces::Ends at = pieces.after({}, 0);
  while (!left.empty()) {
    const auto cheaper = [](const auto& a, const auto& b) { return a.second < b.second; };
    const cloth::Hole from = std::min_element(at.begin(), at.end(), cheaper)->first;
    const auto far = [&](int piece) { return cloth::squared(from, pieces.options(piece).front().down); };
    const auto next = std::min_element(left.begin(), left.end(), [&](int a, int b) { return far(a) < far(b); });
    order.push_back(*next);
    at = pieces.after(at, *next);
    left.erase(next);
  }
  return order;
}

class Improver {
 public:
  Improver(const Pieces& pieces, std::vector<int> order) : pieces_(pieces), order_(std::move(order)) {
    options_ = pieces_.choose(order_, std::nullopt, std::nullopt).options;
  }

  std::vector<int> improved() {
    for (int round = 0; round < rounds_at_most && once(); ++round) {
    }
    return order_;
  }

 private:
  int size() const { return static_cast<int>(order_.size()); }
  const Option& option(int i) const {
    return pieces_.options(order_[static_cast<std::size_t>(i)])[static_cast<std::size_t>(options_[static_cast<std::size_t>(i)])];
  }

  bool once() {
    bool better = false;
    for (int i = 0; i < size(); ++i)
      for (int j = i + 1; j < std::min(size(), i + near_in_order); ++j) {
        better = attempt(i, j, [](std::vector<int>& s) { std::reverse(s.begin(), s.end()); }) || better;
        better = attempt(i, j, [](std::vector<int>& s) { std::swap(s.front(), s.back()); }) || better;
      }
    return better;
  }

  template <class Change>
  bool attempt(int i, int j, Change change) {
    const auto from = i > 0 ? std::optional(option(i - 1).down) : std::nullopt;
    const auto to = j + 1 < size() ? std::optional(option(j + 1).up) : std::nullopt;
    std::vector<int> stretch(order_.begin() + i, order_.begin() + j + 1);
    const Cost now = pieces_.choose(stretch, from, to).cost;
    change(stretch);
    Pieces::Choice choice = pieces_.choose(stretch, from, to);
    if (!(choice.cost < now)) return false;
    std::copy(stretch.begin(), stretch.end(), order_.begin() + i);
    std::copy(choice.options.begin(), choice.options.end(), options_.begin() + i);
    return true;
  }

  const Pieces& pieces_;
  std::vector<int> order_, options_;
};

}  // namespace

Round scattered_round(const stitch::Pass& pass, const Rules& rules) {
  Round round;
  round.order = pass.order;
  round.keep_open = pass.keep_open;
  if (pass.runs.empty()) return round;
  const Clear clear(rules.keep_clear, pass.keep_open);
  const Pieces pieces(pass, clear);
  const std::vector<int> order = pieces.size() <= exact_to ? exact_order(pieces) : Improver(pieces, nearest_order(pieces)).improved();
  const std::vector<int> options = pieces.choose(order, std::nullopt, std::nullopt).options;
  for (std::size_t i = 0; i < order.size(); ++i)
    pieces.write(order[i], pieces.options(order[i])[static_cast<std::size_t>(options[i])], round.stitches);
  round.starts = {0};
  return round;
}

}  // namespace trail
