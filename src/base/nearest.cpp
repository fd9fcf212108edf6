#include "base/nearest.h"

#include <algorithm>

namespace base {
namespace {

/// Code points, small letters for A to Z: the same in every locale. Bytes that are no UTF-8 count as letters of their own.
std::u32string letters(std::string_view text) {
  std::u32string letters;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    const bool continues = (byte & 0xC0) == 0x80 && !letters.empty();
    if (continues) letters.back() = (letters.back() << 6) | (byte & 0x3F);
    else letters += byte >= 'A' && byte <= 'Z' ? byte - 'A' + 'a' : byte;
  }
  return letters;
}

/// Letters to change, with swaps of neighbours (optimal string alignment).
int letters_to_change(const std::u32string& a, const std::u32string& b) {
  const std::size_t n = a.size(), m = b.size();
  std::vector<std::vector<int>> d(n + 1, std::vector<int>(m + 1));
  for (std::size_t i = 0; i <= n; ++i) d[i][0] = static_cast<int>(i);
  for (std::size_t j = 0; j <= m; ++j) d[0][j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= n; ++i) {
    for (std::size_t j = 1; j <= m; ++j) {
      const int change = a[i - 1] == b[j - 1] ? 0 : 1;
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + change});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
    }
  }
  return d[n][m];
}

}  // namespace

std::string nearest_word(std::string_view word, const std::vector<std::string>& candidates) {
  constexpr std::size_t longest = 60;
  std::string best;
  int best_distance = 0;
  if (word.size() > longest) return best;
  const std::u32string wanted = letters(word);
  for (const std::string& candidate : candidates) {
    if (candidate.size() > longest) continue;
    const std::u32string offered = letters(candidate);
    const int distance = letters_to_change(wanted, offered), size = static_cast<int>(offered.size());
    const int allowed = std::max(1, std::max(static_cast<int>(wanted.size()), size) / 3);
    if (distance <= allowed && distance < size && (best.empty() || distance < best_distance)) {
      best = candidate;
      best_distance = distance;
    }
  }
  return best;
}

}  // namespace base
