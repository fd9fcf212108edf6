// Key descriptions, filled in field by field.
#include "stitch/keys.h"

#include <utility>

namespace stitch {
namespace {

KeySpec required(std::string_view name, KeyType type) {
  KeySpec spec;
  spec.name = name;
  spec.type = type;
  spec.required = true;
  return spec;
}

}  // namespace

KeySpec required_hole(std::string_view name) { return required(name, KeyType::hole); }

KeySpec required_path(std::string_view name) { return required(name, KeyType::path); }

KeySpec word(std::string_view name, std::string_view fallback, std::vector<std::string_view> words) {
  KeySpec spec;
  spec.name = name;
  spec.type = KeyType::word;
  spec.fallback.emplace(std::string(fallback));
  spec.words = std::move(words);
  return spec;
}

KeySpec whole(std::string_view name, int fallback, int least, int most) {
  KeySpec spec;
  spec.name = name;
  spec.type = KeyType::whole;
  spec.fallback.emplace(fallback);
  spec.least = least;
  spec.most = most;
  return spec;
}

}  // namespace stitch
