#include "cutwork/order.h"

#include <algorithm>
#include <map>

namespace cutwork {
namespace {

/// Threads to be snipped at one end of one block, four at the most.
struct Snips {
  Axis axis = Axis::v;
  int block = -1, at = 0;
  std::vector<std::size_t> threads;  ///< of `taken`
};

class Numbering {
 public:
  Numbering(const Request& request, const std::vector<Taken>& taken) : taken_(taken), of_block_(request.blocks.size()) {
    group_of_.assign(taken.size(), {-1, -1});
    for (std::size_t t = 0; t < taken.size(); ++t)
      for (const int end : {0, 1}) enter(t, end);
  }

  std::vector<Cut> cuts() {
    std::vector<int> order;
    for (const auto& groups : of_block_) order.insert(order.end(), groups.begin(), groups.end());
    for (int group = 0; group < static_cast<int>(groups_.size()); ++group)
      if (groups_[group].block < 0) order.push_back(group);  // ends that no block holds
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return area(a) < area(b); });
    for (const int group : order) {
      if (area(group) != last_area_) last_area_ = area(group), ++areas_;
      number_with_opposite(group);
    }
    return std::move(cuts_);
  }

 private:
  void enter(std::size_t t, int end) {
    const Run& run = *taken_[t].run;
    const int block = (end == 0 ? run.low : run.high).block, at = end == 0 ? run.from : run.to;
    const auto key = std::make_tuple(taken_[t].axis, block, at, end);
    const auto found = open_.find(key);
    const bool goes_on = found != open_.end() && groups_[found->second].threads.size() < four &&
                         taken_[groups_[found->second].threads.back()].run->line + 1 == run.line;
    if (goes_on) {
      groups_[found->second].threads.push_back(t);
      group_of_[t][end] = static_cast<int>(found->second);
      return;
    }
    open_[key] = groups_.size();
    group_of_[t][end] = static_cast<int>(groups_.size());
    if (block >= 0) of_block_[block].push_back(static_cast<int>(groups_.size()));
    groups_.push_back({taken_[t].axis, block, at, {t}});
    numbered_.push_back(false);
  }

  int area(int group) const { return taken_[groups_[group].threads.front()].run->area; }

  void number_with_opposite(int group) {
    if (numbered_[group]) return;
    number(group);
    for (const std::size_t t : groups_[group].threads)
      for (const int end : {0, 1}) number(group_of_[t][end]);
  }

  void number(int group) {
    if (numbered_[group]) return;
    numbered_[group] = true;
    ++cutting_;
    const Snips& snips = groups_[group];
    for (const std::size_t t : snips.threads) {
      const int line = taken_[t].run->line;
      const cloth::Hole at = snips.axis == Axis::v ? cloth::Hole{line, snips.at} : cloth::Hole{snips.at, line};
      cuts_.push_back({snips.axis, line, at, static_cast<int>(cuts_.size()) + 1, cutting_, snips.block, areas_ - 1});
    }
  }

  const std::vector<Taken>& taken_;
  std::vector<std::vector<int>> of_block_;
  std::vector<std::array<int, 2>> group_of_;
  std::vector<Snips> groups_;
  std::vector<bool> numbered_;
  std::map<std::tuple<Axis, int, int, int>, std::size_t> open_;
  std::vector<Cut> cuts_;
  int cutting_ = 0, last_area_ = -1, areas_ = 0;
};

}  // namespace

std::vector<Cut> cuts_in_order(const Request& request, const std::vector<Taken>& taken) { return Numbering(request, taken).cuts(); }

}  // namespace cutwork
