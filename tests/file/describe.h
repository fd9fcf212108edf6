// A course as text, all that is written in it but not where: two courses are the same when their texts are. (The work follows from it.)
#pragma once

#include <fmt/format.h>

#include <string>

#include "course/course.h"

namespace describe {

inline std::string text(const std::string& t) { return '<' + t + '>'; }
inline std::string text(const base::Date& date) { return base::iso(date); }
inline std::string text(int n) { return std::to_string(n); }
inline std::string text(double d) { return fmt::format("{}", d); }
inline std::string text(const cloth::Hole& h) { return fmt::format("({},{})", h.x, h.y); }
template <class T>
std::string text(const std::optional<T>& value) {
  return value ? text(*value) : "none";
}
template <class T>
std::string text(const std::vector<T>& all) {
  std::string out = "[";
  for (const T& one : all) out += text(one) + ' ';
  return out + ']';
}
inline std::string text(const std::map<std::string, double>& all) {
  std::string out = "{";
  for (const auto& [name, value] : all) out += fmt::format("{}:{} ", name, value);
  return out + '}';
}
inline std::string text(const stitch::Value& value) {
  struct Names {
    std::string operator()(const cloth::Hole& h) const { return text(h); }
    std::string operator()(int n) const { return text(n); }
    std::string operator()(bool flag) const { return flag ? "true" : "false"; }
    std::string operator()(const std::string& t) const { return text(t); }
    std::string operator()(const std::vector<cloth::Hole>& holes) const {
      std::string all;
      for (const cloth::Hole& hole : holes) all += (*this)(hole) + ";";
      return all;
    }
    std::string operator()(const std::vector<int>& wholes) const {
      std::string all;
      for (const int n : wholes) all += std::to_string(n) + ";";
      return all;
    }
    std::string operator()(const std::vector<std::string>& names) const {
      std::string all;
      for (const std::string& name : names) all += (all.empty() ? "" : ", ") + text(name);
      return '[' + all + ']';
    }
    std::string operator()(const std::vector<stitch::FillingRule>& rules) const {
      std::string all;
      for (const stitch::FillingRule& r : rules)
        all += fmt::format("{} {} {} {} {};", static_cast<int>(r.kind), static_cast<int>(r.where), (*this)(r.at), r.turn, r.mirror);
      return all;
    }
  };
  return std::visit(Names{}, value);
}

inline std::string head(const course::Course& c) {
  return fmt::format("course {} {} {} every {} {} at {} {} holidays {} minutes {} lessons {} students {} home {} seen {}\n", text(c.title),
                     text(c.teacher), text(c.first_day), static_cast<int>(c.every), text(c.days), text(c.start_time), text(c.time_zone),
                     text(c.holidays), c.minutes, text(c.lessons_wanted), c.students, c.home_minutes, text(c.seen_before)) +
         fmt::format("cloth {}{} {} {} {} {} {}\n", c.cloth.count.per_inch,
                     c.cloth.count.down_per_inch ? fmt::format("/{}", *c.cloth.count.down_per_inch) : "", c.cloth.written_per_cm, c.cloth.margin_mm, c.cloth.colour,
                     text(c.cloth.size_threads), text(c.cloth.middle));
}

inline std::string choices(const course::Choices& c) {
  const course::Habits& h = c.habits;
  const course::CountCost& w = h.count_cost;
  return fmt::format("choices {} {} {} {} {}\n", static_cast<int>(c.hand), static_cast<int>(c.paper), static_cast<int>(c.line),
                     static_cast<int>(c.begin), c.language) +
         fmt::format("habits {} {} {} {} {} {} {} {} {} {}\n", h.working_length_cm, h.tail_cm, h.first_tail_cm, h.take_up, h.waste,
                     h.back_limit, text(h.length_cm), text(h.stitches_a_minute), static_cast<int>(h.edge),
                     static_cast<int>(h.eyelet_needle)) +
         fmt::format("cost {} {} {} {} {} {}\n", w.glance, w.glance_to, w.each, w.second_leg, w.under_stitches, w.plain_landmark);
}

inline std::string part(const course::Part& p) {
  std::string out = fmt::format("part {} {} {} {} {} {}", text(p.name), text(p.kind), text(p.thread), text(p.notes), text(p.begin_at),
                                text(p.count_from));
  for (const auto& [key, value] : p.values) out += fmt::format(" {}={}", key, text(value));
  return out + '\n';
}

inline std::string lesson(const course::Lesson& l) {
  std::string out = fmt::format("lesson {} {} {} {} {}", text(l.title), text(l.notes), text(l.date), text(l.minutes), l.locked);
  for (const course::WorkItem& w : l.work)
    out += fmt::format(" [{} {} {} {} {}]", text(w.text), w.part, text(w.pass), text(w.first), text(w.last));
  return out + '\n';
}

inline std::string course(const course::Course& c) {
  std::string out = head(c) + choices(c.choices);
  for (const course::Thread& t : c.threads)
    out += fmt::format("thread {} {} {} {} {} {} {} {} {}\n", text(t.name), text(t.pearl), text(t.tex), t.colour, text(t.needle),
                       text(t.ball_m), text(t.ball_g), text(t.price), text(t.currency));
  for (const course::Part& p : c.parts) out += part(p);
  for (const course::Lesson& l : c.lessons) out += lesson(l);
  for (const course::Student& s : c.class_list) out += fmt::format("student {} {}\n", text(s.name), static_cast<int>(s.hand));
  return out;
}

}  // namespace describe
