#include "say/supplies.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "plan/supplies.h"

namespace say {
namespace {

/// The next multiple of the step, with as many places as it needs; a size that is one already stays.
words::Decimal rounded_up(double value, double step) {
  constexpr double measured = 1e-6;
  const double up = std::ceil(value / step - measured) * step;
  int places = 0;
  for (double scaled = up; places < 2 && std::abs(scaled - std::round(scaled)) > measured; scaled *= 10) ++places;
  return {up, places};
}

std::string price_words(const Voice& voice, const base::Exact& sum, const std::string& currency) {
  std::string digits = sum.text();
  const std::string sign = voice.phrases.say("number.decimal-sign");
  if (const std::size_t point = digits.find('.'); point != std::string::npos) digits.replace(point, 1, sign);
  return currency.empty() ? digits : voice.phrases.say("supplies.price", {{"sum", digits}, {"currency", currency}});
}

std::string cost_words(const Voice& voice, const std::string& price, const std::string& currency, int number) {
  const auto sum = plan::cost(price, number);
  return sum ? price_words(voice, *sum, currency) : std::string();
}

std::string balls_words(const Voice& voice, const course::Thread& thread, int number) {
  return voice.phrases.say(course::form(thread) == course::Form::skein ? "supplies.skeins" : "supplies.balls",
                           {{"n", std::int64_t{number}}});
}

std::string listed(const Voice& voice, const std::vector<std::string>& all) {
  std::string text;
  for (const std::string& one : all) text = text.empty() ? one : voice.phrases.say("list.comma", {{"first", text}, {"second", one}});
  return text;
}

std::string amount(const Voice& voice, const plan::Supplies::Thread& needed, int sets) {
  std::vector<std::string> all{voice.phrases.say("supplies.metres", {{"m", metres_up(needed.metres_to_buy() * sets)}})};
  if (sets == 1) all.push_back(voice.phrases.say("supplies.lengths", {{"n", std::int64_t{needed.lengths}}}));
  if (const auto number = plan::balls(voice.course, needed, sets))
    all.push_back(balls_words(voice, voice.course.threads[needed.thread], *number));
  return listed(voice, all);
}

SupplyRow thread_row(const Voice& voice, const plan::Supplies::Thread& needed, int sets) {
  const course::Thread& thread = voice.course.threads[needed.thread];
  const auto number = plan::balls(voice.course, needed, sets);
  return {thread_to_buy(voice, needed), amount(voice, needed, 1), amount(voice, needed, sets),
          number ? cost_words(voice, thread.price, thread.currency, *number) : std::string()};
}

SupplyRow cloth_row(const Voice& voice, int sets) {
  const course::Cloth& cloth = voice.course.cloth;
  return {voice.phrases.say("supplies.cloth", {{"count", cloth_count(voice)}, {"colour", cloth.colour}}), cloth_size(voice),
          voice.phrases.say("supplies.pieces", {{"n", std::int64_t{sets}}}), cost_words(voice, cloth.price, cloth.currency, sets)};
}

SupplyRow plain_row(std::string what, int sets) { return {std::move(what), "1", std::to_string(sets), {}}; }

std::string sets_words(const Voice& voice) {
  const std::string students = voice.phrases.say("supplies.students", {{"n", std::int64_t{voice.course.students}}});
  if (voice.course.spares == 0) return students;
  return voice.phrases.say(
      "list.and", {{"first", students}, {"second", voice.phrases.say("supplies.spares", {{"n", std::int64_t{voice.course.spares}}})}});
}

words::Decimal percent(double share) { return rounded_up(share * 100, 0.1); }

std::string comes_about(const Voice& voice, const plan::Supplies::Thread& needed) {
  const course::Habits& habits = voice.course.choices.habits;
  const auto m = [](double mm) { return words::Decimal{mm / 1000, 2}; };
  return voice.phrases.say("supplies.comes-about", {{"thread", thread_to_buy(voice, needed)},
                                                    {"front", m(needed.front_mm)},
                                                    {"back", m(needed.back_mm)},
                                                    {"take_up", m(needed.take_up_mm)},
                                                    {"take_up_percent", percent(habits.take_up)},
                                                    {"tails", m(needed.tails_mm)},
                                                    {"sum", m(needed.needed_mm())},
                                                    {"waste_percent", percent(needed.waste)},
                                                    {"buy", m(needed.metres_to_buy() * 1000)},
                                                    {"cut", m(needed.cut_mm)},
                                                    {"n", std::int64_t{needed.lengths}}});
}

/// What changes where students do not share.
std::string own_balls(const Voice& voice, const plan::Supplies::Thread& needed, int sets) {
  const auto each = plan::balls(voice.course, needed, 1), shared = plan::balls(voice.course, needed, sets);
  if (!each || sets == 1 || *each * sets == *shared) return {};
  return voice.phrases.say("supplies.own", {{"thread", thread_to_buy(voice, needed)},
                                            {"shared", balls_words(voice, voice.course.threads[needed.thread], *shared)},
                                            {"own", balls_words(voice, voice.course.threads[needed.thread], *each * sets)}});
}

void add_notes(const Voice& voice, const plan::Plan& plan, SuppliesTold& told) {
  for (const plan::Supplies::Thread& needed : plan.supplies.threads) told.notes.push_back(comes_about(voice, needed));
  for (const plan::Supplies::Thread& needed : plan.supplies.threads)
    if (std::string words = own_balls(voice, needed, plan.supplies.sets); !words.empty()) told.notes.push_back(std::move(words));
}

}  // namespace

words::Decimal metres_up(double metres) { return {rounded_up(metres, 0.1).value, 1}; }

std::string thread_to_buy(const Voice& voice, const plan::Supplies::Thread& needed) {
  const course::Thread& thread = voice.course.threads[needed.thread];
  const std::string size = thread.pearl ? voice.phrases.say("page.thread.pearl", {{"size", std::int64_t{*thread.pearl}}})
                                        : voice.phrases.say("supplies.tex", {{"tex", rounded_up(thread.tex.value_or(0), 0.1)}});
  return voice.phrases.say("supplies.thread", {{"thread", size}, {"colour", thread.colour}, {"names", listed(voice, needed.names)}});
}

std::string copies(const Voice& voice) {
  const std::int64_t left = course::left_handed(voice.course), right = std::max<std::int64_t>(0, voice.course.students - left);
  if (left == 0) return voice.phrases.say("class.copies.right", {{"n", right}});
  if (right == 0) return voice.phrases.say("class.copies.left", {{"n", left}});
  return voice.phrases.say("class.copies.both", {{"right", right}, {"left", left}});
}

std::string cloth_size(const Voice& voice) {
  const cloth::Hole threads = course::size_threads(voice.course);
  const double width = cloth::mm(threads.x, voice.course.cloth.count), height = cloth::mm_down(threads.y, voice.course.cloth.count);
  constexpr double half_cm = 0.5, quarter_inch = 0.25, mm_an_inch = 25.4;
  return voice.phrases.say("supplies.cloth-size", {{"width_cm", rounded_up(width / 10, half_cm)},
                                                   {"height_cm", rounded_up(height / 10, half_cm)},
                                                   {"width_in", rounded_up(width / mm_an_inch, quarter_inch)},
                                                   {"height_in", rounded_up(height / mm_an_inch, quarter_inch)}});
}

SuppliesTold supplies(const Voice& voice, const plan::Plan& plan) {
  const int sets = plan.supplies.sets;
  SuppliesTold told;
  told.sets = sets_words(voice);
  told.rows.push_back(cloth_row(voice, sets));
  for (const plan::Supplies::Thread& needed : plan.supplies.threads) told.rows.push_back(thread_row(voice, needed, sets));
  for (const int needle : plan.supplies.needles)
    told.rows.push_back(plain_row(voice.phrases.say("page.ready.needle", {{"size", std::int64_t{needle}}}), sets));
  told.rows.push_back(plain_row(scissors(voice, plan), sets));
  if (plan.supplies.tacking_thread)
    told.rows.push_back(
        {voice.phrases.say("page.ready.tacking"), voice.phrases.say("supplies.some"), voice.phrases.say("supplies.some"), {}});
  for (const auto& [currency, sum] : plan::costs(voice.course, plan, sets))
    told.sums.push_back(voice.phrases.say("supplies.sum", {{"sum", price_words(voice, sum, currency)}}));
  add_notes(voice, plan, told);
  return told;
}

}  // namespace say
