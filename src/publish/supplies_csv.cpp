// Supplies as CSV by RFC 4180, one line a thing to buy. Figures are bare and have a point, so that a spreadsheet adds them up; metres are
// rounded up to a centimetre.
#include <fmt/format.h>

#include <cmath>

#include "plan/supplies.h"
#include "publish/publish.h"
#include "say/supplies.h"

namespace publish {
namespace {

using Fields = std::vector<std::string>;

std::string line(const Fields& fields) {
  std::string text;
  for (const std::string& field : fields) {
    if (&field != fields.data()) text += ',';
    text += csv_field(field);
  }
  text += "\r\n";
  return text;
}

Fields headings(const say::Voice& voice) {
  Fields fields;
  for (const char* key :
       {"item", "sold-as", "metres-one", "lengths-one", "number-one", "metres-all", "number-all", "price", "currency", "cost"})
    fields.push_back(voice.phrases.say(fmt::format("supplies.csv.{}", key)));
  return fields;
}

std::string metres(double m) { return fmt::format("{:.2f}", std::ceil(m * 100 - 1e-9) / 100); }
std::string number(std::optional<int> n) { return n ? std::to_string(*n) : std::string(); }

std::string cost(const std::string& price, std::optional<int> n) {
  const auto sum = n ? plan::cost(price, *n) : std::nullopt;
  return sum ? sum->text() : std::string();
}

Fields thread_fields(const say::Voice& voice, const plan::Supplies::Thread& needed, int sets) {
  const course::Thread& thread = voice.course.threads[needed.thread];
  const auto one = plan::balls(voice.course, needed, 1), all = plan::balls(voice.course, needed, sets);
  const char* form = course::form(thread) == course::Form::skein ? "supplies.form.skein" : "supplies.form.ball";
  return {say::thread_to_buy(voice, needed),
          voice.phrases.say(form),
          metres(needed.metres_to_buy()),
          std::to_string(needed.lengths),
          number(one),
          metres(needed.metres_to_buy() * sets),
          number(all),
          thread.price,
          thread.currency,
          cost(thread.price, all)};
}

Fields cloth_fields(const say::Voice& voice, const std::string& what, int sets) {
  const course::Cloth& cloth = voice.course.cloth;
  return {voice.phrases.say("list.comma", {{"first", what}, {"second", say::cloth_size(voice)}}),
          voice.phrases.say("supplies.form.piece"),
          "",
          "",
          "1",
          "",
          std::to_string(sets),
          cloth.price,
          cloth.currency,
          cost(cloth.price, sets)};
}

}  // namespace

std::string csv_field(std::string_view text) {
  if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string(text);
  std::string quoted(1, '"');
  for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
  quoted += '"';
  return quoted;
}

std::string supplies_csv(const say::Voice& voice, const plan::Plan& plan) {
  const int sets = plan.supplies.sets;
  const std::string all = std::to_string(sets);
  std::string text = line(headings(voice));
  text += line(cloth_fields(voice, say::supplies(voice, plan).rows.at(0).what, sets));
  for (const plan::Supplies::Thread& needed : plan.supplies.threads) text += line(thread_fields(voice, needed, sets));
  const std::string piece = voice.phrases.say("supplies.form.piece");
  for (const int needle : plan.supplies.needles)
    text += line({voice.phrases.say("page.ready.needle", {{"size", std::int64_t{needle}}}), piece, "", "", "1", "", all, "", "", ""});
  text += line({say::scissors(voice, plan), piece, "", "", "1", "", all, "", "", ""});
  if (plan.supplies.tacking_thread) text += line({voice.phrases.say("page.ready.tacking"), "", "", "", "", "", "", "", "", ""});
  return text;
}

}  // namespace publish
