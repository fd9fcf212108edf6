// Each rule: a course that breaks it is told at the right line with the right severity; a good one is not.
#include <doctest/doctest.h>

#include <algorithm>

#include "check/check.h"
#include "course_text.h"

namespace {

std::vector<check::Snag> snags_of(const course::Course& course) {
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return check::look(course, *plan);
}

std::string rules_of(const course::Course& course) {
  std::string text;
  for (const check::Snag& snag : snags_of(course)) text += (text.empty() ? "" : " ") + snag.rule;
  return text;
}

std::string lesson(const std::string& work, const std::string& more = "") { return "[[lesson]]\nwork = [" + work + "]\n" + more; }

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"");
const std::string border =
    part_text("border", "cable", "[8, -30]", "path = \"E 12, SE 26, S 12, SW 26, W 12, NW 26, N 12, NE 26\"\nrows = 3\nrows_lie = \"right\"");

}  // namespace

TEST_CASE("a good course has no snag") {
  CHECK(rules_of(course_of(ring + border)) == "");
  CHECK(rules_of(course_of(ring + border + lesson("\"ring\"") + lesson("\"border / pass 1\"") + lesson("\"border / pass 2\""))) == "");
}

TEST_CASE("every rule of the registry is known by its id once") {
  std::vector<std::string_view> ids;
  for (const check::Rule& rule : check::rules()) ids.push_back(rule.id);
  std::sort(ids.begin(), ids.end());
  CHECK(std::adjacent_find(ids.begin(), ids.end()) == ids.end());
}

TEST_CASE("row-shrinks: a square too small for its inner rows stops, the part keeps its first row") {
  const auto course = course_of(part_text("small", "cable", "[0, 0]", "path = \"E 4, S 4, W 4, N 4\"\nrows = 2\nrows_lie = \"right\""));
  const auto snags = snags_of(course);
  REQUIRE(!snags.empty());
  CHECK(snags[0].rule == "row-shrinks");
  CHECK(snags[0].severity == check::Severity::stop);
  CHECK(course.parts[0].work.stitches.size() == 8);
}

TEST_CASE("edge-crosses-itself: an edge over its own way stops") {
  const auto snags = snags_of(course_of(part_text("hem", "edge", "[0, 0]", "path = \"E 40, S 20, W 20, N 40\"")));
  REQUIRE(snags.size() == 1);
  CHECK(snags[0].rule == "edge-crosses-itself");
  CHECK(snags[0].severity == check::Severity::stop);
}

TEST_CASE("cut-out-last: stitching after the cutting out stops, the wash after it is asked about") {  // Archer 1911, ch. XII: last of all
  const std::string hem = part_text("hem", "edge", "[-60, -60]", "path = \"E 120, S 120, W 120, N 120\"");
  CHECK(rules_of(course_of(ring + hem + lesson("\"ring\", \"hem\"", "minutes = 900\n") + lesson("\"wash\", \"cut out\""))) == "");
  const auto snags = snags_of(course_of(ring + hem + lesson("\"ring\", \"cut out\", \"wash\"", "minutes = 900\n") + lesson("\"hem\"", "minutes = 900\n")));
  REQUIRE(snags.size() == 2);
  CHECK(snags[0].rule == "cut-out-unwashed");
  CHECK(snags[0].severity == check::Severity::ask);
  CHECK(snags[1].rule == "cut-out-last");
  CHECK(snags[1].severity == check::Severity::stop);
  CHECK(snags[1].lesson == 2);
}

TEST_CASE("row-crosses-itself: a line over its own way") {
  CHECK(rules_of(course_of(part_text("eight", "cable", "[0, 0]", "path = \"E 20, S 20, W 10, N 30\"\nrows = 2\nrows_lie = \"left\""))) == "row-crosses-itself");
}

