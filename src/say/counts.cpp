// Count-ins, proofs and marks as sentences.
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

#include "say/hand.h"
#include "say/say.h"

namespace say {
namespace {

std::string leg(const Voice& voice, std::string_view key, const guide::Leg& leg) {
  return voice.phrases.say(fmt::format("{}.{}", key, cloth::name(handed(leg.way, voice.hand))), {{"n", std::int64_t{leg.threads}}});
}

/// With as many places as it needs, two at the most.
words::Decimal count_number(double count) {
  int places = 0;
  for (double scaled = count; places < 2 && std::abs(scaled - std::round(scaled)) > 1e-6; scaled *= 10) ++places;
  return {count, places};
}

/// From the cut edges a student measures: so far down, so far in.
words::Arguments measured(const Voice& voice, const guide::Count& count) {
  int down = 0, in = 0;
  for (const guide::Leg& leg : count.legs) (cloth::step(leg.way).x == 0 ? down : in) += leg.threads;
  const cloth::Count threads = voice.course.cloth.count;
  return {{"down", words::Decimal{cloth::mm_down(down, threads) / 10, 1}}, {"in", words::Decimal{cloth::mm(in, threads) / 10, 1}}};
}

std::string_view edge_side(const Voice& voice) { return voice.hand == Hand::left ? "right" : "left"; }

}  // namespace

std::string cloth_count(const Voice& voice) {
  const course::Cloth& cloth = voice.course.cloth;
  const double unit = cloth.written_per_cm ? cloth::per_cm(1).per_inch : 1;
  const words::Decimal across = count_number(cloth.count.per_inch / unit);
  if (!cloth.count.down_per_inch) return voice.phrases.say(cloth.written_per_cm ? "page.cloth.per-cm" : "page.cloth.per-inch", {{"n", across}});
  return voice.phrases.say(cloth.written_per_cm ? "page.cloth.per-cm.two" : "page.cloth.per-inch.two",
                           {{"across", across}, {"down", count_number(cloth.count.down() / unit)}});
}

std::string legs(const Voice& voice, const std::vector<guide::Leg>& legs) {
  if (legs.empty()) return {};
  if (legs.size() == 1) return leg(voice, "legs.one", legs[0]);
  return voice.phrases.say("legs.two", {{"first", leg(voice, "legs.first", legs[0])}, {"second", leg(voice, "legs.then", legs[1])}});
}

std::string count_in(const Voice& voice, const guide::CountIn& count_in) {
  const guide::Count& count = count_in.count;
  if (count.landmark.kind == guide::LandmarkKind::cloth_edges)
    return voice.phrases.say(fmt::format("count-in.edges.{}", edge_side(voice)), measured(voice, count));
  const std::string from = landmark(voice, count.landmark);
  if (count.legs.empty()) return voice.phrases.say("count-in.same-hole", {{"landmark", from}});
  return voice.phrases.say("count-in", {{"landmark", from}, {"legs", legs(voice, count.legs)}});
}

std::string proof(const Voice& voice, const guide::Count& count) {
  if (count.landmark.kind == guide::LandmarkKind::cloth_edges)
    return voice.phrases.say(fmt::format("proof.edges.{}", edge_side(voice)), measured(voice, count));
  const std::string from = landmark(voice, count.landmark);
  if (count.legs.empty()) return voice.phrases.say("proof.same-hole", {{"landmark", from}});
  return voice.phrases.say("proof", {{"landmark", from}, {"legs", legs(voice, count.legs)}});
}

std::string mark(const Voice& voice, const guide::Mark& mark) {
  const guide::Count& count = mark.count;
  if (count.landmark.kind == guide::LandmarkKind::cloth_edges)
    return voice.phrases.say(fmt::format("mark.edges.{}", edge_side(voice)), measured(voice, count));
  const std::string from = landmark(voice, count.landmark);
  if (count.legs.empty()) return voice.phrases.say("mark.same-hole", {{"landmark", from}});
  return voice.phrases.say("mark", {{"landmark", from}, {"legs", legs(voice, count.legs)}});
}

}  // namespace say
