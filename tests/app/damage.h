// Files damaged in a way that is the same every time: bytes changed, pieces cut out, pieces doubled.
#pragma once

#include <algorithm>
#include <random>
#include <string>

namespace damage {

/// A whole number below `n`, the same on every machine (the standard's distributions are not).
inline std::size_t below(std::mt19937& random, std::size_t n) { return n == 0 ? 0 : random() % n; }

inline std::string changed_bytes(std::string text, std::mt19937& random) {
  const std::size_t n = 1 + below(random, 8);
  for (std::size_t i = 0; i < n; ++i) text[below(random, text.size())] = static_cast<char>(below(random, 256));
  return text;
}

inline std::string cut(std::string text, std::mt19937& random) {
  const std::size_t from = below(random, text.size());
  return text.erase(from, 1 + below(random, 200));
}

inline std::string doubled(std::string text, std::mt19937& random) {
  const std::size_t from = below(random, text.size());
  const std::string piece = text.substr(from, 1 + below(random, 200));
  return text.insert(below(random, text.size()), piece);
}

inline std::string torn_off(std::string text, std::mt19937& random) { return text.substr(0, below(random, text.size())); }

/// The course file damaged in the way that the number asks for; number and text alone decide.
inline std::string damaged(const std::string& text, unsigned number) {
  std::mt19937 random(number);
  switch (number % 4) {
    case 0:
      return changed_bytes(text, random);
    case 1:
      return cut(text, random);
    case 2:
      return doubled(text, random);
    default:
      return torn_off(text, random);
  }
}

}  // namespace damage
