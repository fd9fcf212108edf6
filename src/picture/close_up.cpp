#include "picture/close_up.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <utility>

#include "picture/view.h"

namespace picture {
namespace {

using guide::LandmarkKind;

void grow(cloth::Box& box, const stitch::Feature& feature) {
  for (const cloth::Stitch& s : feature.stitches) box.grow(s.a), box.grow(s.b);
}

enum class Around { feature, neighbours };

/// The landmark's surroundings: of a block itself, or its neighbours with it.
cloth::Box landmark_box(const course::Course& course, const guide::Landmark& landmark, Around around) {
  cloth::Box box{landmark.hole.x, landmark.hole.y, landmark.hole.x, landmark.hole.y};
  if (landmark.part < 0) return box.widened(2);
  const auto& features = course.parts[landmark.part].work.features;
  if (landmark.feature < 0 || landmark.feature >= static_cast<int>(features.size())) return box.widened(1);
  const stitch::Feature& own = features[landmark.feature];
  grow(box, own);
  if (!stitch::side_by_side(own.shape)) return box.widened(around == Around::neighbours ? 3 : 1);
  if (around == Around::feature) return box.widened(1);
  const int last = static_cast<int>(features.size()) - 1;
  for (const stitch::Feature& other : features) {
    const int apart = std::abs(other.along - own.along);
    if (apart == 1 || apart == last) grow(box, other);
  }
  return box;
}

cloth::Box joined(cloth::Box box, const cloth::Box& other) {
  box.grow({other.x0, other.y0});
  box.grow({other.x1, other.y1});
  return box;
}

/// Not narrower than shows what goes on round it.
cloth::Box at_least(cloth::Box box, int threads) {
  const int across = std::max(0, threads - box.width()), down = std::max(0, threads - box.height());
  return {box.x0 - across / 2, box.y0 - down / 2, box.x1 + (across + 1) / 2, box.y1 + (down + 1) / 2};
}

struct Choice {
  cloth::Box box;
  bool count = false;
  const guide::Count* proof = nullptr;  ///< marked in the picture
};

bool on_cloth(const guide::Landmark& landmark) {
  return landmark.kind == LandmarkKind::cloth_edges || landmark.kind == LandmarkKind::cloth_middle;
}

/// Where numbers do not stand well, more room is tried before smaller figures.
struct Attempt {
  int wider = 0;       ///< threads on every side
  double larger = 1;   ///< than the scale that is wanted
  double smaller = 0;  ///< figures: 0 as wanted, 1 the least
  bool bare = false;   ///< without other parts' stitches that are not there yet
};
constexpr Attempt attempts[] = {{0, 1, 0},           {1, 1, 0},         {2, 1, 0},         {1, 1.15, 0},     {3, 1.15, 0},
                                {0, 1.15, 0.6},      {2, 1.2, 0.6},     {0, 1.2, 1},       {3, 1.3, 1},      {0, 1, 0, true},
                                {2, 1.2, 0.6, true}, {1, 1.6, 1, true}, {4, 1.6, 1, true}, {2, 2.2, 1, true}};

class Finder {
 public:
  Finder(const Sheet& sheet, const guide::CloseUp& close_up, const Room& room) : sheet_(sheet), close_up_(close_up), room_(room) {
    own_ = close_up.window;
    if (close_up.shows == guide::Shows::start) count_in_ = count_in_of(sheet.plan, close_up);
  }

  /// The first choice in which every number stands well; else the first one, as well as may be.
  CloseUpPicture find() {
    std::optional<std::pair<Choice, Space>> fallback;
    for (const Choice& choice : choices())
      for (const Space& space : {Space{room_.beside, room_.height}, Space{room_.whole, room_.whole_height}}) {
        if (scale_for(choice.box, space) < least_for(choice)) continue;
        CloseUpPicture picture = made(choice, space, true);
        if (picture.picture.good()) return picture;
        if (!choice.count) fallback = {choice, space};
      }
    if (fallback) return made(fallback->first, fallback->second, false);
    return made({at_least(own_, 12), false, nullptr}, {room_.whole, room_.whole_height},
                false);  // too large to be read well: as large as can be
  }

 private:
  struct Space {
    double width = 0, height = 0;  ///< mm
  };

  double scale_for(const cloth::Box& box, const Space& space) const {
    return std::min(sheet_.styles.scale_wanted, scale_at_most(box, space));
  }
  double scale_at_most(const cloth::Box& box, const Space& space) const {
    return std::min(space.width / (box.width() + 1), space.height / (box.height() + 1));
  }
  /// A second count is worth a smaller picture, but not the smallest.
  double least_for(const Choice& choice) const { return sheet_.styles.scale_least * (choice.proof ? 1.12 : 1); }

  /// The second counts that may be told: the plan's own first.
  std::vector<const guide::Count*> proofs() const {
    std::vector<const guide::Count*> all;
    if (!count_in_ || !count_in_->proof) return all;
    all.push_back(&*count_in_->proof);
    for (const guide::Count& other : count_in_->others)
      if (other.landmark.feature != count_in_->count.landmark.feature || other.landmark.part != count_in_->count.landmark.part)
        all.push_back(&other);
    return all;
  }

