// Count-ins, marks and close-ups as JSON. Coordinates are the course file's for either hand; the sentences are the hand's.
#include "publish/plan_json.h"

namespace publish {

void legs_of(Json& json, const std::vector<guide::Leg>& legs) {
  json.key("legs");
  json.array([&] {
    for (const guide::Leg& leg : legs)
      json.object([&] {
        json.member("way", cloth::name(leg.way));
        json.member("threads", leg.threads);
      });
  });
}

void landmark_of(Json& json, const course::Course& course, const guide::Landmark& landmark, const say::Voice& voice) {
  json.key("landmark");
  json.object([&] {
    json.key("hole");
    json.hole(landmark.hole);
    json.key("part");
    landmark.part >= 0 ? json.value(std::string_view(course.parts[landmark.part].name)) : json.null();
    json.member("pass", landmark.pass);
    json.member("place", landmark.place);
    json.member("lesson", landmark.lesson);
    json.member("name", std::string_view(say::landmark(voice, landmark)));
  });
}

namespace {

void tell_tales_of(Json& json, const course::Course& course, const plan::Plan& plan, const guide::CountIn& count_in,
                   const say::Voice& voice) {
  json.key("tell_tales");
  json.array([&] {
    for (const guide::TellTale& tale : plan.tell_tales) {
      const guide::CountIn& of = plan.count_ins[tale.count_in];
      if (of.trail != count_in.trail || of.section != count_in.section) continue;
      json.object([&] {
        json.member("off", cloth::name(tale.off));
        json.member("shows", tale.shows);
        if (!tale.shows) return;
        const guide::PlacedTrail& trail = plan.trails[tale.trail];
        json.member("lesson", tale.lesson);
        json.member("part", std::string_view(course.parts[trail.part].name));
        json.member("pass", trail.pass);
        json.member("place", trail.place);
        json.member("stitch", tale.stitch);
        json.member("parted", tale.parted);
        json.member("other", std::string_view(course.parts[tale.other_part].name));
      });
    }
  });
  json.key("tell_tales_words");
  json.array([&] {
    for (const std::string& sentence : say::tell_tales(voice, plan, count_in)) json.value(std::string_view(sentence));
  });
}

void count_in_of(Json& json, const course::Course& course, const plan::Plan& plan, const guide::CountIn& count_in,
                 const say::Voice& voice) {
  const guide::PlacedTrail& trail = plan.trails[count_in.trail];
  json.member("part", std::string_view(course.parts[trail.part].name));
  json.member("pass", trail.pass);
  json.member("place", trail.place);
  json.member("lesson", count_in.lesson);
  json.member("stitch", count_in.stitch);
  json.key("hole");
  json.hole(count_in.hole);
  landmark_of(json, course, count_in.count.landmark, voice);
  legs_of(json, count_in.count.legs);
  json.key("cost_s");
  json.value(count_in.count.cost_s, 2);
  json.key("proof");
  if (count_in.proof)
    json.object([&] {
      landmark_of(json, course, count_in.proof->landmark, voice);
      legs_of(json, count_in.proof->legs);
      json.member("words", std::string_view(say::proof(voice, *count_in.proof)));
    });
  else
    json.null();
  json.member("words", std::string_view(say::count_in(voice, count_in)));
  json.key("others");
  json.array([&] {
    for (const guide::Count& other : count_in.others)
      json.object([&] {
        landmark_of(json, course, other.landmark, voice);
        legs_of(json, other.legs);
        json.key("cost_s");
        json.value(other.cost_s, 2);
        json.member("words", std::string_view(say::proof(voice, other)));
      });
  });
  tell_tales_of(json, course, plan, count_in, voice);
}

void mark_of(Json& json, const course::Course& course, const guide::Mark& mark, const say::Voice& voice) {
  json.member("part", std::string_view(course.parts[mark.part].name));
  json.member("place", mark.place);
  json.key("hole");
  json.hole(mark.hole);
  landmark_of(json, course, mark.count.landmark, voice);
  legs_of(json, mark.count.legs);
  json.member("words", std::string_view(say::mark(voice, mark)));
}

std::string_view shows_name(guide::Shows shows) {
  switch (shows) {
    case guide::Shows::start:
      return "start";
    case guide::Shows::corner:
      return "corner";
    case guide::Shows::step_back:
      return "step back";
    case guide::Shows::second_pass:
      return "second pass";
    case guide::Shows::new_thread:
      return "new thread";
    case guide::Shows::join:
      return "join";
    case guide::Shows::end:
      return "end";
  }
  return "start";
}

void close_up_of(Json& json, const course::Course& course, const plan::Plan& plan, const guide::CloseUp& close_up) {
  const guide::PlacedTrail& trail = plan.trails[close_up.trail];
  json.member("lesson", close_up.lesson);
  json.member("letter", std::string_view(close_up.letter));
  json.key("window");
  json.array([&] {
    for (const int side : {close_up.window.x0, close_up.window.y0, close_up.window.x1, close_up.window.y1}) json.value(side);
  });
  json.member("part", std::string_view(course.parts[trail.part].name));
  json.member("pass", trail.pass);
  json.member("place", trail.place);
  json.member("first", close_up.first);
  json.member("last", close_up.last);
  json.member("shows", shows_name(close_up.shows));
  json.key("stands_for");
  json.array([&] {
    for (const cloth::Hole hole : close_up.stands_for) json.hole(hole);
  });
}

}  // namespace

void write_guide(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice) {
  json.key("count_ins");
  json.array([&] {
    for (const guide::CountIn& count_in : plan.count_ins) json.object([&] { count_in_of(json, course, plan, count_in, voice); });
  });
  json.key("marks");
  json.array([&] {
    for (const guide::Mark& mark : plan.marks) json.object([&] { mark_of(json, course, mark, voice); });
  });
  json.key("closeups");
  json.array([&] {
    for (const guide::CloseUp& close_up : plan.close_ups) json.object([&] { close_up_of(json, course, plan, close_up); });
  });
}

}  // namespace publish
