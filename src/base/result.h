// One way to say "cannot do it": a value, or a trouble in words.
#pragma once

#include <string>
#include <tl/expected.hpp>

namespace base {

enum class TroubleKind { input, output, cancelled };

struct Trouble {
  TroubleKind kind = TroubleKind::input;
  std::string what;  ///< a whole sentence without the final full stop
};

template <class T>
using Result = tl::expected<T, Trouble>;

inline tl::unexpected<Trouble> trouble(TroubleKind kind, std::string what) {
  return tl::make_unexpected(Trouble{kind, std::move(what)});
}

}  // namespace base
