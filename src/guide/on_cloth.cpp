// The choice of a count and its proof among what a query offers.
#include <algorithm>

#include "guide/query.h"

namespace guide {
namespace {

constexpr std::size_t most_others = 6;

/// Different landmarks for one hole, cheapest first.
class Line {
 public:
  explicit Line(std::optional<Choice> own) {
    if (own) all_.push_back(std::move(*own));
  }

  void fill(Query& query) {
    while (all_.size() < most_others + 2) {
      const auto priced = query.next(Query::any);
      if (!priced) return;
      take(query, *priced);
    }
  }
  std::vector<Choice>& all() { return all_; }
  /// Another hole of the first one's feature.
  std::optional<Choice>& same() { return same_; }

 private:
  bool only_one_block() const { return all_.size() < 2; }

  void take(Query& query, const Priced& priced) {
    const Candidate& candidate = *priced.candidate;
    const auto taken = std::any_of(all_.begin(), all_.end(), [&](const Choice& c) {
      return c.feature == candidate.feature || c.count.landmark.hole == candidate.hole;
    });
    if (!taken) {
      all_.push_back(query.stitched(priced));
      if (!only_one_block())
        for (const Choice& choice : all_) query.pass_over(choice.feature);
    } else if (only_one_block() && !same_ && all_[0].feature == candidate.feature && all_[0].count.landmark.hole != candidate.hole) {
      same_ = query.stitched(priced);
    }
  }

  std::vector<Choice> all_;
  std::optional<Choice> same_;
};

bool stitched(const Choice& choice) { return choice.feature >= 0; }

/// Where no other block stands: another stitch of the same one, or a count from the cloth's middle, else measured from its edges.
std::optional<Choice> last_proof(const Query& query, const Choice& count, const std::optional<Choice>& same) {
  const auto other = [&](const Choice& c) { return c.feature != count.feature && c.count.landmark.hole != count.count.landmark.hole; };
  Choice middle = query.middle();
  if (same && (!other(middle) || same->care <= middle.care)) return same;
  if (other(middle)) return middle;
  Choice edges = query.edges();
  if (other(edges)) return edges;
  return std::nullopt;
}

void fill_others(const Query& query, std::vector<Choice> rest, OnCloth::Found& found) {
  for (Choice choice : {query.middle(), query.edges()}) {
    const auto used = [&](const Count& c) { return c.landmark.hole == choice.count.landmark.hole; };
    if (used(found.count) || (found.proof && used(*found.proof))) continue;
    if (std::none_of(rest.begin(), rest.end(), [&](const Choice& c) { return used(c.count); })) rest.push_back(std::move(choice));
  }
  std::stable_sort(rest.begin(), rest.end(), [](const Choice& a, const Choice& b) { return a.care < b.care; });
  for (std::size_t i = 0; i < std::min(rest.size(), most_others); ++i) found.others.push_back(std::move(rest[i].count));
}

OnCloth::Found found_of(const Query& query, std::vector<Choice> line, const std::optional<Choice>& same) {
  OnCloth::Found found;
  const Choice count = line[0];
  found.count = count.count;
  line.erase(line.begin());
  const auto proof = std::find_if(line.begin(), line.end(), stitched);
  if (proof != line.end()) {
    found.proof = std::move(proof->count);
    line.erase(proof);
  } else if (auto last = last_proof(query, count, same)) {
    found.proof = std::move(last->count);
  }
  fill_others(query, std::move(line), found);
  return found;
}

/// Before anything is stitched: the cloth's own landmarks, in the order the teacher begins with.
OnCloth::Found on_bare_cloth(const Query& query, course::Begin begin) {
  Choice first = query.middle(), second = query.edges();
  if (begin == course::Begin::edges) std::swap(first, second);
  OnCloth::Found found;
  found.count = std::move(first.count);
  if (second.count.landmark.hole != found.count.landmark.hole) found.proof = std::move(second.count);
  return found;
}

}  // namespace

Known::Known(const course::Course& of)
    : course(of),
      costs(of.choices.habits.count_cost),
      middle(course::middle(of)),
      corner(course::corner(of)),
      worked(of),
      landmarks(of, worked) {}

void Known::add(const PlacedTrail& trail) {
  const Worked::Gain gain = worked.add(trail);
  const auto& features = course.parts[trail.part].work.features;
  for (const auto& [stitch, when] : gain.stitches) hidden.gather(stitch, when);
  for (const auto& [feature, ready] : gain.features)
    if (stitch::side_by_side(features[feature].shape)) hidden.gather_bundle(features[feature], ready.when);
  hidden.settle();
  near.add(landmarks.add(trail.part, gain.features));
}

struct OnCloth::Inside : Known {
  using Known::Known;
};

OnCloth::OnCloth(const course::Course& course, const std::vector<PlacedTrail>& trails) : inside_(std::make_unique<Inside>(course)) {
  for (const PlacedTrail& trail : trails) inside_->add(trail);
}
OnCloth::~OnCloth() = default;
OnCloth::OnCloth(OnCloth&&) noexcept = default;

void OnCloth::add(const PlacedTrail& trail) { inside_->add(trail); }

OnCloth::Found OnCloth::find(cloth::Hole hole, When now, std::optional<cloth::Hole> own) const {
  Query query(*inside_, hole, now);
  std::optional<Choice> asked = own ? query.at(*own) : std::nullopt;
  const bool missing = own && !asked;
  const bool free = !asked;
  Line line(std::move(asked));
  line.fill(query);
  std::vector<Choice>& all = line.all();
  const course::Begin begin = inside_->course.choices.begin;
  if (free && !all.empty() && begin == course::Begin::middle) {
    Choice middle = query.middle();
    if (middle.care < all[0].care) {
      std::erase_if(all, [&](const Choice& c) { return c.count.landmark.hole == middle.count.landmark.hole; });
      all.insert(all.begin(), std::move(middle));
    }
  }
  Found found = all.empty() ? on_bare_cloth(query, begin) : found_of(query, std::move(all), line.same());
  found.own_landmark_missing = missing;
  return found;
}

double OnCloth::cost(cloth::Hole hole, When now, double enough) const {
  Query query(*inside_, hole, now);
  const Care limit = Costs::care(enough);
  const auto stitched = query.next(limit);
  if (inside_->course.choices.begin == course::Begin::middle) {
    const Care middle = query.middle().care;
    return Costs::seconds(stitched ? std::min(stitched->care, middle) : middle);
  }
  if (stitched) return Costs::seconds(stitched->care);
  if (Query::measuring >= limit) return Costs::seconds(Query::measuring);
  const auto any = query.next(Query::any);
  return Costs::seconds(any ? any->care : Query::measuring);
}

}  // namespace guide