TEST_CASE("image-lies-over: images that cross are told at the part, those that share whole stitches are not") {
  CHECK(rules_of(course_of(part_text("line", "cable", "[-4, 1]", "path = \"E 20\"\nturn = 4\nabout = [0, 0]"))) == "image-lies-over");
  CHECK(rules_of(course_of(part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4\"\nturn = 4\nabout = [14, 2]"))) == "");
}

TEST_CASE("lies-over: a cable across blocks is told at both places; one that only touches is not") {
  const auto over = snags_of(course_of(ring + part_text("line", "cable", "[-4, 2]", "path = \"E 20\"\nrows = 2")));
  REQUIRE(over.size() == 1);
  CHECK(over[0].rule == "lies-over");
  CHECK(over[0].words.at("other") == "ring");
  CHECK(over[0].at);
  CHECK(over[0].also_at);
}

TEST_CASE("part-in-no-lesson and work-forgotten stop") {
  CHECK(rules_of(course_of(ring + border + lesson("\"ring\""))) == "part-in-no-lesson");
  CHECK(rules_of(course_of(ring + lesson("\"ring / 1..20\""))) == "work-forgotten");
}

TEST_CASE("work-doubled, pass-order and stretch-order stop") {
  CHECK(rules_of(course_of(ring + lesson("\"ring\"") + lesson("\"ring / 1..10\""))).find("work-doubled") != std::string::npos);
  CHECK(rules_of(course_of(ring + border + lesson("\"ring\"") + lesson("\"border / pass 2\"") + lesson("\"border / pass 1\""))) == "pass-order");
  CHECK(rules_of(course_of(ring + lesson("\"ring / 21..60\"") + lesson("\"ring / 1..20\""))) == "stretch-order");
}

TEST_CASE("lesson-minutes: more work than class time is asked about, with how much") {
  const auto snags = snags_of(course_of(ring + lesson("\"ring\"", "minutes = 30\n"), "stitches_a_minute = { blocks = 1 }"));
  REQUIRE(snags.size() == 1);
  CHECK(snags[0].rule == "lesson-minutes");
  CHECK(snags[0].severity == check::Severity::ask);
  CHECK(snags[0].numbers.at("n") == 42);  // 60 stitches, a minute each, in 0.6 of 30 minutes
}

TEST_CASE("lesson-empty, and days: on a holiday, in the wrong order") {
  CHECK(rules_of(course_of(ring + lesson("\"ring\"") + lesson(""))) == "lesson-empty");
  CHECK(rules_of(course_of(ring + lesson("\"ring / 1..20\"") + lesson("\"ring / 21..60\"", "date = 2027-01-02\n"))) == "lesson-day-order");
}

TEST_CASE("count-from-missing: the teacher's own landmark must be stitched by then") {
  const std::string border_from = part_text("border", "cable", "[8, -30]",
      "path = \"E 12, SE 26, S 12, SW 26, W 12, NW 26, N 12, NE 26\"\nrows_lie = \"right\"\ncount_from = [3, 3]");
  CHECK(rules_of(course_of(ring + border_from)) == "count-from-missing");
}

TEST_CASE("thread-parted is a note, told where the first way is too long; a change after a worked-off length is none") {
  const course::Course course = course_of(ring);
  plan::Plan plan;
  plan.trails.emplace_back();
  auto& trail = plan.trails[0].trail;
  trail.stitches.resize(3);
  trail.stitches[0] = {{0, 0}, {4, 0}};
  trail.stitches[1] = {{0, 1}, {4, 1}};
  trail.stitches[2] = {{40, 1}, {44, 1}};
  trail.ends = {0, 1, 2};
  std::vector<check::Snag> snags;
  for (const check::Rule& rule : check::rules())
    if (rule.id == "thread-parted") rule.look(course, plan, snags);
  REQUIRE(snags.size() == 1);
  CHECK(snags[0].severity == check::Severity::note);
  CHECK(snags[0].numbers.at("n") == 1);
  CHECK(snags[0].at == cloth::Hole{4, 1});
  CHECK(snags[0].also_at == cloth::Hole{40, 1});
}

