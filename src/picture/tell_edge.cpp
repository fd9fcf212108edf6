// Buttonhole stitch in words: how a loop is made, what differs at corners, how the ridge closes or ends, how a new thread goes on.
#include <algorithm>
#include <cstdlib>

#include "picture/facts.h"
#include "picture/numbering.h"
#include "picture/tell.h"

namespace picture {
namespace {

const trail::Trail& trail_of(const Sheet& sheet, const guide::CloseUp& close_up) { return sheet.trail(close_up.trail).trail; }

std::int64_t threads_over(const trail::Worked& w) { return std::max(std::abs(w.up.x - w.down.x), std::abs(w.up.y - w.down.y)); }

/// Threads that every straight stitch crosses.
std::int64_t over(const trail::Trail& trail) {
  for (const trail::Worked& w : trail.stitches)
    if (!w.over) return threads_over(w);
  return 0;
}

std::string numbers(const Sheet& sheet, const std::vector<int>& all) {
  std::vector<std::string> said;
  for (const int n : all) said.push_back(std::to_string(n));
  return sheet.all_of(said);
}

int sign(int n) { return n > 0 ? 1 : n < 0 ? -1 : 0; }
int dot(cloth::Hole a, cloth::Hole b) { return a.x * b.x + a.y * b.y; }

/// The way out from the piece at a straight stitch, one thread.
cloth::Hole outwards(const trail::Worked& w) { return {sign(w.up.x - w.down.x), sign(w.up.y - w.down.y)}; }

/// Stitches of the close-up that share a hole at its corner.
struct Shared {
  bool inner = false;
  int first = 0, last = 0;
};
Shared shared_at(const trail::Trail& trail, const guide::CloseUp& close_up) {
  const auto& stitches = trail.stitches;
  const cloth::Hole corner = close_up.stands_for.front();
  Shared shared{close_up.turn_eighths > 0, -1, -1};
  for (int k = close_up.first; k <= close_up.last; ++k) {
    if ((shared.inner ? stitches[k].up : stitches[k].down) != corner) continue;
    if (shared.first < 0) shared.first = k;
    shared.last = k;
  }
  return shared;
}

/// "9 lies 4 threads out from it and 2 on, 11 lies ..."
std::string fanned(const Sheet& sheet, const guide::CloseUp& close_up, const Shared& shared) {
  const auto& stitches = trail_of(sheet, close_up).stitches;
  const cloth::Hole out = outwards(stitches[shared.first]), on = outwards(stitches[shared.last]);
  std::vector<std::string> said;
  for (int k = shared.first + 1; k < shared.last; ++k) {
    const cloth::Hole away = stitches[k].up - stitches[k].down;
    said.push_back(sheet.say("page.edges.fan.hole", {{"up", std::int64_t{loop_up_number(trail_of(sheet, close_up), k, close_up.first)}},
                                                     {"out", std::int64_t{dot(away, out)}},
                                                     {"on", std::int64_t{dot(away, on)}}}));
  }
  return sheet.say("page.edges.fan", {{"holes", sheet.all_of(said)}});
}

void tell_outer(const Sheet& sheet, const guide::CloseUp& close_up, const Shared& shared, Telling& telling) {
  std::vector<int> downs;
  for (int k = shared.first; k <= shared.last; ++k) downs.push_back(loop_down_number(trail_of(sheet, close_up), k, close_up.first));
  const int n = shared.last - shared.first + 1;
  telling.paragraph(
      sentences({stitches_between(sheet, close_up),
                 sheet.say("page.edges.outer", {{"number", words::capitalised(sheet.number(n))}, {"downs", numbers(sheet, downs)}}),
                 sheet.say("page.edges.outer.why")}));
  telling.paragraph(
      sentences({fanned(sheet, close_up, shared),
                 sheet.say("page.edges.outer.next",
                           {{"last", std::int64_t{loop_down_number(trail_of(sheet, close_up), shared.last, close_up.first)}}})}));
}

void tell_inner(const Sheet& sheet, const guide::CloseUp& close_up, const Shared& shared, Telling& telling) {
  const auto& stitches = trail_of(sheet, close_up).stitches;
  const auto number = [](int n) { return std::int64_t{n}; };
  telling.paragraph(sentences(
      {stitches_between(sheet, close_up),
       sheet.say("page.edges.inner", {{"first", number(loop_up_number(trail_of(sheet, close_up), shared.first, close_up.first))},
                                      {"second", number(loop_up_number(trail_of(sheet, close_up), shared.last, close_up.first))}}),
       sheet.say("page.edges.inner.next", {{"before", number(loop_down_number(trail_of(sheet, close_up), shared.first, close_up.first))},
                                           {"down", number(loop_down_number(trail_of(sheet, close_up), shared.last, close_up.first))},
                                           {"n", threads_over(stitches[shared.last])}})}));
}

std::string like_words(const Sheet& sheet, const guide::CloseUp& close_up) {
  if (close_up.like < 0) return {};
  const guide::CloseUp& like = sheet.plan.close_ups[close_up.like];
  return sheet.say("page.like", {{"letter", like.letter}, {"lesson", std::int64_t{like.lesson}}});
}

std::int64_t last_up(const Sheet& sheet, const guide::CloseUp& close_up) {
  return loop_up_number(trail_of(sheet, close_up), close_up.last, close_up.first);
}

/// The close-up in which the edge began, where it is on the same sheet.
const guide::CloseUp* start_of(const Sheet& sheet, const guide::CloseUp& close_up) {
  for (const guide::CloseUp& other : sheet.plan.close_ups)
    if (other.lesson == close_up.lesson && other.trail == close_up.trail && other.shows == guide::Shows::start && other.first == 0)
      return &other;
  return nullptr;
}

}  // namespace

void tell_edge(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const trail::Trail& trail = trail_of(sheet, close_up);
  const bool left = sheet.voice.hand == say::Hand::left, fresh = new_thread_at(trail, close_up.first);
  telling.paragraph(
      sentences({sheet.say("page.edges.size", {{"n", over(trail)}}), sheet.say(left ? "page.edges.way.left" : "page.edges.way.right")}));
  telling.paragraph(sentences({sheet.say(fresh ? "page.edges.first" : "page.edges.first.go-on"), sheet.say("page.edges.loop")}));
  if (close_up.last > close_up.first) telling.paragraph(sentences({sheet.say("page.edges.further"), sheet.say("page.edges.back")}));
}

void tell_edge_corner(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const Shared shared = shared_at(trail_of(sheet, close_up), close_up);
  const auto places = static_cast<std::int64_t>(close_up.stands_for.size());
  telling.heading(sheet.say(shared.inner ? "page.edges.inner.title" : "page.edges.outer.title", {{"n", places}}));
  if (shared.first < shared.last)
    shared.inner ? tell_inner(sheet, close_up, shared, telling) : tell_outer(sheet, close_up, shared, telling);
  telling.strong(times_and_where(sheet, close_up));
  telling.paragraph(like_words(sheet, close_up));
}

void tell_edge_join(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const std::int64_t up = last_up(sheet, close_up);
  const guide::CloseUp* start = start_of(sheet, close_up);
  words::Arguments arguments{{"up", up}, {"down", up + 1}};
  if (start) arguments.insert_or_assign("letter", start->letter);
  telling.heading(sheet.say("page.edges.join.title"));
  telling.paragraph(sentences({stitches_between(sheet, close_up), sheet.say(start ? "page.edges.join.start" : "page.edges.join", arguments),
                               sheet.say("page.join.closed")}));
}

void tell_edge_end(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const bool ends = close_up.last + 1 == static_cast<int>(trail_of(sheet, close_up).stitches.size());
  const std::int64_t up = last_up(sheet, close_up);
  telling.heading(sheet.say(ends ? "page.edges.end.title" : "page.end.today.title"));
  telling.paragraph(sentences({stitches_between(sheet, close_up), ends ? sheet.say("page.edges.end", {{"up", up}, {"down", up + 1}})
                                                                       : sheet.say("page.edges.today", {{"up", up}})}));
}

void tell_edge_thread(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const trail::Trail& trail = trail_of(sheet, close_up);
  const int change = *std::upper_bound(trail.ends.begin(), trail.ends.end(), close_up.first);
  const std::int64_t next = loop_down_number(trail, change, close_up.first);
  telling.heading(sheet.say("page.edges.thread.title"));
  telling.paragraph(sentences({sheet.say("page.edges.thread.old", {{"up", next - 3}, {"down", next - 2}}),
                               sheet.say("page.edges.thread.new", {{"up", next - 1}, {"next", next}, {"again", next + 1}})}));
  const auto places = static_cast<std::int64_t>(close_up.stands_for.size());
  telling.paragraph(sheet.say("page.edges.thread.places", {{"n", places}, {"letter", close_up.letter}}));
  telling.paragraph(like_words(sheet, close_up));
}

}  // namespace picture
