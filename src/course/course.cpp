#include "course/course.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace course {

const Thread* find_thread(const Course& course, std::string_view name) {
  for (const Thread& thread : course.threads)
    if (thread.name == name) return &thread;
  return nullptr;
}

int left_handed(const Course& course) {
  return static_cast<int>(
      std::count_if(course.class_list.begin(), course.class_list.end(), [](const Student& s) { return s.hand == Hand::left; }));
}

int find_part(const Course& course, std::string_view name) {
  for (std::size_t i = 0; i < course.parts.size(); ++i)
    if (course.parts[i].name == name) return static_cast<int>(i);
  return -1;
}

int needle_size(const Thread& thread) {
  if (thread.needle) return *thread.needle;
  return thread.sold ? thread.sold->needle : SoldAs{}.needle;
}

std::optional<double> tex(const Thread& thread) {
  if (thread.tex) return thread.tex;
  if (thread.ball_m && thread.ball_g) return 1000 * *thread.ball_g / *thread.ball_m;
  if (thread.sold && thread.sold->metres > 0 && thread.sold->grams > 0) return 1000 * thread.sold->grams / thread.sold->metres;
  return std::nullopt;
}

std::optional<double> ball_metres(const Thread& thread) {
  if (thread.ball_m) return thread.ball_m;
  if (const auto grams_of_1000 = tex(thread); grams_of_1000 && thread.ball_g) return 1000 * *thread.ball_g / *grams_of_1000;
  if (thread.sold && thread.sold->metres > 0) return thread.sold->metres;
  return std::nullopt;
}

Form form(const Thread& thread) {
  if (thread.form) return *thread.form;
  return thread.sold ? thread.sold->form : Form::ball;
}

cloth::Box extent(const Course& course) {
  bool any = false;
  cloth::Box box;
  for (const Part& part : course.parts) {
    for (const cloth::Stitch& stitch : part.work.stitches) {
      if (!any) box = {stitch.a.x, stitch.a.y, stitch.a.x, stitch.a.y};
      any = true;
      box.grow(stitch.a);
      box.grow(stitch.b);
    }
  }
  return box;
}

bool mirror_alike(const Course& course) {
  const cloth::Box box = extent(course);
  std::vector<cloth::Stitch> here, there;
  for (const Part& part : course.parts)
    for (const cloth::Stitch& stitch : part.work.stitches) {
      const auto across = [&](cloth::Hole h) { return cloth::Hole{box.x0 + box.x1 - h.x, h.y}; };
      here.push_back(stitch.normal());
      there.push_back(cloth::Stitch{across(stitch.a), across(stitch.b)}.normal());
    }
  const auto order = [](const cloth::Stitch& s, const cloth::Stitch& t) {
    return std::tie(s.a.x, s.a.y, s.b.x, s.b.y) < std::tie(t.a.x, t.a.y, t.b.x, t.b.y);
  };
  std::sort(here.begin(), here.end(), order);
  std::sort(there.begin(), there.end(), order);
  return here == there;
}

namespace {

/// Half, rounded down also below zero: "of a half thread the one left of it and above".
int half(int sum) { return sum >= 0 ? sum / 2 : -((1 - sum) / 2); }

}  // namespace

cloth::Hole middle(const Course& course) {
  if (course.cloth.middle) return *course.cloth.middle;
  const cloth::Box box = extent(course);
  return {half(box.x0 + box.x1), half(box.y0 + box.y1)};
}

cloth::Hole size_threads(const Course& course) {
  if (course.cloth.size_threads) return *course.cloth.size_threads;
  const cloth::Box box = extent(course);
  const cloth::Count count = course.cloth.count;
  const auto margins = [&](double mm_a_thread) { return static_cast<int>(std::ceil(2 * course.cloth.margin_mm / mm_a_thread)); };
  return {box.width() + margins(cloth::mm(1, count)), box.height() + margins(cloth::mm_down(1, count))};
}

cloth::Hole corner(const Course& course) {
  const cloth::Hole at = middle(course), size = size_threads(course);
  return {at.x - size.x / 2, at.y - size.y / 2};
}

Place place_of(const Part& part, std::string_view key) {
  const auto found = part.key_places.find(key);
  return found == part.key_places.end() ? part.place : found->second;
}

}  // namespace course
