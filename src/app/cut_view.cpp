// The cloth as the scissors leave it: in words which snip comes next, and of the thread under the pointer what holds it at both ends.
#include <algorithm>
#include <cfloat>
#include <cmath>
#include <limits>

#include "app/sight.h"

namespace app {
namespace {

using cutwork::Axis;

const plan::PartCutting& cutting_of(const Desk& desk, int number) { return desk.plan()->cuttings[static_cast<std::size_t>(number)]; }

std::string name_of_block(const Desk& desk, const plan::PartCutting& cutting, int block) {
  const int part = block < 0 ? -1 : cutting.blocks[static_cast<std::size_t>(block)].part;
  return part < 0 ? std::string() : desk.course()->parts[static_cast<std::size_t>(part)].name;
}

std::string which(const Desk& desk, Axis axis, const char* form) {
  return desk.say(std::string("desk.cut.") + (axis == Axis::v ? "upright" : "across") + form);
}

/// What holds it: blocks of one part or of two, or the cloth where no block is met.
std::string holds(const Desk& desk, const picture::HeldThread& held) {
  const plan::PartCutting& cutting = cutting_of(desk, held.cutting);
  const std::string first = name_of_block(desk, cutting, held.blocks[0]), second = name_of_block(desk, cutting, held.blocks[1]);
  if (first.empty() || second.empty()) return desk.say("desk.cut.held-by-cloth");
  if (first == second) return desk.say("desk.cut.held-by-one", {{"part", first}});
  return desk.say("desk.cut.held-by-two", {{"first", first}, {"second", second}});
}

std::string words_of(const Desk& desk, const picture::HeldThread& held) {
  const std::string thread = which(desk, held.axis, ".capital");
  if (!held.strand) return desk.say("desk.cut.thread-left", {{"thread", thread}}) + " " + holds(desk, held);
  const picture::Strand& strand = *held.strand;
  const words::Arguments numbers{
      {"thread", thread}, {"first", std::int64_t{strand.cuts[0].cutting}}, {"second", std::int64_t{strand.cuts[1].cutting}}};
  std::string said = desk.say("desk.cut.thread-cut", numbers) + " ";
  if (strand.lesson == 0) return said + desk.say("desk.cut.in-no-lesson");
  if (strand.lesson != desk.lesson) said += desk.say("desk.cut.in-lesson", {{"n", std::int64_t{strand.lesson}}}) + " ";
  return said + holds(desk, held);
}

void outline_block(const Desk& desk, Area area, ImDrawList& draw, const cutwork::Bundle& block) {
  ImVec2 low{FLT_MAX, FLT_MAX}, high{-FLT_MAX, -FLT_MAX};
  for (const cloth::Stitch& stitch : block.stitches)
    for (const cloth::Hole hole : {stitch.a, stitch.b}) {
      const ImVec2 p = pixel_of(desk, area, hole);
      low = {std::min(low.x, p.x), std::min(low.y, p.y)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
  const float by = 0.3F * desk.view.pixels;
  draw.AddRect({low.x - by, low.y - by}, {high.x + by, high.y + by}, paint(desk.theme.accent), 3 * desk.scale, 0, 2.5F * desk.scale);
}

/// From block to block, in the accent where it is cut, with the blocks that hold it.
void draw_held(const Desk& desk, Area area, ImDrawList& draw, const picture::HeldThread& held) {
  const plan::PartCutting& cutting = cutting_of(desk, held.cutting);
  for (const int block : held.blocks)
    if (block >= 0) outline_block(desk, area, draw, cutting.blocks[static_cast<std::size_t>(block)]);
  if (held.from == std::numeric_limits<int>::min() || held.to == std::numeric_limits<int>::max()) return;
  const bool v = held.axis == Axis::v;
  const auto at = [&](int along) {
    const cloth::Hole near = v ? cloth::Hole{held.thread, along} : cloth::Hole{along, held.thread};
    const cloth::Hole far = v ? cloth::Hole{held.thread + 1, along} : cloth::Hole{along, held.thread + 1};
    const ImVec2 a = pixel_of(desk, area, near), b = pixel_of(desk, area, far);
    return ImVec2{(a.x + b.x) / 2, (a.y + b.y) / 2};
  };
  draw.AddLine(at(held.from), at(held.to), paint(held.strand ? desk.theme.accent : desk.theme.deep),
               std::max(2.0F, 0.4F * desk.view.pixels));
}

/// The square of the cloth under a point of the window.
cloth::Hole square_at(const Desk& desk, Area area, ImVec2 at) {
  const double x = desk.view.x + (at.x - area.x) / desk.view.pixels, y = desk.view.y + (at.y - area.y) / desk.view.pixels;
  return {static_cast<int>(std::floor(mirrored(desk) ? -x : x)), static_cast<int>(std::floor(y))};
}

}  // namespace

std::string next_snip(const Desk& desk) {
  const int all = snips_of_lesson(desk);
  if (desk.cut.snips >= all) return desk.say("desk.cut.all-made", {{"n", std::int64_t{all}}, {"threads", std::int64_t{all / 2}}});
  const picture::CutIndex::Snip snip = desk.cuts->snip(desk.lesson, desk.cut.snips);
  const cutwork::Cut& cut = snip.cut();
  const std::size_t other = 1 - static_cast<std::size_t>(snip.end);
  const bool done = snip.strand->ranks[other] < desk.cut.snips;
  return desk.say("desk.cut.snip-of", {{"n", std::int64_t{desk.cut.snips + 1}},
                                       {"of", std::int64_t{all}},
                                       {"cutting", std::int64_t{cut.cutting}},
                                       {"thread", which(desk, cut.axis, "")},
                                       {"part", name_of_block(desk, cutting_of(desk, snip.strand->cutting), cut.block)}}) +
         " " +
         desk.say(done ? "desk.cut.other-done" : "desk.cut.other-later", {{"cutting", std::int64_t{snip.strand->cuts[other].cutting}}});
}

std::vector<picture::HeldThread> threads_under(const Desk& desk, Area area, ImVec2 at) {
  return desk.cut.shown && desk.cuts ? picture::held_at(*desk.plan(), *desk.cuts, square_at(desk, area, at))
                                     : std::vector<picture::HeldThread>();
}

void show_held(const Desk& desk, Area area, ImDrawList& draw) {
  const std::vector<picture::HeldThread> threads = threads_under(desk, area, ImGui::GetIO().MousePos);
  if (threads.empty()) return;
  for (const picture::HeldThread& held : threads) draw_held(desk, area, draw, held);
  ImGui::BeginTooltip();
  ImGui::PushTextWrapPos(380 * desk.scale);
  for (const picture::HeldThread& held : threads) ImGui::TextUnformatted(words_of(desk, held).c_str());
  ImGui::PopTextWrapPos();
  ImGui::EndTooltip();
}

}  // namespace app
