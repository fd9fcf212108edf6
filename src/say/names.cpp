// Landmark names. Every word comes from the phrase table; left and right are swapped for the left hand before a phrase is chosen.
#include <fmt/format.h>

#include "say/hand.h"
#include "say/say.h"

namespace say {
namespace {

std::string_view side_key(guide::Side side) {
  switch (side) {
    case guide::Side::top: return "top";
    case guide::Side::bottom: return "bottom";
    case guide::Side::left: return "left";
    case guide::Side::right: return "right";
  }
  return "top";
}

std::string_view noun_key(guide::LandmarkKind kind) {
  switch (kind) {
    case guide::LandmarkKind::corner: return "corner";
    case guide::LandmarkKind::row_end: return "end";
    case guide::LandmarkKind::bar: return "bar";
    case guide::LandmarkKind::petal: return "petal";
    case guide::LandmarkKind::centre: return "eyelet";
    case guide::LandmarkKind::fan: return "fan";
    case guide::LandmarkKind::notch: return "notch";
    default: return "block";
  }
}

std::string anchor(const Voice& voice, const guide::Which& which, std::string_view noun) {
  const std::string_view side = side_key(handed(which.side, voice.hand)), within = side_key(handed(which.within, voice.hand));
  const std::string key = which.form == guide::Which::extreme_of_row || which.anchor_within ? fmt::format("which.{}.{}.{}", noun, side, within)
                                                                                             : fmt::format("which.{}.{}", noun, side);
  return voice.phrases.say(key);
}

std::string which_words(const Voice& voice, const guide::Which& which, std::string_view noun) {
  if (which.form == guide::Which::only) return voice.phrases.say(fmt::format("which.{}.only", noun));
  if (which.form != guide::Which::after) return anchor(voice, which, noun);
  const words::Arguments arguments{{"nth", words::Ordinal{which.steps}}, {"anchor", anchor(voice, which, noun)}};
  if (which.open) {
    const cloth::Way way = voice.hand == Hand::left ? cloth::mirrored(which.towards) : which.towards;
    return voice.phrases.say(fmt::format("which.{}.towards.{}", noun, cloth::name(way)), arguments);
  }
  const bool clockwise = which.clockwise != (voice.hand == Hand::left);
  return voice.phrases.say(fmt::format("which.{}.{}", noun, clockwise ? "clockwise" : "anticlockwise"), arguments);
}

std::string spot_words(const Voice& voice, const guide::Spot& spot, const std::string& block) {
  const std::string_view end = side_key(handed(spot.end, voice.hand));
  const int place = spot.upright && voice.hand == Hand::left ? spot.of - 1 - spot.stitch : spot.stitch;
  const std::string_view line = spot.upright ? "upright" : "across";
  const words::Arguments arguments{{"block", block}, {"nth", words::Ordinal{place + 1}}};
  if (place == 0) return voice.phrases.say(fmt::format("spot.{}.first.{}", line, end), arguments);
  if (place == spot.of - 1) return voice.phrases.say(fmt::format("spot.{}.last.{}", line, end), arguments);
  return voice.phrases.say(fmt::format("spot.{}.nth.{}", line, end), arguments);
}

/// The feature's own name with row and part where they are needed.
std::string full_name(const Voice& voice, const guide::Landmark& landmark) {
  const bool name_part = landmark.name_part || voice.course.parts.size() > 1;  // with several parts before her a student is always told which is meant
  if (name_part && landmark.kind == guide::LandmarkKind::bar && landmark.which.form == guide::Which::only)
    return voice.phrases.say("landmark.only-bar", {{"part", voice.course.parts[landmark.part].name}});
  std::string name = which_words(voice, landmark.which, noun_key(landmark.kind));
  if (landmark.name_row) name = voice.phrases.say("landmark.of-row", {{"it", name}, {"row", row_name(voice, landmark.part, landmark.row)}});
  if (name_part)
    name = voice.phrases.say("landmark.of-part", {{"it", name}, {"part", voice.course.parts[landmark.part].name}});
  return name;
}

}  // namespace

std::string landmark(const Voice& voice, const guide::Landmark& landmark) {
  switch (landmark.kind) {
    case guide::LandmarkKind::cloth_middle: return voice.phrases.say("landmark.middle");
    case guide::LandmarkKind::cloth_edges: return voice.phrases.say(voice.hand == Hand::left ? "landmark.edges.right" : "landmark.edges.left");
    case guide::LandmarkKind::centre: return voice.phrases.say("landmark.centre", {{"eyelet", full_name(voice, landmark)}});
    case guide::LandmarkKind::fan: return voice.phrases.say("landmark.fan", {{"corner", full_name(voice, landmark)}});
    case guide::LandmarkKind::notch: return voice.phrases.say("landmark.notch", {{"corner", full_name(voice, landmark)}});
    case guide::LandmarkKind::bar:
    case guide::LandmarkKind::petal:
    case guide::LandmarkKind::bundle: return spot_words(voice, landmark.spot, full_name(voice, landmark));
    case guide::LandmarkKind::corner:
    case guide::LandmarkKind::row_end: return full_name(voice, landmark);
  }
  return {};
}

}  // namespace say
