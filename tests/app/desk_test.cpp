// The window's panels driven by keys and clicks without a window: what is asked for is done, to the course file and to how it is looked at.
#include <fstream>

#include "app/teach.h"
#include "app/windowless.h"
#include "file/course_file.h"
#include "file/schema.h"
#include "list/contrast.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";
constexpr float second_card_x = 300, cards_y = 110;

}  // namespace

TEST_CASE("a course opens, its lessons stand in a row, a click chooses one") {
  Windowless w(frost);
  REQUIRE(w.desk->plan());
  CHECK(w.desk->lesson == 1);
  w.click(second_card_x, cards_y);
  CHECK(w.desk->lesson == 2);
  w.mapped(ImGuiKey_PageDown);
  CHECK(w.desk->lesson == 3);
}

TEST_CASE("the needle walks by keys: step, before, next corner, end, home; playing moves it on") {
  Windowless w(frost);
  w.mapped(ImGuiKey_PageDown);
  w.mapped(ImGuiKey_PageDown);
  w.key('N');
  w.key('N');
  w.key('P');
  CHECK(w.desk->walk.step == 1);
  w.key('C');
  const auto corner = app::walk_place(*w.desk);
  REQUIRE(corner);
  const auto& stitches = w.desk->plan()->trails[static_cast<std::size_t>(corner->trail)].trail.stitches;
  CHECK(stitches[static_cast<std::size_t>(corner->stitch)].leg != stitches[static_cast<std::size_t>(corner->stitch - 1)].leg);
  w.mapped(ImGuiKey_End);
  CHECK(w.desk->walk.step == 155);
  w.mapped(ImGuiKey_Home);
  CHECK(w.desk->walk.step == 0);
  w.key(' ');
  CHECK(w.desk->walk.playing);
  w.frames(60);
  CHECK(w.desk->walk.step >= 1);
}

TEST_CASE("adding a lesson changes the course file; undo and redo by keys bring the very bytes") {
  Windowless w(frost);
  const std::string before = w.desk->session.text();
  w.click(1330, cards_y);
  const std::string after = w.desk->session.text();
  CHECK(after.find("title = \"A new lesson\"") != std::string::npos);
  CHECK(file::read(after).faults.empty());
  w.key('Z', true);
  CHECK(w.desk->session.text() == before);
  w.key('Y', true);
  CHECK(w.desk->session.text() == after);
  w.key('S', true);
  CHECK(bytes_of(w.folder / "a.course.toml") == after);
  CHECK(w.desk->session.saved());
}

TEST_CASE("closing with unsaved work asks; the wheel zooms about the pointer; light and dark, both hands") {
  Windowless w(frost);
  w.click(1330, cards_y);
  w.key('Q', true);
  CHECK(!w.desk->quit);
  CHECK(w.desk->asking == app::Asking::unsaved_quit);
  w.desk->asking = app::Asking::nothing;
  w.settle();
  const float pixels = w.desk->view.pixels;
  ImGui::GetIO().MousePos = {500, 400};
  w.frames(2);
  ImGui::GetIO().MouseWheel = 1;
  w.frames(1);
  CHECK(w.desk->view.pixels > pixels);
  w.key('D');
  CHECK(w.desk->light == app::Light::dark);
  w.key('L');
  CHECK(w.desk->hand == say::Hand::left);
}

TEST_CASE("the pages of a lesson are the real ones, and can be written") {
  Windowless w(frost);
  int made = 0;
  w.desk->textures = {[&](const paint::Pixels& pixels) { made = pixels.width; return static_cast<void*>(&made); }, [](void*) {}};
  w.key('P', true);
  w.frames(3);
  CHECK(w.desk->asking == app::Asking::pages);
  CHECK(w.desk->preview.pages >= 1);
  CHECK(made == 1240);  // 210 mm at 150 dots an inch
  made = 0;
  w.desk->apply(session::change_course("language", "\"nb\"", "change language"));
  w.settle();
  CHECK(made == 1240);  // drawn anew, since the course is another
  CHECK(w.desk->preview.of->course.choices.language == "nb");
}

TEST_CASE("a file with faults opens as a list of them, beside an unharmed window") {
  Windowless w(frost);
  std::ofstream(w.folder / "bad.course.toml") << "format = 1\n[course]\ntitel = \"x\"\n";
  REQUIRE(w.desk->session.open(w.folder / "bad.course.toml"));
  w.settle();
  CHECK(!w.desk->session.faults().empty());
  w.frames(3);
  CHECK(!w.desk->plan());
}

