// Cutwork: an area of cloth within blocks that is cut open. It has no stitches; which threads are cut follows from the blocks that hold it.
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/values.h"

namespace stitch {
namespace {

Outcome build(const Values& values) {
  CutArea area;
  area.within = value<std::vector<std::string>>(values, "within");
  area.leave = value<int>(values, "leave");
  area.bar_threads = value<int>(values, "bar_threads");
  if (values.find("zone") != values.end()) area.zones = {value<cloth::Hole>(values, "zone")};
  Outcome outcome;
  if (area.leave != 0 && area.leave != 4)
    outcome.faults.push_back({"leave", 0, 0, "the number " + std::to_string(area.leave), "0 (cut every thread held) or 4 (cut four, leave four)", ""});
  outcome.work.cut = std::move(area);
  return outcome;
}

KeySpec required_parts(std::string_view name) {
  KeySpec spec;
  spec.name = name;
  spec.type = KeyType::parts;
  spec.required = true;
  return spec;
}

KeySpec may_have_hole(std::string_view name) {
  KeySpec spec;
  spec.name = name;
  return spec;
}

}  // namespace

Kind cutwork_kind() {
  return {.name = "cutwork",
          .keys = {required_parts("within"), whole("leave", 0, 0, 4), whole("bar_threads", 4, 1, 12), may_have_hole("zone")},
          .build = build,
          .craft_rank = 2,
          .stitches_a_minute = 4};  // snips, each looked at twice; an assumption, no source
}

}  // namespace stitch
