#include "guide/close_ups_sheet.h"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "guide/close_ups_window.h"

namespace guide {
namespace {

constexpr int beside_change = 2;  // stitches on either side of a change of thread
constexpr int after_join = 4;  // stitches at the trail's beginning seen where it closes

/// Corners of the section; `work` reaches far enough back for those that turn at its beginning.
template <class Find>
std::vector<Corner> turning_in(const Span& section, const Span& work, Find find) {
  std::vector<Corner> corners = find(work);
  std::erase_if(corners, [&](const Corner& corner) { return !section.holds(corner.turn); });
  return corners;
}

}  // namespace

/// Gathers places by kind, in the order in which they are met.
class Sheet::Gathered {
 public:
  explicit Gathered(const std::vector<Part>& parts) : parts_(parts) {}

  void add(const Signature& signature, const Place& place) {
    const auto kind = static_cast<std::size_t>(kinds_.of(signature));
    const Part& part = parts_[place.part];
    const bool cut = !part.work.holds(place.corner.around);
    if (kind == alike_.size())
      alike_.push_back({place, cut, 0, {}});
    else if (alike_[kind].cut && !cut)
      alike_[kind] = {place, false, alike_[kind].holes.size(), std::move(alike_[kind].holes)};
    alike_[kind].holes.push_back(corner_hole(part.needle, place.corner));
  }
  const std::vector<Alike>& all() const { return alike_; }

 private:
  const std::vector<Part>& parts_;
  Kinds kinds_;
  std::vector<Alike> alike_;
};

Sheet::Sheet(const course::Course& course, const std::vector<PlacedTrail>& trails, int lesson)
    : lesson_(lesson), first_pass_(course, trails) {
  for (std::size_t t = 0; t < trails.size(); ++t)
    for (const Section& s : trails[t].sections)
      if (s.lesson == lesson && s.first <= s.last)
        parts_.push_back({static_cast<int>(t), s.item, {s.first, s.last}, {s.first, s.last}, Needle(course, trails[t]), &trails[t]});
  std::stable_sort(parts_.begin(), parts_.end(), [](const Part& a, const Part& b) {
    return std::tie(a.item, a.trail, a.section.first) < std::tie(b.item, b.trail, b.section.first);
  });
  join_sections();
}

void Sheet::join_sections() {
  std::vector<std::size_t> order(parts_.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::tie(parts_[a].trail, parts_[a].section.first) < std::tie(parts_[b].trail, parts_[b].section.first);
  });
  const auto goes_on = [&](std::size_t i) {
    const Part &before = parts_[order[i - 1]], &part = parts_[order[i]];
    return before.trail == part.trail && before.section.last + 1 == part.section.first;
  };
  for (std::size_t i = 1; i < order.size(); ++i)
    if (goes_on(i)) parts_[order[i]].work.first = parts_[order[i - 1]].work.first;
  for (std::size_t i = order.size(); i-- > 1;)
    if (goes_on(i)) parts_[order[i - 1]].work.last = parts_[order[i]].work.last;
}

std::vector<CloseUp> Sheet::take() {
  show_starts();
  show_corners();
  show_steps();
  show_new_threads();
  show_ends();
  std::stable_sort(drafts_.begin(), drafts_.end(), [](const Draft& a, const Draft& b) {
    return std::tie(a.part, a.rank, a.close_up.first) < std::tie(b.part, b.rank, b.close_up.first);
  });
  std::vector<CloseUp> close_ups;
  for (Draft& draft : drafts_) close_ups.push_back(std::move(draft.close_up));
  return close_ups;
}

/// The section and, where the lesson worked on the trail just before, two blocks of that.
Span Sheet::with_lead_in(const Part& part) const {
  int first = part.section.first;
  for (int blocks = 0; blocks < 2 && first > part.work.first; ++blocks) first = part.needle.block(first - 1).first;
  return {std::max(first, part.work.first), part.section.last};
}

void Sheet::show_starts() {
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const Part& part = parts_[p];
    const Span numbered = first_stitches(part.needle, part.section);
    const cloth::Hole hole = part.needle.at(part.section.first).up;
    if (!shown_at_another_place(p, Shows::start, numbered, hole)) draft(p, Rank::start, Shows::start, numbered, {}, hole);
  }
}

void Sheet::show_corners() {
  Gathered gathered(parts_);
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const Needle& needle = parts_[p].needle;
    if (needle.scattered()) continue;
    const auto find = [&](const Span& within) { return corners(needle, within); };
    for (const Corner& corner : turning_in(parts_[p].section, with_lead_in(parts_[p]), find))
      gathered.add(signature(needle, corner.around), {p, corner});
  }
  for (const Alike& alike : gathered.all()) show(alike);
}

