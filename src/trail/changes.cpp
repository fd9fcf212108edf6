// Looped stitches: clear of corners. Rows: clear of corners, steps back and stitches over, best where a level pair begins. Blocks: between two blocks of a flight, best not at
// its corner block.
#include "trail/changes.h"

namespace trail {
namespace {

constexpr int clear_of_corner = 3;  // stitches on either side: a change is never within two stitches of a corner

class Grader {
 public:
  Grader(const std::vector<Worked>& stitches, stitch::Order order)
      : stitches_(stitches), looped_(order == stitch::Order::looped), turn_about_(order == stitch::Order::turn_about), last_of_leg_(lasts()) {}

  Changes all() const {
    Changes changes{std::vector<std::uint8_t>(stitches_.size(), worst_grade), turn_about_ || looped_ ? 1 : 2};
    for (int k = 1; k < size(); ++k)
      changes.grades[static_cast<std::size_t>(k)] = static_cast<std::uint8_t>(turn_about_ || looped_ ? row_grade(k) : block_grade(k));
    return changes;
  }

 private:
  int size() const { return static_cast<int>(stitches_.size()); }
  const Worked& at(int k) const { return stitches_[static_cast<std::size_t>(k)]; }

  bool corner_before(int k) const { return at(k).leg != at(k - 1).leg; }

  /// Stitches on either side of a place without a corner, as far as matters; the ends of the trail are no corners.
  int clear(int k) const {
    const auto fits = [&](int i) { return i < 0 || i >= size() || (at(i).leg == at(k).leg && !at(i).over && !at(i).backward); };
    int clear = 0;
    while (clear < clear_of_corner && fits(k - clear - 1) && fits(k + clear)) ++clear;
    return clear;
  }

  /// Is each stitch's run the last of its leg, with another leg after it: a flight's corner block?
  std::vector<char> lasts() const {
    std::vector<char> last(stitches_.size(), 0);
    for (int k = size() - 2; k >= 0; --k) {
      const auto i = static_cast<std::size_t>(k);
      last[i] = at(k).leg != at(k + 1).leg || (at(k).run == at(k + 1).run && last[i + 1]);
    }
    return last;
  }

  int row_grade(int k) const {
    constexpr int grades[] = {worst_grade, 3, 2, 1};
    return clear(k) == clear_of_corner && (looped_ || at(k).run < at(k - 1).run) ? 0 : grades[clear(k)];
  }

  int block_grade(int k) const {
    const bool between = at(k).run != at(k - 1).run;
    if (between && !corner_before(k)) return last_of_leg_[static_cast<std::size_t>(k)] ? 1 : 0;
    if (clear(k) >= clear_of_corner) return 2;
    if (between) return 3;
    return clear(k) >= 1 ? 4 : worst_grade;
  }

  const std::vector<Worked>& stitches_;
  bool looped_, turn_about_;
  std::vector<char> last_of_leg_;
};

}  // namespace

Changes grade_changes(const std::vector<Worked>& stitches, stitch::Order order) { return Grader(stitches, order).all(); }

}  // namespace trail
