// A snag's two sentences: what is wrong, and what to do.
#include <fmt/format.h>

#include "say/say.h"

namespace say {
namespace {

/// "blocks, cable" of the course file, each in words.
std::string kind_names(const Voice& voice, std::string_view kinds) {
  std::string said;
  while (!kinds.empty()) {
    const std::size_t end = std::min(kinds.find(", "), kinds.size());
    const std::string name = kind_name(voice.phrases, kinds.substr(0, end));
    said = said.empty() ? name : voice.phrases.say("list.comma", {{"first", said}, {"second", name}});
    kinds.remove_prefix(std::min(end + 2, kinds.size()));
  }
  return said;
}

}  // namespace

std::string kind_name(const words::Phrases& phrases, std::string_view kind) { return phrases.say("kind." + std::string(kind)); }

SaidSnag snag(const Voice& voice, const check::Snag& snag) {
  words::Arguments arguments;
  for (const auto& [name, text] : snag.words) arguments.insert_or_assign(name, name == "kinds" ? kind_names(voice, text) : text);
  for (const auto& [name, number] : snag.numbers) arguments.insert_or_assign(name, number);
  return {voice.phrases.say(fmt::format("snag.{}.says", snag.rule), arguments), voice.phrases.say(fmt::format("snag.{}.do", snag.rule), arguments)};
}

}  // namespace say
