#include "file/speeds.h"

#include <fmt/format.h>

#include "assets/assets.h"
#include "base/require.h"
#include "file/syntax.h"
#include "file/table_reader.h"

namespace file {
namespace {

void read_speed(const Site& site, FaultList& faults, Speeds& speeds) {
  const TableReader table(site, faults);
  std::string kind;
  double practised = 0, beginner = 0;
  table.require("kind", "kind = \"blocks\"");
  table.require("practised", "practised = 6");
  table.require("beginner", "beginner = 3");
  table.line("kind", name_limit, kind);
  table.number("practised", 0.1, 100, practised);
  table.number("beginner", 0.1, 100, beginner);
  table.refuse_others({"kind", "practised", "beginner"});
  speeds.practised[kind] = practised;
  speeds.beginner[kind] = beginner;
}

tl::unexpected<base::Trouble> wrong(const base::Fault& fault) {
  return base::trouble(base::TroubleKind::input,
                       fmt::format("line {}: found {}; expected {}", fault.place.line, fault.found, fault.expected));
}

}  // namespace

base::Result<Speeds> read_assumed_speeds(std::string_view text) {
  const Parsed parsed = parse(Lines(text), outline(text));
  if (parsed.fault) return wrong(*parsed.fault);
  FaultList faults;
  Speeds speeds;
  for (const Site& site : tables_at(parsed.root.find("speed"), "speed", faults)) read_speed(site, faults, speeds);
  const base::Faults found = faults.take();
  if (!found.empty()) return wrong(found[0]);
  return speeds;
}

const Speeds& assumed_speeds() {
  static const auto speeds = read_assumed_speeds(assets::table("tables/speeds.toml"));
  base::require(speeds.has_value(), speeds ? "" : "assets/tables/speeds.toml: " + speeds.error().what);
  return *speeds;
}

}  // namespace file
