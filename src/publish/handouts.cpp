// Handouts in every form that is asked for: pages are laid out on all cores, files made of them on all cores, then all appear together.
#include <fmt/format.h>

#include <algorithm>

#include "publish/forms.h"

namespace publish {
namespace {

std::vector<say::Hand> hands(course::Hand hand) {
  if (hand == course::Hand::both) return {say::Hand::right, say::Hand::left};
  return {hand == course::Hand::left ? say::Hand::left : say::Hand::right};
}

std::filesystem::path folder(const HandoutOrder& order, say::Hand hand) {
  if (order.hand != course::Hand::both) return order.into;
  return order.into / (hand == say::Hand::left ? "left" : "right");
}

/// Titles and names of all lessons that are asked for, without their pages.
std::vector<HandPages> outline(const Making& making) {
  std::vector<HandPages> all;
  for (const say::Hand hand : hands(making.order.hand)) {
    HandPages pages{hand, folder(making.order, hand), {}};
    const say::Voice voice{making.phrases, hand, making.course};
    for (const plan::LessonPlan& lesson : making.plan.lessons) {
      if ((making.order.lesson && *making.order.lesson != lesson.number) || !lesson.cuttings.empty()) continue;
      const std::string title = say::lesson_title(voice, making.plan, lesson.number);
      pages.lessons.push_back({lesson.number, title, fmt::format("lesson-{:02}-{}", lesson.number, file_stem(title)), {}});
    }
    all.push_back(std::move(pages));
  }
  return all;
}

/// A page that shows cutting must show the cautions and every thread: none is made rather than half of one.
std::vector<int> refused(const plan::Plan& plan, const HandoutOrder& order) {
  std::vector<int> lessons;
  for (const plan::LessonPlan& lesson : plan.lessons)
    if (!lesson.cuttings.empty() && (!order.lesson || *order.lesson == lesson.number)) lessons.push_back(lesson.number);
  return lessons;
}

base::Result<void> lay_out(const Making& making, std::vector<HandPages>& all, Types& types, const std::stop_token& stop) {
  std::vector<std::pair<say::Hand, HandPages::Lesson*>> lessons;
  for (HandPages& pages : all)
    for (HandPages::Lesson& lesson : pages.lessons) lessons.push_back({pages.hand, &lesson});
  return on_all_cores(lessons.size(), types, stop, [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    const say::Voice voice{making.phrases, lessons[i].first, making.course};
    lessons[i].second->pages = picture::handout(making.course, making.plan, lessons[i].second->number, voice, type,
                                                picture::page_size(making.order.paper), making.order.print);
    return {};
  });
}

bool wants(const HandoutOrder& order, Form form) { return std::find(order.forms.begin(), order.forms.end(), form) != order.forms.end(); }

}  // namespace

base::Result<Written> handouts(const course::Course& course, const plan::Plan& plan, const words::Phrases& phrases, const HandoutOrder& order,
                               std::stop_token stop, const std::function<void(int done, int of)>& progress) {
  const Making making{course, plan, phrases, order};
  Types types;
  std::vector<HandPages> all = outline(making);
  if (auto laid = lay_out(making, all, types, stop); !laid) return tl::make_unexpected(laid.error());
  std::vector<Job> jobs;
  for (const HandPages& pages : all) {
    if (wants(order, Form::png)) add_png(making, pages, jobs);
    if (wants(order, Form::pdf)) add_pdf(making, pages, jobs);
    if (wants(order, Form::svg))
      if (auto added = add_svg(making, pages, types, stop, jobs); !added) return tl::make_unexpected(added.error());
    if (wants(order, Form::stills))
      if (auto added = add_stills(making, pages, types, stop, jobs); !added) return tl::make_unexpected(added.error());
  }
  if (wants(order, Form::web)) add_web(making, all.front(), jobs);
  auto written = print(jobs, types, stop, progress);
  if (written) written->refused = refused(plan, order);
  return written;
}

}  // namespace publish
