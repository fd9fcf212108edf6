// How the picked part is repeated: turned, mirrored, about which middle. Only a repeat that puts every image on holes is taken.
#include <fmt/format.h>

#include <array>
#include <cmath>

#include "app/panels.h"
#include "app/teach.h"
#include "app/typed_field.h"

namespace app {
namespace {

using Change = std::function<void(const stitch::Repeat&)>;

constexpr std::array<int, 3> turns{1, 2, 4};
constexpr std::array<const char*, 4> mirrors{"", "x", "y", "xy"};

void turn_field(const Desk& desk, stitch::Repeat repeat, const Change& change) {
  const auto words = [&](int turn) { return desk.say(fmt::format("desk.turn.{}", turn)); };
  if (!ImGui::BeginCombo(fmt::format("{}##turn", desk.say("desk.turn")).c_str(), words(repeat.turn).c_str())) return;
  for (const int turn : turns)
    if (ImGui::Selectable(words(turn).c_str(), turn == repeat.turn)) {
      repeat.turn = turn;
      change(repeat);
    }
  ImGui::EndCombo();
}

void mirror_field(const Desk& desk, stitch::Repeat repeat, const Change& change) {
  const auto words = [&](const std::string& mirror) { return desk.say("desk.mirror." + (mirror.empty() ? "none" : mirror)); };
  if (!ImGui::BeginCombo(fmt::format("{}##mirror", desk.say("desk.mirror")).c_str(), words(repeat.mirror).c_str())) return;
  for (const char* mirror : mirrors)
    if (ImGui::Selectable(words(mirror).c_str(), mirror == repeat.mirror)) {
      repeat.mirror = mirror;
      change(repeat);
    }
  ImGui::EndCombo();
}

void about_field(Desk& desk, stitch::Repeat repeat, const Change& change) {
  std::array at{static_cast<float>(repeat.about_twice.x) / 2, static_cast<float>(repeat.about_twice.y) / 2};
  if (!middle_field(desk, fmt::format("{}##about", desk.say("desk.about")).c_str(), at)) return;
  repeat.about_twice = {static_cast<int>(std::lround(2 * at[0])), static_cast<int>(std::lround(2 * at[1]))};
  change(repeat);
}

}  // namespace

void repeat_fields(Desk& desk, int part) {
  const stitch::Repeat now = desk.course()->parts[static_cast<std::size_t>(part)].repeat;
  const Change change = [&](stitch::Repeat repeat) {
    if (!now.repeats()) repeat.about_twice = 2 * course::middle(*desk.course());
    if (stitch::fits(repeat))
      desk.apply(session::change_repeat(part, repeat));
    else
      desk.message = desk.say("desk.about.wrong");
  };
  turn_field(desk, now, change);
  teach(desk, "desk.teach.turn");
  mirror_field(desk, now, change);
  teach(desk, "desk.teach.mirror");
  if (!now.repeats()) return;
  about_field(desk, now, change);
  teach(desk, "desk.teach.about");
}

}  // namespace app
