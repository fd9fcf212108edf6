// The cutting plans in the plan's JSON: only what is proven and stopped by nothing.
#include "publish/plan_json.h"

namespace publish {
namespace {

std::string_view name(cutwork::Axis axis) { return axis == cutwork::Axis::v ? "v" : "h"; }

void box(Json& json, const cloth::Box& box) {
  json.key("box");
  json.array([&] {
    for (const int n : {box.x0, box.y0, box.x1, box.y1}) json.value(n);
  });
}

template <class List, class Write>
void list(Json& json, std::string_view key, const List& items, Write write) {
  json.key(key);
  json.array([&] {
    for (const auto& item : items) json.object([&] { write(item); });
  });
}

void cut_of(Json& json, const cutwork::Cut& cut) {
  json.member("axis", name(cut.axis));
  json.member("thread", cut.thread);
  json.key("at");
  json.hole(cut.at);
  json.member("order", cut.order);
  json.member("cutting", cut.cutting);
}

void span_of(Json& json, const cutwork::Span& span) {
  json.member("axis", name(span.axis));
  json.member("thread", span.thread);
  json.member("from", span.from);
  json.member("to", span.to);
}

void opening_of(Json& json, const cutwork::Opening& opening) {
  json.key("outline");
  json.array([&] {
    for (const cloth::Hole hole : opening.outline) json.hole(hole);
  });
}

void bar_of(Json& json, const cutwork::Bar& bar) {
  json.member("axis", name(bar.axis));
  box(json, bar.box);
  json.key("openings");
  json.array([&] {
    for (const int opening : bar.openings) json.value(opening);
  });
}

/// A stitch of a trail, counted from 1 as in a lesson's work.
void stitch_of(Json& json, const course::Course& course, const guide::PlacedTrail& trail, int stitch) {
  json.member("part", std::string_view(course.parts[trail.part].name));
  json.member("pass", trail.pass);
  json.member("place", trail.place);
  json.member("stitch", stitch + 1);
}

void ready_of(Json& json, const course::Course& course, const plan::Plan& plan, const plan::ReadyArea& ready) {
  json.member("first", ready.first_cutting);
  json.member("last", ready.last_cutting);
  json.member("snips", ready.snips);
  list(json, "blocks", ready.blocks, [&](const auto& held) {
    json.member("part", std::string_view(course.parts[held.part].name));
    json.member("blocks", held.blocks);
    json.member("stitches", held.stitches);
  });
  list(json, "finished", ready.finished, [&](const auto& done) {
    json.member("part", std::string_view(course.parts[done.part].name));
    json.member("lesson", done.lesson);
  });
  list(json, "ends", ready.tails, [&](const auto& tail) {
    stitch_of(json, course, plan.trails[tail.trail], tail.stitch);
    json.member("begins", tail.begins);
  });
  list(json, "across", ready.across, [&](const auto& across) { stitch_of(json, course, plan.trails[across.trail], across.stitch); });
}

void cutting_of(Json& json, const course::Course& course, const plan::Plan& plan, const plan::PartCutting& cut) {
  json.member("part", std::string_view(course.parts[cut.part].name));
  json.member("lesson", cut.lesson);
  list(json, "cuts", cut.cutting.cuts, [&](const auto& item) { cut_of(json, item); });
  list(json, "withdrawn", cut.cutting.withdrawn, [&](const auto& item) { span_of(json, item); });
  list(json, "openings", cut.cutting.openings, [&](const auto& item) { opening_of(json, item); });
  list(json, "bars", cut.cutting.bars, [&](const auto& item) { bar_of(json, item); });
  list(json, "crossings", cut.cutting.crossings, [&](const auto& item) { box(json, item.box); });
  list(json, "ready", cut.ready, [&](const auto& ready) { ready_of(json, course, plan, ready); });
}

using Item = cutwork::RouteItem;

void points(Json& json, std::string_view key, const std::vector<cloth::Hole>& holes) {
  json.key(key);
  json.array([&] {
    for (const cloth::Hole hole : holes) json.hole(hole);
  });
}

/// A bar, whole or one half of it.
void bar_step(Json& json, const Item& item, const cutwork::Bar& bar, int half) {
  const cloth::Hole middle = cutwork::middle_of(bar);
  json.object([&] {
    json.member("bar", item.bar);
    json.member("weaves", half > 0 ? item.weaves / 2 : item.weaves);
    if (half > 0) json.member("half", true);
    json.key("from");
    json.hole(half == 2 ? middle : item.from);
    json.key("to");
    json.hole(half == 1 ? middle : item.to);
    if (half < 2 && item.behind >= 0) json.member("behind", item.behind);
    if (half == 1 && (item.picots[0] || item.picots[1])) {
      json.key("picots");
      json.array([&] {
        for (const std::size_t side : {0U, 1U})
          if (item.picots[side]) json.value(bar.axis == cutwork::Axis::h ? (side == 0 ? "N" : "S") : (side == 0 ? "W" : "E"));
      });
    }
  });
}

void filling_step(Json& json, const Item& item, const cutwork::FillingWork& filling) {
  json.object([&] {
    json.member("filling", stitch::filling_names()[static_cast<std::size_t>(filling.kind)]);
    json.member("opening", filling.opening);
    if (item.bar >= 0) json.member("from_bar", item.bar);
    if (item.bar < 0 && item.behind >= 0) json.member("behind", item.behind);
    if (!item.via.empty()) points(json, "via", item.via);
    points(json, "points", filling.points);
  });
}

/// The steps of one item, and the points that the thread comes to.
int steps_of(Json& json, const Item& item, const std::vector<cutwork::Bar>& bars) {
  const auto fillings = [&] {
    for (const auto& filling : item.fillings) filling_step(json, item, filling);
    return static_cast<int>(item.fillings.size());
  };
  if (item.bar < 0) return fillings();
  const cutwork::Bar& bar = bars[static_cast<std::size_t>(item.bar)];
  bar_step(json, item, bar, item.halved() ? 1 : 0);
  if (!item.halved()) return 1;
  const int between = fillings();
  bar_step(json, item, bar, 2);
  return 2 + between;
}

std::vector<cloth::Hole> points_of(const Item& item, const std::vector<cutwork::Bar>& bars) {
  std::vector<cloth::Hole> points = item.via;
  if (item.bar >= 0) points.push_back(item.from);
  if (item.halved()) points.push_back(cutwork::middle_of(bars[static_cast<std::size_t>(item.bar)]));
  for (const auto& filling : item.fillings) points.insert(points.end(), filling.points.begin() + (item.bar >= 0 ? 1 : 0), filling.points.end());
  if (item.bar >= 0) points.push_back(item.to);
  return points;
}

void route_of(Json& json, const course::Course& course, const plan::Plan& plan, const plan::PartRoute& route, const guide::Section& section) {
  const auto& bars = plan.cuttings[static_cast<std::size_t>(route.cutting)].cutting.bars;
  json.member("part", std::string_view(course.parts[route.part].name));
  json.member("lesson", section.lesson);
  json.member("stage", route.stage == course::Stage::bars ? "bars" : "fillings");
  std::vector<int> begins;  // of each item: its first step
  int steps = 0;
  std::vector<cloth::Hole> all;
  json.key("steps");
  json.array([&] {
    for (int i = section.first; i <= section.last; ++i) {
      const Item& item = route.items[static_cast<std::size_t>(i)];
      begins.push_back(steps);
      steps += steps_of(json, item, bars);
      const auto at = points_of(item, bars);
      all.insert(all.end(), at.begin(), at.end());
    }
  });
  json.key("ends");
  json.array([&] {
    for (const int start : route.starts)
      if (section.first <= start && start <= section.last) json.value(begins[static_cast<std::size_t>(start - section.first)]);
  });
  points(json, "points", all);
  json.key("thread_mm");
  json.value(cloth::mm(route.threads(section.first, section.last), course.cloth.count) * (1 + course.choices.habits.take_up), 1);
}

}  // namespace

void write_routes(Json& json, const course::Course& course, const plan::Plan& plan) {
  json.key("routes");
  json.array([&] {
    for (const plan::PartRoute& route : plan.routes)
      for (const guide::Section& section : route.sections)
        if (!route.items.empty()) json.object([&] { route_of(json, course, plan, route, section); });
  });
}

void write_cutting(Json& json, const course::Course& course, const plan::Plan& plan) {
  json.key("cutting");
  json.array([&] {
    for (const plan::PartCutting& cut : plan.cuttings)
      if (!cut.cutting.cuts.empty()) json.object([&] { cutting_of(json, course, plan, cut); });
  });
}

}  // namespace publish
