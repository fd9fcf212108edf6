// Counts on the way as JSON.
#include "publish/plan_json.h"

namespace publish {
namespace {

void placed_of(Json& json, const course::Course& course, const guide::PlacedTrail& trail) {
  json.member("part", std::string_view(course.parts[trail.part].name));
  json.member("pass", trail.pass);
  json.member("place", trail.place);
}

void checkpoint_of(Json& json, const course::Course& course, const plan::Plan& plan, const plan::Checkpoint& point) {
  json.member("lesson", point.lesson);
  placed_of(json, course, plan.trails[point.trail]);
  json.member("corner", point.corner);
  json.member("stitch", point.stitch);
  json.key("numbers");
  json.array([&] {
    for (const int n : point.numbers) json.value(n);
  });
}

}  // namespace

void write_checkpoints(Json& json, const course::Course& course, const plan::Plan& plan) {
  json.key("checkpoints");
  json.array([&] {
    for (const plan::Checkpoint& point : plan.checkpoints) json.object([&] { checkpoint_of(json, course, plan, point); });
  });
}

}  // namespace publish