namespace {

const std::string heart = "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n";

std::vector<plan::PartCutting> cuttings_of(const course::Course& course) {
  const auto made = plan::make_plan(course);
  REQUIRE(made);
  return made->cuttings;
}

}  // namespace

TEST_CASE("cutting: a ring is cut once it is worked, in its own time or the lesson's") {
  for (const auto& course : {course_of(ring + heart), course_of(ring + heart + lesson("\"ring\"") + lesson("\"heart\""))}) {
    CHECK(rules_of(course) == "");
    const auto cuttings = cuttings_of(course);
    REQUIRE(cuttings.size() == 1);
    CHECK(cuttings[0].cutting.cuts.size() == 48);  // 16n - 16 with four blocks a side, by geometry
    CHECK(cuttings[0].lesson > 0);
  }
}

TEST_CASE("cut-before-work, cut-without-work, part-in-no-lesson: nothing is planned as cut") {
  const auto stopped = [](const course::Course& course, const std::string& rule) {
    CHECK(rules_of(course).find(rule) != std::string::npos);
    CHECK(check::stops(snags_of(course)));
    for (const auto& cut : cuttings_of(course)) CHECK(cut.cutting.cuts.empty());
  };
  stopped(course_of(ring + heart + lesson("\"heart\"") + lesson("\"ring\"")), "cut-before-work");
  stopped(course_of(ring + heart + lesson("\"heart\", \"ring\"")), "cut-before-work");
  stopped(course_of(ring + heart + lesson("\"ring / 1..20\", \"heart\"")), "cut-without-work");
  stopped(course_of(ring + heart + lesson("\"ring\"")), "part-in-no-lesson");
  stopped(course_of(ring + heart + part_text("line", "cable", "[-4, -12]", "path = \"E 4\"\nrows = 2") + lesson("\"ring\", \"heart\"") + lesson("\"line\"")),
          "cut-before-work");
}

TEST_CASE("cutting: what is wrong is told at both places") {
  const std::string open = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 1\"");
  const auto snags = snags_of(course_of(open + heart));
  CHECK(std::any_of(snags.begin(), snags.end(), [](const auto& s) { return s.rule == "cut-no-partner" && s.at && s.also_at; }));
  const auto over = snags_of(course_of(ring + part_text("line", "cable", "[8, 2]", "path = \"E 6\"\nrows = 2") + heart));
  CHECK(std::any_of(over.begin(), over.end(), [](const auto& s) { return s.rule == "cut-under-stitches" && s.words.at("block") == "line"; }));
}

TEST_CASE("satin stitch holds a cutting as blocks do: Archer's star square, cut four, leave four") {
  // Archer p. 191 ff., fig. 162: 4 openings, 4 bars, 1 crossing, 16 threads withdrawn, 32 cuts; sides of 13 stitches, four over 4 at each end and five over 8.
  const auto side = [](const std::string& name, const std::string& start, const std::string& ways) {
    return part_text(name, "satin", start, ways + "over = [4, 4, 4, 4, 4, 8, 8, 8, 4, 4, 4, 4, 4]\n");
  };
  const auto course = course_of(side("top", "[0, 0]", "along = \"E\"\ntoward = \"N\"\n") + side("right", "[12, 0]", "along = \"S\"\ntoward = \"E\"\n") +
                                side("bottom", "[0, 12]", "along = \"E\"\ntoward = \"S\"\n") + side("left", "[0, 0]", "along = \"S\"\ntoward = \"W\"\n") +
                                "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"top\", \"right\", \"bottom\", \"left\"]\nleave = 4\n");
  CHECK(rules_of(course) == "");
  const auto cuttings = cuttings_of(course);
  REQUIRE(cuttings.size() == 1);
  CHECK(cuttings[0].cutting.openings.size() == 4);
  CHECK(cuttings[0].cutting.bars.size() == 4);
  CHECK(cuttings[0].cutting.crossings.size() == 1);
  CHECK(cuttings[0].cutting.withdrawn.size() == 16);
  CHECK(cuttings[0].cutting.cuts.size() == 32);
}

