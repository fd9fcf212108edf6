// The state of the window: the course being edited and how it is looked at. Panels read it and return edits or change only how it is looked at; none keeps
// state of its own.
#pragma once

#include <array>
#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <thread>
#include <variant>
#include <vector>

#include "app/by_hand.h"
#include "app/paper_chart.h"
#include "app/theme.h"
#include "paint/cairo/paint.h"
#include "picture/chart.h"
#include "picture/handout.h"
#include "publish/languages.h"
#include "publish/publish.h"
#include "say/say.h"
#include "session/session.h"
#include "session/split_again.h"
#include "words/phrases.h"

namespace app {

/// How the cloth is looked at. x, y: the hole at the upper left, in the picture's own holes (mirrored for the left hand).
struct View {
  double x = 0, y = 0;
  float pixels = 16;  ///< of one thread
  bool fit = true;    ///< show the whole design at the next frame
  bool whole = true;  ///< the whole design stays in sight as the window changes, until it is moved or zoomed
  bool fit_lesson = false;  ///< show what the lesson stitches at the next frame
  float w = 0, h = 0; ///< pixels of the view when it was last fitted
};

/// The needle's walk through the lesson's sections, one stitch after another.
struct Walk {
  int step = 0;  ///< stitch of the lesson, from 0
  bool playing = false;
  double since = 0;  ///< seconds since the last step
};

/// What was said about a student's mistake, while the needle stays where it was asked.
struct MistakeAsked {
  session::Seen of;
  int lesson = 0, step = 0;
  say::Hand hand = say::Hand::right;
  cloth::Hole off;  ///< on the chart
  bool show = false;  ///< the sheet brings it into sight at the next frame
  std::vector<std::string> said;
};

/// The cloth as the scissors leave it, instead of the needle's walk.
struct CutView {
  bool shown = false;
  int snips = 0;  ///< of the lesson's, made
};

enum class Asking { nothing, open, save_as, paper_chart, unsaved_quit, unsaved_work, changed_on_disk, begin, keys, pages, rename_lesson, split, buying, class_list };

/// Makes a texture of pixels and lets it go; the window's own. Without a window there are none.
struct Textures {
  std::function<void*(const paint::Pixels&)> make;
  std::function<void(void*)> drop;
};

/// An entry of a lesson's work while it is pulled onto another lesson.
struct CarriedWork {
  int lesson = 0, item = 0;  ///< from 0
};
inline constexpr const char* carried_work = "work";

/// A picture of a paper chart under the grid.
struct PaperChart {
  bool there = false, shown = true, placing = false;
  float strength = 0.5F;
  int width = 1, height = 1;  ///< pixels
  void* texture = nullptr;
  Laid at;
  int clicked = 0;  ///< points clicked so far while it is being laid in place
  std::array<PicturePoint, 2> points;
  std::array<cloth::Hole, 2> holes;
};

struct PagePreview {
  session::Seen of;  ///< it is drawn anew where the course has changed
  int lesson = 0;
  int page = 0, pages = 0;
  void* texture = nullptr;
  float width = 1, height = 1;  ///< its shape
  float foot = 0;  ///< how high what stood under it was in the last frame, px
};

/// The answers of a new course, as they are being typed.
struct NewAnswers {
  std::string title, first_day;
  int weeks = 6, count = 22;
  int size[2] = {0, 0};  ///< threads; 0: as the design will need
};

/// Pages being written on a thread of their own; what it says is guarded by the atomics, the outcome is read once it is done.
struct Writing {
  std::atomic<int> done{0}, of{0};
  std::atomic<bool> finished{false};
  std::string outcome;
  std::filesystem::path into;
  bool good = false;
  std::jthread thread;  // last: it ends before what it writes to
};

/// The course being split again on a thread of its own; what is found is read once it is done.
struct Splitting {
  session::Seen of;
  std::atomic<bool> finished{false};
  std::optional<session::SplitPreview> found;
  std::string trouble;
  std::jthread thread;  // last: it ends before what it writes to
};

/// How pages are to be written.
struct PrintChoice {
  course::Hand hand = course::Hand::right;
  course::Paper paper = course::Paper::a4;
  bool large = false;
  publish::Ink ink = publish::Ink::colours;
  int dpi = 300;
  std::vector<publish::Form> forms{publish::Form::png};
  publish::Sheets sheets = publish::Sheets::single;  ///< of PDF
  publish::Packet packet = publish::Packet::folder;
  paint::Ground ground = paint::Ground::white;       ///< of stills
  bool asked = false;  ///< filled in from the course
};

/// What stands in the field that is being typed into, until it is left; an id of 0: none.
struct Typing {
  ImGuiID id = 0;
  int frame = 0;  ///< the last one that showed it: what vanished with its panel is not taken over
  std::variant<std::string, int, double, std::array<int, 2>, std::array<float, 2>> value;
};

struct Sample {
  std::string name;  ///< empty: the small sample, which is named in the window's language
  std::string text;
};

struct Desk {
  Desk(const words::Phrases& phrases_, std::filesystem::path spare, std::function<void()> ready) : phrases(phrases_), session(std::move(spare), std::move(ready)) {}

