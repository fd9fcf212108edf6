#include "picture/overlaps.h"

#include <fmt/format.h>

#include <utility>
#include <variant>

#include "list/bounds.h"
#include "picture/geometry.h"
#include "picture/labels.h"

namespace picture {
namespace {

using list::Role;

constexpr double edge = 10;  // mm of paper without type
constexpr double hair = 0.02;

/// Something with a shape, in one picture (0: on the bare page).
struct Shape {
  Role role = Role::text;
  int picture = 0;
  Capsule capsule;
};
struct Type {
  Role role = Role::text;
  int picture = 0;
  Rect box;
  std::string text;
  std::size_t since = 0;  ///< shapes before this one are covered by the disc on which it stands
};
struct Frame {
  int picture = 0;
  Rect rect;
};

bool is_number(Role role) { return role == Role::number || role == Role::ruler_number || role == Role::map_mark; }
bool is_running(Role role) { return role == Role::text || role == Role::heading || role == Role::letter; }

/// The page taken apart.
class Parts {
 public:
  Parts(const list::List& list, const list::Measure& measure) : measure_(measure) {
    for (const list::Item& item : list.items) {
      role_ = item.role;
      item_ = &item;
      std::visit(*this, item.what);
    }
  }

  void operator()(const list::Stroke& s) {
    for (std::size_t i = 1; i < s.points.size(); ++i) add({s.points[i - 1], s.points[i], s.width / 2});
  }
  void operator()(const list::Fill&) {}
  void operator()(const list::Disc& d) {
    add({d.centre, d.centre, d.radius + d.line / 2});
    if (role_ == Role::key_mark) plate_ = shapes.back().capsule, plate_since_ = shapes.size();
  }
  void operator()(const list::Panel& p) {
    const Point middle{p.rect.x + p.rect.w / 2, p.rect.y + p.rect.h / 2};
    if (role_ == Role::hole_up || role_ == Role::hole_down) add({middle, middle, p.rect.w / 2 + p.line / 2});
    if (role_ != Role::map_mark) return;
    const Point a{p.rect.x, p.rect.y}, b{p.rect.x + p.rect.w, p.rect.y}, c{b.x, p.rect.y + p.rect.h}, d{p.rect.x, c.y};
    for (const auto& [from, to] : {std::pair{a, b}, std::pair{b, c}, std::pair{c, d}, std::pair{d, a}}) add({from, to, p.line / 2});
  }
  void operator()(const list::Text& t) {
    if (is_number(role_))
      types.push_back({role_, picture_,
                       number_room(t.text, t.style, measure_, {list::left_end(t, measure_.measure(t.text, t.style).width), t.at.y}),
                       t.text, 0});
    else
      types.push_back({role_, picture_, list::bounds(*item_, measure_), t.text, 0});
    const Rect& box = types.back().box;
    const Point middle{box.x + box.w / 2, box.y + box.h / 2};
    if (plate_since_ > 0 && length(minus(middle, plate_.a)) + box.w / 2 <= plate_.radius + hair) types.back().since = plate_since_;
  }
  void operator()(const list::ClipIn& c) {
    picture_ = ++pictures_;
    frames.push_back({picture_, c.rect});
  }
  void operator()(const list::ClipOut&) { picture_ = 0; }

  std::vector<Shape> shapes;
  std::vector<Type> types;
  std::vector<Frame> frames;

 private:
  void add(const Capsule& capsule) { shapes.push_back({role_, picture_, capsule}); }

