// Starts of a lesson in the window's sheet: each place of a repeated part has its own, and a click on it goes there.
#include <cmath>
#include <map>

#include "app/windowless.h"

TEST_CASE("a click on a start, also of a further place of a repeated part, brings needle and cloth there, for both hands") {
  for (const bool left : {false, true}) {
    Windowless w(std::string(TELLEKANT_ROOT) + "/lessons/mat.course.toml");
    w.size.y = 5000;  // the whole sheet is seen
    if (left) w.key('L');
    w.mapped(ImGuiKey_PageDown);
    app::Desk& desk = *w.desk;
    std::map<int, cloth::Hole> started;  // trail, and the hole where it begins
    for (float y = 170; y < 4000; y += 9) {
      desk.walk.step = 5;  // the start of none
      w.click(w.size.x - 200, y);
      const auto place = app::walk_place(desk);
      if (!place || place->stitch != place->first) continue;
      const trail::Trail& trail = desk.plan()->trails[static_cast<std::size_t>(place->trail)].trail;
      const cloth::Hole hole = trail.stitches[static_cast<std::size_t>(place->stitch)].up;
      started[place->trail] = hole;
      const app::Area cloth = app::cloth_area(desk, w.size.x, w.size.y);
      CHECK(std::abs(w.at(hole).x - (cloth.x + cloth.w / 2)) < 1);
      CHECK(std::abs(w.at(hole).y - (cloth.y + cloth.h / 2)) < 1);
    }
    REQUIRE(desk.lesson == 2);
    CHECK(started.size() == 8);  // four stars, four eyelets
    for (const guide::CountIn& count_in : desk.plan()->count_ins)
      if (count_in.lesson == 2) CHECK(started[count_in.trail] == count_in.hole);
  }
}
