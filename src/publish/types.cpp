#include "publish/types.h"

namespace publish {

base::Result<const paint::Type*> Types::mine() {
  std::unique_ptr<paint::Type>& type = types_.local();
  if (!type) {
    auto opened = paint::Type::open();
    if (!opened) return tl::make_unexpected(opened.error());
    type = std::move(*opened);
  }
  return type.get();
}

}  // namespace publish
