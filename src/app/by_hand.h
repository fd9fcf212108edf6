// What is being done to the design with the mouse or the keys: a part drawn leg by leg, a part or a handle held. State only; the verbs are in drawing.cpp,
// holding.cpp and mark_mistake.cpp.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "session/session.h"
#include "session/shape.h"

namespace app {

enum class Tool { pick, draw, mark };  ///< mark: where a student went wrong

/// A part that is begun or grows.
struct Drawing {
  std::string kind = "blocks";
  std::string thread;             ///< chosen by the teacher; empty: what other parts of the kind have
  stitch::Values chosen;          ///< the kind's other keys as chosen beforehand
  std::optional<session::Shape> shape;
  std::string name;               ///< of the part once it is written; empty before
  bool pulling = false;
  std::optional<cloth::Hole> asked;  ///< the hole that `pulled` was worked out for
  std::optional<session::Pulled> pulled;
};

/// A part or a handle of it while it is held.
struct Holding {
  enum class What { nothing, part, handle } what = What::nothing;
  session::Seen seen;        ///< the course as it was when it was taken hold of
  int part = -1;
  session::Handle handle;
  cloth::Hole from, last;    ///< holes under the pointer, then and at the last change
  std::uint64_t run = 0;     ///< of the undo step
  bool moved = false;
};

}  // namespace app