TEST_CASE("the wash comes after the last stitch, the cutting out last of all, each once (Archer 1911, ch. XII: the edge is cut after the wash)") {
  CHECK(rules_of(course_of(ring + lesson("\"ring\"") + lesson("\"wash\", \"cut out\""))) == "");
  const auto early = snags_of(course_of(ring + lesson("\"ring / 1..20\", \"wash\"") + lesson("\"ring / 21..60\"")));
  REQUIRE(early.size() == 1);
  CHECK(early[0].rule == "wash-early");
  CHECK(early[0].severity == check::Severity::ask);
  CHECK(early[0].lesson == 1);
  CHECK(rules_of(course_of(ring + lesson("\"ring\", \"wash\"") + lesson("\"wash\""))) == "finish-doubled");
  // what comes behind both is told once, as the worse of the two
  CHECK(rules_of(course_of(ring + lesson("\"ring / 1..20\", \"wash\", \"cut out\"") + lesson("\"ring / 21..60\""))) == "cut-out-last");
}

TEST_CASE("nothing-to-show: a lesson that ends within a flight and finishes none; scattered pieces show by themselves") {
  const std::string flight = part_text("flight", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 8\"");
  CHECK(rules_of(course_of(flight + lesson("\"flight / 1..20\"") + lesson("\"flight / 21..40\""))) == "nothing-to-show");
  CHECK(rules_of(course_of(flight + lesson("\"flight\""))) == "");
  const std::string eyes = "[[part]]\nname = \"eyes\"\nkind = \"eyelet\"\nthread = \"heavy\"\ncentres = [[0, 0], [12, 0]]\nsize = 4\n";
  CHECK(rules_of(course_of(eyes + lesson("\"eyes / 1..16\"") + lesson("\"eyes / 17..32\""))) == "");
}

TEST_CASE("new-techniques: three kinds that the class has not seen, in one lesson") {
  const std::string three = ring + border + part_text("line", "backstitch", "[-60, 0]", "path = \"S 20\"");
  const auto snags = snags_of(course_of(three + lesson("\"ring\", \"border\", \"line\"", "minutes = 900\n")));
  REQUIRE(snags.size() == 1);
  CHECK(snags[0].rule == "new-techniques");
  CHECK(snags[0].words.at("kinds") == "blocks, cable, backstitch");
  CHECK(rules_of(course_of(three + lesson("\"ring\"") + lesson("\"border\", \"line\"", "minutes = 900\n"))) == "");
}

TEST_CASE("edge-after-cutting, edge-before-cutting: by the teacher's habit") {
  const std::string hem = part_text("hem", "edge", "[-60, -60]", "path = \"E 120, S 120, W 120, N 120\"");
  const std::string works[] = {lesson("\"ring\"") + lesson("\"heart\"") + lesson("\"hem\"", "minutes = 900\n"),
                               lesson("\"ring\"") + lesson("\"hem\"", "minutes = 900\n") + lesson("\"heart\"")};
  for (const bool before : {true, false}) {
    const std::string habit = before ? "edge = \"before cutting\"" : "edge = \"after\"";
    CHECK(rules_of(course_of(ring + heart + hem + works[before ? 1 : 0], habit)) == "");
    const auto snags = snags_of(course_of(ring + heart + hem + works[before ? 0 : 1], habit));
    REQUIRE(snags.size() == 1);
    CHECK(snags[0].rule == (before ? "edge-after-cutting" : "edge-before-cutting"));
    CHECK(snags[0].lesson == (before ? 3 : 2));
  }
}

