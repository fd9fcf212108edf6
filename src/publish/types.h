// Fonts are not shared between threads: each thread opens its own, once.
#pragma once

#include <tbb/enumerable_thread_specific.h>

#include <memory>

#include "paint/cairo/paint.h"

namespace publish {

class Types {
 public:
  base::Result<const paint::Type*> mine();

 private:
  tbb::enumerable_thread_specific<std::unique_ptr<paint::Type>> types_;
};

}  // namespace publish