  std::reference_wrapper<const words::Phrases> phrases;  ///< of the window
  std::string language;  ///< of the window, as she chose it; empty: as the system says
  session::Session session;
  Light light = Light::light;
  float scale = 1;
  Theme theme = app::theme(Light::light);
  Fonts fonts;
  say::Hand hand = say::Hand::right;

  int lesson = 1;
  View view;
  Walk walk;
  MistakeAsked mistake;
  CutView cut;
  bool show_back = true;
  int alternative = 0;  ///< which of the count-in's landmarks the sheet shows
  Tool tool = Tool::pick;
  Drawing drawing;
  Holding holding;
  std::optional<cloth::Hole> marked_from;  ///< where a wrong stitch was taken hold of, while it is pulled
  std::string picked;  ///< name of the part that is picked; empty: none
  std::optional<cloth::Hole> key_pointer;  ///< where the arrow keys moved the pointer to
  std::uint64_t runs = 0;                  ///< undo steps of drags so far
  std::optional<cloth::Hole> rule_from;  ///< counting rule, while it is dragged

  Asking asking = Asking::nothing;
  NewAnswers answers;
  std::vector<Sample> samples;
  std::vector<std::filesystem::path> recent;  ///< newest first
  float wanted_scale = 0;                     ///< interface scale asked for, 0: none; the fonts are made anew before the next frame
  bool lines_swapped = false;                 ///< the grid's lines stand for the other than the course says (thread or row of holes)
  bool show_later = true;                     ///< later lessons' work is hinted, else hidden
  std::filesystem::path folder;  ///< of the file panel
  std::string typed;             ///< into the file panel or a name
  std::filesystem::path may_replace;  ///< the file that the panel has asked about
  bool type_on = false;               ///< its field takes the keys again at the next frame
  std::string typed_notes;       ///< of a lesson
  Typing typing;
  bool save_when_left = false;   ///< asked for while something was typed
  std::string message;           ///< the last thing that could not be done, or was
  PaperChart paper;
  PagePreview preview;
  PrintChoice print;
  std::unique_ptr<Writing> writing;
  std::unique_ptr<Splitting> splitting;
  std::function<void(const std::filesystem::path&)> show_folder;  ///< the system's own way to show a folder; none without a window
  Textures textures;
  std::unique_ptr<paint::Type> type;
  bool quit = false;

  session::Seen indexed;  ///< the snapshot that `index` was made of
  std::unique_ptr<picture::ChartIndex> index;
  std::unique_ptr<picture::CutIndex> cuts;

  const course::Course* course() const { return session.seen() ? &session.seen()->course : nullptr; }
  const plan::Plan* plan() const { return session.seen() ? &session.seen()->plan : nullptr; }
  say::Voice voice() const { return {phrases, hand, *course()}; }
  /// What is written for the class speaks the course's language, whatever the window speaks.
  say::Voice page_voice() const { return {publish::phrases_in(course()->choices.language), hand, *course()}; }
  /// The window in this language from the next frame on; empty: as the system says.
  void speak(std::string_view language_);
  /// An edit's name as the window says it ("lengthen leg").
  std::string edit_words(std::string_view name) const;
  std::string say(std::string_view key, const words::Arguments& arguments = {}) const { return phrases.get().say(key, arguments); }
  /// Applies an edit; what cannot be done is said in the message line.
  void apply(const session::Edit& edit);
  void report(const base::Result<void>& result);
  void set_light(Light light_);
  /// Quits, or asks first where something is not saved.
  void saved_or_ask();
};

/// One frame: everything the window shows. `seconds`: since the last frame.
void frame(Desk& desk, float width, float height, double seconds);

/// Where the walk stands.
struct WalkPlace {
  int trail = 0, stitch = 0;
  int first = 0, last = 0;  ///< of its section
  int of_section = 0;       ///< stitch of the section, from 0
};
std::optional<WalkPlace> walk_place(const Desk& desk);
int walk_length(const Desk& desk);
/// The next step at which the leg changes, or the last one.
int next_corner(const Desk& desk);
void choose_lesson(Desk& desk, int lesson);
int snips_of_lesson(const Desk& desk);
/// Shows the cloth after the lesson's cutting, or the needle's walk again.
void show_cutting(Desk& desk, bool shown);

/// What the slider goes over: the lesson's snips while its cutting is shown (from none of them made to all), else its stitches.
bool over_snips(const Desk& desk);
int slider_places(const Desk& desk);  ///< 0: there is nothing to go over
int slider_at(const Desk& desk);      ///< from 0
void slide_to(Desk& desk, int place);  ///< or as near as there is
/// The next corner; of snips the first one of the next cutting.
int next_halt(const Desk& desk);
/// Steps of the lesson at which the leg changes.
std::vector<int> corners_of_lesson(const Desk& desk);

}  // namespace app
