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

KeySpec required_holes(std::string_view name) { return required(name, KeyType::holes); }

KeySpec required_whole(std::string_view name, int least, int most) {
  KeySpec spec = required(name, KeyType::whole);
  spec.least = least;
  spec.most = most;
  return spec;
}

KeySpec required_word(std::string_view name, std::vector<std::string_view> words) {
  KeySpec spec = required(name, KeyType::word);
  spec.words = std::move(words);
  return spec;
}

KeySpec wholes(std::string_view name, std::optional<std::vector<int>> fallback, int least, int most) {
  KeySpec spec = required(name, KeyType::wholes);
  spec.required = !fallback;
  if (fallback) spec.fallback.emplace(std::move(*fallback));
  spec.least = least;
  spec.most = most;
  return spec;
}

KeySpec whole_or_word(std::string_view name, std::string_view fallback, std::vector<std::string_view> words, int least, int most) {
  KeySpec spec = word(name, fallback, std::move(words));
  spec.type = KeyType::whole_or_word;
  spec.least = least;
  spec.most = most;
  return spec;
}

KeySpec flag(std::string_view name, bool fallback) {
  KeySpec spec;
  spec.name = name;
  spec.type = KeyType::flag;
  spec.fallback.emplace(fallback);
  return spec;
}

}  // namespace stitch
