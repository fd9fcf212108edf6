#include "base/nearest.h"

#include <algorithm>
#include <cctype>

namespace base {
namespace {

char lower(char c) { return static_cast<char>(std::tolower(static_cast<unsigned char>(c))); }

/// Letters to change, with swaps of neighbours (optimal string alignment).
int letters_to_change(std::string_view a, std::string_view b) {
  const std::size_t n = a.size(), m = b.size();
  std::vector<std::vector<int>> d(n + 1, std::vector<int>(m + 1));
  for (std::size_t i = 0; i <= n; ++i) d[i][0] = static_cast<int>(i);
  for (std::size_t j = 0; j <= m; ++j) d[0][j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= n; ++i) {
    for (std::size_t j = 1; j <= m; ++j) {
      const int change = lower(a[i - 1]) == lower(b[j - 1]) ? 0 : 1;
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + change});
      if (i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1]))
        d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
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
  for (const std::string& candidate : candidates) {
    if (candidate.size() > longest) continue;
    const int distance = letters_to_change(word, candidate);
    const int allowed = std::max<int>(1, static_cast<int>(std::max(word.size(), candidate.size())) / 3);
    if (distance <= allowed && distance < static_cast<int>(candidate.size()) && (best.empty() || distance < best_distance)) {
      best = candidate;
      best_distance = distance;
    }
  }
  return best;
}

}  // namespace base
