#include "cutwork/search.h"

#include <algorithm>
#include <map>

namespace cutwork {
namespace {

bool same_side(const Side& a, const Side& b) { return a.holds && b.holds; }

cloth::Hole hole_on(Axis axis, int line, int at) { return axis == Axis::h ? cloth::Hole{at, line} : cloth::Hole{line, at}; }

/// One end of one block, with the threads that come out of it there.
struct BlockEnd {
  int met = 0, missed = 0;
  int at_line = 0, at = 0, missed_to = 0;
  Side partner, beyond;
};

class Lines {
 public:
  Lines(const Request& request, const Walls& walls, const Areas& areas, Axis axis, std::vector<Problem>& problems, Search& out)
      : request_(request), walls_(walls), axis_(axis), problems_(problems), out_(out) {
    for (const Run& run : axis == Axis::h ? areas.runs.rows : areas.runs.columns)
      if (run.area >= 0 && areas.chosen[static_cast<std::size_t>(run.area)]) runs_.push_back(&run);
  }

  void search() {
    low_.assign(runs_.size(), false);
    high_.assign(runs_.size(), false);
    mark_rows(&Run::low, &Run::from, low_);
    mark_rows(&Run::high, &Run::to, high_);
    for (std::size_t i = 0; i < runs_.size(); ++i) take(i);
    for (const auto& [key, end] : ends_) tell(key.first, end);
    tell_covered();
  }

 private:
  /// Joined rows: threads side by side held at the same hole line. Of each, four are cut and `leave` are left, by turns.
  void mark_rows(Side Run::*side, int Run::*at, std::vector<bool>& cut) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < runs_.size(); ++i)
      if ((runs_[i]->*side).holds) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
      return std::pair(runs_[a]->*at, runs_[a]->line) < std::pair(runs_[b]->*at, runs_[b]->line);
    });
    std::size_t first = 0;
    for (std::size_t k = 0; k <= order.size(); ++k) {
      const bool goes_on = k > first && k < order.size() && runs_[order[k]]->*at == runs_[order[k - 1]]->*at &&
                           runs_[order[k]]->line == runs_[order[k - 1]]->line + 1;
      if (goes_on || k == first) continue;
      pattern(order, first, k, side, at, cut);
      first = k;
    }
  }

  void pattern(const std::vector<std::size_t>& order, std::size_t first, std::size_t end, Side Run::*side, int Run::*at,
               std::vector<bool>& cut) {
    const int round = four + request_.leave, n = static_cast<int>(end - first);
    for (std::size_t k = first; k < end; ++k) cut[order[k]] = request_.leave == 0 || static_cast<int>(k - first) % round < four;
    if (request_.leave == 0 || n % round == four) return;
    const Run &a = *runs_[order[first]], &b = *runs_[order[end - 1]];
    problems_.push_back({Trouble::row_uneven, hole_on(axis_, a.line, a.*at), hole_on(axis_, b.line + 1, b.*at), part((a.*side).block),
                         part((b.*side).block), n});
  }

  void take(std::size_t i) {
    const Run& run = *runs_[i];
    if (low_[i]) note(run, run.low, run.high, run.from, run.to, high_[i]);
    if (high_[i]) note(run, run.high, run.low, run.to, run.from, low_[i]);
    if (!low_[i] && !high_[i]) return;
    out_.taken.push_back({axis_, &run});
    if (!run.low.holds) out_.loose.push_back({axis_, run.line, run.from});
    if (!run.high.holds) out_.loose.push_back({axis_, run.line, run.to});
  }

  void note(const Run& run, const Side& own, const Side& other, int at, int far, bool other_cut) {
    auto [found, fresh] = ends_.try_emplace({own.block, at}, BlockEnd{});
    BlockEnd& end = found->second;
    if (fresh) end.at_line = run.line, end.at = at;
    if (other_cut && same_side(own, other)) {
      ++end.met;
      end.partner = other;
    } else {
      if (end.missed++ == 0) end.missed_to = far, end.beyond = other, end.at_line = run.line;
    }
  }

  void tell(int block, const BlockEnd& end) {
    if (end.missed == 0) return;
    const bool side_on = end.beyond.block >= 0 && walls_.grains[end.beyond.block] != axis_;
    Trouble what = Trouble::one_end;
    if (end.met > 0 && end.missed < four)
      what = Trouble::off_partner;
    else if (end.met == 0 && side_on)
      what = Trouble::along_side;
    else if (end.met == 0 && end.beyond.block < 0)
      what = Trouble::no_partner;
    const int other = what == Trouble::off_partner ? end.partner.block : end.beyond.block;
    problems_.push_back(
        {what, hole_on(axis_, end.at_line, end.at), hole_on(axis_, end.at_line, end.missed_to), part(block), part(other), end.missed});
  }

  /// A block end of which some threads meet the area and others run straight into another block.
  void tell_covered() {
    std::map<std::pair<int, int>, std::vector<int>> seen;  // block, place: lines
    for (const Run* run : runs_)
      for (const auto& [side, at] : {std::pair(run->low, run->from), {run->high, run->to}})
        if (side.holds) seen[{side.block, at}].push_back(run->line);
    for (const auto& [key, lines] : seen) {
      const cloth::Box& box = walls_.boxes[key.first];
      const int whole = axis_ == Axis::h ? box.height() : box.width(), met = static_cast<int>(lines.size());
      if (met >= whole || whole != four) continue;
      int covered = axis_ == Axis::h ? box.y0 : box.x0;
      while (std::find(lines.begin(), lines.end(), covered) != lines.end()) ++covered;
      problems_.push_back({Trouble::off_partner, hole_on(axis_, lines.front(), key.second), hole_on(axis_, covered, key.second),
                           part(key.first), part(key.first), whole - met});
    }
  }

  int part(int block) const { return block < 0 ? -1 : request_.blocks[static_cast<std::size_t>(block)].part; }

  const Request& request_;
  const Walls& walls_;
  Axis axis_;
  std::vector<Problem>& problems_;
  Search& out_;
  std::vector<const Run*> runs_;
  std::vector<bool> low_, high_;  // does the block at that end ask for the cut?
  std::map<std::pair<int, int>, BlockEnd> ends_;
};

/// An end told from both sides has no thread left on either: two stretches taken out meet there, at a gap that was closed.
std::vector<Loose> once(const std::vector<Loose>& sorted) {
  std::vector<Loose> single;
  for (std::size_t i = 0; i < sorted.size(); ++i) {
    if (i + 1 < sorted.size() && sorted[i] == sorted[i + 1])
      ++i;
    else
      single.push_back(sorted[i]);
  }
  return single;
}

}  // namespace

Search search(const Request& request, const Walls& walls, const Areas& areas, std::vector<Problem>& problems) {
  Search found;
  for (const Axis axis : {Axis::h, Axis::v}) Lines(request, walls, areas, axis, problems, found).search();
  std::sort(found.loose.begin(), found.loose.end());
  found.loose = once(found.loose);
  return found;
}

}  // namespace cutwork
