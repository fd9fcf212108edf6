// Lessons that cut: their pages are made in every form; none are made where a stop stands against the cutting.
#include <algorithm>

#include "handed_out.h"

namespace {

std::string course_text(const std::string& path) {
  return "format = 1\n[course]\ntitle = \"Lantern\"\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" +
         part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"" + path + "\"") +
         "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n"
         "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n";
}

}  // namespace

TEST_CASE("pages of a lesson that cuts are made, also for the screen, with the cautions") {
  const TestFolder folder;
  publish::HandoutOrder order;
  order.into = folder.path;
  order.dpi = 72;
  order.forms = {publish::Form::png, publish::Form::pdf, publish::Form::svg, publish::Form::web};
  const publish::Written written = test::hand_out(course_from(course_text("NE 4, SE 3, SW 3, NW 2")), order);
  CHECK(written.refused.empty());
  const auto has = [&](const std::string& name) {
    return std::any_of(written.files.begin(), written.files.end(), [&](const auto& file) { return file.filename() == name; });
  };
  for (const char* name : {"lesson-02-cutting-heart-p1.png", "lesson-02-cutting-heart.pdf", "lesson-02-cutting-heart-cut-map-1.svg",
                           "lesson-02-cutting-heart-a.svg", "lesson-02-cutting-heart-mend-1.svg", "lesson-02-cutting-heart.html"})
    CHECK_MESSAGE(has(name), name);
  for (const char* name : {"lesson-02-cutting-heart-cut-map-1.svg", "lesson-02-cutting-heart-a.svg", "lesson-02-cutting-heart.html"})
    CHECK(bytes_of(folder.path / name).find("Fine scissors are sharp") != std::string::npos);
}

TEST_CASE("where a stop stands against the cutting the lesson has no pages, and the others have theirs") {
  const TestFolder folder;
  publish::HandoutOrder order;
  order.into = folder.path;
  order.dpi = 72;
  const publish::Written written = test::hand_out(course_from(course_text("NE 4, SE 3, SW 3")), order);  // the ring is open
  CHECK(written.refused == std::vector<int>{2});
  CHECK(!written.files.empty());
  CHECK(std::none_of(written.files.begin(), written.files.end(),
                     [](const auto& file) { return file.filename().string().find("lesson-02") == 0; }));
}
