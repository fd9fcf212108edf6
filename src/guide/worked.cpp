#include "guide/worked.h"

#include <algorithm>

#include "base/require.h"

namespace guide {

Worked::Worked(const course::Course& course) {
  for (const course::Part& part : course.parts) parts_.push_back(read(part.work));
}

Worked::OfPart Worked::read(const stitch::Work& work) {
  std::vector<std::pair<cloth::Stitch, int>> uses;  // -1: a stitch of the part, in no feature
  for (const cloth::Stitch& s : work.stitches) uses.emplace_back(s.normal(), -1);
  for (std::size_t f = 0; f < work.features.size(); ++f)
    for (const cloth::Stitch& s : work.features[f].stitches) uses.emplace_back(s.normal(), static_cast<int>(f));
  std::sort(uses.begin(), uses.end());
  uses.erase(std::unique(uses.begin(), uses.end()), uses.end());
  OfPart part;
  part.missing.assign(work.features.size(), 0);
  part.latest.assign(work.features.size(), Ready{});
  for (const auto& [stitch, feature] : uses) {
    const int end = static_cast<int>(part.users.size());
    if (part.slots.empty() || part.slots.back().stitch != stitch) part.slots.push_back({stitch, end, end, false});
    if (feature < 0) continue;
    part.users.push_back(feature);
    part.slots.back().last = end + 1;
    ++part.missing[feature];
  }
  return part;
}

int Worked::slot_of(const OfPart& part, cloth::Stitch stitch) {
  const cloth::Stitch key = stitch.normal();
  const auto slot =
      std::lower_bound(part.slots.begin(), part.slots.end(), key, [](const Slot& s, const cloth::Stitch& k) { return s.stitch < k; });
  return slot == part.slots.end() || slot->stitch != key ? -1 : static_cast<int>(slot - part.slots.begin());
}

std::span<const int> Worked::users(int part, cloth::Stitch stitch) const {
  const OfPart& of = parts_[part];
  const int slot = slot_of(of, stitch);
  if (slot < 0) return {};
  return std::span(of.users).subspan(of.slots[slot].first, of.slots[slot].last - of.slots[slot].first);
}

Worked::Gain Worked::add(const PlacedTrail& trail) {
  base::require(trail.part >= 0 && trail.part < static_cast<int>(parts_.size()), "a trail of a part that the course does not have");
  OfPart& part = parts_[trail.part];
  Gain gain;
  for (const Section& section : trail.sections) {
    base::require(section.first >= 0 && section.last < static_cast<int>(trail.trail.stitches.size()), "a section beyond its trail");
    for (int k = section.first; k <= section.last; ++k) {
      const trail::Worked& worked = trail.trail.stitches[k];
      const int slot = slot_of(part, {worked.up, worked.down});
      if (slot < 0 || part.slots[slot].worked) continue;
      use(part, part.slots[slot], {{section.lesson, section.item, k}, trail.pass, trail.place}, gain);
    }
  }
  std::sort(gain.features.begin(), gain.features.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  return gain;
}

void Worked::use(OfPart& part, Slot& slot, const Ready& ready, Gain& gain) {
  slot.worked = true;
  gain.stitches.push_back({slot.stitch, ready.when});
  for (int i = slot.first; i < slot.last; ++i) {
    const int feature = part.users[i];
    if (part.latest[feature].when < ready.when) part.latest[feature] = ready;
    if (--part.missing[feature] == 0) gain.features.emplace_back(feature, part.latest[feature]);
  }
}

}  // namespace guide
