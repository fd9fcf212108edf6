#include "picture/remembered.h"

namespace picture {

list::TypeSize Remembered::measure(std::string_view text, list::TypeStyle style) const {
  const auto [place, fresh] = known_.try_emplace({style, std::string(text)});
  if (fresh) place->second = behind_.measure(text, style);
  return place->second;
}

}  // namespace picture
