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

void cutting_of(Json& json, const course::Course& course, const plan::PartCutting& cut) {
  json.member("part", std::string_view(course.parts[cut.part].name));
  json.member("lesson", cut.lesson);
  list(json, "cuts", cut.cutting.cuts, [&](const auto& item) { cut_of(json, item); });
  list(json, "withdrawn", cut.cutting.withdrawn, [&](const auto& item) { span_of(json, item); });
  list(json, "openings", cut.cutting.openings, [&](const auto& item) { opening_of(json, item); });
  list(json, "bars", cut.cutting.bars, [&](const auto& item) { bar_of(json, item); });
  list(json, "crossings", cut.cutting.crossings, [&](const auto& item) { box(json, item.box); });
}

}  // namespace

void write_cutting(Json& json, const course::Course& course, const plan::Plan& plan) {
  json.key("cutting");
  json.array([&] {
    for (const plan::PartCutting& cut : plan.cuttings)
      if (!cut.cutting.cuts.empty()) json.object([&] { cutting_of(json, course, cut); });
  });
}

}  // namespace publish
