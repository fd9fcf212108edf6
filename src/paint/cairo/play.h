// Plays the items of a list onto any cairo context whose unit is the millimetre.
#pragma once

#include <cairo.h>

#include "list/list.h"
#include "paint/cairo/line.h"
#include "paint/cairo/paint.h"

namespace paint {

/// Draws every item in order. Clips must be paired (a ClipOut without its ClipIn, or one never closed, is a mistake of whoever made the
/// list).
void play(cairo_t* cr, const list::List& list, const Type::Inside& type, Lettering lettering);

}  // namespace paint
