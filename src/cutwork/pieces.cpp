#include "cutwork/pieces.h"

#include <algorithm>

#include "cutwork/patches.h"

namespace cutwork {
namespace {

struct Neighbours {
  std::vector<int> before, after;  ///< patches left and right, or above and below
};

bool rectangle(const Patch& patch) {
  std::int64_t area = 0;
  for (const cloth::Box& box : patch.boxes) area += std::int64_t{box.width()} * box.height();
  return area == std::int64_t{patch.box.width()} * patch.box.height();
}

class Sorter {
 public:
  Sorter(const Request& request, const Patches& patches, std::vector<Problem>& problems)
      : request_(request),
        patches_(patches),
        problems_(problems),
        opening_(patches.all.size(), -1),
        bars_at_(patches.all.size(), 0),
        crossing_(patches.all.size(), -1),
        level_(patches.all.size()),
        above_below_(patches.all.size()) {
    for (const auto& beside : patches.beside) {
      auto& neighbours = beside.level ? level_ : above_below_;
      neighbours[static_cast<std::size_t>(beside.first)].after.push_back(beside.second);
      neighbours[static_cast<std::size_t>(beside.second)].before.push_back(beside.first);
    }
  }

  Pieces pieces() {
    for (std::size_t i = 0; i < patches_.all.size(); ++i)
      if (patches_.all[i].left == Left::nothing) {
        opening_[i] = static_cast<int>(pieces_.openings.size());
        pieces_.openings.push_back({patches_.all[i].box, outline_of(patches_.all[i].boxes)});
      }
    for (std::size_t i = 0; i < patches_.all.size(); ++i)
      if (patches_.all[i].left == Left::across || patches_.all[i].left == Left::upright) bar(i);
    for (std::size_t i = 0; i < patches_.all.size(); ++i)
      if (patches_.all[i].left == Left::both && bars_at_[i] > 0) crossing(i);
    for (std::size_t b = 0; b < pieces_.bars.size(); ++b) join(pieces_.bars[b], patch_of_bar_[b]);
    return std::move(pieces_);
  }

 private:
  void bar(std::size_t i) {
    const Patch& patch = patches_.all[i];
    const bool across = patch.left == Left::across;
    const Neighbours& sides = (across ? above_below_ : level_)[i];
    Bar bar{across ? Axis::h : Axis::v, patch.box, {only_opening(sides.before), only_opening(sides.after)}};
    for (const auto* ends : {&(across ? level_ : above_below_)[i].before, &(across ? level_ : above_below_)[i].after})
      for (const int end : *ends) ++bars_at_[static_cast<std::size_t>(end)];
    const int threads = across ? patch.box.height() : patch.box.width();
    const cloth::Hole at{patch.box.x0, patch.box.y0}, to{patch.box.x1, patch.box.y1};
    if (!rectangle(patch) || threads != request_.bar_threads)
      problems_.push_back({Trouble::bar_width, at, to, -1, -1, threads});
    else if (bar.openings[0] < 0 || bar.openings[1] < 0)
      problems_.push_back({Trouble::bar_alone, at, to, -1, -1, threads});
    pieces_.bars.push_back(bar);
    patch_of_bar_.push_back(i);
  }

  /// The crossings at a bar's ends.
  void join(Bar& bar, std::size_t patch) const {
    const Neighbours& ends = (bar.axis == Axis::h ? level_ : above_below_)[patch];
    for (const auto& [side, patches] : {std::pair<std::size_t, const std::vector<int>*>{0, &ends.before}, {1, &ends.after}})
      for (const int end : *patches)
        if (const int found = crossing_[static_cast<std::size_t>(end)]; found >= 0 && bar.crossings[side] < 0) bar.crossings[side] = found;
  }

  int only_opening(const std::vector<int>& patches) const {
    return patches.size() == 1 ? opening_[static_cast<std::size_t>(patches[0])] : -1;
  }

  /// Threads that are left run on at both ends, into a bar or under the blocks; where neither way does, they hang.
  void crossing(std::size_t i) {
    const Patch& patch = patches_.all[i];
    crossing_[i] = static_cast<int>(pieces_.crossings.size());
    pieces_.crossings.push_back({patch.box});
    const auto cut_off = [&](const Neighbours& sides, Left there) {
      const auto gone = [&](int other) {
        const Left left = patches_.all[static_cast<std::size_t>(other)].left;
        return left != there && left != Left::both;
      };
      return std::any_of(sides.before.begin(), sides.before.end(), gone) || std::any_of(sides.after.begin(), sides.after.end(), gone);
    };
    if (cut_off(level_[i], Left::across) || cut_off(above_below_[i], Left::upright))
      problems_.push_back({Trouble::crossing_hangs, {patch.box.x0, patch.box.y0}, cloth::Hole{patch.box.x1, patch.box.y1}, -1, -1, 0});
  }

  const Request& request_;
  const Patches& patches_;
  std::vector<Problem>& problems_;
  std::vector<int> opening_, bars_at_, crossing_;
  std::vector<std::size_t> patch_of_bar_;
  std::vector<Neighbours> level_, above_below_;
  Pieces pieces_;
};

}  // namespace

Pieces find_pieces(const Request& request, const Areas& areas, const std::vector<Taken>& taken, std::vector<Problem>& problems) {
  const Patches patches = find_patches(areas, taken);
  return Sorter(request, patches, problems).pieces();
}

}  // namespace cutwork
