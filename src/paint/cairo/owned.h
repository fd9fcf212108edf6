// Handles of the C libraries that let go of themselves.
#pragma once

#include <memory>

namespace paint {

template <auto release>
struct Release {
  template <class T>
  void operator()(T* handle) const {
    release(handle);
  }
};

template <class T, auto release>
using Owned = std::unique_ptr<T, Release<release>>;

}  // namespace paint
