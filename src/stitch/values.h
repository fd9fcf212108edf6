// Typed reading of a kind's values. The reader of the course file has filled in every key in its right type: anything else is our own
// mistake.
#pragma once

#include "base/require.h"
#include "stitch/kind.h"

namespace stitch {

template <class T>
const T& value(const Values& values, std::string_view key) {
  const auto found = values.find(key);
  base::require(found != values.end(), "a key of the kind has no value");
  const T* held = std::get_if<T>(&found->second);
  base::require(held != nullptr, "a key of the kind has a value of another type");
  return *held;
}

}  // namespace stitch
