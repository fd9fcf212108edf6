// The packet: what lies in it, that it is written again only where something changed, and a ZIP that other programs read.
#include "publish/packet.h"

#include <doctest/doctest.h>

#include "publish/handed_out.h"
#include "publish/zip.h"

namespace {

/// A row of two blocks in two lessons.
course::Course small(const std::string& second = "The second block") {
  return course_from(
      "format = 1\n[course]\ntitle = \"Two Blocks\"\nteacher = \"Solveig Tynset (invented)\"\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n"
      "[thread.t]\npearl = 5\n[[part]]\nname = \"row\"\nkind = \"blocks\"\nthread = \"t\"\nstart = [0, 0]\nfirst = \"upright\"\npath = \"E "
      "2\"\n"
      "[[lesson]]\ntitle = \"The first block\"\nwork = [\"row / 1..5\"]\n[[lesson]]\ntitle = \"" +
      second + "\"\nwork = [\"row / 6..9\"]\n");
}

publish::HandoutOrder order_into(const TestFolder& folder, publish::Packet packet) {
  publish::HandoutOrder order;
  order.into = folder.path;
  order.forms = {publish::Form::packet};
  order.packet = packet;
  order.dpi = 72;
  order.stamp = "20270101T120000Z";
  return order;
}

std::string lines_with(const std::string& text, const std::string& part) {
  std::istringstream in(text);
  std::string found;
  for (std::string line; std::getline(in, line);)
    if (line.find(part) != std::string::npos) found += line + '\n';
  return found;
}

}  // namespace

TEST_CASE(
    "the packet holds every form, letter, calendar and shopping list; made again, nothing is touched, and a change touches its own files") {
  const TestFolder folder;
  publish::HandoutOrder order = order_into(folder, publish::Packet::folder);
  const publish::Written written = test::hand_out(small(), order);
  REQUIRE(written.files.size() == 1);
  const std::filesystem::path packet = written.files[0];
  CHECK(packet == folder / "two-blocks-packet");
  const std::string contents = bytes_of(packet / "contents.txt");
  for (const char* path : {"letter.txt\n", "calendar.ics\n", "shopping-list.txt\n", "shopping-list.csv\n", "pages/course-two-blocks.pdf\n",
                           "pictures/lesson-01-the-first-block-p1.png\n", "close-ups/lesson-01-the-first-block-a.svg\n",
                           "review/index.html\n", "film/lesson-01-the-first-block-cues.txt\n"})
    CHECK_MESSAGE(contents.find(path) != std::string::npos, std::string(path));
  const std::string letter = bytes_of(packet / "letter.txt");
  CHECK(letter.find("Tuesday 12 January 2027") != std::string::npos);
  CHECK(letter.find("The second block") != std::string::npos);
  CHECK(letter.find("Solveig Tynset (invented)") != std::string::npos);

  const auto place = std::filesystem::last_write_time(packet);
  order.stamp = "20270105T120000Z";  // a later day: still nothing has changed
  test::hand_out(small(), order);
  CHECK(std::filesystem::last_write_time(packet) == place);
  CHECK(bytes_of(packet / "calendar.ics").find("DTSTAMP:20270101T120000Z") != std::string::npos);

  const course::Course other = small("Round again");
  const auto kept = std::filesystem::last_write_time(packet / "pictures/lesson-01-the-first-block-p1.png");
  test::hand_out(other, order);
  CHECK(std::filesystem::last_write_time(packet / "pictures/lesson-01-the-first-block-p1.png") == kept);
  CHECK(std::filesystem::exists(packet / "pages/lesson-02-round-again.pdf"));
  CHECK(lines_with(bytes_of(packet / "contents.txt"), "the-second-block") == "");
  CHECK(!std::filesystem::exists(packet / "pages/lesson-02-the-second-block.pdf"));
  CHECK(bytes_of(packet / "calendar.ics").find("DTSTAMP:20270105T120000Z") != std::string::npos);
}

TEST_CASE("in Norwegian the packet's folders and files have Norwegian names, and the letter tells of each") {
  const auto phrases = words::Phrases::read(assets::table("phrases/nb.toml"), "assets/phrases/nb.toml");
  REQUIRE(phrases.has_value());
  const TestFolder folder;
  const course::Course course = small();
  const auto written = publish::handouts(course, test::planned(course), *phrases, order_into(folder, publish::Packet::folder), {}, {});
  REQUIRE(written.has_value());
  const std::filesystem::path packet = written->files.at(0);
  CHECK(packet == folder / "two-blocks-pakke");
  const std::string letter = bytes_of(packet / "brev.txt");
  int told = 0;
  for (const auto& entry : std::filesystem::directory_iterator(packet)) {
    const std::string name = entry.path().filename().string();
    if (name == "brev.txt" || name == "contents.txt") continue;
    const std::string as_told = name == "kalender.ics" ? name : entry.path().stem().string();
    CHECK_MESSAGE(letter.find("  " + as_told + ": ") != std::string::npos, name);
    ++told;
  }
  CHECK(told == 8);  // five folders, the calendar, the shopping list twice
}

TEST_CASE("interrupted, the old packet is as it was and nothing lies beside it") {
  const TestFolder folder;
  const publish::HandoutOrder order = order_into(folder, publish::Packet::folder);
  test::hand_out(small(), order);
  const std::size_t files = folder.files();
  const std::string contents = bytes_of(folder / "two-blocks-packet/contents.txt");
  const course::Course other = small("Round again");
  const plan::Plan plan = test::planned(other);
  std::stop_source stop;
  const auto written = publish::handouts(other, plan, test::english(), order, stop.get_token(), [&](int done, int) {
    if (done == 10) stop.request_stop();
  });
  REQUIRE(!written);
  CHECK(written.error().kind == base::TroubleKind::cancelled);
  CHECK(folder.files() == files);
  CHECK(bytes_of(folder / "two-blocks-packet/contents.txt") == contents);
  std::size_t entries = 0;
  for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder.path)) ++entries;
  CHECK(entries == 1);
}

TEST_CASE("Python's reader finds the ZIP whole, with the files of the folder; the same bytes again") {
  const TestFolder folder, again;
  const publish::Written written = test::hand_out(small(), order_into(folder, publish::Packet::zip));
  test::hand_out(small(), order_into(folder, publish::Packet::folder));
  test::hand_out(small(), order_into(again, publish::Packet::zip));
  REQUIRE(written.files == std::vector{folder / "two-blocks-packet.zip"});
  CHECK(bytes_of(written.files[0]) == bytes_of(again / "two-blocks-packet.zip"));
  const test::Heard heard = test::ask("cd " + test::quoted(folder.path) + " && /usr/bin/python3 -c \"" +
                                      "import zipfile; z = zipfile.ZipFile('two-blocks-packet.zip'); assert z.testzip() is None; "
                                      "print(len(z.namelist()), all(z.read(n) == open(n, 'rb').read() for n in z.namelist()))\"");
  CHECK(heard.out == std::to_string(folder.files() - 2) + " True\n");  // all but the ZIP itself and contents.txt
  CHECK(publish::from_zip(written.files[0], "calendar.ics") == bytes_of(folder / "two-blocks-packet/calendar.ics"));
}
