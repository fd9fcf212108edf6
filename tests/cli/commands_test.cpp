// Every command: what it prints, where, and with which exit code.
#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "cli/call.h"

TEST_CASE("check: nothing to say about a good course; snags one a line; faults on standard error") {
  const TestFolder folder;
  put(folder, "good.course.toml", small_course);
  put(folder, "doubtful.course.toml", small_course + "\n[[lesson]]\nwork = [\"ring / 1..5\"]\n");
  put(folder, "bad.course.toml", "format = 1\n[course]\ntitle = \"x\"\n[cloth]\ncounts = 22\n");
  const Said good = call(folder, "check good.course.toml");
  CHECK(good.code == 0);
  CHECK(good.out == "");
  CHECK(good.err == "");
  const Said doubtful = call(folder, "check doubtful.course.toml");
  CHECK(doubtful.code == 1);
  CHECK(doubtful.out ==
        "doubtful.course.toml:13:8: stop: stitches 6 to 20 of \xE2\x80\x9Cring\xE2\x80\x9D (pass 1) are in no lesson (put them into the work of a lesson) "
        "[work-forgotten]\n");
  CHECK(doubtful.err == "");
  const Said bad = call(folder, "check good.course.toml bad.course.toml");
  CHECK(bad.code == 2);
  CHECK(bad.out == "");
  CHECK(bad.err.find("bad.course.toml:5:1: found") != std::string::npos);
  CHECK(bad.err.find("did you mean count?") != std::string::npos);
}

TEST_CASE("plan: JSON on standard output, also from standard input; the hand changes words, not coordinates") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  const Said right = call(folder, "plan a.course.toml"), left = call(folder, "plan a.course.toml --hand left"), piped = call(folder, "plan -", "cat a.course.toml |");
  CHECK(right.code == 0);
  CHECK(right.err == "");
  CHECK(piped.out == right.out);
  const auto r = nlohmann::json::parse(right.out), l = nlohmann::json::parse(left.out);
  CHECK(r["trails"] == l["trails"]);
  CHECK(r["count_ins"][0]["hole"] == l["count_ins"][0]["hole"]);
  CHECK(l["course"]["hand"] == "left");
  CHECK(r["count_ins"][0]["proof"]["words"] != l["count_ins"][0]["proof"]["words"]);
}

TEST_CASE("handouts: the files are named on standard output and are there; the same bytes again") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  const Said said = call(folder, "handouts a.course.toml --into pages --dpi 72");
  CHECK(said.code == 0);
  CHECK(said.err == "");
  CHECK(said.out.find("pages/lesson-01-ring-p1.png\n") == 0);
  const std::string first = bytes_of(folder / "pages/lesson-01-ring-p1.png");
  CHECK(first.substr(1, 3) == "PNG");
  CHECK(call(folder, "handouts a.course.toml --into pages --dpi 72 --quiet").out == "");
  CHECK(bytes_of(folder / "pages/lesson-01-ring-p1.png") == first);
}

TEST_CASE("handouts: several forms at once; a PDF of each lesson and of the course; one lesson has no file of the course") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  const Said said = call(folder, "handouts a.course.toml --into pages --as pdf,png --dpi 72");
  CHECK(said.code == 0);
  CHECK(said.err == "");
  CHECK(said.out.find("pages/lesson-01-ring-p1.png\n") == 0);
  CHECK(said.out.find(".png\npages/what-to-buy-p1.png\npages/preparing-the-cloth-finishing-the-piece-p1.png\npages/lesson-01-ring.pdf\npages/what-to-buy.pdf\n"
                      "pages/preparing-the-cloth-finishing-the-piece.pdf\npages/course-two-rings.pdf\n") != std::string::npos);
  CHECK(bytes_of(folder / "pages/course-two-rings.pdf").substr(0, 5) == "%PDF-");
  CHECK(call(folder, "handouts a.course.toml --into one --as pdf --sheets booklet --lesson 1").out == "one/lesson-01-ring.pdf\n");
  const Said wrong = call(folder, "handouts a.course.toml --into one --as pdf,wax");
  CHECK(wrong.code == 2);
  CHECK(wrong.err.find("--as") != std::string::npos);
}

TEST_CASE("handouts: both hands have folders of their own; one lesson; a lesson that is not there") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course + "\n[[lesson]]\nwork = [\"ring / 1..10\"]\n[[lesson]]\nwork = [\"ring / 11..20\"]\n");
  CHECK(call(folder, "handouts a.course.toml --into both --hand both --lesson 2 --dpi 72").code == 0);
  CHECK(std::filesystem::exists(folder / "both/left/lesson-02-ring-stitches-11-to-20-p1.png"));
  CHECK(std::filesystem::exists(folder / "both/right/lesson-02-ring-stitches-11-to-20-p1.png"));
  CHECK(!std::filesystem::exists(folder / "both/right/lesson-01-ring-stitches-1-to-10-p1.png"));
  const Said none = call(folder, "handouts a.course.toml --into both --lesson 9 --dpi 72");
  CHECK(none.code == 2);
  CHECK(none.err == "tellekant: there is no lesson 9: the course has 2\n");
}

