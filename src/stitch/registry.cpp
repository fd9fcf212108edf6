// Which kinds of part there are, in the order in which they are listed to the user: one line a kind.
#include "stitch/kinds.h"

namespace stitch {
namespace {

const std::vector<Kind>& table() {
  static const std::vector<Kind> kinds{
      blocks_kind(),
      cable_kind(),
      satin_kind(),
      star_kind(),
      eyelet_kind(),
      four_sided_kind(),
      backstitch_kind(),
      edge_kind(),
      cutwork_kind(),
  };
  return kinds;
}

}  // namespace

const Kind* find_kind(std::string_view name) {
  for (const Kind& kind : table())
    if (kind.name == name) return &kind;
  return nullptr;
}

std::vector<const Kind*> kinds() {
  std::vector<const Kind*> all;
  for (const Kind& kind : table()) all.push_back(&kind);
  return all;
}

}  // namespace stitch
