// Which tables and keys a course file has, in the order of the reference.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "stitch/kind.h"

namespace file {

using Keys = std::vector<std::string>;

Keys root_keys();
Keys course_keys();
Keys cloth_keys();
Keys thread_keys();
Keys habits_keys();
Keys count_cost_keys();
Keys kind_names();  ///< the kinds of part that this version offers
Keys speed_names();  ///< what has a speed: the kinds, the bars and fillings of cutwork, the cutting out
Keys part_keys();   ///< of every part, whatever its kind
/// Of a part of that kind: name, kind, thread, the kind's own, the further ones of every part.
Keys part_keys(const stitch::Kind& kind);
Keys lesson_keys();
Keys student_keys();

/// The key of the habits with a kind's working length: "cable" gives "cable_length_cm".
std::string length_key(std::string_view kind);

}  // namespace file
