// Building the sample page. Every place is a plain formula: nothing here is a design, only as much ink as one.
#include "sample_page.h"

#include <sstream>
#include <string>

namespace bench {

namespace {

using list::Colour, list::Point, list::Role;

struct Page {
  const list::Measure& measure;
  Ink ink;
  list::List list{};

  Colour colour(Colour c) const {
    if (ink == Ink::coloured) return c;
    const auto grey = static_cast<std::uint8_t>((c.r * 2 + c.g * 5 + c.b) / 8);
    return {grey, grey, grey};
  }
  void line(Role role, Point from, Point to, double width, Colour c, list::Dash dash = list::Dash::none, list::Cap cap = list::Cap::round) {
    list.add(role, list::Stroke{.points = {from, to}, .width = width, .colour = colour(c), .dash = dash, .cap = cap});
  }
  void words(Role role, Point at, const std::string& text, double pt, list::Weight weight = list::Weight::regular) {
    list.add(role,
             list::Text{.at = at, .text = text, .style = {pt, weight}, .align = list::Align::left, .colour = colour({0x16, 0x23, 0x3A})});
  }
};

constexpr Colour ink{0x16, 0x23, 0x3A}, now{0x1B, 0x36, 0x69}, before{0x9F, 0xB0, 0xC6}, fine{0xD3, 0xDA, 0xE3}, coarse{0xAE, 0xBA, 0xCA};

void grid(Page& page, list::Rect r, double step) {
  for (int i = 0; i * step <= r.w; ++i)
    page.line(Role::grid, {r.x + i * step, r.y}, {r.x + i * step, r.y + r.h}, i % 4 ? 0.14 : 0.22, i % 4 ? fine : coarse, list::Dash::none,
              list::Cap::flat);
  for (int i = 0; i * step <= r.h; ++i)
    page.line(Role::grid, {r.x, r.y + i * step}, {r.x + r.w, r.y + i * step}, i % 4 ? 0.14 : 0.22, i % 4 ? fine : coarse, list::Dash::none,
              list::Cap::flat);
}

void stitches(Page& page, list::Rect r, double step) {
  for (int row = 0; row < 4; ++row)
    for (int i = 0; i + 2 < static_cast<int>(r.w / step); i += 2) {
      const Point from{r.x + i * step, r.y + (8 + row * 3 + i) * step / 2}, to{from.x + 2 * step, from.y + step};
      page.line(Role::back_thread, to, {from.x + step, from.y + 3 * step}, 0.35, now, list::Dash::back);
      page.line(Role::stitch_now, from, to, 1.27, now);
      page.list.add(Role::hole_up, list::Disc{from, 0.9, page.colour(now), 0, {}});
      page.list.add(Role::hole_down, list::Disc{to, 0.9, {255, 255, 255}, 0.35, page.colour(now)});
      page.words(Role::number, {to.x + 1, to.y - 1.2}, std::to_string(2 * i + 2), 8, list::Weight::semibold);
    }
}

void close_up(Page& page, list::Rect r, double step) {
  page.list.add(Role::ground, list::ClipIn{r, 2});
  grid(page, r, step);
  for (int block = 0; block < 12; ++block)
    for (int i = 0; i < 5; ++i) {
      const double x = r.x + block * 4 * step, y = r.y + r.h - (3 + block % 3 * 4) * step;
      page.line(Role::stitch_before, {x + i * step, y}, {x + i * step, y - 4 * step}, 2.3, before);
    }
  stitches(page, r, step);
  page.list.add(Role::ground, list::ClipOut{});
  page.list.add(Role::frame, list::Panel{r, 2, false, {}, 0.4, page.colour(ink)});
}

void map(Page& page, list::Rect r) {
  page.list.add(Role::ground, list::Panel{r, 2, true, page.colour({0xF6, 0xF8, 0xFB}), 0.2, page.colour(before)});
  for (int i = 0; i < 300; ++i) {
    const double side = r.w / 80, x = r.x + 4 + (i % 70) * side, y = r.y + 5 + (i * 13 % 70) * side;
    page.line(Role::stitch_before, {x, y}, {x + (i % 2 ? 4 * side : 0), y + (i % 2 ? 0 : 4 * side)}, 0.45, before);
  }
}

const char* const said =
    "Leave a 12 cm tail, to weave in later. From the upper end of the topmost block's left-hand stitch count 10 threads straight up. The "
    "needle comes up "
    "there: 1. One stitch of the outer row, one of the inner, turn about. Each crosses 2 threads, on a slant 2 across and 2 down or up. "
    "The outer row has one stitch more than the inner row here, and the needle cannot come up where it has just gone down in. So work this "
    "one stitch "
    "backwards: up one stitch ahead, and down into the corner hole. Then go on as before. ";

void column(Page& page, Point at, double width, int lines) {
  std::istringstream words(std::string(said) + said + said);
  std::string line, word;
  while (lines > 0 && words >> word) {
    const std::string longer = line.empty() ? word : line + " " + word;
    if (page.measure.measure(longer, {12, list::Weight::regular}).width <= width) {
      line = longer;
      continue;
    }
    page.words(Role::text, at, line, 12);
    at.y += 5.6;
    line = word;
    --lines;
  }
}

}  // namespace

list::List sample_page(const list::Measure& measure, Ink which) {
  Page page{measure, which};
  page.list.title = "The border cable, first time round";
  page.words(Role::heading, {14, 32}, page.list.title, 24, list::Weight::bold);
  page.line(Role::rule_line, {14, 19.5}, {196, 19.5}, 0.4, ink);
  close_up(page, {18, 50, 78, 82}, 3.7);
  close_up(page, {18, 141, 70, 66}, 4.4);
  map(page, {18, 216, 52, 52});
  column(page, {104, 58}, 92, 14);
  column(page, {96, 148}, 100, 11);
  column(page, {78, 222}, 118, 9);
  return page.list;
}

}  // namespace bench
