// Two hundred damaged files opened one after another in one window: each opens as a list of its faults with their lines, or as the course
// that it still is; the window goes on as if nothing had been.
#include "app/damage.h"
#include "app/windowless.h"
#include "file/course_file.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";

int lines_in(const std::string& text) { return 1 + static_cast<int>(std::count(text.begin(), text.end(), '\n')); }

/// Every fault says where in the text it is, what is there and what should be.
void check_faults(const base::Faults& faults, const std::string& text) {
  for (const base::Fault& fault : faults) {
    CHECK(fault.place.line >= 1);
    CHECK(fault.place.line <= lines_in(text));
    CHECK(fault.place.column >= 1);
    CHECK(!fault.found.empty());
    CHECK(!fault.expected.empty());
  }
}

}  // namespace

TEST_CASE("200 damaged files open one after another: faults with their lines, the window unharmed") {
  Windowless w(frost);
  const std::string whole = bytes_of(frost);
  int with_faults = 0, refused = 0;
  for (unsigned n = 0; n < 200; ++n) {
    CAPTURE(n);
    const std::filesystem::path path = w.folder / ("damaged-" + std::to_string(n) + ".course.toml");
    const std::string text = damage::damaged(whole, n);
    std::ofstream(path, std::ios::binary) << text;
    w.desk->message.clear();
    const auto opened = w.desk->session.open(path);
    w.desk->report(opened);
    w.settle();
    CHECK(bytes_of(path) == text);
    if (!opened) {
      ++refused;
      CHECK(!w.desk->message.empty());
      continue;
    }
    CHECK(w.desk->session.text() == text);
    const base::Faults faults = w.desk->session.faults();
    CHECK(faults.empty() == file::read(text).faults.empty());
    CHECK(faults.empty() == (w.desk->plan() != nullptr));
    check_faults(faults, text);
    with_faults += faults.empty() ? 0 : 1;
    CHECK(w.desk->session.saved());
    w.mapped(ImGuiKey_PageDown);
    w.key('N');
  }
  MESSAGE(with_faults << " with faults, " << refused << " not read at all, of 200");
  CHECK(with_faults + refused > 100);
  REQUIRE(w.desk->session.open(w.folder / "a.course.toml"));
  w.settle();
  REQUIRE(w.desk->plan());
  CHECK(w.desk->session.text() == whole);
}
