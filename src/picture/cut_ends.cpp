#include "picture/cut_ends.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <tuple>

#include "cloth/index.h"

namespace picture {
namespace {

using cutwork::Axis;

int along(const cutwork::Cut& cut) { return cut.axis == Axis::v ? cut.at.y : cut.at.x; }

/// Of each snip's thread and place: the other end of what is withdrawn there, and the cutting.
using Place = std::tuple<Axis, int, int>;

std::map<Place, int> other_ends(const cutwork::Cutting& cutting) {
  std::map<Place, int> ends;
  for (const cutwork::Span& span : cutting.withdrawn) {
    ends[{span.axis, span.thread, span.from}] = span.to;
    ends[{span.axis, span.thread, span.to}] = span.from;
  }
  return ends;
}

CutWork read(const plan::PartCutting& cut) {
  CutWork work{&cut, {}};
  const std::map<Place, int> other = other_ends(cut.cutting);
  std::map<Place, int> cutting_at;
  for (const cutwork::Cut& c : cut.cutting.cuts) {
    cutting_at[{c.axis, c.thread, along(c)}] = c.cutting;
    if (static_cast<int>(work.ends.size()) < c.cutting) {
      const auto to = other.find({c.axis, c.thread, along(c)});
      work.ends.push_back(
          {c.cutting, c.axis, c.thread, c.thread, along(c), to == other.end() ? along(c) : to->second, c.block, c.area, {}});
    }
    CutEnd& end = work.ends.back();
    end.first = std::min(end.first, c.thread);
    end.last = std::max(end.last, c.thread);
  }
  for (CutEnd& end : work.ends) {
    std::set<int> opposite;
    for (int thread = end.first; thread <= end.last; ++thread) {
      const auto to = other.find({end.axis, thread, end.at});
      if (to == other.end()) continue;
      if (const auto found = cutting_at.find({end.axis, thread, to->second}); found != cutting_at.end()) opposite.insert(found->second);
    }
    end.opposite.assign(opposite.begin(), opposite.end());
  }
  return work;
}

// ---- ends that look alike ----

constexpr int look_aside = 6, look_behind = 5, look_in = 6;  // threads: a block, and the sides of those beside it

using Flat = std::array<int, 4>;

/// The stitch as seen from the end: twice the way aside from its middle, the way into the cloth.
Flat flat(const CutEnd& end, const cloth::Stitch& s, int mirror) {
  const auto point = [&](cloth::Hole h) {
    const int across = end.axis == Axis::v ? h.x : h.y, down = end.axis == Axis::v ? h.y : h.x;
    return std::pair{mirror * (2 * across - (end.first + end.last + 1)), end.into() * (down - end.at)};
  };
  auto a = point(s.a), b = point(s.b);
  if (b < a) std::swap(a, b);
  return {a.first, a.second, b.first, b.second};
}

std::vector<Flat> sight(const CutEnd& end, const cloth::Index& stitches) {
  const cloth::Box box = end.around(look_aside, look_behind, look_in);
  std::vector<Flat> best;
  for (const int mirror : {1, -1}) {
    std::vector<Flat> seen;
    for (const int number : stitches.in(box)) {
      const cloth::Stitch s = stitches.stitch(number);
      if (box.holds(s.a) && box.holds(s.b)) seen.push_back(flat(end, s, mirror));
    }
    std::sort(seen.begin(), seen.end());
    seen.push_back({end.snips(), 0, 0, 0});
    if (best.empty() || seen < best) best = std::move(seen);
  }
  return best;
}

}  // namespace

cloth::Box CutEnd::around(int aside, int before, int after) const {
  const int low = first - aside, high = last + 1 + aside;
  const int a = at - into() * before, b = at + into() * after;
  if (axis == Axis::v) return {low, std::min(a, b), high, std::max(a, b)};
  return {std::min(a, b), low, std::max(a, b), high};
}

std::vector<CutWork> cut_work(const Sheet& sheet) {
  std::vector<CutWork> all;
  for (const int c : sheet.lesson.cuttings)
    if (const plan::PartCutting& cut = sheet.plan.cuttings[static_cast<std::size_t>(c)]; !cut.cutting.cuts.empty())
      all.push_back(read(cut));
  return all;
}

std::vector<CutTogether> cut_together(const CutWork& work) {
  std::vector<CutTogether> all;
  for (const CutEnd& end : work.ends) {
    const bool joins = !all.empty() && std::any_of(end.opposite.begin(), end.opposite.end(), [&](int n) {
      return std::find(all.back().numbers.begin(), all.back().numbers.end(), n) != all.back().numbers.end();
    });
    if (!joins) all.push_back({{}, 0, 0, end.length()});
    all.back().numbers.push_back(end.number);
    all.back().snips += end.snips();
    all.back().threads = all.back().snips / 2;  // each thread is snipped at both ends
  }
  return all;
}

std::vector<int> cut_alike(const Sheet& sheet, const CutWork& work) {
  cloth::Index stitches;
  int number = 0;
  for (const course::Part& part : sheet.course.parts)
    for (const cloth::Stitch& stitch : part.work.stitches) stitches.add(stitch, number++);
  std::map<std::vector<Flat>, int> first;
  std::vector<int> alike;
  for (const CutEnd& end : work.ends) alike.push_back(first.try_emplace(sight(end, stitches), end.number).first->second);
  return alike;
}

cloth::Box box_of(const cutwork::Bundle& block) {
  const cloth::Hole a = block.stitches.front().a;
  cloth::Box box{a.x, a.y, a.x, a.y};
  for (const cloth::Stitch& s : block.stitches) box.grow(s.a), box.grow(s.b);
  return box;
}

bool even_block(const cutwork::Bundle& block) {
  if (block.stitches.empty()) return false;
  const cloth::Box box = box_of(block);
  return std::all_of(block.stitches.begin(), block.stitches.end(), [&](const cloth::Stitch& s) {
    const cloth::Stitch n = s.normal();
    const bool upright = n.a.x == n.b.x, across = n.a.y == n.b.y;
    return (upright && std::min(n.a.y, n.b.y) == box.y0 && std::max(n.a.y, n.b.y) == box.y1) ||
           (across && std::min(n.a.x, n.b.x) == box.x0 && std::max(n.a.x, n.b.x) == box.x1);
  });
}

}  // namespace picture
