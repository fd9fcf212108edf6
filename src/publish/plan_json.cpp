// The plan as JSON: course, cloth, parts, trails, lessons, supplies, snags. What the guide found is in plan_json_guide.cpp.
#include "publish/plan_json.h"

#include <algorithm>

namespace publish {
namespace {

void course_of(Json& json, const course::Course& course, const plan::Plan& plan, const say::Voice& voice) {
  json.key("course");
  json.object([&] {
    json.member("title", std::string_view(course.title));
    json.member("students", course.students);
    json.member("left_handed", course::left_handed(course));
    json.member("lessons", static_cast<int>(plan.lessons.size()));
    json.member("language", std::string_view(voice.phrases.language()));
    json.member("hand", voice.hand == say::Hand::left ? "left" : "right");
  });
}

void pair_mm(Json& json, std::string_view name, int width, int height, cloth::Count count) {
  json.key(name);
  json.array([&] {
    json.value(cloth::mm(width, count), 2);
    json.value(cloth::mm_down(height, count), 2);
  });
}

void cloth_of(Json& json, const course::Course& course) {
  const cloth::Box design = course::extent(course);
  const cloth::Hole cut = course::size_threads(course);
  json.key("cloth");
  json.object([&] {
    json.key("count_per_inch");
    json.value(course.cloth.count.per_inch, 4);
    if (course.cloth.count.down_per_inch) {
      json.key("count_down_per_inch");
      json.value(course.cloth.count.down(), 4);
    }
    json.key("size_threads");
    json.hole({design.width(), design.height()});
    pair_mm(json, "size_mm", design.width(), design.height(), course.cloth.count);
    pair_mm(json, "cut_mm", cut.x, cut.y, course.cloth.count);
    json.key("middle");
    json.hole(course::middle(course));
    json.key("back_limit");
    json.value(course.choices.habits.back_limit, 2);
  });
}

void parts_of(Json& json, const course::Course& course) {
  json.key("parts");
  json.array([&] {
    for (const course::Part& part : course.parts)
      json.object([&] {
        json.member("name", std::string_view(part.name));
        json.member("kind", std::string_view(part.kind));
        json.member("thread", std::string_view(part.thread));
        json.key("stitches");
        json.array([&] {
          for (const cloth::Stitch& stitch : part.work.stitches) json.stitch(stitch);
        });
      });
  });
}

void numbers(Json& json, std::string_view name, const std::vector<int>& list) {
  json.key(name);
  json.array([&] {
    for (const int n : list) json.value(n);
  });
}

void anchors_of(Json& json, const std::vector<guide::Anchor>& anchors) {
  json.key("anchors");
  json.array([&] {
    for (const guide::Anchor& anchor : anchors)
      json.object([&] {
        json.member("stitch", anchor.stitch);
        json.member("end", anchor.start ? "start" : "finish");
        json.member("later", anchor.later);
        json.key("under");
        json.array([&] {
          for (const cloth::Stitch& stitch : anchor.under) json.stitch(stitch);
        });
      });
  });
}

void under_of(Json& json, const trail::Trail& trail) {
  json.key("under");
  json.array([&] {
    for (const trail::Under& under : trail.under)
      json.object([&] {
        json.member("stitch", under.stitch);
        json.key("via");
        json.array([&] {
          for (const cloth::Hole hole : under.via) json.hole(hole);
        });
      });
  });
}

void trail_of(Json& json, const course::Course& course, const guide::PlacedTrail& placed, const std::vector<guide::Anchor>& anchors) {
  const trail::Trail& trail = placed.trail;
  json.member("part", std::string_view(course.parts[placed.part].name));
  json.member("pass", placed.pass);
  json.member("place", placed.place);
  json.member("closed", trail.closed);
  json.member("looped", trail.order == stitch::Order::looped);
  json.key("points");
  json.array([&] {
    for (const trail::Worked& w : trail.stitches) {
      json.hole(w.up);
      json.hole(w.down);
    }
  });
  std::vector<int> backward;
  for (std::size_t k = 0; k < trail.stitches.size(); ++k)
    if (trail.stitches[k].backward) backward.push_back(static_cast<int>(k));
  numbers(json, "backward", backward);
  numbers(json, "ends", trail.ends);
  anchors_of(json, anchors);
  under_of(json, trail);
  json.key("sections");
  json.array([&] {
    for (const guide::Section& section : placed.sections)
      json.object([&] {
        json.member("lesson", section.lesson);
        json.member("first", section.first);
        json.member("last", section.last);
      });
  });
  json.key("front_threads");
  json.value(trail.front_threads, 2);
  json.key("back_threads");
  json.value(trail.back_threads, 2);
}

void missed_of(Json& json, const plan::Plan& plan, const plan::LessonPlan& lesson, const say::Voice& voice) {
  json.object([&] {
    json.key("needed");
    json.array([&] {
      for (const auto& [t, s] : lesson.missed->sections)
        json.object([&, t = t, s = s] {
          const guide::PlacedTrail& trail = plan.trails[t];
          json.member("part", std::string_view(voice.course.parts[trail.part].name));
          json.member("pass", trail.pass);
          json.member("place", trail.place);
          json.member("first", trail.sections[s].first);
          json.member("last", trail.sections[s].last);
        });
    });
    json.key("cuttings");
    json.array([&] {
      for (const int c : lesson.missed->cuttings) json.value(std::string_view(voice.course.parts[plan.cuttings[c].part].name));
    });
    json.key("routes");
    json.array([&] {
      for (const auto& [r, s] : lesson.missed->routes)
        json.object([&, r = r, s = s] {
          json.member("part", std::string_view(voice.course.parts[plan.routes[r].part].name));
          json.member("stage", plan.routes[r].stage == course::Stage::bars ? std::string_view("bars") : std::string_view("fillings"));
          json.member("first", plan.routes[r].sections[s].first);
          json.member("last", plan.routes[r].sections[s].last);
        });
    });
    json.key("wash");
    json.value(lesson.missed->wash);
    json.key("minutes");
    json.value(lesson.missed->minutes, 1);
    json.key("words");
    json.array([&] {
      for (const std::string& sentence : say::missed(voice, plan, lesson)) json.value(std::string_view(sentence));
    });
  });
}

void lesson_of(Json& json, const plan::Plan& plan, const plan::LessonPlan& lesson, const say::Voice& voice) {
  json.member("number", lesson.number);
  json.member("title", std::string_view(say::lesson_title(voice, plan, lesson.number)));
  json.key("date");
  lesson.date ? json.value(std::string_view(base::iso(*lesson.date))) : json.null();
  json.key("start");
  lesson.start.empty() ? json.null() : json.value(std::string_view(lesson.start));
  json.key("minutes");
  json.value(lesson.minutes, 1);
  json.member("minutes_given", lesson.minutes_given);
  json.key("room");
  json.value(lesson.room, 1);
  json.key("work");
  json.array([&] {
    for (const std::string& work : lesson.work) json.value(std::string_view(work));
  });
  json.member("stitches", lesson.stitches);
  json.key("thread_mm");
  json.object([&] {
    for (const auto& [name, mm] : lesson.thread_mm) {
      json.key(name);
      json.value(mm, 1);
    }
  });
  json.key("lengths");
  json.object([&] {
    for (const auto& [name, n] : lesson.lengths) json.member(name, n);
  });
  json.key("missed");
  lesson.missed ? missed_of(json, plan, lesson, voice) : json.null();
}

void split_of(Json& json, const plan::SplitReport& split) {
  json.key("split");
  if (split.lessons == 0) return json.null();
  json.object([&] {
    json.member("lessons", split.lessons);
    for (const auto& [name, minutes] : {std::pair("cost", split.cost), {"bound", split.bound}, {"over", split.over}}) {
      json.key(name);
      json.value(minutes, 2);
    }
    json.member("more_lessons", split.more_lessons);
    json.member("more_minutes", split.more_minutes);
    json.member("more_home", split.more_home);
  });
}

void snag_of(Json& json, const course::Course& course, const check::Snag& snag, const say::Voice& voice) {
  constexpr std::string_view severities[] = {"stop", "ask", "note"};
  const say::SaidSnag said = say::snag(voice, snag);
  json.member("rule", std::string_view(snag.rule));
  json.member("severity", severities[static_cast<int>(snag.severity)]);
  json.member("line", snag.place.line);
  json.member("column", snag.place.column);
  json.key("lesson");
  snag.lesson > 0 ? json.value(snag.lesson) : json.null();
  json.key("part");
  snag.part >= 0 ? json.value(std::string_view(course.parts[snag.part].name)) : json.null();
  json.key("at");
  snag.at ? json.hole(*snag.at) : json.null();
  json.key("also_at");
  snag.also_at ? json.hole(*snag.also_at) : json.null();
  json.member("says", std::string_view(said.says));
  json.member("do", std::string_view(said.does));
}

}  // namespace

void write_plan(std::ostream& out, const course::Course& course, const plan::Plan& plan, const std::vector<check::Snag>& snags,
                const say::Voice& voice) {
  Json json(out);
  json.object([&] {
    json.member("format", 1);
    course_of(json, course, plan, voice);
    cloth_of(json, course);
    parts_of(json, course);
    json.key("trails");
    json.array([&] {
      for (std::size_t t = 0; t < plan.trails.size(); ++t) json.object([&] { trail_of(json, course, plan.trails[t], plan.anchors[t]); });
    });
    write_guide(json, course, plan, voice);
    write_checkpoints(json, course, plan);
    write_cutting(json, course, plan);
    write_routes(json, course, plan);
    json.key("lessons");
    json.array([&] {
      for (const plan::LessonPlan& lesson : plan.lessons) json.object([&] { lesson_of(json, plan, lesson, voice); });
    });
    split_of(json, plan.split);
    write_supplies(json, course, plan, voice);
    json.key("snags");
    json.array([&] {
      for (const check::Snag& snag : snags) json.object([&] { snag_of(json, course, snag, voice); });
    });
  });
}

}  // namespace publish
