// What leaves the program: whole files or none.
#pragma once

#include <chrono>
#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "base/result.h"
#include "check/check.h"
#include "paint/cairo/paint.h"
#include "picture/handout.h"
#include "plan/plan.h"

namespace publish {

/// The plan as JSON, streamed in stable order (see assets/plan.schema.json).
void write_plan(std::ostream& out, const course::Course& course, const plan::Plan& plan, const std::vector<check::Snag>& snags,
                const say::Voice& voice);

/// A snag for every title, note and part name that the type has not all letters for.
std::vector<check::Snag> letters_missing(const course::Course& course, const list::Measure& measure);

/// What must be bought, as text of aligned columns, lines of at most 100 characters where words allow.
std::string supplies_text(const say::Voice& voice, const plan::Plan& plan);
/// What the teacher stitches beforehand, as text of aligned columns.
std::string stage_text(const say::Voice& voice, const plan::Plan& plan);
/// The supplies for spreadsheets: RFC 4180, comma, CRLF, a line of headings; numbers with a point.
std::string supplies_csv(const say::Voice& voice, const plan::Plan& plan);
/// One field of RFC 4180: in quotation marks where it holds a comma, a quotation mark or a line break.
std::string csv_field(std::string_view text);

/// What pages are made into.
enum class Form { png, pdf, svg, web, stills, packet };
/// How the pages of a PDF lie on the paper: one on a sheet; two side by side on a sheet twice as large (A4: A3), as they are read; the same
/// in the order of a folded booklet.
enum class Sheets { single, fold, booklet };
/// What a packet is.
enum class Packet { folder, zip };

/// The lessons that have a day as iCalendar (RFC 5545), one event each, in local time of the course's zone (floating where it names none, whole
/// days where it names no hour). An event's UID rests on the course's title and the lesson's number alone: a changed date updates it.
/// `stamp` is when it is written, in UTC: "20270112T173000Z". Trouble where no lesson has a day, or the zone is not known.
base::Result<std::string> calendar(const say::Voice& voice, const plan::Plan& plan, std::string_view stamp);
/// A time in UTC as such a stamp.
std::string stamp_of(std::chrono::sys_seconds time);
/// A snag where the course's time zone is not known on this machine.
std::vector<check::Snag> zone_unknown(const course::Course& course);

/// Of pages and close-ups; films and review pages are for screens and stay in colour.
enum class Ink { colours, black };

struct HandoutOrder {
  std::filesystem::path into;
  std::optional<int> lesson;
  course::Hand hand = course::Hand::right;
  course::Paper paper = course::Paper::a4;
  picture::Print print = picture::Print::normal;
  Ink ink = Ink::colours;
  double dpi = 300;  ///< of pixels
  std::vector<Form> forms{Form::png};
  Sheets sheets = Sheets::single;
  Packet packet = Packet::folder;
  std::string stamp;  ///< of the packet's calendar: when it is written
  paint::Ground ground = paint::Ground::white;  ///< of stills
};
/// Does a stop stand against what the lesson cuts? Then nothing is planned as cut, and no page may look as if it were.
bool cannot_be_cut(const plan::Plan& plan, const plan::LessonPlan& lesson);
/// Title in lower-case ASCII letters, digits and hyphens, 40 at the most; "lesson" where nothing is left.
std::string file_stem(std::string_view title);

struct Written {
  std::vector<std::filesystem::path> files;
  std::vector<int> refused;  ///< lessons whose cutting a stop stands against: no pages are made of them
};
/// Makes and writes the pages in every form in parallel; older files of other names are left alone. On trouble or cancel nothing half-written remains.
base::Result<Written> handouts(const course::Course& course, const plan::Plan& plan, const words::Phrases& phrases, const HandoutOrder& order,
                               std::stop_token stop, const std::function<void(int done, int of)>& progress);

}  // namespace publish
