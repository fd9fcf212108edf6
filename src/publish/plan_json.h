// Parts of the plan's JSON in files of their own, for write_plan (publish.h).
#pragma once

#include "publish/json.h"
#include "publish/publish.h"

namespace publish {

/// The members `legs` and `landmark` of a count.
void legs_of(Json& json, const std::vector<guide::Leg>& legs);
void landmark_of(Json& json, const course::Course& course, const guide::Landmark& landmark, const say::Voice& voice);
/// Writes count_ins, marks and closeups.
void write_guide(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice);
/// Writes checkpoints.
void write_checkpoints(Json& json, const course::Course& course, const plan::Plan& plan);
/// Writes supplies.
void write_supplies(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice);

/// Writes cutting.
void write_cutting(Json& json, const course::Course& course, const plan::Plan& plan);
/// Writes routes.
void write_routes(Json& json, const course::Course& course, const plan::Plan& plan);

}  // namespace publish
