// The review page: one self-contained HTML file a lesson, for both hands, and an index of the course. Templates, style and script stand in
// assets/web; every word comes from the phrases.
#include <fmt/format.h>

#include <algorithm>

#include "assets/assets.h"
#include "paint/svg/svg.h"
#include "picture/shown.h"
#include "picture/table.h"
#include "publish/fill.h"
#include "publish/forms.h"
#include "publish/web_walk.h"

namespace publish {
namespace {

using paint::escaped;
using Values = std::map<std::string, std::string, std::less<>>;
using How = picture::Telling::How;

constexpr const char* hand_names[] = {"right", "left"};

std::string piece_html(const picture::Telling::Piece& piece, bool first) {
  const std::string text = escaped(piece.text);
  switch (piece.how) {
    case How::heading:
    case How::accent_heading:
      return fmt::format("<h{0}>{1}</h{0}>\n", first ? 2 : 3, text);
    case How::strong:
      return fmt::format("<p><strong>{}</strong></p>\n", text);
    case How::numbered:
    case How::ticked:
      return fmt::format("<p class=\"numbered\"><b>{}</b> <span>{}</span></p>\n", picture::Telling::mark(piece), text);
    case How::paragraph:
      break;
  }
  return fmt::format("<p>{}</p>\n", text);
}

/// The heading is the section's own; a letter goes before it.
std::string telling_html(const picture::Telling& telling, const std::string& title) {
  std::string html;
  bool first = true;
  for (picture::Telling::Piece piece : telling.pieces()) {
    if (first && !title.empty()) piece.text = title;
    html += piece_html(piece, std::exchange(first, false));
  }
  return html;
}

std::string table_html(const picture::Table& table) {
  std::string html = fmt::format("<table><caption>{}</caption><thead><tr><td></td>", escaped(table.title));
  for (const std::string& head : table.heads) html += fmt::format("<th scope=\"col\">{}</th>", escaped(head));
  html += "</tr></thead><tbody>\n";
  for (const picture::Table::Row& row : table.rows) {
    html += fmt::format("<tr{}><th scope=\"row\">{}</th>", row.total ? " class=\"total\"" : "", escaped(row.label));
    for (const int n : row.numbers) html += fmt::format("<td>{}</td>", n);
    html += "</tr>\n";
  }
  html += "</tbody></table>\n";
  return table.note.empty() ? html : html + fmt::format("<p>{}</p>\n", escaped(table.note));
}

class Page {
 public:
  Page(const Making& making, const plan::LessonPlan& lesson, const list::Measure& measure)
      : making_(making), lesson_(lesson), measure_(measure) {}

  std::string make() const {
    const picture::ShownLesson right = shown(say::Hand::right), left = shown(say::Hand::left);
    const std::string style(assets::table("web/review.css")), script(assets::table("web/review.js"));
    Values values{{"language", making_.phrases.language()},
                  {"hand", making_.course.choices.hand == course::Hand::left ? "left" : "right"},
                  {"style", style},
                  {"script", script},
                  {"style-hash", policy_hash(style)},
                  {"script-hash", policy_hash(script)},
                  {"title", escaped(right.title)},
                  {"course", escaped(making_.course.title)},
                  {"line", escaped(right.line)},
                  {"ready", escaped(right.ready)},
                  {"data", walk_json(making_, lesson_)}};
    values["home"] = making_.order.lesson
                         ? ""
                         : fmt::format("<a class=\"home\" href=\"index.html\">{}</a>\n", escaped(making_.phrases.say("review.home")));
    values["walk"] = walk();
    values["pictures"] = pictures(right, say::Hand::right) + pictures(left, say::Hand::left);
    values["rest"] = rest(right, say::Hand::right) + rest(left, say::Hand::left);
    return fill(assets::table("web/lesson.html"), values, making_.phrases);
  }

 private:
  picture::ShownLesson shown(say::Hand hand) const {
    return picture::show_lesson(making_.course, making_.plan, lesson_.number, {making_.phrases, hand, making_.course}, measure_,
                                {150, 130, picture::Print::normal});
  }

  std::string walk() const {
    if (lesson_.sections.empty()) return {};
    const cloth::Box box = walk_box(making_.plan, lesson_);
    return fill(assets::table("web/walk.html"),
                {{"view", fmt::format("{} {} {} {}", box.x0, box.y0, box.width(), box.height())},
                 {"x", std::to_string(box.x0)},
                 {"y", std::to_string(box.y0)},
                 {"width", std::to_string(box.width())},
                 {"height", std::to_string(box.height())},
                 {"points", std::to_string(walk_points(making_.plan, lesson_))},
                 {"cloth", walk_cloth(making_, lesson_)}},
                making_.phrases);
  }

  /// What is for one hand alone; the page shows one of the two.
  std::string for_hand(say::Hand hand, const std::string& html) const {
    const bool other = (hand == say::Hand::left) != (making_.course.choices.hand == course::Hand::left);
    return fmt::format("<div data-for=\"{}\"{}>\n{}</div>\n", hand_names[static_cast<int>(hand)], other ? " hidden" : "", html);
  }

