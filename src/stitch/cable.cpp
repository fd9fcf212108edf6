// Cable: rows of stitches over 2 threads, two rows worked turn about.
#include "stitch/kinds.h"

namespace stitch {
namespace {

Outcome build(const Values&) { return {{}, {{"path", 0, 0, "a path of cable", "a kind that is worked out already", ""}}}; }

}  // namespace

Kind cable_kind() {
  return {.name = "cable",
          .keys = {{.name = "start", .type = KeyType::hole, .required = true, .fallback = {}, .words = {}},
                   {.name = "path", .type = KeyType::path, .required = true, .fallback = {}, .words = {}},
                   {.name = "rows", .type = KeyType::whole, .fallback = Value(2), .words = {}, .least = 2, .most = 3},
                   {.name = "rows_lie", .type = KeyType::word, .fallback = Value(std::string("right")), .words = {"right", "left"}}},
          .build = build,
          .stitches_a_minute = 5};  // an assumption, no source
}

}  // namespace stitch