  /// From the most that could be shown to the least.
  std::vector<Choice> choices() const {
    std::vector<Choice> all;
    const cloth::Box plain = at_least(own_, 12);
    if (count_in_ && count_in_->count.landmark.kind != LandmarkKind::cloth_edges) {
      const guide::Landmark& landmark = count_in_->count.landmark;
      for (const Around around : {Around::neighbours, Around::feature}) {
        const cloth::Box with = at_least(joined(own_, landmark_box(sheet_.course, landmark, around)), 12);
        for (const guide::Count* proof : proofs())
          if (!on_cloth(proof->landmark))
            all.push_back({joined(with, landmark_box(sheet_.course, proof->landmark, Around::feature)), true, proof});
      }
      for (const Around around : {Around::neighbours, Around::feature})
        all.push_back({at_least(joined(own_, landmark_box(sheet_.course, landmark, around)), 12), true, nullptr});
    }
    all.push_back({plain, false, nullptr});
    all.push_back({own_, false, nullptr});
    return all;
  }

  CloseUpPicture made(const Choice& choice, const Space& space, bool draft) const {
    CloseUpPicture result;
    result.count_in = count_in_;
    result.counts_inside = choice.count;
    result.proof = choice.proof ? choice.proof : proofs().empty() ? nullptr : proofs().front();
    result.proof_inside = choice.proof != nullptr;
    result.picture = best_of_attempts(choice, space, draft);
    return result;
  }

  static bool better(const Picture& one, const Picture& other) {
    return one.clean != other.clean ? one.clean : one.strain < other.strain - 0.5;
  }

  Picture best_of_attempts(const Choice& choice, const Space& space, bool draft) const {
    Picture best;
    for (const Attempt& attempt : attempts) {
      if (draft && attempt.larger > 1.15) break;
      const cloth::Box box = choice.box.widened(attempt.wider);
      const double wanted = scale_for(box, space), most = scale_at_most(box, space);
      WindowOrder order = order_for(choice, box, std::max(wanted, std::min(attempt.larger * wanted, most)));
      order.number.size_pt += attempt.smaller * (sheet_.styles.number_least_pt - order.number.size_pt);
      order.draft = draft;
      order.bare = attempt.bare;
      Picture picture = draw_window(sheet_, order);
      if (best.list.items.empty() || better(picture, best)) best = std::move(picture);
      if (best.good()) return best;
    }
    return best;
  }

  WindowOrder order_for(const Choice& choice, const cloth::Box& box, double scale) const {
    WindowOrder order;
    order.window = box;
    order.scale = std::floor(scale * 20) / 20;
    order.letter = close_up_.letter;
    order.trail = close_up_.trail;
    order.first = close_up_.first;
    order.last = close_up_.last;
    order.moment = moment_of(sheet_, close_up_);
    order.count = choice.count ? &count_in_->count : nullptr;
    order.proof = choice.proof;
    order.ending = ending_of(sheet_, close_up_);
    if (close_up_.shows == guide::Shows::start && loop_follows()) order.loop = close_up_.last + 1;
    order.number = sheet_.styles.number;  // in a smaller picture smaller figures, as far as they may be
    order.number.size_pt =
        std::max(sheet_.styles.number_least_pt, order.number.size_pt * std::min(1.0, scale / sheet_.styles.scale_wanted));
    return order;
  }

  /// Is there a looped stitch after the last one, on the same side, to be shown in the making?
  bool loop_follows() const {
    const auto& stitches = sheet_.trail(close_up_.trail).trail.stitches;
    const auto last = static_cast<std::size_t>(close_up_.last);
    return sheet_.looped(close_up_.trail) && last + 1 < stitches.size() && stitches[last + 1].leg == stitches[last].leg && !stitches[last + 1].over;
  }

  const Sheet& sheet_;
  const guide::CloseUp& close_up_;
  const Room room_;
  cloth::Box own_;
  const guide::CountIn* count_in_ = nullptr;
};

}  // namespace

CloseUpPicture close_up_picture(const Sheet& sheet, const guide::CloseUp& close_up, const Room& room) {
  return Finder(sheet, close_up, room).find();
}

Moment moment_of(const Sheet& sheet, const guide::CloseUp& close_up) {
  Moment moment{close_up.lesson, 0, close_up.trail, close_up.last};
  for (const guide::Section& section : sheet.trail(close_up.trail).sections)
    if (section.lesson == close_up.lesson && section.first <= close_up.last && close_up.first <= section.last) moment.item = section.item;
  return moment;
}

Ending ending_of(const Sheet& sheet, const guide::CloseUp& close_up) {
  const bool ends = close_up.shows == guide::Shows::end || close_up.shows == guide::Shows::join;
  const bool last = close_up.last + 1 == static_cast<int>(sheet.trail(close_up.trail).trail.stitches.size());
  return ends && last ? Ending::numbered : Ending::left_out;
}

const guide::CountIn* count_in_of(const plan::Plan& plan, const guide::CloseUp& close_up) {
  for (const guide::CountIn& count_in : plan.count_ins)
    if (count_in.trail == close_up.trail && count_in.lesson == close_up.lesson && count_in.stitch == close_up.first) return &count_in;
  return nullptr;
}

}  // namespace picture
