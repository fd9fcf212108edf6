// A field that is taken over when it is left, by Enter, Tab or a click elsewhere, so that nothing typed is lost. Esc puts back what stood there.
#pragma once

#include <functional>

#include "app/desk.h"

namespace app {

/// Each draws one field and returns true once, in the frame in which it is left with something else in it; `value` is new then.
bool text_field(Desk& desk, const char* label, std::string& value, const std::string& hint = "");
bool whole_field(Desk& desk, const char* label, int& value, int step, int big_step);
bool speed_field(Desk& desk, const char* label, double& value);  ///< one decimal, half a step
bool hole_field(Desk& desk, const char* label, std::array<int, 2>& value);
bool middle_field(Desk& desk, const char* label, std::array<float, 2>& value);  ///< one decimal

/// Takes over what is being typed at the next frame, as if its field were left now.
void leave_field();

}  // namespace app
