// Every sample course there is: it says that it is invented, nothing stands against it, and all its pages are made.
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "check/check.h"
#include "handed_out.h"

TEST_CASE("each sample says that it is invented, has no snag that stops it, and is handed out whole") {
  int samples = 0;
  for (const auto& entry : std::filesystem::directory_iterator(TELLEKANT_ROOT "/lessons")) {
    CAPTURE(entry.path().filename().string());
    ++samples;
    const std::string text = bytes_of(entry.path());
    CHECK(text.substr(0, text.find('\n')).find("invented") != std::string::npos);
    const course::Course course = course_from(text);
    CHECK(course.teacher.find("(invented)") != std::string::npos);
    const plan::Plan plan = test::planned(course);
    for (const check::Snag& snag : check::look(course, plan)) {
      CAPTURE(snag.rule);
      CHECK(snag.severity == check::Severity::note);
    }
    TestFolder folder;
    publish::HandoutOrder order;
    order.into = folder.path;
    order.dpi = 72;
    const auto written = test::hand_out(course, order);
    CHECK(written.refused.empty());
    for (std::size_t n = 1; n <= plan.lessons.size(); ++n) {
      const std::string begins = fmt::format("lesson-{:02}-", n);
      CHECK(std::any_of(written.files.begin(), written.files.end(), [&](const auto& file) { return file.filename().string().starts_with(begins); }));
    }
  }
  CHECK(samples >= 4);
}

TEST_CASE("between them the samples have every kind of part, and repeats of both sorts") {
  std::set<std::string> kinds;
  bool turned = false, mirrored = false;
  for (const auto& entry : std::filesystem::directory_iterator(TELLEKANT_ROOT "/lessons"))
    for (const course::Part& part : course_from(bytes_of(entry.path())).parts) {
      kinds.insert(part.kind);
      turned = turned || part.repeat.turn > 1;
      mirrored = mirrored || !part.repeat.mirror.empty();
    }
  for (const stitch::Kind* kind : stitch::kinds()) {
    CAPTURE(std::string(kind->name));
    CHECK(kinds.contains(std::string(kind->name)));
  }
  CHECK(turned);
  CHECK(mirrored);
}
