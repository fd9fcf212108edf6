#include "picture/film.h"

#include <algorithm>
#include <cmath>

#include "picture/close_up.h"
#include "picture/column.h"
#include "picture/facts.h"
#include "picture/film_pieces.h"
#include "picture/ink.h"
#include "picture/remembered.h"
#include "picture/step_words.h"
#include "picture/tell.h"
#include "plan/schedule.h"

namespace picture {
namespace {

constexpr double side = film_width / 20, edge = film_height / 18;  // mm: screens cut off what is nearer to an edge
constexpr double gap = 8, plate = 4;                               // mm between picture and words; round the words
constexpr double picture_width = 160, tag = 7;                     // mm: widest picture; its letter stands out of it
constexpr double most_words = film_height - 2 * edge - tag - 2 * plate;  // mm
constexpr int widenings[] = {0, 2, 4, 7};                          // threads on every side
constexpr int most_numbers[] = {6, 4, 2, 1};                       // the last points bear numbers, those before are only seen

Styles film_styles() {
  using list::Weight;
  const double pt = film_type / list::mm_per_pt;
  Styles s = styles_for(Print::normal);
  s.body = {pt, Weight::regular};
  s.strong = {pt, Weight::semibold};
  s.heading = {1.08 * pt, Weight::bold};
  s.title = s.heading;
  s.head = s.body;
  s.letter = {pt, Weight::bold};
  s.number = {pt, Weight::semibold};
  s.ruler = {pt, Weight::semibold};
  s.number_least_pt = pt;
  s.scale_wanted = 14;
  s.scale_least = 6;
  s.text_least_mm = 60;
  return s;
}

/// At two and a half words a second.
double seconds_to_say(const std::string& words) { return static_cast<double>(std::count(words.begin(), words.end(), ' ') + 1) / 2.5; }

class Film {
 public:
  explicit Film(const Sheet& sheet) : sheet_(sheet) {}

  std::vector<Still> make() {
    for (const guide::CloseUp& close_up : sheet_.plan.close_ups)
      if (close_up.lesson == sheet_.lesson.number && close_up.trail >= 0) add(close_up);
    const double height = film_height - 2 * edge - tag;
    const Fits fits = [this](double width, const FilmPiece& piece, const FilmPiece::Words& words) {
      return set_words(piece, words, room_beside(width)).height() <= most_words;
    };
    for (const FilmPiece& piece : film_pieces(sheet_, picture_width - tag, height, fits)) add(piece);
    return std::move(stills_);
  }

 private:
  void add(const guide::CloseUp& close_up) {
    const double height = film_height - 2 * edge - tag;
    const CloseUpPicture made = close_up_picture(sheet_, close_up, {picture_width, picture_width, height, height});
    const Telling telling = tell_close_up(sheet_, close_up, made);
    const std::string heading = telling.empty() ? std::string{} : telling.pieces().front().text;
    const StepWords words(sheet_.plan, sheet_.voice, sheet_.lesson.number, close_up.trail, section_of(sheet_, close_up));
    const auto points = points_of(sheet_.trail(close_up.trail).trail, close_up.first, close_up.last, ending_of(sheet_, close_up));
    for (std::size_t i = 0; i < points.size(); ++i) {
      Still still;
      still.number = points[i].number;
      still.letter = close_up.letter;
      still.title = sheet_.say("page.close-up.title", {{"letter", close_up.letter}, {"title", heading}});
      still.words = with_number(words.at(points, i), still.number);
      still.seconds = std::max(half_a_stitch(close_up), seconds_to_say(still.words));
      if (i == 0 && made.count_in) still.seconds += made.count_in->count.cost_s;
      still.seconds = std::ceil(10 * still.seconds) / 10;
      still.list = still_list(still, heading, best(close_up, made, points[i]));
      stills_.push_back(std::move(still));
    }
  }

  void add(const FilmPiece& piece) {
    for (std::size_t i = 0; i < piece.said.size(); ++i) {
      Still still;
      still.needle = false;
      still.letter = piece.name;
      still.number = static_cast<int>(i) + 1;
      still.title = piece.letter.empty() ? piece.heading : sheet_.say("page.close-up.title", {{"letter", piece.letter}, {"title", piece.heading}});
      still.words = piece.said[i].text;
      if (piece.cutting) still.words = sentences({still.words, sheet_.say("film.caution")});
      still.seconds = std::ceil(10 * std::max(60 / plan::speed(sheet_.course, piece.kind), seconds_to_say(still.words))) / 10;
      const double left = side + tag + piece.picture.width + gap;
      still.list = blank(still, piece.picture);
      put_words(still.list, set_words(piece, piece.said[i], room_beside(piece.picture.width)), left);
      stills_.push_back(std::move(still));
    }
  }

