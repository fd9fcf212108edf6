// Blocks (kloster blocks): 5 satin stitches side by side over 4 threads, in straight rows and in staircases (trade.md, Blocks).
#include "stitch/kinds.h"

namespace stitch {
namespace {

Outcome build(const Values&) { return {{}, {{"path", 0, 0, "a path of blocks", "a kind that is worked out already", ""}}}; }

}  // namespace

Kind blocks_kind() {
  return {.name = "blocks",
          .keys = {{.name = "start", .type = KeyType::hole, .required = true, .fallback = {}, .words = {}},
                   {.name = "first", .type = KeyType::word, .fallback = Value(std::string("upright")), .words = {"across", "upright"}},
                   {.name = "path", .type = KeyType::path, .required = true, .fallback = {}, .words = {}}},
          .build = build,
          .stitches_a_minute = 6};  // an assumption, no source
}

}  // namespace stitch
