// A paper chart under the grid. Its place is worked out from two points; what cannot be read is refused.
#include "app/paper_chart.h"

#include "app/windowless.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";
const std::string picture = std::string(TELLEKANT_ROOT) + "/assets/pictures";

std::filesystem::path some_png() {
  for (const auto& file : std::filesystem::directory_iterator(picture))
    if (file.path().extension() == ".png") return file.path();
  return {};
}

}  // namespace

TEST_CASE("two points and two holes fix scale and place") {
  const auto at = app::laid({{{100, 50}, {500, 250}}}, {{{10, 20}, {50, 30}}});
  REQUIRE(at);
  CHECK(at->x + 100 * at->across == doctest::Approx(10));
  CHECK(at->y + 50 * at->down == doctest::Approx(20));
  CHECK(at->x + 500 * at->across == doctest::Approx(50));
  CHECK(at->y + 250 * at->down == doctest::Approx(30));
  const auto level = app::laid({{{0, 40}, {200, 40}}}, {{{0, 0}, {50, 0}}});
  REQUIRE(level);
  CHECK(level->down == doctest::Approx(0.25));
  CHECK(!app::laid({{{5, 5}, {5, 5}}}, {{{0, 0}, {9, 9}}}));
  CHECK(!app::laid({{{0, 0}, {100, 100}}}, {{{0, 0}, {-9, 9}}}));
}

TEST_CASE("a picture is read; anything else is refused with its reason and leaves the window as it was") {
  Windowless w(frost);
  REQUIRE(!some_png().empty());
  app::lay_paper(*w.desk, some_png());
  CHECK(w.desk->message.empty());
  CHECK(w.desk->paper.there);
  CHECK(w.desk->paper.width > 100);
  app::lay_paper(*w.desk, frost);
  CHECK(w.desk->message.find("no PNG or JPEG") != std::string::npos);
  CHECK(w.desk->paper.there);
  std::string damaged = bytes_of(some_png());
  damaged.resize(damaged.size() / 2);
  std::ofstream(w.folder / "half.png", std::ios::binary) << damaged;
  app::lay_paper(*w.desk, w.folder / "half.png");
  CHECK(!w.desk->message.empty());
  app::lay_paper(*w.desk, w.folder / "none.png");
  CHECK(!w.desk->message.empty());
  w.frames(3);
}

TEST_CASE("two clicks on the cloth mark two points while it is laid in place, and draw nothing") {
  Windowless w(frost);
  app::lay_paper(*w.desk, some_png());
  w.desk->paper.placing = true;
  const std::string before = w.desk->session.text();
  w.click(300, 400);
  w.click(600, 600);
  w.click(700, 500);
  CHECK(w.desk->paper.clicked == 2);
  CHECK(w.desk->paper.points[1].x > w.desk->paper.points[0].x);
  CHECK(w.desk->session.text() == before);
}
