// A snag's two sentences: what is wrong, and what to do.
#include <fmt/format.h>

#include "say/say.h"

namespace say {

SaidSnag snag(const Voice& voice, const check::Snag& snag) {
  words::Arguments arguments;
  for (const auto& [name, text] : snag.words) arguments.insert_or_assign(name, text);
  for (const auto& [name, number] : snag.numbers) arguments.insert_or_assign(name, number);
  return {voice.phrases.say(fmt::format("snag.{}.says", snag.rule), arguments), voice.phrases.say(fmt::format("snag.{}.do", snag.rule), arguments)};
}

}  // namespace say
