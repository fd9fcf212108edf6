// The count-in from further off, where its landmark is too far away for a close-up: the way that is counted with its lengths, the landmark,
// and the close-up's frame at the end of it. Also for counts from the middle and from the edges of the cloth.
#pragma once

#include "picture/close_up.h"

namespace picture {

/// At most so large, in mm.
Picture draw_overview(const Sheet& sheet, const guide::CloseUp& close_up, const guide::Count& count, double width, double height);

}  // namespace picture
