// The window speaks one language, what is written for the class the course's own.
#include <cstdlib>

#include "app/settings.h"
#include "app/windowless.h"
#include "publish/languages.h"
#include "session/edits.h"
#include "session/mends.h"
#include "session/split_again.h"

namespace {

const std::string frost = std::string(TELLEKANT_ROOT) + "/lessons/frost.course.toml";

/// One of every edit of a course.
std::vector<std::string> edit_names(const course::Course& course) {
  const session::Edit edits[] = {
      session::add_lesson(0, "x"), session::rename_lesson(0, "x"), session::remove_lesson(0), session::move_lesson(0, 1), session::move_work(course, 0, 0, 1),
      session::write_lessons({}), session::take_split(course, {}), session::lock_lesson(0, true), session::change_notes(0, "x"),
      session::change_pace(course::Pace::beginner), session::add_student(), session::change_student(0, "x", course::Hand::left), session::remove_student(0),
      session::change_speed("blocks", 3), session::rename_part(course, 0, "x"), session::remove_part(course, 0), session::move_part(course, 0, {1, 1}),
      session::change_repeat(0, {}), session::copy_part(course, 0, {4, 4})};
  std::vector<std::string> names;
  for (const session::Edit& edit : edits) names.push_back(edit.name);
  for (const char* of_a_panel : {"add leg", "take back", "lengthen leg", "move leg", "move one place", "change size", "change places", "change thread",
                                 "change minutes", "change home work", "change minutes for the cloth", "change minutes for the wash", "change number of lessons", "change spares", "change students", "change language"})
    names.emplace_back(of_a_panel);
  return names;
}

struct Environment {
  ~Environment() {
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) unsetenv(name);
  }
  std::string with(const char* name, const char* value) {
    setenv(name, value, 1);
    return app::system_language();
  }
};

}  // namespace

TEST_CASE("every edit has a name in every language, of its own in Norwegian") {
  Windowless w(frost);
  for (const std::string& name : edit_names(*w.desk->course())) {
    CAPTURE(name);
    w.desk->speak("en");
    const std::string english = w.desk->edit_words(name);
    w.desk->speak("nb");
    CHECK(w.desk->edit_words(name) != english);
  }
  w.desk->speak("nb");
  CHECK(w.desk->edit_words("change over") == "endre «over»");
  CHECK(w.desk->edit_words("add cable") == "legg til kabelsting");
}

TEST_CASE("the system's language: the first of LC_ALL, LC_MESSAGES and LANG that says something (POSIX)") {
  Environment e;
  for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) unsetenv(name);
  CHECK(app::system_language() == "en");
  CHECK(e.with("LANG", "nb_NO.UTF-8") == "nb");
  CHECK(e.with("LANG", "nn_NO") == "nb");
  CHECK(e.with("LANG", "C.UTF-8") == "en");
  CHECK(e.with("LANG", "fr_FR.UTF-8") == "en");
  CHECK(e.with("LC_MESSAGES", "nb_NO") == "nb");
  CHECK(e.with("LC_ALL", "en_GB") == "en");
}

TEST_CASE("the window in Norwegian, the pages in the course's language; a course begun there is Norwegian") {
  Windowless w(frost);
  w.desk->speak("nb");
  w.frames(2);
  CHECK(w.desk->say("desk.menu.show") == "Vis");
  CHECK(w.desk->voice().phrases.language() == "nb");
  CHECK(w.desk->page_voice().phrases.language() == "en");
  w.desk->apply(session::change_course("language", "\"nb\"", "change language"));
  w.settle();
  w.desk->speak("en");
  CHECK(w.desk->page_voice().phrases.language() == "nb");
  CHECK(&publish::phrases_in("nb") == &publish::phrases_in("nb"));
  CHECK(publish::phrases_in("tlh").language() == "en");
}
