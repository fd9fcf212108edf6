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
  area.wrapped = value<std::string>(values, "bars") == "wrapped";
  if (values.find("weaves") != values.end()) area.weaves = value<int>(values, "weaves");
  area.picots = value<bool>(values, "picots");
  if (values.find("fillings") != values.end()) area.fillings = value<std::vector<FillingRule>>(values, "fillings");
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

KeySpec may_have(std::string_view name, KeyType type, int least = 0, int most = 0) {
  KeySpec spec;
  spec.name = name;
  spec.type = type;
  spec.least = least;
  spec.most = most;
  return spec;
}

constexpr int fewest_weaves = 2, most_weaves = 60;

}  // namespace

std::vector<std::string_view> filling_names() { return {"none", "dove's eye", "square filet", "wheel", "picots"}; }

Kind cutwork_kind() {
  return {.name = "cutwork",
          .keys = {required_parts("within"), whole("leave", 0, 0, 4), whole("bar_threads", 4, 1, 12), word("bars", "woven", {"woven", "wrapped"}),
                   may_have("weaves", KeyType::whole, fewest_weaves, most_weaves), flag("picots", false), may_have("fillings", KeyType::fillings),
                   may_have("zone", KeyType::hole)},
          .build = build,
          .craft_rank = 2,
          .stitches_a_minute = 4};  // snips, each looked at twice; an assumption, no source
}

}  // namespace stitch