TEST_CASE("handouts: a file in the folder's place is a clear error and nothing is changed") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  put(folder, "pages", "mine");
  const Said said = call(folder, "handouts a.course.toml --into pages --dpi 72");
  CHECK(said.code == 3);
  CHECK(said.err.find("tellekant: ") == 0);
  CHECK(bytes_of(folder / "pages") == "mine");
}

TEST_CASE("tidy prints, and replaces only when asked; a bad file stays as it is") {
  const TestFolder folder;
  const std::string untidy = "# mine\nformat=1\n[cloth]\ncount=22\n[course]\ntitle='Two'\n";
  put(folder, "a.course.toml", untidy);
  const Said printed = call(folder, "tidy a.course.toml");
  CHECK(printed.code == 0);
  CHECK(bytes_of(folder / "a.course.toml") == untidy);
  CHECK(call(folder, "tidy a.course.toml --write").out == "");
  CHECK(bytes_of(folder / "a.course.toml") == printed.out);
  CHECK(call(folder, "tidy a.course.toml").out == printed.out);
  put(folder, "bad.course.toml", "format = 1\n[course\n");
  CHECK(call(folder, "tidy bad.course.toml --write").code == 2);
  CHECK(bytes_of(folder / "bad.course.toml") == "format = 1\n[course\n");
  CHECK(call(folder, "tidy - --write", "cat a.course.toml |").code == 2);
}

TEST_CASE("new makes a course that checks without a snag, and never overwrites") {
  const TestFolder folder;
  CHECK(call(folder, "new evening.course.toml").code == 0);
  const Said checked = call(folder, "check evening.course.toml");
  CHECK(checked.code == 0);
  CHECK(checked.out + checked.err == "");
  put(folder, "mine.course.toml", "mine");
  const Said again = call(folder, "new mine.course.toml");
  CHECK(again.code == 3);
  CHECK(again.err == "tellekant: cannot make mine.course.toml: File exists\n");
  CHECK(bytes_of(folder / "mine.course.toml") == "mine");
}

TEST_CASE("mistake: sentences on standard output, exit 1 where it matters; what is not there is a wrong call") {
  const TestFolder folder;
  put(folder, "a.course.toml", small_course);
  const Said whole = call(folder, "mistake a.course.toml --part ring --from 1 --off '1 E'");
  CHECK(whole.code == 0);  // nothing else is stitched: it may lie one thread further on
  CHECK(whole.out.find("It does not matter") == 0);
  const Said bent = call(folder, "mistake a.course.toml --part ring --from 6 --done 10 --off '1 E' '1 S'");
  CHECK(bent.code == 1);
  CHECK(bent.out.find("unpick 5 stitches: the last right one is stitch 5.") != std::string::npos);
  CHECK(bent.err == "");
  for (const char* wrong : {"--part rings --from 1 --off '1 E'", "--part ring --from 21 --off '1 E'", "--part ring --from 1 --off '1 NE'",
                            "--part ring --from 1 --off E", "--part ring --from 5 --done 4 --off '1 E'", "--part ring --from 1 --off '1 E' '1 W'"}) {
    const Said said = call(folder, std::string("mistake a.course.toml ") + wrong);
    INFO(wrong);
    CHECK(said.code == 2);
    CHECK(said.out == "");
    CHECK(said.err != "");
  }
}

TEST_CASE("calls that are wrong exit with 2 and say why; help and version with 0") {
  const TestFolder folder;
  for (const char* wrong : {"", "chck x", "plan", "plan x --hand middle", "handouts x", "handouts x --into y --dpi 20", "handouts x --into y --as pdf", "calendar x", "mistake x", "mistake x --part ring --from 0 --off \"1 E\""}) {
    const Said said = call(folder, wrong);
    INFO(wrong);
    CHECK(said.code == 2);
    CHECK(said.out == "");
    CHECK(said.err != "");
  }
  for (const char* command : {"", "check ", "plan ", "handouts ", "mistake ", "tidy ", "new "}) {
    const Said help = call(folder, std::string(command) + "--help");
    CHECK(help.code == 0);
    CHECK(help.out.find("Example:\n  tellekant") != std::string::npos);
    CHECK(help.err == "");
  }
  CHECK(call(folder, "--version").out.find("tellekant ") == 0);
}

TEST_CASE("files that cannot be read: missing, a folder; nothing on standard output, exit 2") {
  const TestFolder folder;
  std::filesystem::create_directory(folder / "dir");
  for (const char* file : {"nowhere.course.toml", "dir"}) {
    const Said said = call(folder, std::string("plan ") + file);
    CHECK(said.code == 2);
    CHECK(said.out == "");
    CHECK(said.err.find(file) != std::string::npos);
  }
}
