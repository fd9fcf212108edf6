// Supplies as JSON: thread of a student and of all sets, cloth, needles, costs. Metres of thread are what is bought; how they come about
// stands with the student's.
#include <fmt/format.h>

#include "plan/supplies.h"
#include "publish/plan_json.h"

namespace publish {
namespace {

std::string names_of(const plan::Supplies::Thread& thread) { return fmt::format("{}", fmt::join(thread.names, ", ")); }

void metres(Json& json, std::string_view name, double mm) {
  json.key(name);
  json.value(mm / 1000, 3);
}

/// The thread for so many students that share balls.
void thread_of(Json& json, const course::Course& course, const plan::Supplies::Thread& needed, int sets) {
  const course::Thread& thread = course.threads[needed.thread];
  const auto number = plan::balls(course, needed, sets);
  json.member("name", std::string_view(names_of(needed)));
  json.key("pearl");
  thread.pearl ? json.value(*thread.pearl) : json.null();
  json.member("colour", std::string_view(thread.colour));
  json.key("metres");
  json.value(needed.metres() * sets, 3);
  json.key("buy_m");
  json.value(needed.metres_to_buy() * sets, 3);
  json.member("lengths", needed.lengths * sets);
  json.member("sold_as", course::form(thread) == course::Form::skein ? "skein" : "ball");
  json.key("balls");
  number ? json.value(*number) : json.null();
  const auto cost = number ? plan::cost(thread.price, *number) : std::nullopt;
  json.key("cost");
  cost ? json.value(std::string_view(cost->text())) : json.null();
  json.member("currency", std::string_view(thread.currency));
}

void come_about(Json& json, const plan::Supplies::Thread& needed) {
  metres(json, "front_m", needed.front_mm);
  metres(json, "back_m", needed.back_mm);
  metres(json, "take_up_m", needed.take_up_mm);
  metres(json, "tails_m", needed.tails_mm);
  metres(json, "cut_m", needed.cut_mm);
  json.key("waste");
  json.value(needed.waste, 4);
}

void costs_of(Json& json, const course::Course& course, const plan::Plan& plan, int sets) {
  json.key("costs");
  json.array([&] {
    for (const auto& [currency, sum] : plan::costs(course, plan, sets))
      json.object([&] {
        json.member("sum", std::string_view(sum.text()));
        json.member("currency", std::string_view(currency));
      });
  });
}

void for_sets(Json& json, std::string_view name, const course::Course& course, const plan::Plan& plan, int sets) {
  json.key(name);
  json.object([&] {
    json.member("sets", sets);
    json.key("threads");
    json.array([&] {
      for (const plan::Supplies::Thread& needed : plan.supplies.threads)
        json.object([&] {
          thread_of(json, course, needed, sets);
          if (name == "per_student") come_about(json, needed);
        });
    });
    costs_of(json, course, plan, sets);
  });
}

}  // namespace

void write_supplies(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice) {
  const cloth::Hole cut = course::size_threads(course);
  json.key("supplies");
  json.object([&] {
    for_sets(json, "per_student", course, plan, 1);
    for_sets(json, "class", course, plan, plan.supplies.sets);
    json.key("cloth");
    json.array([&] {
      json.value(cloth::mm(cut.x, course.cloth.count), 2);
      json.value(cloth::mm_down(cut.y, course.cloth.count), 2);
    });
    json.key("needles");
    json.array([&] {
      for (const int needle : plan.supplies.needles) json.value(needle);
    });
    json.key("tools");
    json.array([&] {
      json.value(std::string_view(say::scissors(voice, plan)));
      if (plan.supplies.tacking_thread) json.value(std::string_view(voice.phrases.say("page.ready.tacking")));
    });
  });
}

}  // namespace publish
