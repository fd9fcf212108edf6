// The arguments of every command, with their help.
#include <CLI/CLI.hpp>
#include <iostream>

#include "assets/assets.h"
#include "cli/options.h"
#include "file/course_file.h"

namespace cli {
namespace {

const char* const about =
    "Tellekant plans a course in counted whitework and draws its handouts.\n"
    "A course is one text file; its form is described in assets/course-file.md.";

CLI::App* command(CLI::App& app, const char* name, const char* says, const char* example, Options& options) {
  CLI::App* sub = app.add_subcommand(name, says);
  sub->footer(std::string("Example:\n  ") + example);
  sub->callback([&options, name] { options.command = name; });
  return sub;
}

void one_file(CLI::App* sub, Options& options, const char* says) { sub->add_option("FILE", options.files, says)->required()->expected(1); }

void hand_option(CLI::App* sub, Options& options, std::vector<std::string> hands) {
  sub->add_option("--hand", options.hand, "which hand holds the needle; the course's own where left out")->check(CLI::IsMember(std::move(hands)));
}

void add_mistake(CLI::App& app, Options& options, const char* course) {
  auto* mistake = command(app, "mistake", "Take in a student's mistake: whether it matters (then it exits with 1), what it changes, how far to unpick",
                          "tellekant mistake frost.course.toml --part ring --from 31 --done 55 --off \"1 E\"", options);
  one_file(mistake, options, course);
  mistake->add_option("--part", options.mistake.part, "the part with the mistake")->required();
  mistake->add_option("--pass", options.mistake.pass, "the pass: 1 the first time along the line, 2 the second")->check(CLI::Range(1, 100))->capture_default_str();
  mistake->add_option("--place", options.mistake.place, "of a repeated part: which place, from 1")->check(CLI::Range(1, 100000))->capture_default_str();
  mistake->add_option("--from", options.mistake.from, "the first stitch that stands wrong, in the order of work")->required()->check(CLI::Range(1, 2000000));
  mistake->add_option("--done", options.mistake.done, "the last stitch that is worked; left out, the last of that lesson")->check(CLI::Range(1, 2000000));
  mistake->add_option("--off", options.mistake.off, "how it stands off: threads and a way of the chart, as \"1 E\"; N is up")->required()->expected(1, 2);
  hand_option(mistake, options, {"right", "left"});
}

void add_commands(CLI::App& app, Options& options) {
  constexpr const char* course = "a course file, or - for standard input";
  auto* check = command(app, "check", "Say what is wrong or doubtful, one line each", "tellekant check frost.course.toml", options);
  check->add_option("FILE", options.files, "course files, or - for standard input")->required();

  auto* plan = command(app, "plan", "Print everything worked out, as JSON", "tellekant plan frost.course.toml > frost.plan.json", options);
  one_file(plan, options, course);
  hand_option(plan, options, {"right", "left"});

  auto* handouts = command(app, "handouts", "Draw the pages of every lesson",
                           "tellekant handouts frost.course.toml --into pages --lesson 3 --paper Letter", options);
  one_file(handouts, options, course);
  handouts->add_option("--into", options.into, "the folder for the pages; made where it is missing")->required();
  handouts->add_option("--lesson", options.lesson, "only this lesson")->check(CLI::Range(1, 200));
  handouts->add_option("--as", options.forms, "form of the pages, or several parted by commas: png, one file a page; pdf, one a lesson and one of the course; svg, each close-up by itself; web, a page a lesson for phone and screen; stills, each step of each close-up for a film, with a cue sheet; packet, all of these in one folder with a letter to the students, calendar and shopping list")
      ->delimiter(',')
      ->check(CLI::IsMember({"png", "pdf", "svg", "web", "stills", "packet"}))
      ->default_str("png");
  handouts->add_option("--sheets", options.sheets, "pdf: one page on a sheet, two side by side on A3 (fold), or those in the order of a folded booklet")
      ->check(CLI::IsMember({"single", "fold", "booklet"}))
      ->capture_default_str();
  handouts->add_flag("--zip", options.zip, "packet: one ZIP instead of a folder");
  handouts->add_flag("--clear", options.clear, "stills: nothing under them, so that they can be laid over a picture");
  hand_option(handouts, options, {"right", "left", "both"});
  handouts->add_option("--paper", options.paper, "the course's own where left out")->check(CLI::IsMember({"A4", "Letter"}));
  handouts->add_flag("--large-print", options.large_print, "type of 18 points, thicker lines");
  handouts->add_flag("--black-and-white", options.black_and_white, "png, pdf, svg: greys in place of colours, for copies; web and stills stay in colour");
  handouts->add_option("--dpi", options.dpi, "dots an inch")->check(CLI::Range(72.0, 1200.0))->capture_default_str();

  auto* calendar = command(app, "calendar", "Print the lessons' days as iCalendar, with what to bring",
                           "tellekant calendar frost.course.toml > frost.ics", options);
  one_file(calendar, options, course);

  auto* supplies = command(app, "supplies", "Say what to buy: thread, cloth, needles, for a student and for the class",
                           "tellekant supplies frost.course.toml --as csv > shopping.csv", options);
  one_file(supplies, options, course);
  supplies->add_flag("--stage-pieces", options.stage_pieces, "instead, what the teacher stitches beforehand to show each lesson: how far, hours, thread, cloth");
  supplies->add_option("--as", options.list_form, "text, or csv for a spreadsheet")->check(CLI::IsMember({"text", "csv"}))->capture_default_str();

  auto* split = command(app, "split", "Part the work into lessons; those that are locked stay. Prints the file",
                        "tellekant split frost.course.toml --lessons 6 --write", options);
  one_file(split, options, course);
  split->add_option("--lessons", options.lessons, "how many; the course's own where left out")->check(CLI::Range(1, 200));
  split->add_flag("--write", options.write, "replace the file");

  add_mistake(app, options, course);

  auto* tidy = command(app, "tidy", "Print the file in its canonical form, comments kept", "tellekant tidy frost.course.toml --write", options);
  one_file(tidy, options, course);
  tidy->add_flag("--write", options.write, "replace the file");

  auto* fresh = command(app, "new", "Write a small course to start from; never overwrites", "tellekant new evening.course.toml", options);
  one_file(fresh, options, "the file to make");
}

}  // namespace

Parsed parse(int count, char** arguments) {
  Parsed parsed;
  CLI::App app(about, "tellekant");
  app.require_subcommand(1);
  app.fallthrough();
  app.set_version_flag("--version", std::string("tellekant " TELLEKANT_VERSION ", course file format ") + std::to_string(file::format_version));
  std::vector<std::string> languages;
  for (const std::string_view language : assets::languages()) languages.emplace_back(language);
  app.add_option("--language", parsed.options.language, "of pages, lists and snags (en English, nb Norwegian); the course's own where left out")->check(CLI::IsMember(languages));
  app.add_flag("--quiet", parsed.options.quiet, "say nothing but results and errors");
  app.add_flag("--verbose", parsed.options.verbose, "say what took how long");
  app.footer("Example:\n  tellekant handouts frost.course.toml --into pages\n\nExit: 0 fine; 1 something must be put right first; 2 the file or the call is wrong; 3 something could not be written.");
  add_commands(app, parsed.options);
  try {
    app.parse(count, arguments);
  } catch (const CLI::ParseError& error) {
    parsed.exit = app.exit(error, std::cout, std::cerr) == 0 ? fine : bad_call;
  }
  return parsed;
}

}  // namespace cli
