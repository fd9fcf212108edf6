#include "say/stage_pieces.h"

#include <cmath>
#include <map>

#include "say/supplies.h"

namespace say {
namespace {

std::string hours(const Voice& voice, double minutes) {
  return voice.phrases.say("stage.hours", {{"hours", words::Decimal{std::ceil(minutes / 6 - 1e-9) / 10, 1}}});
}

std::string threads(const Voice& voice, const std::map<std::string, double>& mm) {
  std::string all;
  for (const auto& [name, length] : mm) {
    const std::string one = voice.phrases.say("stage.thread", {{"thread", name}, {"metres", metres_up(length / 1000)}});
    all = all.empty() ? one : voice.phrases.say("list.comma", {{"first", all}, {"second", one}});
  }
  return all;
}

}  // namespace

std::vector<StagePiece> stage_pieces(const Voice& voice, const plan::Plan& plan) {
  std::vector<StagePiece> pieces;
  std::map<std::string, double> mm;
  double minutes = 0;
  for (std::size_t i = 0; i < plan.lessons.size(); ++i) {
    const plan::LessonPlan& before = plan.lessons[i];
    minutes += before.minutes;
    for (const auto& [name, length] : before.thread_mm) mm[name] += length;
    StagePiece piece;
    piece.lesson = before.number + 1;
    piece.shown =
        i + 1 < plan.lessons.size()
            ? voice.phrases.say("stage.lesson", {{"n", std::int64_t{piece.lesson}}, {"title", lesson_title(voice, plan, piece.lesson)}})
            : voice.phrases.say("stage.finished");
    piece.done = i == 0 ? voice.phrases.say("stage.done.one") : voice.phrases.say("stage.done", {{"last", std::int64_t{before.number}}});
    piece.own = hours(voice, minutes);
    piece.on = hours(voice, before.minutes);
    piece.thread = threads(voice, mm);
    pieces.push_back(std::move(piece));
  }
  return pieces;
}

}  // namespace say
