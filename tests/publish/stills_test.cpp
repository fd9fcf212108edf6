// Files of stills for a film: sizes, grounds, names in the order of the lesson, cue sheets that agree, moving pictures.
#include <doctest/doctest.h>

#include <algorithm>

#include "publish/cues.h"
#include "publish/handed_out.h"

TEST_CASE("cue sheets: text, CSV and WebVTT say the same times; words are safe in each") {
  const std::vector<publish::Cue> cues{{"a-001.png", "A: Start", "one, \"two\" <b> & three", 3.25},
                                       {"a-002.png", "A: Start", "four", 61.5}};
  CHECK(publish::cues_vtt(cues) ==
        "WEBVTT\n\na-001.png\n00:00:00.000 --> 00:00:03.250\none, &quot;two&quot; &lt;b&gt; &amp; three\n\na-002.png\n00:00:03.250 --> "
        "00:01:04.750\nfour\n");
  CHECK(publish::chapters_vtt(cues) == "WEBVTT\n\na-001.png\n00:00:00.000 --> 00:01:04.750\nA: Start\n");
  CHECK(publish::cues_csv(test::english(), cues) ==
        "file,begins at,seconds,picture,said\r\na-001.png,00:00:00.000,3.2,A: Start,\"one, \"\"two\"\" <b> & three\"\r\n"
        "a-002.png,00:00:03.250,61.5,A: Start,four\r\n");
  CHECK(publish::cues_text(test::english(), "Lesson", cues).find("00:00:03  61.5 s  a-002.png\n    four\n") != std::string::npos);
}

namespace {

/// A row of two blocks: 9 stitches.
const std::string row =
    "format = 1\n[course]\ntitle = \"Row\"\n[cloth]\ncount = 22\n[thread.t]\npearl = 5\n[[part]]\nname = \"row\"\nkind = \"blocks\"\n"
    "thread = \"t\"\nstart = [0, 0]\nfirst = \"upright\"\npath = \"E 2\"\n";

publish::Written stills(const TestFolder& folder, paint::Ground ground) {
  publish::HandoutOrder order;
  order.into = folder.path;
  order.forms = {publish::Form::stills};
  order.ground = ground;
  return test::hand_out(course_from(row), order);
}

std::vector<std::string> names(const publish::Written& written, const std::string& part) {
  std::vector<std::string> all;
  for (const auto& file : written.files)
    if (file.string().find(part) != std::string::npos) all.push_back(file.filename().string());
  return all;
}

}  // namespace

TEST_CASE("two sizes of each still, in the order of the lesson by name; ImageMagick reads size and ground, pngcheck every file") {
  const TestFolder folder;
  const publish::Written written = stills(folder, paint::Ground::clear);
  const std::vector<std::string> small = names(written, "/1080/"), large = names(written, "/2160/");
  CHECK(small == large);
  CHECK(small.size() >= 10);
  CHECK(std::is_sorted(small.begin(), small.end()));
  REQUIRE(small.front() == "lesson-01-row-001-a1.png");
  CHECK(!names(written, "-moving.png").empty());
  const auto stills_folder = folder / "stills";
  const std::string first = test::quoted(stills_folder / "1080" / small.front());
  CHECK(test::ask("identify -format '%w %h' " + first).out == "1920 1080");
  CHECK(test::ask("identify -format '%w %h' " + test::quoted(stills_folder / "2160" / small.front())).out == "3840 2160");
  CHECK(test::ask("convert " + first + " -format '%[fx:p{0,0}.a] %[fx:p{300,300}.a]' info:").out == "0 1");
  const test::Heard looked = test::ask("pngcheck -q " + test::quoted(stills_folder) + "/*.png " + test::quoted(stills_folder) + "/*/*.png");
  CHECK_MESSAGE(looked.code == 0, looked.out);
}

TEST_CASE("laid on white, a still with nothing under it is the plain still") {
  const TestFolder plain, clear;
  stills(plain, paint::Ground::white);
  stills(clear, paint::Ground::clear);
  const std::string name = "stills/1080/lesson-01-row-007-a7.png";
  const test::Heard heard =
      test::ask("convert " + test::quoted(clear / name) + " -background white -flatten " + test::quoted(clear / "flat.png") +
                " && compare -metric PAE " + test::quoted(clear / "flat.png") + " " + test::quoted(plain / name) + " null:; true");
  const double worst = std::atof(heard.out.substr(heard.out.find('(') + 1).c_str());
  CHECK_MESSAGE(worst <= 2.0 / 255, heard.out);
}

TEST_CASE("the moving picture has a frame a still, each shown as long as the cue sheet says; Python reads the sheet") {
  const TestFolder folder;
  const publish::Written written = stills(folder, paint::Ground::white);
  const std::string python =
      "import csv,struct,sys\n"
      "rows=[r for r in csv.DictReader(open(sys.argv[2],newline='')) if r['file'].split('-')[-1].startswith('a')]\n"
      "d=open(sys.argv[1],'rb').read();at=8;times=[];said=0\n"
      "while at<len(d):\n"
      " n,=struct.unpack('>I',d[at:at+4]);t=d[at+4:at+8];c=d[at+8:at+8+n];at+=12+n\n"
      " if t==b'acTL': said,=struct.unpack('>I',c[:4])\n"
      " if t==b'fcTL': a,b=struct.unpack('>HH',c[20:24]);times.append(a/b)\n"
      "print(said==len(times)==len(rows),all(abs(float(r['seconds'])-t)<0.006 for r,t in zip(rows,times)))\n";
  std::ofstream(folder / "read.py") << python;
  const test::Heard heard =
      test::ask("/usr/bin/python3 " + test::quoted(folder / "read.py") + " " + test::quoted(folder / "stills/lesson-01-row-a-moving.png") +
                " " + test::quoted(folder / "stills/lesson-01-row-cues.csv"));
  CHECK(heard.out == "True True\n");
}
