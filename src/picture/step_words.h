// What is said at each needle point of a section: where the needle goes, from the hole before, for one hand.
#pragma once

#include <string>

#include "picture/points.h"
#include "plan/plan.h"
#include "say/say.h"

namespace picture {

class StepWords {
 public:
  StepWords(const plan::Plan& plan, const say::Voice& voice, int lesson, int trail, const guide::Section& section)
      : plan_(plan), voice_(voice), lesson_(lesson), trail_(trail), section_(section) {}

  /// At point i of these: at the section's first its count-in, else the way from the hole before. The point's number stays open, as "{n}".
  std::string at(const std::vector<NeedlePoint>& points, std::size_t i) const;

 private:
  std::string begins(const NeedlePoint& point) const;
  std::string up(int stitch, const std::string& move) const;
  std::string move(cloth::Hole from, cloth::Hole to) const;
  std::string say(const std::string& key, words::Arguments arguments) const;
  const trail::Trail& trail() const { return plan_.trails[static_cast<std::size_t>(trail_)].trail; }

  const plan::Plan& plan_;
  say::Voice voice_;
  int lesson_, trail_;
  const guide::Section& section_;
};

/// The words with this number in the open place.
std::string with_number(std::string words, int n);

}  // namespace picture
