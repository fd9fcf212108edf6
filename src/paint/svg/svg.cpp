#include "paint/svg/svg.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>

#include "base/require.h"
#include "list/dashes.h"
#include "list/measure.h"

namespace paint {
namespace {

/// Hundredths of a mm, without trailing zeros.
std::string number(double mm) {
  std::string text = fmt::format("{:.2f}", mm);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string colour(list::Colour c) { return fmt::format("#{:02x}{:02x}{:02x}", c.r, c.g, c.b); }

constexpr const char* role_names[] = {"ground", "grid",    "frame",  "now",    "before",   "later",        "back",     "up",
                                      "down",   "both",    "number", "leader", "ruler",    "ruler-number", "landmark", "map-mark",
                                      "letter", "heading", "text",   "rule",   "key-mark", "caution"};

const char* class_of(list::Role role) { return role_names[static_cast<int>(role)]; }

std::string way(const std::vector<list::Point>& points, bool closed) {
  std::string d;
  for (std::size_t i = 0; i < points.size(); ++i) d += fmt::format("{}{} {}", i == 0 ? "M" : "L", number(points[i].x), number(points[i].y));
  if (points.size() == 1) d += "h0";
  return closed ? d + "Z" : d;
}

class Player {
 public:
  explicit Player(const SvgHead& head) : head_(head) {}

  std::string play(const list::List& list) {
    for (const list::Item& item : list.items) {
      role_ = item.role;
      std::visit(*this, item.what);
    }
    end_path();
    base::require(clips_ == 0, "every clip ends");
    return std::move(out_);
  }

  /// Lines that follow one another and look alike are one path.
  void operator()(const list::Stroke& s) {
    if (s.points.empty() || s.width <= 0) return;
    std::string look = fmt::format(R"(class="{}" fill="none" stroke="{}" stroke-width="{}" stroke-linecap="{}")", class_of(role_),
                                   colour(s.colour), number(s.width), s.cap == list::Cap::round ? "round" : "butt");
    if (s.dash == list::Dash::back) {
      const list::Dashes dashes = list::dashes(s.width, s.cap);
      look += fmt::format(R"( stroke-dasharray="{} {}")", number(dashes.on), number(dashes.off));
    }
    if (look != look_) end_path();
    look_ = std::move(look);
    path_ += way(s.points, s.closed);
  }
  void operator()(const list::Fill& f) {
    end_path();
    if (f.points.empty()) return;
    out_ += fmt::format(R"(<path class="{} filled" fill="{}" d="{}"/>)"
                        "\n",
                        class_of(role_), colour(f.colour), way(f.points, true));
  }
  void operator()(const list::Disc& d) {
    end_path();
    out_ += fmt::format(R"(<circle class="{} filled" cx="{}" cy="{}" r="{}" fill="{}"{}/>)"
                        "\n",
                        class_of(role_), number(d.centre.x), number(d.centre.y), number(std::max(0.0, d.radius)), colour(d.fill),
                        outline(d.line, d.line_colour));
  }
  void operator()(const list::Panel& p) {
    end_path();
    out_ += fmt::format(R"(<rect class="{}{}" {} fill="{}"{}/>)"
                        "\n",
                        class_of(role_), p.filled ? " filled" : "", box(p.rect, p.radius), p.filled ? colour(p.fill) : "none",
                        outline(p.line, p.line_colour));
  }
  void operator()(const list::Text& t) {
    end_path();
    if (t.text.empty()) return;
    constexpr const char* anchors[] = {"", R"( text-anchor="middle")", R"( text-anchor="end")"};
    constexpr const char* weights[] = {"", R"( font-weight="600")", R"( font-weight="700")"};
    const char* even = t.style.figures == list::Figures::tabular ? " even" : "";
    out_ += fmt::format(R"(<text class="{}{}" x="{}" y="{}" font-size="{}" fill="{}"{}{}>{}</text>)"
                        "\n",
                        class_of(role_), even, number(t.at.x), number(t.at.y), number(t.style.size_pt * list::mm_per_pt), colour(t.colour),
                        anchors[static_cast<int>(t.align)], weights[static_cast<int>(t.style.weight)], escaped(t.text));
  }
  void operator()(const list::ClipIn& c) {
    end_path();
    const std::string id = fmt::format("{}-clip-{}", head_.id, ++clip_number_);
    out_ += fmt::format("<clipPath id=\"{}\"><rect {}/></clipPath><g clip-path=\"url(#{})\">\n", id, box(c.rect, c.radius), id);
    ++clips_;
  }
  void operator()(const list::ClipOut&) {
    end_path();
    base::require(clips_-- > 0, "a clip ends that never began");
    out_ += "</g>\n";
  }

 private:
  void end_path() {
    if (!path_.empty()) out_ += fmt::format("<path {} d=\"{}\"/>\n", look_, path_);
    path_.clear();
    look_.clear();
  }

  static std::string box(const list::Rect& r, double radius) {
    std::string text = fmt::format(R"(x="{}" y="{}" width="{}" height="{}")", number(r.x), number(r.y), number(r.w), number(r.h));
    if (radius > 0) text += fmt::format(R"( rx="{}")", number(radius));
    return text;
  }
  static std::string outline(double width, list::Colour line) {
    return width > 0 ? fmt::format(R"( stroke="{}" stroke-width="{}")", colour(line), number(width)) : "";
  }

  const SvgHead& head_;
  list::Role role_ = list::Role::text;
  std::string out_, path_, look_;
  int clips_ = 0, clip_number_ = 0;
};

}  // namespace

std::string svg(const list::List& list, const SvgHead& head) {
  const bool file = head.as == SvgHead::As::file;
  std::string out = file ? "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" : "";
  const std::string size = fmt::format(R"(width="{}mm" height="{}mm" )", number(list.width), number(list.height));
  out += fmt::format(R"(<svg xmlns="http://www.w3.org/2000/svg" {}viewBox="0 0 {} {}" role="img" aria-labelledby="{}-title{}" )",
                     file ? size : "", number(list.width), number(list.height), head.id,
                     head.description.empty() ? "" : fmt::format(" {}-words", head.id));
  out += "font-family=\"Inter, 'Noto Sans', sans-serif\" stroke-linejoin=\"round\">\n";
  out += fmt::format("<title id=\"{}-title\">{}</title>\n", head.id, escaped(head.title));
  if (!head.description.empty()) out += fmt::format("<desc id=\"{}-words\">{}</desc>\n", head.id, escaped(head.description));
  if (file) out += fmt::format("<rect width=\"{}\" height=\"{}\" fill=\"#ffffff\"/>\n", number(list.width), number(list.height));
  out += Player(head).play(list);
  return out + "</svg>\n";
}

}  // namespace paint
