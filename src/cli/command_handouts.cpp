// tellekant handouts FILE --into DIR
#include <fmt/format.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <utility>

#include "cli/interrupt.h"
#include "cli/open_course.h"
#include "cli/output.h"
#include "cli/stopwatch.h"
#include "publish/publish.h"
#include "say/supplies.h"

namespace cli {
namespace {

publish::Form form_of(const std::string& name) {
  constexpr std::pair<const char*, publish::Form> forms[] = {{"png", publish::Form::png}, {"pdf", publish::Form::pdf}, {"svg", publish::Form::svg},
                                                             {"web", publish::Form::web}, {"stills", publish::Form::stills}, {"packet", publish::Form::packet}};
  for (const auto& [known, form] : forms)
    if (name == known) return form;
  return publish::Form::png;
}

publish::HandoutOrder order_of(const Options& options, const course::Course& course) {
  publish::HandoutOrder order;
  order.into = options.into;
  order.lesson = options.lesson;
  order.hand = course.choices.hand;
  if (options.hand) order.hand = *options.hand == "left" ? course::Hand::left : *options.hand == "both" ? course::Hand::both : course::Hand::right;
  order.paper = course.choices.paper;
  if (options.paper) order.paper = *options.paper == "Letter" ? course::Paper::letter : course::Paper::a4;
  order.print = options.large_print ? picture::Print::large : picture::Print::normal;
  order.ink = options.black_and_white ? publish::Ink::black : publish::Ink::colours;
  order.dpi = options.dpi;
  order.ground = options.clear ? paint::Ground::clear : paint::Ground::white;
  order.packet = options.zip ? publish::Packet::zip : publish::Packet::folder;
  order.stamp = publish::stamp_of(std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()));
  order.forms.clear();
  for (const std::string& form : options.forms) order.forms.push_back(form_of(form));
  order.sheets = options.sheets == "booklet" ? publish::Sheets::booklet : options.sheets == "fold" ? publish::Sheets::fold : publish::Sheets::single;
  return order;
}

void show_progress(int done, int of) {
  constexpr int width = 30;
  const int filled = width * done / of;
  fmt::print(stderr, "\r[{:-<{}}] {} / {}{}", std::string(static_cast<std::size_t>(filled), '='), width, done, of, done == of ? "\n" : "");
}

}  // namespace

int run_handouts(const Options& options) {
  const auto course = open_course(options.files[0], options);
  if (!course) return bad_call;
  Interrupt interrupt;
  const auto checked = plan_and_check(*course, options, interrupt.token());
  if (!checked) return not_written;
  if (!options.quiet) std::fputs(snag_lines(options.files[0], *course, checked->snags).c_str(), stderr);
  const int lessons = static_cast<int>(checked->plan.lessons.size());
  if (options.lesson && *options.lesson > lessons) {
    fmt::print(stderr, "tellekant: there is no lesson {}: the course has {}\n", *options.lesson, lessons);
    return bad_call;
  }
  const Stopwatch watch(options, "handouts");
  std::function<void(int, int)> progress;
  if (!options.quiet && isatty(STDERR_FILENO)) progress = show_progress;
  const auto written = publish::handouts(*course, checked->plan, phrases(*course), order_of(options, *course), interrupt.token(), progress);
  if (!written) {
    fmt::print(stderr, "tellekant: {}\n", written.error().what);
    return not_written;
  }
  std::string names;
  for (const auto& file : written->files) names += file.string() + '\n';
  if (!options.quiet && !print_out(names)) return not_written;
  if (!options.quiet && !course->class_list.empty()) fmt::print(stderr, "{}\n", say::copies({phrases(*course), say::Hand::right, *course}));
  for (const int lesson : written->refused)
    fmt::print(stderr, "tellekant: a stop stands against the cutting of lesson {}: no pages of it were made\n", lesson);
  return check::stops(checked->snags) ? stopped : fine;
}

}  // namespace cli