  const list::Measure& measure_;
  const list::Item* item_ = nullptr;
  Role role_ = Role::text;
  int picture_ = 0, pictures_ = 0;
  Capsule plate_;  ///< the last disc that may bear a number
  std::size_t plate_since_ = 0;
};

bool blocks(Role number, Role shape) {
  switch (shape) {
    case Role::stitch_now:
    case Role::stitch_before:
    case Role::landmark:
    case Role::hole_up:
    case Role::hole_down:
    case Role::hole_both:
    case Role::ruler:
    case Role::leader:
      return true;
    case Role::stitch_later:
      return number != Role::map_mark;
    case Role::map_mark:
      return number == Role::map_mark;
    default:
      return false;
  }
}

std::string_view name_of(Role role) {
  switch (role) {
    case Role::stitch_now:
      return "a stitch";
    case Role::stitch_before:
      return "a stitch made before";
    case Role::stitch_later:
      return "a stitch not yet made";
    case Role::landmark:
      return "a landmark";
    case Role::ruler:
      return "a ruler";
    case Role::leader:
      return "a leader";
    case Role::map_mark:
      return "a mark of the map";
    default:
      return "the mark of a hole";
  }
}

class Checker {
 public:
  Checker(const list::List& list, const list::Measure& measure) : list_(list), parts_(list, measure) {}

  std::vector<std::string> check() {
    for (std::size_t i = 0; i < parts_.types.size(); ++i) {
      const Type& type = parts_.types[i];
      if (is_number(type.role)) number_on_shapes(type);
      if (is_running(type.role)) on_page(type);
      for (std::size_t j = i + 1; j < parts_.types.size(); ++j) type_on_type(type, parts_.types[j]);
    }
    rulers_on_stitches();
    return std::move(found_);
  }

 private:
  void tell(std::string what) { found_.push_back(std::move(what)); }

  /// Fold lines and their like are no stitches: a landmark thinner than half a millimetre may be crossed.
  static bool thin(const Shape& shape) { return shape.role == Role::landmark && shape.capsule.radius < 0.25; }

  void number_on_shapes(const Type& number) {
    for (auto at = parts_.shapes.begin() + static_cast<std::ptrdiff_t>(number.since); at != parts_.shapes.end(); ++at)
      if (const Shape& shape = *at; shape.picture == number.picture && blocks(number.role, shape.role) && !thin(shape) &&
          meet(grown(number.box, -hair), shape.capsule))
        tell(fmt::format("\"{}\" lies on {}", number.text, name_of(shape.role)));
    for (const Frame& frame : parts_.frames)
      if (frame.picture == number.picture && !within(number.box, grown(frame.rect, hair)))
        tell(fmt::format("\"{}\" lies outside its picture", number.text));
  }

  void type_on_type(const Type& one, const Type& other) {
    if (one.text.empty() || other.text.empty()) return;
    if (list::overlap(grown(one.box, -hair), grown(other.box, -hair)))
      tell(fmt::format("\"{}\" and \"{}\" lie on one another", one.text, other.text));
  }

  void on_page(const Type& type) {
    const Rect page{edge, edge, list_.width - 2 * edge, list_.height - 2 * edge};
    if (!within(type.box, page)) tell(fmt::format("\"{}\" stands outside the page's margins", type.text));
    if (type.role == Role::letter) return;  // it stands on its picture's corner
    for (const Frame& frame : parts_.frames)
      if (list::overlap(grown(type.box, -hair), frame.rect)) tell(fmt::format("\"{}\" lies on a picture", type.text));
  }

  void rulers_on_stitches() {
    for (const Shape& ruler : parts_.shapes) {
      if (ruler.role != Role::ruler) continue;
      for (const Shape& stitch : parts_.shapes)
        if ((stitch.role == Role::stitch_now || stitch.role == Role::stitch_before) && stitch.picture == ruler.picture &&
            meet({ruler.capsule.a, ruler.capsule.b, ruler.capsule.radius - hair}, stitch.capsule))
          tell(fmt::format("a ruler lies on {} at {:.0f}, {:.0f} mm", name_of(stitch.role), stitch.capsule.a.x, stitch.capsule.a.y));
    }
  }

  const list::List& list_;
  Parts parts_;
  std::vector<std::string> found_;
};

}  // namespace

std::vector<std::string> overlaps(const list::List& list, const list::Measure& measure) { return Checker(list, measure).check(); }

}  // namespace picture
