// A student's mistake, taken in where the needle stands: one thread too far one of four ways, or as far as it is pulled on the cloth. Worked out
// when it is asked, not at every frame.
#include <fmt/format.h>

#include "app/panels.h"
#include "app/teach.h"
#include "say/hand.h"
#include "say/mistake.h"

namespace app {
namespace {

constexpr cloth::Way ways[] = {cloth::Way::N, cloth::Way::S, cloth::Way::W, cloth::Way::E};

void buttons(Desk& desk) {
  bool first = true;
  for (const cloth::Way way : ways) {
    const std::string label = desk.say("tell-tale.way." + std::string(cloth::name(way)));
    if (!first && ImGui::GetItemRectMax().x + ImGui::CalcTextSize(label.c_str()).x + 40 * desk.scale <
                      ImGui::GetWindowPos().x + ImGui::GetWindowWidth())
      ImGui::SameLine();
    first = false;
    if (ImGui::SmallButton(fmt::format("{}##mistake{}", label, cloth::name(way)).c_str())) take_in_mistake(desk, cloth::step(say::handed(way, desk.hand)));
  }
}

}  // namespace

void take_in_mistake(Desk& desk, cloth::Hole off) {
  const auto place = walk_place(desk);
  if (!place) return;
  const plan::Mistake mistake{place->trail, place->stitch, place->last, off};
  const auto taken = plan::take_in(*desk.course(), *desk.plan(), mistake);
  if (!taken) return;
  desk.mistake = {desk.session.seen(), desk.lesson, desk.walk.step, desk.hand, off, true, say::mistake(desk.voice(), *desk.plan(), mistake, *taken)};
}

bool mistake_told(const Desk& desk) {
  const MistakeAsked& asked = desk.mistake;
  return asked.of && asked.of == desk.session.seen() && asked.lesson == desk.lesson && asked.step == desk.walk.step && asked.hand == desk.hand;
}

void mistake_panel(Desk& desk) {
  const auto place = walk_place(desk);
  if (!place) return;
  heading(desk, desk.say("desk.mistake"));
  if (desk.mistake.show) ImGui::SetScrollHereY(0);
  desk.mistake.show = false;
  quiet(desk, desk.say("desk.mistake.how", {{"n", std::int64_t{place->of_section + 1}}}));
  teach(desk, "desk.teach.mistake");
  buttons(desk);
  if (!mistake_told(desk)) return;
  for (const std::string& sentence : desk.mistake.said) wrapped(sentence);
}

}  // namespace app