  static double room_beside(double picture) { return film_width - side - (side + tag + picture + gap) - 2 * plate; }

  /// With what stands over them; on a still of cutting with the caution.
  Column set_words(const FilmPiece& piece, const FilmPiece::Words& words, double width) const {
    Column column(width, sheet_.styles, sheet_.measure);
    if (words.strong.empty()) column.heading(piece.heading);
    else column.strong(words.strong);
    column.paragraph(words.text);
    if (piece.cutting) column.strong(sheet_.say("film.caution"));
    return column;
  }

  double half_a_stitch(const guide::CloseUp& close_up) const { return 30 / plan::speed(sheet_.course, sheet_.part(close_up.trail).kind); }

  /// As many of the last points with numbers as stand clear of one another; one alone, with more cloth round it and without what is not yet
  /// stitched, rather than one that lies on something.
  Picture best(const guide::CloseUp& close_up, const CloseUpPicture& made, const NeedlePoint& point) const {
    Picture picture;
    for (const int numbers : most_numbers) {
      picture = draw_window(sheet_, order_for(close_up, made, point, numbers));
      if (picture.clean) return picture;
    }
    for (const int wider : widenings) {
      picture = draw_window(sheet_, farther(order_for(close_up, made, point, 1), wider));
      if (picture.clean) return picture;
    }
    return draw_window(sheet_, nearer(order_for(close_up, made, point, 1), point));
  }

  static WindowOrder farther(WindowOrder order, int wider) {
    order.window = order.window.widened(wider);
    order.scale = scale_of(order.window);
    order.count = nullptr;
    order.bare = true;
    order.made_only = true;
    return order;
  }

  static double scale_of(const cloth::Box& window) {
    return std::min(picture_width / (window.width() + 1), (film_height - 2 * edge - tag) / (window.height() + 1));
  }

  /// Where stitches lie so densely that no number has room: a small piece of the cloth, as large as can be.
  static WindowOrder nearer(WindowOrder order, const NeedlePoint& point) {
    order.window = cloth::Box{point.hole.x, point.hole.y, point.hole.x, point.hole.y}.widened(3);
    order.scale = scale_of(order.window);
    order.count = nullptr;
    order.bare = true;
    order.made_only = true;
    return order;
  }

  WindowOrder order_for(const guide::CloseUp& close_up, const CloseUpPicture& made, const NeedlePoint& point, int numbers) const {
    WindowOrder order;
    order.window = made.picture.window;
    order.scale = made.picture.scale;
    order.letter = close_up.letter;
    order.trail = close_up.trail;
    order.first = close_up.first;
    order.last = close_up.last;
    order.ending = ending_of(sheet_, close_up);
    order.from = point.number + 1 - numbers;
    order.to = point.number;
    order.moment = moment_of(sheet_, close_up);
    order.moment.last = point.done;
    if (sheet_.looped(close_up.trail) && point.does == NeedlePoint::Does::down) order.loop = point.stitch;
    order.number = sheet_.styles.number;
    const int counted_until = sheet_.looped(close_up.trail) ? 1 : 2;  // where the loop is drawn the ruler may be in its way
    if (point.number <= counted_until && made.counts_inside) order.count = &made.count_in->count;
    return order;
  }

  list::List still_list(const Still& still, const std::string& heading, const Picture& picture) const {
    list::List list = blank(still, picture);
    put_words(list, words_of(still, heading, room_beside(picture.width)), side + tag + picture.width + gap);
    return list;
  }

  static list::List blank(const Still& still, const Picture& picture) {
    list::List list;
    list.width = film_width;
    list.height = film_height;
    list.title = still.title;
    put(list, picture.list, {side + tag, edge + tag});
    return list;
  }

  static void put_words(list::List& list, const Column& column, double left) {
    add_panel(list, list::Role::ground, {left, edge + tag, column.width() + 2 * plate, column.height() + 2 * plate}, 2, colour::white, 0, {});
    draw_column(list, column, {left + plate, edge + tag + plate});
  }

  /// Rather without a heading than out of sight.
  Column words_of(const Still& still, const std::string& heading, double width) const {
    Column column(width, sheet_.styles, sheet_.measure), bare = column;
    column.heading(heading);
    column.paragraph(still.words);
    bare.paragraph(still.words);
    return column.height() > most_words ? bare : column;
  }

  const Sheet& sheet_;
  std::vector<Still> stills_;
};

}  // namespace

std::vector<Still> film(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                        const list::Measure& measure) {
  const Remembered remembered(measure);
  const Sheet sheet{
      course, plan, plan.lessons[static_cast<std::size_t>(number - 1)], voice, remembered, film_styles(), {film_width, film_height}};
  return Film(sheet).make();
}

}  // namespace picture
