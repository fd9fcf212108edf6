// The teacher's choices in the words of the pages: each says what the plan does, and only that changes.
#include <algorithm>

#include "pages_of.h"
#include "picture/course_pages.h"

namespace {

std::string said_of(const std::string& parts, const std::string& habits = "", const std::string& cloth = "count = 22") {
  const std::string text = "format = 1\n[course]\ntitle = \"Choices\"\nfirst_day = 2027-01-12\n[cloth]\n" + cloth +
                           "\n[thread.heavy]\npearl = 5\n" + (habits.empty() ? "" : "[habits]\n" + habits + "\n") + parts;
  std::string all;
  for (const list::List& page : test::pages(text)) all += test::text_of_page(page);
  std::replace(all.begin(), all.end(), '\n', ' ');
  return all;
}

bool has(const std::string& text, const char* what) { return text.find(what) != std::string::npos; }

std::string ring(const std::string& more = "") {
  return part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"\n" + more);
}

}  // namespace

TEST_CASE("what a line of the grid stands for") {
  CHECK(has(said_of(ring()), "Each line of the grid is one thread of the cloth"));
  CHECK_FALSE(has(said_of(ring(), "", "count = 22\nline = \"hole\""), "Each line of the grid is one thread of the cloth"));
  CHECK(said_of(ring(), "", "count = 22\nline = \"thread\"") == said_of(ring()));
}

TEST_CASE("blocks: down on the inner side, or up there") {
  CHECK(has(said_of(ring()), "Every stitch goes down on the inner side of the ring."));
  const std::string up = said_of(ring("cut_side = \"up\""));
  CHECK_FALSE(has(up, "Every stitch goes down on the inner side"));
  CHECK(has(up, "Every stitch comes up on the inner side of the ring and goes down on the outer side."));
}

TEST_CASE("cable: the back stitch at the end of a slant or at its start") {
  const auto border = [](const std::string& more) {
    return said_of(part_text("border", "cable", "[8, -30]", "path = \"E 12, SE 26, S 12, SW 26, W 12, NW 26, N 12, NE 26\"\n" + more));
  };
  const std::string end = border(""), start = border("step_back = \"start\"");
  CHECK(has(end, "At the end of each slant"));
  CHECK(has(end, "Nothing changes here"));
  CHECK(has(start, "Nothing changes here"));
  const auto says_back = [](const std::string& text, const char* title) {  // the words under a corner's title, up to the next one's
    const std::size_t at = text.find(title);
    return at != std::string::npos && text.substr(at, 420).find("back stitch: up at") != std::string::npos;
  };
  CHECK(says_back(end, "At the end of each slant"));
  CHECK(says_back(start, "Where a straight side turns into a slant"));
}

TEST_CASE("edge: five or seven stitches in the corner hole") {
  const auto hem = [](const std::string& more) {
    return said_of(part_text("hem", "edge", "[0, 0]", "path = \"E 30, S 30, W 30, N 30\"\n" + more));
  };
  CHECK(has(hem(""), "Five stitches go down in the corner hole"));
  CHECK(has(hem("corner = 7"), "Seven stitches go down in the corner hole"));
}

TEST_CASE("eyelets down in the centre or up; tails and working lengths in the words") {
  const std::string eye = "[[part]]\nname = \"eye\"\nkind = \"eyelet\"\nthread = \"heavy\"\ncentres = [[3, 5]]\nsize = 8\n";
  CHECK(has(said_of(eye), "goes down in the centre"));
  CHECK_FALSE(has(said_of(eye, "eyelet_needle = \"up\""), "goes down in the centre"));
  CHECK(has(said_of(ring()), "lengths of 50 cm"));
  CHECK(has(said_of(ring(), "working_length_cm = 70"), "lengths of 70 cm"));
  CHECK(has(said_of(ring(), "first_tail_cm = 15"), "a tail of 15 cm"));
  CHECK(has(said_of(ring(), "working_length_cm = 70\nblocks_length_cm = 60"), "lengths of 60 cm"));
}

TEST_CASE("the left hand is told where the piece becomes the mirror image: not where the design is its own") {
  const auto preparing = [](const std::string& parts, say::Hand hand) {
    const auto course = course_of(parts);
    const auto plan = plan::make_plan(course);
    REQUIRE(plan);
    const say::Voice voice{test::english(), hand, course};
    std::string all;
    for (const list::List& page : picture::preparing_pages(course, *plan, voice, test::type(), picture::page_size(course::Paper::a4), picture::Print::normal).pages)
      all += test::text_of_page(page);
    std::replace(all.begin(), all.end(), '\n', ' ');
    return all;
  };
  const char* told = "becomes the mirror image";
  const std::string stair = part_text("stair", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4\"");
  CHECK(has(preparing(stair, say::Hand::left), told));
  CHECK_FALSE(has(preparing(stair, say::Hand::right), told));
  CHECK_FALSE(has(preparing(ring(), say::Hand::left), told));
  CHECK(has(preparing(ring() + part_text("leaf", "blocks", "[60, 0]", "first = \"across\"\npath = \"NE 4\""), say::Hand::left), told));
}
