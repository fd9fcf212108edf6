// The kinds there are. Each is defined in the file of its name; a new one adds a line here and one in registry.cpp.
#pragma once

#include "stitch/kind.h"

namespace stitch {

Kind blocks_kind();
Kind cable_kind();
Kind satin_kind();
Kind star_kind();
Kind eyelet_kind();
Kind four_sided_kind();
Kind backstitch_kind();
Kind edge_kind();
Kind cutwork_kind();

}  // namespace stitch
