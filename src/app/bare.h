// The toolkit without a window: frames are made and nothing is shown. For measuring.
#pragma once

#include "app/theme.h"
#include "base/result.h"

namespace app {

/// A context of the toolkit with fonts and room of this size; let go with the object. Lists may pass 65,536 corners, as in the window.
class Bare {
 public:
  Bare(float width, float height);
  ~Bare();
  Bare(const Bare&) = delete;
  Bare& operator=(const Bare&) = delete;
  [[nodiscard]] base::Result<Fonts> fonts(float scale);
};

}  // namespace app
