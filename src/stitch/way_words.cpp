// Near directions by letters first, then directions written out.
#include "stitch/way_words.h"

#include <vector>

#include "base/nearest.h"
#include "cloth/way.h"

namespace stitch {
namespace {

struct WrittenOut {
  std::string_view word;
  cloth::Way way;
};
constexpr WrittenOut written_out[] = {
    {"north", cloth::Way::N}, {"northeast", cloth::Way::NE}, {"east", cloth::Way::E}, {"southeast", cloth::Way::SE},
    {"south", cloth::Way::S}, {"southwest", cloth::Way::SW}, {"west", cloth::Way::W}, {"northwest", cloth::Way::NW},
    {"up", cloth::Way::N},    {"right", cloth::Way::E},      {"down", cloth::Way::S}, {"left", cloth::Way::W},
};

}  // namespace

std::string nearest_way(std::string_view word) {
  std::vector<std::string> names;
  for (const cloth::Way way : cloth::all_ways) names.emplace_back(cloth::name(way));
  if (std::string near = base::nearest_word(word, names); !near.empty()) return near;
  std::vector<std::string> words;
  for (const WrittenOut& known : written_out) words.emplace_back(known.word);
  const std::string near = base::nearest_word(word, words);
  for (const WrittenOut& known : written_out)
    if (known.word == near) return std::string(cloth::name(known.way));
  return "";
}

}  // namespace stitch
