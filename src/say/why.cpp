// What a count costs and why, in words.
#include <algorithm>

#include "guide/care.h"
#include "say/say.h"

namespace say {

std::string why(const Voice& voice, const guide::Count& count) {
  const guide::Costs costs(voice.course.choices.habits.count_cost);
  guide::Care threads = 0;
  for (const guide::Leg& leg : count.legs) threads += costs.counted(leg.threads);
  const double on_threads = guide::Costs::seconds(threads);
  const double turn = count.legs.size() > 1 ? voice.course.choices.habits.count_cost.second_leg : 0;
  const double rest = std::max(0.0, count.cost_s - on_threads - turn);
  if (count.landmark.kind == guide::LandmarkKind::cloth_edges)
    return voice.phrases.say("desk.count-why.measured", {{"count", proof(voice, count)}, {"seconds", words::Decimal{count.cost_s, 1}}});
  return voice.phrases.say("desk.count-why", {{"count", proof(voice, count)},
                                              {"seconds", words::Decimal{count.cost_s, 1}},
                                              {"threads", words::Decimal{on_threads, 1}},
                                              {"turn", words::Decimal{turn, 1}},
                                              {"finding", words::Decimal{rest, 1}}});
}

}  // namespace say
