// Beginning, settings, mends and printing, driven without a window.
#include <thread>

#include "app/settings.h"
#include "app/windowless.h"
#include "file/course_file.h"
#include "session/mends.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";

}  // namespace

TEST_CASE("settings are kept: light, scale, files opened lately; damaged ones fall back to the defaults") {
  TestFolder folder;
  app::Settings settings{app::Light::dark, "nb", 1.5F, {"/a/b c.course.toml", "/d.course.toml"}};
  REQUIRE(app::write_settings(folder / "settings", settings));
  const app::Settings read = app::read_settings(folder / "settings");
  CHECK(read.light == app::Light::dark);
  CHECK(read.scale == doctest::Approx(1.5));
  CHECK(read.recent == settings.recent);
  CHECK(read.language == "nb");
  std::ofstream(folder / "settings") << "scale x\nscale 9000\nrubbish\nlanguage tlh\n";
  CHECK(app::read_settings(folder / "settings").scale == doctest::Approx(2.5));
  CHECK(app::read_settings(folder / "settings").language.empty());
  CHECK(app::read_settings(folder / "nothing").recent.empty());
}

TEST_CASE("opening remembers the file, newest first and once") {
  Windowless w(frost);
  std::filesystem::copy_file(frost, w.folder / "b.course.toml");
  app::open_course(*w.desk, w.folder / "a.course.toml");
  app::open_course(*w.desk, w.folder / "b.course.toml");
  app::open_course(*w.desk, w.folder / "a.course.toml");
  app::open_course(*w.desk, w.folder / "none.course.toml");
  CHECK(!w.desk->message.empty());
  REQUIRE(w.desk->recent.size() == 2);
  CHECK(w.desk->recent[0].filename() == "a.course.toml");
}

TEST_CASE("Ctrl+N asks for a new course; an answer that will not do is said, a good one begins it") {
  Windowless w(frost);
  w.key('N', true);
  REQUIRE(w.desk->asking == app::Asking::begin);
  const auto press_begin = [&] {
    // the strong button stands at the left below five answers; its row is found by walking down until something happens
    for (float y = 300; y < 600; y += 8) {
      w.click(450, y);
      if (!w.desk->message.empty() || w.desk->asking != app::Asking::begin) return;
    }
  };
  press_begin();
  CHECK(w.desk->asking == app::Asking::begin);
  CHECK(!w.desk->message.empty());
  w.desk->message.clear();
  w.desk->answers.title = "Mine";
  w.desk->answers.first_day = "2027-01-12";
  press_begin();
  w.settle();
  CHECK(w.desk->asking == app::Asking::nothing);
  CHECK(w.desk->session.text().find("title = \"Mine\"") != std::string::npos);
  REQUIRE(w.desk->course());
  CHECK(w.desk->course()->title == "Mine");
}

TEST_CASE("every sample can be begun with: each has a title of its own and no faults") {
  Windowless w(frost);
  std::vector<std::string_view> courses;
  for (const std::string_view path : assets::samples()) courses.push_back(assets::table(path));
  const auto samples = app::samples(courses);
  CHECK(samples.size() >= 4);
  std::vector<std::string> titles;
  for (const app::Sample& sample : samples) {
    CAPTURE(sample.name);
    CHECK(std::find(titles.begin(), titles.end(), sample.name) == titles.end());
    titles.push_back(sample.name);
    w.desk->session.begin(sample.text);
    w.settle();
    CHECK(w.desk->session.faults().empty());
    CHECK(w.desk->plan()->lessons.size() >= 1);
  }
}

TEST_CASE("the interface scale stays between 75 and 250 percent") {
  Windowless w(frost);
  for (int i = 0; i < 20; ++i) app::scale_by(*w.desk, 1.1F);
  CHECK(w.desk->wanted_scale == doctest::Approx(2.5));
  for (int i = 0; i < 40; ++i) app::scale_by(*w.desk, 1 / 1.1F);
  CHECK(w.desk->wanted_scale == doctest::Approx(0.75));
}

TEST_CASE("pages are written in the background as chosen; the window goes on meanwhile") {
  Windowless w(frost);
  w.key('P', true);
  REQUIRE(w.desk->asking == app::Asking::pages);
  w.desk->print.dpi = 72;
  for (float row = 600; row <= 860 && !w.desk->writing; row += 10)
    for (float x = 560; x < 800 && !w.desk->writing && w.desk->asking == app::Asking::pages; x += 40) w.click(x, row);
  REQUIRE(w.desk->writing);
  for (int i = 0; i < 2000 && !w.desk->writing->finished; ++i) {
    w.frames(1);
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  REQUIRE(w.desk->writing->finished);
  INFO(w.desk->writing->outcome);
  CHECK(w.desk->writing->good);
  int files = 0;
  for (const auto& file : std::filesystem::directory_iterator(w.desk->writing->into)) files += file.path().extension() == ".png" ? 1 : 0;
  CHECK(files >= 1);
}

TEST_CASE("the whole design stays in sight as the window changes, until it is zoomed") {
  Windowless w(frost);
  w.size = {1024, 700};
  w.frames(3);
  const float small = w.desk->view.pixels;
  w.size = {1800, 1200};
  w.frames(3);
  CHECK(w.desk->view.pixels > small);
  ImGui::GetIO().MousePos = {400, 600};
  w.frames(2);
  ImGui::GetIO().MouseWheel = 1;
  w.frames(2);
  const float zoomed = w.desk->view.pixels;
  w.size = {1024, 700};
  w.frames(3);
  CHECK(w.desk->view.pixels == zoomed);
}
