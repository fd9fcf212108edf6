// At every crossing bars are paired: the thread that comes out of one goes into the other. Every pairing makes threads, some of them round;
// a round one is opened into another thread at any crossing that both pass, by pairing anew there. When none is left the number of threads
// is the least there can be: an end that is not paired is at a block, or at a crossing with an odd number of bars.
#include "cutwork/route.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace cutwork {
namespace {

/// A bar's end: 2 * bar for the low one, 2 * bar + 1 for the high one.
using End = int;
constexpr End none = -1;

class Pairing {
 public:
  Pairing(const std::vector<Bar>& bars, int crossings, bool falling) : bars_(bars), falling_(falling) {
    mate_.assign(2 * bars.size(), none);
    at_.resize(static_cast<std::size_t>(crossings));
    for (End end = 0; end < static_cast<End>(mate_.size()); ++end)
      if (const int crossing = crossing_of(end); crossing >= 0) at_[static_cast<std::size_t>(crossing)].push_back(end);
    for (const auto& ends : at_) pair(ends);
    find_threads();
    for (const auto& ends : at_) open_rounds(ends);
  }

  int opened() const { return opened_; }

  std::vector<BarStep> steps() const {
    std::vector<BarStep> steps;
    std::vector<bool> done(bars_.size(), false);
    for (std::size_t b = 0; b < bars_.size(); ++b)
      if (!done[b]) follow(begin_of(static_cast<End>(2 * b)), done, steps);
    return steps;
  }

 private:
  int crossing_of(End end) const { return bars_[static_cast<std::size_t>(end / 2)].crossings[static_cast<std::size_t>(end % 2)]; }
  Axis axis(End end) const { return bars_[static_cast<std::size_t>(end / 2)].axis; }
  static End other(End end) { return end ^ 1; }
  bool turn(End a, End b) const { return axis(a) != axis(b); }

  void join(End a, End b) {
    mate_[static_cast<std::size_t>(a)] = b;
    mate_[static_cast<std::size_t>(b)] = a;
  }
  End mate(End end) const { return mate_[static_cast<std::size_t>(end)]; }

  /// Staircases that all lean one way: a bar on the left goes with one below (falling) or above; then any right angle, then what is left.
  void pair(const std::vector<End>& ends) {
    const auto leans = [&](End a, End b) { return turn(a, b) && (axis(a) == Axis::h ? a % 2 == b % 2 : b % 2 == a % 2) != falling_; };
    for (const int round : {0, 1, 2})
      for (const End a : ends)
        for (const End b : ends)
          if (a < b && mate(a) == none && mate(b) == none && a / 2 != b / 2 && (round == 2 || (round == 1 ? turn(a, b) : leans(a, b))))
            join(a, b);
  }

  int root(int bar) {
    auto& parent = thread_;
    while (parent[static_cast<std::size_t>(bar)] != bar)
      bar = parent[static_cast<std::size_t>(bar)] = parent[static_cast<std::size_t>(parent[static_cast<std::size_t>(bar)])];
    return bar;
  }

  void find_threads() {
    thread_.resize(bars_.size());
    std::iota(thread_.begin(), thread_.end(), 0);
    round_.assign(bars_.size(), true);
    for (End end = 0; end < static_cast<End>(mate_.size()); ++end)
      if (mate(end) != none) thread_[static_cast<std::size_t>(root(end / 2))] = root(mate(end) / 2);
    for (End end = 0; end < static_cast<End>(mate_.size()); ++end)
      if (mate(end) == none) round_[static_cast<std::size_t>(root(end / 2))] = false;
  }

  /// Are they of two threads, one of them round?
  bool to_be_joined(End a, End b) {
    const int s = root(a / 2), t = root(b / 2);
    return s != t && (round_[static_cast<std::size_t>(s)] || round_[static_cast<std::size_t>(t)]);
  }

  void unite(End a, End b) {
    const int s = root(a / 2), t = root(b / 2);
    round_[static_cast<std::size_t>(t)] = round_[static_cast<std::size_t>(s)] && round_[static_cast<std::size_t>(t)];
    thread_[static_cast<std::size_t>(s)] = t;
    ++opened_;
  }

  void open_rounds(const std::vector<End>& ends) {
    for (const End a : ends)
      for (const End c : ends) {
        if (a == c || !to_be_joined(a, c)) continue;
        unite(a, c);
        mate(a) == none ? take_in(c, a) : mate(c) == none ? take_in(a, c) : exchange(a, c);
      }
  }

  /// Pairs `loose` with one of two that are paired; the other is loose then.
  void take_in(End a, End loose) {
    const End b = mate(a);
    const bool first = turn(a, loose) || !turn(b, loose);
    mate_[static_cast<std::size_t>(first ? b : a)] = none;
    join(first ? a : b, loose);
  }

  void exchange(End a, End c) {
    const End b = mate(a), d = mate(c);
    const int crosswise = int{turn(a, d)} + int{turn(b, c)}, alike = int{turn(a, c)} + int{turn(b, d)};
    if (crosswise >= alike) {
      join(a, d);
      join(b, c);
    } else {
      join(a, c);
      join(b, d);
    }
  }

  /// Where the thread begins that works this bar: at a loose end; of a round, where it would else go straight on, or here.
  End begin_of(End end) const {
    std::optional<End> straight;
    End at = end;
    do {
      const End before = mate(at);
      if (before == none) return at;
      if (!straight && !turn(before, at)) straight = at;
      at = other(before);
    } while (at != end);
    return straight.value_or(end);
  }

  void follow(End at, std::vector<bool>& done, std::vector<BarStep>& steps) const {
    End before = none;
    while (at != none && !done[static_cast<std::size_t>(at / 2)]) {
      done[static_cast<std::size_t>(at / 2)] = true;
      steps.push_back({at / 2, at % 2 == 0, before == none ? -1 : crossing_of(at), before != none && !turn(before, at)});
      before = other(at);
      at = mate(before);
    }
  }

  const std::vector<Bar>& bars_;
  bool falling_;
  int opened_ = 0;
  std::vector<End> mate_;
  std::vector<std::vector<End>> at_;
  std::vector<int> thread_;  ///< bars of one thread hang together
  std::vector<bool> round_;
};

}  // namespace

std::vector<BarStep> bar_route(const std::vector<Bar>& bars, int crossings) {
  const Pairing falling(bars, crossings, true), rising(bars, crossings, false);
  return (falling.opened() <= rising.opened() ? falling : rising).steps();
}

}  // namespace cutwork
