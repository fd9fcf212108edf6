// A sorted store that grows by whole batches and is searched in between: few layers, each at least twice as long as the next, so that a
// batch costs little beyond its own length and a search looks into few places. A Layer says what it keeps (Item), the order (before), is
// made from sorted items and gives them back (take).
#pragma once

#include <algorithm>
#include <iterator>
#include <utility>
#include <vector>

namespace guide {

template <class Layer>
class Layers {
 public:
  using Item = typename Layer::Item;

  void add(std::vector<Item> items) {
    if (items.empty()) return;
    std::sort(items.begin(), items.end(), Layer::before);
    while (!layers_.empty() && layers_.back().size() < 2 * items.size()) {
      items = merged(layers_.back().take(), std::move(items));
      layers_.pop_back();
    }
    layers_.emplace_back(std::move(items));
  }

  auto begin() const { return layers_.begin(); }
  auto end() const { return layers_.end(); }

 private:
  static std::vector<Item> merged(std::vector<Item> a, std::vector<Item> b) {
    std::vector<Item> all;
    all.reserve(a.size() + b.size());
    std::merge(std::make_move_iterator(a.begin()), std::make_move_iterator(a.end()), std::make_move_iterator(b.begin()),
               std::make_move_iterator(b.end()), std::back_inserter(all), Layer::before);
    return all;
  }

  std::vector<Layer> layers_;
};

}  // namespace guide
