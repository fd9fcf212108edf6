// The keys of a part that is repeated: turn, mirror, about.
#pragma once

#include "file/table_reader.h"
#include "stitch/repeat.h"

namespace file {

/// True where the keys agree; else a fault says what does not.
bool read_repeat(const TableReader& table, stitch::Repeat& repeat);
/// The keys `turn` and `mirror` alone, where they are written.
void read_images(const TableReader& table, int& turn, std::string& mirror);

}  // namespace file
