// A mistake taken in, as sentences: whether it matters, what it changes, how far to unpick.
#include "say/mistake.h"

#include <algorithm>

namespace say {
namespace {

class Teller {
 public:
  Teller(const Voice& voice, const plan::Plan& plan, const plan::Mistake& mistake, const plan::TakenIn& taken)
      : voice_(voice), plan_(plan), mistake_(mistake), taken_(taken) {}

  std::vector<std::string> told() {
    if (!taken_.matters()) say("mistake.fine");
    misfits();
    for (const plan::CutChange& change : taken_.cuttings)
      say(change.now == plan::CutNow::forbidden ? "mistake.cut.forbidden" : "mistake.cut.elsewhere",
          {{"part", part(plan_.cuttings[change.cutting].part)}});
    for (const int c : taken_.count_ins) count_in(plan_.count_ins[c]);
    if (taken_.matters()) unpick();
    if (taken_.matters() && taken_.cuttings.empty()) say("mistake.looks");
    return std::move(said_);
  }

 private:
  void say(std::string_view key, const words::Arguments& arguments = {}) { said_.push_back(voice_.phrases.say(key, arguments)); }
  const std::string& part(int p) const { return voice_.course.parts[p].name; }

  /// The first that is parted, the first that meets; how many more.
  void misfits() {
    std::size_t named = 0;
    for (const bool parted : {true, false}) {
      const auto first = std::find_if(taken_.misfits.begin(), taken_.misfits.end(), [&](const auto& m) { return m.parted == parted; });
      if (first == taken_.misfits.end()) continue;
      say(parted ? "mistake.parted" : "mistake.met", {{"n", std::int64_t{first->stitch + 1}},
                                                      {"part", part(plan_.trails[mistake_.trail].part)},
                                                      {"m", std::int64_t{first->other_stitch + 1}},
                                                      {"other", part(plan_.trails[first->other].part)},
                                                      {"lesson", std::int64_t{first->other_lesson}}});
      ++named;
    }
    if (const std::size_t more = taken_.misfits.size() - named; named > 0 && more > 0)
      say("mistake.more", {{"n", static_cast<std::int64_t>(more)}});
  }

  bool wrong(const guide::Count& count) const {
    const guide::PlacedTrail& trail = plan_.trails[mistake_.trail];
    return count.landmark.part == trail.part && count.landmark.place == trail.place;
  }

  /// The start of later work, counted from something else where there is one.
  void count_in(const guide::CountIn& in) {
    std::vector<guide::Count> others = in.others;
    if (in.proof) others.insert(others.begin(), *in.proof);
    const auto right = std::find_if(others.begin(), others.end(), [&](const guide::Count& c) { return !wrong(c); });
    const words::Arguments of{{"lesson", std::int64_t{in.lesson}}, {"what", section_title(voice_, plan_, {in.trail, in.section})}};
    if (right == others.end()) return say("mistake.count", of);
    words::Arguments with = of;
    with["count"] = proof(voice_, *right);
    say("mistake.count.other", with);
  }

  void unpick() {
    const std::int64_t n = taken_.to_unpick;
    if (mistake_.first == 0) return say("mistake.unpick.all", {{"n", n}});
    say("mistake.unpick", {{"n", n}, {"last", std::int64_t{mistake_.first}}});
  }

  const Voice& voice_;
  const plan::Plan& plan_;
  const plan::Mistake& mistake_;
  const plan::TakenIn& taken_;
  std::vector<std::string> said_;
};

}  // namespace

std::vector<std::string> mistake(const Voice& voice, const plan::Plan& plan, const plan::Mistake& mistake, const plan::TakenIn& taken) {
  return Teller(voice, plan, mistake, taken).told();
}

}  // namespace say