  std::string pictures(const picture::ShownLesson& lesson, say::Hand hand) const {
    std::string html;
    for (const picture::Shown& picture : lesson.pictures) html += picture_html(picture, hand);
    return for_hand(hand, html);
  }

  std::string picture_html(const picture::Shown& picture, say::Hand hand) const {
    const std::string id = fmt::format("{}-{}", hand_names[static_cast<int>(hand)], picture.name);
    const bool start = !picture.telling.empty() && picture.telling.pieces().front().how == How::accent_heading;
    std::string svg = paint::svg(picture.list, {id, picture.title, "", paint::SvgHead::As::part});
    const std::string before = picture.before.empty() ? "" : fmt::format("<section>\n{}</section>\n", telling_html(picture.before, ""));
    return before + fmt::format("<section{}>\n{}<div class=\"seen\">\n{}<div>{}{}</div>\n</div>\n</section>\n", start ? " class=\"start\"" : "",
                       fmt::format("<h2>{}</h2>\n", escaped(picture.title)), svg, without_heading(picture.telling), step_button(picture));
  }

  static std::string without_heading(const picture::Telling& telling) {
    return telling.pieces().empty() ? "" : telling_html(telling.parted(1).second, "");
  }

  /// Leads to the close-up's first point on the slider.
  std::string step_button(const picture::Shown& picture) const {
    const int before = picture.trail < 0 ? -1 : points_before(making_.plan, lesson_, picture.trail, picture.first);
    if (before < 0) return {};
    return fmt::format("<button type=\"button\" data-step=\"{}\" hidden>{}</button>\n", before + 1,
                       escaped(making_.phrases.say("review.show", {{"letter", picture.letter}})));
  }

  std::string rest(const picture::ShownLesson& lesson, say::Hand hand) const {
    std::string html;
    std::string tables;
    for (const picture::Table& table :
         picture::lesson_counts(making_.course, making_.plan, lesson_.number, {making_.phrases, hand, making_.course}))
      tables += table_html(table);
    if (!tables.empty()) html += fmt::format("<section>\n{}</section>\n", tables);
    for (const picture::Telling& telling : lesson.rest) html += fmt::format("<section>\n{}</section>\n", telling_html(telling, ""));
    return for_hand(hand, html);
  }

  const Making& making_;
  const plan::LessonPlan& lesson_;
  const list::Measure& measure_;
};

std::string lesson_entry(const Making& making, const HandPages::Lesson& lesson) {
  const say::Voice voice{making.phrases, say::Hand::right, making.course};
  const plan::LessonPlan& planned = making.plan.lessons[static_cast<std::size_t>(lesson.number - 1)];
  return fmt::format("<li><a href=\"{}.html\">{}</a><br>{}<br><span id=\"progress-{}\"></span></li>\n", lesson.stem, escaped(lesson.title),
                     planned.date ? escaped(say::date(voice, *planned.date)) : "", lesson.number);
}

std::string index_page(const Making& making, const HandPages& pages) {
  const std::string style(assets::table("web/review.css")), script(assets::table("web/review.js"));
  std::string lessons, data;
  for (const HandPages::Lesson& lesson : pages.lessons) {
    lessons += lesson_entry(making, lesson);
    data += fmt::format(R"({}{{"number":{},"points":{}}})", data.empty() ? "" : ",", lesson.number,
                        walk_points(making.plan, making.plan.lessons[static_cast<std::size_t>(lesson.number - 1)]));
  }
  const std::string progress = json_text(making.phrases.say("review.progress", {{"n", "{n}"}, {"of", "{of}"}}));
  return fill(assets::table("web/index.html"),
              {{"language", making.phrases.language()},
               {"style", style},
               {"script", script},
               {"style-hash", policy_hash(style)},
               {"script-hash", policy_hash(script)},
               {"course", escaped(making.course.title)},
               {"teacher", escaped(making.course.teacher)},
               {"lessons", lessons},
               {"data", fmt::format(R"({{"course":{},"lessons":[{}],"say":{{"progress":{}}}}})", json_text(file_stem(making.course.title)),
                                    data, progress)}},
              making.phrases);
}

}  // namespace

void add_web(const Making& making, const HandPages& pages, const std::filesystem::path& into, std::vector<Job>& jobs) {
  for (const HandPages::Lesson& lesson : pages.lessons)
    jobs.push_back({into / (lesson.stem + ".html"), [&making, &lesson](const paint::Type& type) -> base::Result<Bytes> {
                      return bytes_of(Page(making, making.plan.lessons[static_cast<std::size_t>(lesson.number - 1)], type).make());
                    }});
  if (!making.order.lesson)
    jobs.push_back({into / "index.html",
                    [&making, &pages](const paint::Type&) -> base::Result<Bytes> { return bytes_of(index_page(making, pages)); }});
}

}  // namespace publish
