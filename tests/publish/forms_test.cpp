// Every form of the sample for both hands in both languages, looked over by other programs; titles full of markup; the densities that there
// are.
#include <doctest/doctest.h>

#include "publish/handed_out.h"

namespace {

const words::Phrases& norwegian() {
  static const words::Phrases phrases = [] {
    auto read = words::Phrases::read(assets::table("phrases/nb.toml"), "assets/phrases/nb.toml");
    REQUIRE_MESSAGE(read.has_value(), read.error().what);
    return *std::move(read);
  }();
  return phrases;
}

course::Course row(const std::string& title) {
  return course_from("format = 1\n[course]\ntitle = '" + title + "'\nteacher = '" + title +
                     "'\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n[thread.t]\npearl = 5\n" +
                     "[[part]]\nname = \"row\"\nkind = \"blocks\"\nthread = \"t\"\nstart = [0, 0]\nfirst = \"upright\"\npath = \"E 1\"\n" +
                     "[[lesson]]\ntitle = '" + title + "'\nwork = [\"row\"]\n");
}

void looked_over(const TestFolder& folder, const char* ending, const std::string& program) {
  const test::Heard heard = test::ask("find " + test::quoted(folder.path) + " -name '*." + ending + "' -print0 | xargs -0 -n1 sh -c '" +
                                      program + " \"$0\" || exit 255'");
  CHECK_MESSAGE(heard.code == 0, heard.out);
}

}  // namespace

TEST_CASE("pngcheck, qpdf, pdfinfo, pdffonts, pdftotext and xmllint find no fault in any file, either hand, either language") {
  const course::Course course = test::sample();
  const plan::Plan plan = test::planned(course);
  for (const words::Phrases* phrases : {&test::english(), &norwegian()}) {
    const TestFolder folder;
    publish::HandoutOrder order;
    order.into = folder.path;
    order.forms = {publish::Form::png, publish::Form::pdf, publish::Form::svg, publish::Form::web};
    order.hand = course::Hand::both;
    order.dpi = 72;
    const auto written = publish::handouts(course, plan, *phrases, order, {}, {});
    REQUIRE_MESSAGE(written.has_value(), written.error().what);
    CHECK(written->files.size() > 60);
    looked_over(folder, "png", "pngcheck -q");
    looked_over(folder, "pdf", "qpdf --check");
    looked_over(folder, "pdf", "pdfinfo");
    looked_over(folder, "pdf", "pdftotext -q");
    looked_over(folder, "pdf", "! pdffonts \"$0\" | tail -n +3 | grep -v \"yes yes yes\" #");
    looked_over(folder, "svg", "xmllint --noout");
    looked_over(folder, "html", "! xmllint --html --noout \"$0\" 2>&1 | grep error | grep -v \"Tag .* invalid\" #");
  }
}

TEST_CASE("a title full of markup is text in every file of the packet") {
  const std::string wild = "<script>alert(1)</script> & \"quoted\", {{title}}; 1%";
  const TestFolder folder;
  publish::HandoutOrder order;
  order.into = folder.path;
  order.forms = {publish::Form::packet};
  order.dpi = 72;
  order.stamp = "20270101T120000Z";
  const auto packet = test::hand_out(row(wild), order).files.at(0);
  CHECK(bytes_of(packet / "letter.txt").find(wild) != std::string::npos);
  CHECK(test::ask("pdfinfo " + test::quoted(packet) + "/pages/lesson-01-*.pdf").out.find(wild) != std::string::npos);
  CHECK(test::ask("identify -format '%[Title]' " + test::quoted(packet) + "/pictures/*-p1.png").out.find(wild) != std::string::npos);
  CHECK(test::ask("xmllint --html --noout --xpath 'string(//h1)' " + test::quoted(packet) + "/review/lesson-01-*.html 2>/dev/null")
            .out.find(wild) != std::string::npos);
  CHECK(test::ask("grep -c '<script>alert' " + test::quoted(packet) + "/review/*.html " + test::quoted(packet) + "/close-ups/*.svg " +
                  test::quoted(packet) + "/film/*.vtt | grep -v ':0$'")
            .out == "");
  CHECK(bytes_of(packet / "calendar.ics").find("\\, {{title}}\\; 1%") != std::string::npos);  // RFC 5545, 3.3.11: comma and semicolon
}

TEST_CASE("black and white: ImageMagick and grep find no colour in any page or close-up; in colour they do") {
  for (const publish::Ink ink : {publish::Ink::black, publish::Ink::colours}) {
    CAPTURE(static_cast<int>(ink));
    const TestFolder folder;
    publish::HandoutOrder order;
    order.into = folder.path;
    order.lesson = 4;
    order.ink = ink;
    order.dpi = 72;
    order.forms = {publish::Form::png, publish::Form::svg};
    test::hand_out(test::sample(), order);
    const bool black = ink == publish::Ink::black;
    const std::string at = test::quoted(folder.path);
    CHECK((test::ask("identify -format '%[channels]\\n' " + at + "/*.png | sort -u").out == "gray\n") == black);
    CHECK(test::ask("grep -ohi '#[0-9a-f]\\{6\\}' " + at + "/*.svg | sort -u | wc -l").out != "0\n");
    CHECK((test::ask("grep -ohi '#[0-9a-f]\\{6\\}' " + at + "/*.svg | grep -vi '#\\([0-9a-f][0-9a-f]\\)\\1\\1' | sort -u").out == "") ==
          black);
  }
}

TEST_CASE("72 to 1200 dots an inch: ImageMagick reads the size of A4 (ISO 216) and the density") {
  for (const auto& [dpi, said] :
       {std::pair{72, "595 842 28"}, {150, "1240 1754 59"}, {300, "2480 3508 118"}, {600, "4961 7016 236"}, {1200, "9921 14031 472"}}) {
    CAPTURE(dpi);
    const TestFolder folder;
    publish::HandoutOrder order;
    order.into = folder.path;
    order.dpi = dpi;
    test::hand_out(row("Row"), order);
    CHECK(test::ask("identify -ping -units PixelsPerCentimeter -format '%w %h %x' " + test::quoted(folder.path) + "/*-p1.png")
              .out.substr(0, std::string(said).size()) == said);
  }
  for (const double dpi : {71.0, 1201.0}) {
    const TestFolder folder;
    publish::HandoutOrder order;
    order.into = folder.path;
    order.dpi = dpi;
    const course::Course course = row("Row");
    CHECK(!publish::handouts(course, test::planned(course), test::english(), order, {}, {}));
    CHECK(folder.files() == 0);
  }
}
