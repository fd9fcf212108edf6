#include "file/thread_sizes.h"

#include <fmt/format.h>

#include <cstdlib>

#include "assets/assets.h"
#include "base/require.h"
#include "file/syntax.h"
#include "file/table_reader.h"

namespace file {
namespace {

course::SoldAs read_size(const Site& site, FaultList& faults) {
  const TableReader table(site, faults);
  course::SoldAs sold;
  table.require("size", "size = 5");
  table.whole("size", 1, 40, sold.pearl);
  table.word<course::Form>("sold_as", {{"ball", course::Form::ball}, {"skein", course::Form::skein}}, sold.form);
  table.number("metres", 0.1, 100000, sold.metres);
  table.number("grams", 0.1, 100000, sold.grams);
  table.whole("needle", 10, 30, sold.needle);
  table.refuse_others({"size", "sold_as", "metres", "grams", "needle"});
  return sold;
}

tl::unexpected<base::Trouble> wrong(const base::Fault& fault) {
  return base::trouble(base::TroubleKind::input,
                       fmt::format("line {}: found {}; expected {}", fault.place.line, fault.found, fault.expected));
}

}  // namespace

base::Result<std::vector<course::SoldAs>> read_thread_sizes(std::string_view text) {
  const Parsed parsed = parse(Lines(text), outline(text));
  if (parsed.fault) return wrong(*parsed.fault);
  FaultList faults;
  std::vector<course::SoldAs> sizes;
  for (const Site& site : tables_at(parsed.root.find("pearl"), "pearl", faults)) sizes.push_back(read_size(site, faults));
  const base::Faults found = faults.take();
  if (!found.empty()) return wrong(found[0]);
  if (sizes.empty()) return base::trouble(base::TroubleKind::input, "no [[pearl]]");
  return sizes;
}

const std::vector<course::SoldAs>& thread_sizes() {
  static const auto sizes = read_thread_sizes(assets::table("tables/threads.toml"));
  base::require(sizes.has_value(), sizes ? "" : "assets/tables/threads.toml: " + sizes.error().what);
  return *sizes;
}

course::SoldAs sold_as(const std::vector<course::SoldAs>& sizes, int pearl) {
  const course::SoldAs* nearest = &sizes.at(0);
  for (const course::SoldAs& size : sizes)
    if (std::abs(size.pearl - pearl) < std::abs(nearest->pearl - pearl)) nearest = &size;
  if (nearest->pearl == pearl) return *nearest;
  course::SoldAs unknown;
  unknown.pearl = pearl;
  unknown.needle = nearest->needle;
  return unknown;
}

}  // namespace file
