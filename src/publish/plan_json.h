// Parts of the plan's JSON in files of their own, for write_plan (publish.h).
#pragma once

#include "publish/json.h"
#include "publish/publish.h"

namespace publish {

/// Writes count_ins, marks and closeups.
void write_guide(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice);
/// Writes supplies.
void write_supplies(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice);

/// Writes cutting.
void write_cutting(Json& json, const course::Course& course, const plan::Plan& plan);

}  // namespace publish