TEST_CASE("back-over-cut: thread on the back across cloth that is cut is asked about") {
  const std::string dots = "[[part]]\nname = \"dots\"\nkind = \"eyelet\"\nthread = \"heavy\"\ncentres = [[-6, 2], [34, 2]]\nsize = 4\n";
  CHECK(rules_of(course_of(ring + dots + heart)).find("back-over-cut") == std::string::npos);
  const auto snags = snags_of(course_of(ring + dots + heart, "back_limit = 60"));
  const auto told = std::find_if(snags.begin(), snags.end(), [](const auto& s) { return s.rule == "back-over-cut"; });
  REQUIRE(told != snags.end());
  CHECK(told->severity == check::Severity::ask);
  CHECK(told->words.at("area") == "heart");
  CHECK(told->numbers.at("n") == 1);
}

TEST_CASE("class-larger and class-left-hand: a list that the course does not fit is asked about") {
  const std::string left = "[[student]]\nhand = \"left\"\n", right = "[[student]]\n";
  CHECK(rules_of(course_of(ring + right + left)) == "");
  const auto with = [&](const std::string& keys, const std::string& list) {
    return rules_of(course_from("format = 1\n[course]\ntitle = \"Test\"\nfirst_day = 2027-01-12\n" + keys + "[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" + ring + list));
  };
  CHECK(with("hand = \"right\"\n", right + left) == "class-left-hand");
  CHECK(with("hand = \"left\"\n", right + left) == "class-right-hand");
  CHECK(with("hand = \"both\"\n", right + left) == "");
  CHECK(with("students = 1\n", right + right) == "class-larger");
  CHECK(with("students = 3\n", right + right) == "");
}

TEST_CASE("edge-cuts-off: work on the side of an edge that is cut away; the innermost edge round it decides") {
  const auto edge = [](const std::string& name, const std::string& start, int side, const std::string& more) {
    const std::string n = std::to_string(side);
    return part_text(name, "edge", start, "path = \"E " + n + ", S " + n + ", W " + n + ", N " + n + "\"\n" + more);  // clockwise: its left is outside
  };
  const std::string hem = edge("hem", "[-60, -60]", 120, ""), inside_out = edge("hem", "[-60, -60]", 120, "out = \"right\"\n");
  const std::string opening = edge("opening", "[-20, -30]", 70, "out = \"right\"\n");
  const std::string hem_round_it = edge("round", "[-6, -18]", 44, "");  // an own piece, out of the opening's cloth
  CHECK(rules_of(course_of(ring + hem)) == "");
  const auto lost = snags_of(course_of(ring + inside_out));
  REQUIRE(lost.size() == 1);
  CHECK(lost[0].rule == "edge-cuts-off-inside");
  CHECK(lost[0].severity == check::Severity::stop);
  CHECK(lost[0].words.at("other") == "ring");
  CHECK(lost[0].numbers.at("n") == 60);  // 12 blocks of 5
  const auto more = snags_of(course_of(ring + part_text("line", "backstitch", "[-50, -50]", "path = \"E 12\"") + inside_out));
  REQUIRE(more.size() == 1);  // told once for all that the edge takes
  CHECK(more[0].numbers.at("n") == 60 + 6);
  CHECK(rules_of(course_of(ring + hem + opening)) == "edge-cuts-off-inside");
  CHECK(rules_of(course_of(part_text("line", "backstitch", "[-50, -50]", "path = \"E 12\"") + hem + opening)) == "");
  CHECK(rules_of(course_of(ring + hem + opening + hem_round_it)) == "");
  const auto beside = snags_of(course_of(hem + part_text("line", "backstitch", "[-80, 80]", "path = \"E 12\"")));
  REQUIRE(beside.size() == 1);
  CHECK(beside[0].rule == "edge-cuts-off-outside");
  CHECK(beside[0].severity == check::Severity::ask);
  CHECK(rules_of(course_of(part_text("line", "backstitch", "[-80, 80]", "path = \"E 12\"") + inside_out)) == "");
  CHECK(rules_of(course_of(hem + part_text("line", "backstitch", "[-66, 0]", "path = \"E 12\""))).find("edge-cuts-off-outside") != std::string::npos);
}