TEST_CASE("text and lines of both themes keep the contrast of WCAG 2.2") {
  for (const app::Light light : {app::Light::light, app::Light::dark}) {
    const app::Theme t = app::theme(light);
    CHECK(list::contrast(t.ink, t.panel) >= 7);
    CHECK(list::contrast(t.quiet, t.panel) >= 4.5);
    CHECK(list::contrast(t.on_deep, t.deep) >= 4.5);
    CHECK(list::contrast(t.accent, t.panel) >= 4.5);
    CHECK(list::contrast(t.chart.now, t.chart.ground) >= 4.5);
    CHECK(list::contrast(t.chart.before, t.chart.ground) >= 2);
  }
}

TEST_CASE("every kind, and every stage that has a speed, has a name in words") {
  const words::Phrases phrases = phrases_in(Language::english);
  for (const std::string& name : file::speed_names()) CHECK(phrases.has("kind." + name));
  for (const stitch::Kind* kind : stitch::kinds()) CHECK(phrases.has("kind." + std::string(kind->name)));
}

TEST_CASE("every key of every kind has words that teach it") {
  const words::Phrases phrases = phrases_in(Language::english);
  for (const stitch::Kind* kind : stitch::kinds())
    for (const stitch::KeySpec& spec : kind->keys) {
      const std::string key = app::word_of_key(*kind, spec);
      INFO(key);
      CHECK(phrases.has(key));
    }
}

TEST_CASE("the pointer on the count-in shows what a count-in is; off it, nothing") {
  Windowless w(frost);
  const auto shown = [&](float y) {
    ImGui::GetIO().MousePos = {w.size.x - 300, y};
    w.frames(3);
    const ImDrawData& drawn = *ImGui::GetDrawData();
    for (int n = 0; n < drawn.CmdListsCount; ++n)
      if (std::string(drawn.CmdLists[n]->_OwnerName ? drawn.CmdLists[n]->_OwnerName : "").starts_with("##Tooltip")) return true;
    return false;
  };
  CHECK_FALSE(shown(w.size.y - 30));
  bool any = false;
  for (float y = 180; y < 700 && !any; y += 6) any = shown(y);
  CHECK(any);
}

TEST_CASE("a lesson that cuts shows cautions beside its bar; a lesson that does not, none") {
  // A ring of six, five, five and four blocks, and the cutting of the cloth within it: 20 block ends of four threads (geometry).
  TestFolder folder;
  std::ofstream(folder / "cut.course.toml") << "format = 1\n[course]\ntitle = \"Window cloth (invented)\"\nfirst_day = 2027-01-12\nlessons = 3\n"
                                               "[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n"
                                               "[[part]]\nname = \"ring\"\nkind = \"blocks\"\nthread = \"heavy\"\nstart = [0, -24]\n"
                                               "path = \"SE 6, SW 5, NW 5, NE 4\"\n"
                                               "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n"
                                               "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n"
                                               "[[lesson]]\nwork = [\"heart / bars\"]\n";
  Windowless w((folder / "cut.course.toml").string());
  const auto warned = [&] {
    const ImU32 accent = app::paint(w.desk->theme.accent);
    const ImDrawData& drawn = *ImGui::GetDrawData();
    const float sheet = w.size.x * 0.7F;
    for (int n = 0; n < drawn.CmdListsCount; ++n)
      for (const ImDrawVert& vertex : drawn.CmdLists[n]->VtxBuffer)
        if (vertex.col == accent && vertex.pos.x > sheet && vertex.pos.y < w.size.y * 0.5F) return true;
    return false;
  };
  CHECK_FALSE(warned());
  CHECK(app::lesson_size(*w.desk) == "100 stitches");
  w.mapped(ImGuiKey_PageDown);
  REQUIRE(w.desk->lesson == 2);
  CHECK(warned());
  CHECK(app::lesson_size(*w.desk) == "80 snips");
}

TEST_CASE("save as offers a name after the title, asks before another file is replaced, and keeps the name from folder to folder") {
  Windowless w(std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml");
  w.desk->session.begin("format = 1\n\n[course]\ntitle = \"Winter Mark\"\n\n[cloth]\ncount = 22\n\n[thread.heavy]\npearl = 5\n");
  w.settle();
  w.desk->asking = app::Asking::save_as;
  w.frames(3);
  const std::filesystem::path offered = w.folder / "winter-mark.course.toml";
  CHECK(w.desk->typed == offered.string());
  std::ofstream(offered) << "another course";
  const auto there = [&] {
    std::ifstream in(offered);
    return std::string(std::istreambuf_iterator<char>(in), {});
  };
  w.mapped(ImGuiKey_Enter);
  CHECK(there() == "another course");
  CHECK(!w.desk->message.empty());
  w.mapped(ImGuiKey_Enter);
  CHECK(there().find("Winter Mark") != std::string::npos);
  CHECK(w.desk->asking == app::Asking::nothing);
  w.desk->asking = app::Asking::save_as;  // its own file: nothing to ask
  w.frames(3);
  w.mapped(ImGuiKey_Enter);
  CHECK(w.desk->asking == app::Asking::nothing);
}
