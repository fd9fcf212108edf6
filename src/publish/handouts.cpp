// Handouts in every form that is asked for: pages are laid out on all cores, files made of them on all cores, then all appear together.
#include <fmt/format.h>

#include <algorithm>

#include "list/contrast.h"
#include "picture/course_pages.h"
#include "publish/forms.h"
#include "publish/packet.h"

namespace publish {
namespace {

std::vector<say::Hand> hands(course::Hand hand) {
  if (hand == course::Hand::both) return {say::Hand::right, say::Hand::left};
  return {hand == course::Hand::left ? say::Hand::left : say::Hand::right};
}

std::filesystem::path folder(const HandoutOrder& order, const std::filesystem::path& into, say::Hand hand) {
  if (order.hand != course::Hand::both) return into;
  return into / (hand == say::Hand::left ? "left" : "right");
}

/// Titles and names of all lessons that are asked for, without their pages.
std::vector<HandPages> outline(const Making& making) {
  std::vector<HandPages> all;
  for (const say::Hand hand : hands(making.order.hand)) {
    HandPages pages{hand, {}, {}, {}};
    const say::Voice voice{making.phrases, hand, making.course};
    for (const plan::LessonPlan& lesson : making.plan.lessons) {
      if ((making.order.lesson && *making.order.lesson != lesson.number) || cannot_be_cut(making.plan, lesson)) continue;
      const std::string title = say::lesson_title(voice, making.plan, lesson.number);
      pages.lessons.push_back({lesson.number, title, fmt::format("lesson-{:02}-{}", lesson.number, file_stem(title)), {}});
    }
    all.push_back(std::move(pages));
  }
  return all;
}

std::vector<int> refused(const plan::Plan& plan, const HandoutOrder& order) {
  std::vector<int> lessons;
  for (const plan::LessonPlan& lesson : plan.lessons)
    if (cannot_be_cut(plan, lesson) && (!order.lesson || *order.lesson == lesson.number)) lessons.push_back(lesson.number);
  return lessons;
}

std::vector<list::List> inked_pages(std::vector<list::List> pages, Ink ink) {
  for (list::List& page : pages) page = inked(std::move(page), ink);
  return pages;
}

base::Result<void> lay_out(const Making& making, std::vector<HandPages>& all, Types& types, const std::stop_token& stop) {
  std::vector<std::pair<say::Hand, HandPages::Lesson*>> lessons;
  for (HandPages& pages : all)
    for (HandPages::Lesson& lesson : pages.lessons) lessons.push_back({pages.hand, &lesson});
  return on_all_cores(lessons.size(), types, stop, [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    const say::Voice voice{making.phrases, lessons[i].first, making.course};
    lessons[i].second->pages = inked_pages(picture::handout(making.course, making.plan, lessons[i].second->number, voice, type,
                                                            picture::page_size(making.order.paper), making.order.print),
                                           making.order.ink);
    return {};
  });
}

/// With the whole course go pages of its own: what to buy; preparing and finishing.
base::Result<void> add_course_pages(const Making& making, std::vector<HandPages>& all, Types& types, const std::stop_token& stop) {
  if (making.order.lesson) return {};
  return on_all_cores(all.size(), types, stop, [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    const say::Voice voice{making.phrases, all[i].hand, making.course};
    for (const auto make : {picture::shopping_pages, picture::preparing_pages}) {
      picture::CoursePages made = make(making.course, making.plan, voice, type, picture::page_size(making.order.paper), making.order.print);
      all[i].of_course.push_back({0, made.title, file_stem(made.title), inked_pages(std::move(made.pages), making.order.ink)});
    }
    return {};
  });
}

bool wants(const HandoutOrder& order, Form form) { return std::find(order.forms.begin(), order.forms.end(), form) != order.forms.end(); }

/// Files of one form, in folders under `into`.
base::Result<void> add_form(const Making& making, Form form, std::vector<HandPages>& all, const std::filesystem::path& into, Types& types,
                            const std::stop_token& stop, std::vector<Job>& jobs) {
  if (form == Form::web) add_web(making, all.front(), into, jobs);
  for (HandPages& pages : all) {
    pages.folder = folder(making.order, into, pages.hand);
    if (form == Form::png) add_png(making, pages, jobs);
    if (form == Form::pdf) add_pdf(making, pages, jobs);
    if (form == Form::svg)
      if (auto added = add_svg(making, pages, types, stop, jobs); !added) return added;
    if (form == Form::stills)
      if (auto added = add_stills(making, pages, types, stop, jobs); !added) return added;
  }
  return {};
}

struct Part {
  Form form;
  const char* name;  ///< of its folder, in the phrases
};
constexpr Part packet_parts[] = {
    {Form::pdf, "pages"}, {Form::png, "pictures"}, {Form::svg, "close-ups"}, {Form::web, "review"}, {Form::stills, "film"}};

base::Result<Written> packet(const Making& making, std::vector<HandPages>& all, Types& types, const std::stop_token& stop,
                             const std::function<void(int done, int of)>& progress) {
  std::vector<Job> jobs = packet_papers(making);
  for (const Part& part : packet_parts)
    if (auto added = add_form(making, part.form, all, name_in_packet(making.phrases, part.name), types, stop, jobs); !added) return tl::make_unexpected(added.error());
  return print_packet(making, jobs, types, stop, progress);
}

base::Result<Written> plain(const Making& making, std::vector<HandPages>& all, Types& types, const std::stop_token& stop,
                            const std::function<void(int done, int of)>& progress) {
  std::vector<Job> jobs;
  for (const Form form : {Form::png, Form::pdf, Form::svg, Form::stills, Form::web})
    if (wants(making.order, form))
      if (auto added =
              add_form(making, form, all, form == Form::stills ? making.order.into / "stills" : making.order.into, types, stop, jobs);
          !added)
        return tl::make_unexpected(added.error());
  return jobs.empty() ? Written{} : print(jobs, types, stop, progress);
}

}  // namespace

list::List inked(list::List list, Ink ink) { return ink == Ink::black ? list::in_grey(std::move(list)) : list; }

bool cannot_be_cut(const plan::Plan& plan, const plan::LessonPlan& lesson) {
  return std::any_of(lesson.cuttings.begin(), lesson.cuttings.end(),
                     [&](int c) { return plan.cuttings[static_cast<std::size_t>(c)].cutting.cuts.empty(); });
}

base::Result<Written> handouts(const course::Course& course, const plan::Plan& plan, const words::Phrases& phrases,
                               const HandoutOrder& order, std::stop_token stop, const std::function<void(int done, int of)>& progress) {
  const Making making{course, plan, phrases, order};
  Types types;
  std::vector<HandPages> all = outline(making);
  if (auto laid = lay_out(making, all, types, stop); !laid) return tl::make_unexpected(laid.error());
  if (auto added = add_course_pages(making, all, types, stop); !added) return tl::make_unexpected(added.error());
  auto written = plain(making, all, types, stop, progress);
  if (written && wants(order, Form::packet)) {
    auto packed = packet(making, all, types, stop, progress);
    if (!packed) return packed;
    written->files.insert(written->files.end(), packed->files.begin(), packed->files.end());
  }
  if (written) written->refused = refused(plan, order);
  return written;
}

}  // namespace publish