void Sheet::show_steps() {
  Kinds seen;
  for (const Draft& draft : drafts_) {
    const Needle& needle = parts_[draft.part].needle;
    if (needle.rows()) continue;
    for (const Corner& step : steps(needle, {draft.close_up.first, draft.close_up.last})) seen.of(signature(needle, step.around));
  }
  Gathered gathered(parts_);
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const Needle& needle = parts_[p].needle;
    if (needle.rows()) continue;
    const auto find = [&](const Span& within) { return steps(needle, within); };
    for (const Corner& step : turning_in(parts_[p].section, with_lead_in(parts_[p]), find))
      if (const Signature kind = signature(needle, step.around); seen.find(kind) < 0) gathered.add(kind, {p, step});
  }
  for (const Alike& alike : gathered.all()) show(alike);
}

/// Is a start or end of the same part and pass shown already that looks the same up to turning, at another place? Then that one speaks for
/// it too.
bool Sheet::shown_at_another_place(std::size_t p, Shows shows, const Span& numbered, cloth::Hole hole) {
  const Part& part = parts_[p];
  const PlacedTrail& own = *part.placed;
  for (Draft& draft : drafts_) {
    CloseUp& shown = draft.close_up;
    const PlacedTrail& other = *parts_[draft.part].placed;
    if (shown.shows != shows || other.part != own.part || other.pass != own.pass || other.place == own.place) continue;
    if (signature(parts_[draft.part].needle, {shown.first, shown.last}) != signature(part.needle, numbered)) continue;
    shown.stands_for.push_back(hole);
    draft.further.push_back(p);
    return true;
  }
  return false;
}

/// The ridge of looped stitches must go on without a gap: once for each part, at its first change of thread that is not at the very beginning or end.
void Sheet::show_new_threads() {
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const Part& part = parts_[p];
    if (!part.needle.looped()) continue;
    std::vector<int> changes;
    for (const int k : part.needle.trail().ends)
      if (part.section.first + beside_change <= k && k + beside_change <= part.section.last) changes.push_back(k);
    if (changes.empty()) continue;
    const Span numbered{changes.front() - beside_change, changes.front() + beside_change - 1};
    const cloth::Hole hole = part.needle.at(changes.front()).up;
    if (shown_at_another_place(p, Shows::new_thread, numbered, hole)) continue;
    draft(p, Rank::new_thread, Shows::new_thread, numbered, {}, hole);
    for (std::size_t i = 1; i < changes.size(); ++i) drafts_.back().close_up.stands_for.push_back(part.needle.at(changes[i]).up);
  }
}

void Sheet::show_ends() {
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const Part& part = parts_[p];
    const int last = part.section.last;
    if (last != part.work.last) continue;
    const Span numbered = last_stitches(part.needle, part.work);
    if (part.needle.closed() && last + 1 == part.needle.size()) {
      if (shown_at_another_place(p, Shows::join, numbered, part.needle.at(0).up)) continue;
      draft(p, Rank::end, Shows::join, numbered, {0, std::min(after_join - 1, last)}, part.needle.at(0).up);
      drafts_.back().close_up.wraps = true;
    } else if ((part.needle.looped() || !seen(p)) && !shown_at_another_place(p, Shows::end, numbered, part.needle.at(last).down)) {
      draft(p, Rank::end, Shows::end, numbered, {}, part.needle.at(last).down);
    }
  }
}

/// Are the section's last stitches numbered in a window, or those of another place that it speaks for?
bool Sheet::seen(std::size_t p) const {
  const Part& part = parts_[p];
  const auto in = [&](const Draft& draft) {
    const Part& shown = parts_[draft.part];
    const bool further = std::find(draft.further.begin(), draft.further.end(), p) != draft.further.end();
    if (shown.trail != part.trail && (!further || shown.work.count() != part.work.count())) return false;
    const Span& work = further ? shown.work : part.work;
    return Span{draft.close_up.first, draft.close_up.last}.holds({std::max(work.first, work.last - 1), work.last});
  };
  return std::any_of(drafts_.begin(), drafts_.end(), in);
}

void Sheet::show(const Alike& alike) {
  const auto& [p, corner] = alike.shown;
  const Part& part = parts_[p];
  draft(p, Rank::place, Shows::corner, common(corner.around, part.work), {}, alike.holes[alike.own]);
  CloseUp& close_up = drafts_.back().close_up;
  for (std::size_t i = 0; i < alike.holes.size(); ++i)
    if (i != alike.own) close_up.stands_for.push_back(alike.holes[i]);
  if (!close_up.steps_back.empty()) close_up.shows = Shows::step_back;
  if (first_pass_.differs(part.trail, part.needle, corner)) close_up.shows = Shows::second_pass;
  tell_corner(part.needle, corner, close_up);
}

void Sheet::draft(std::size_t p, Rank rank, Shows shows, const Span& numbered, const Span& also, cloth::Hole own) {
  const Part& part = parts_[p];
  CloseUp close_up;
  close_up.lesson = lesson_;
  close_up.window = window_round(part.needle, numbered, also);
  close_up.trail = part.trail;
  close_up.first = numbered.first;
  close_up.last = numbered.last;
  close_up.shows = shows;
  close_up.stands_for = {own};
  for (int k = numbered.first; k <= numbered.last; ++k)
    if (part.needle.at(k).backward) close_up.steps_back.push_back(k);
  drafts_.push_back({p, rank, std::move(close_up), {}});
}

}  // namespace guide
