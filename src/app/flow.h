// Controls in rows that break where the next one does not fit, so that longer words and larger letters are never cut off.
#pragma once

#include <string>
#include <vector>

namespace app {

/// Before a button of this label: puts it beside the last item where it fits, else below.
void beside(const std::string& label);
/// The same for something of a known width in pixels.
void beside_width(float width);
/// How many rows buttons of these labels take in so many pixels, at the style and font of the moment.
int rows_of(const std::vector<std::string>& labels, float width);
/// The height of a panel that holds so many rows of controls and lines of text.
float height_of(int rows, int lines);

}  // namespace app
