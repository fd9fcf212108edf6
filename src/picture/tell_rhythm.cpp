// The rhythm in words, before the numbers: which row or block, which way round, over how many threads.
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <set>

#include "picture/facts.h"
#include "picture/numbering.h"
#include "picture/tell.h"

namespace picture {
namespace {

/// "Then, clockwise", "Then, to the right"
std::string heading(const Sheet& sheet, const guide::CloseUp& close_up) {
  if (sheet.scattered(close_up.trail))
    return sheet.say(sheet.pass(close_up.trail).runs.size() > 1 ? fmt::format("page.then.{}", sheet.pieces(close_up.trail))
                                                                : std::string("page.then"));
  if (sheet.trail(close_up.trail).trail.closed)
    return sheet.say(clockwise_on_page(sheet, close_up.trail) ? "page.then.clockwise" : "page.then.anticlockwise");
  const auto way = sets_out(sheet, close_up.trail, close_up.first);
  return sheet.say(way ? "page.then." + std::string(cloth::name(*way)) : "page.then");
}

int threads_over(const trail::Worked& w) { return std::max(std::abs(w.up.x - w.down.x), std::abs(w.up.y - w.down.y)); }
bool slants(const trail::Worked& w) { return w.up.x != w.down.x && w.up.y != w.down.y; }

/// "Each stitch crosses 2 threads (on a slant, 2 across and 2 up or down)."
std::string crossing(const Sheet& sheet, const guide::CloseUp& close_up) {
  const guide::Section& section = section_of(sheet, close_up);
  const auto& stitches = sheet.trail(close_up.trail).trail.stitches;
  bool straight = false, slant = false;
  for (int k = section.first; k <= section.last; ++k) (slants(stitches[k]) ? slant : straight) = true;
  const std::string key = straight && slant ? "page.rows.cross.both" : slant ? "page.rows.cross.slant" : "page.rows.cross.straight";
  return sheet.say(key, {{"n", std::int64_t{threads_over(stitches[section.first])}}});
}

/// "From 5 on, the needle comes up where the same row's last stitch went down", where it is so in the picture.
std::string same_hole(const Sheet& sheet, const guide::CloseUp& close_up) {
  const auto& stitches = sheet.trail(close_up.trail).trail.stitches;
  if (close_up.first + 2 > close_up.last) return {};
  for (int k = close_up.first + 2; k <= close_up.last; ++k)
    if (stitches[k].run != stitches[k - 2].run || stitches[k].up != stitches[k - 2].down) return {};
  return sheet.say("page.rows.same-hole", {{"number", std::int64_t{up_number(close_up.first + 2, close_up.first)}}});
}

std::string row(const Sheet& sheet, const guide::CloseUp& close_up, int run) {
  return say::row_name(sheet.voice, sheet.trail(close_up.trail).part, sheet.row(close_up.trail, run));
}

std::string rows_there(const Sheet& sheet, const guide::CloseUp& close_up) {
  for (const int run : {0, 1})
    if (row_is_there(sheet, close_up.trail, run))
      return sheet.say("page.rows.double",
                       {{"row", words::capitalised(row(sheet, close_up, run))}, {"new", row(sheet, close_up, 1 - run)}});
  return {};
}

void tell_rows(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const int run = sheet.trail(close_up.trail).trail.stitches[close_up.first].run;
  telling.paragraph(
      sentences({rows_there(sheet, close_up),
                 sheet.say("page.rows.in-turn", {{"first", row(sheet, close_up, run)}, {"second", row(sheet, close_up, 1 - run)}}),
                 crossing(sheet, close_up), same_hole(sheet, close_up)}));
}

// ---- blocks ----

/// The blocks of the section in needle order: number of the run, its first and last stitch of the trail.
struct Worked {
  int run = 0, first = 0, last = 0;
};
std::vector<Worked> blocks_of(const trail::Trail& trail, const guide::Section& section) {
  std::vector<Worked> blocks;
  for (int k = section.first; k <= section.last; ++k) {
    if (blocks.empty() || blocks.back().run != trail.stitches[k].run) blocks.push_back({trail.stitches[k].run, k, k});
    blocks.back().last = k;
  }
  return blocks;
}

bool upright(const trail::Worked& w) { return w.up.x == w.down.x; }

/// "The needle comes up at the left end of each stitch and goes down at the right end."
std::string first_block(const Sheet& sheet, std::string_view pieces, const trail::Worked& w) {
  cloth::Way way =
      *cloth::way_between({0, 0}, upright(w) ? cloth::Hole{0, w.down.y > w.up.y ? 1 : -1} : cloth::Hole{w.down.x > w.up.x ? 1 : -1, 0});
  if (sheet.voice.hand == say::Hand::left) way = cloth::mirrored(way);
  return sheet.say(fmt::format("page.{}.first.{}", pieces, cloth::name(way)));
}

/// Stitches side by side in a whole block, and how many threads each lies over.
std::string block_size(const Sheet& sheet, const guide::CloseUp& close_up) {
  std::size_t side_by_side = 0;
  for (const stitch::Feature& feature : sheet.part(close_up.trail).work.features)
    if (stitch::side_by_side(feature.shape)) side_by_side = std::max(side_by_side, feature.stitches.size());
  const auto& w = sheet.trail(close_up.trail).trail.stitches[close_up.first];
  return sheet.say("page.blocks.size", {{"n", static_cast<std::int64_t>(side_by_side)}, {"over", std::int64_t{threads_over(w)}}});
}

/// Threads between the last stitch of a block and the first of the next, where both lie the same way; 1 where they join.
int threads_between(const trail::Worked& last, const trail::Worked& first) {
  return upright(last) ? std::abs(first.up.x - last.up.x) : std::abs(first.up.y - last.up.y);
}

/// How the next block lies: turned at each step, beside it and joined, beside it with threads left free.
std::string next_blocks(const Sheet& sheet, const guide::CloseUp& close_up) {
  const trail::Trail& trail = sheet.trail(close_up.trail).trail;
  const std::vector<Worked> blocks = blocks_of(trail, section_of(sheet, close_up));
  bool turning = false, joined = false;
  int free = 0;
  for (std::size_t i = 1; i < blocks.size(); ++i) {
    const trail::Worked &last = trail.stitches[blocks[i - 1].last], &first = trail.stitches[blocks[i].first];
    if (upright(last) != upright(first))
      turning = true;
    else
      threads_between(last, first) > 1 ? void(free = threads_between(last, first)) : void(joined = true);
  }
  return sentences({joined ? sheet.say("page.blocks.joined") : std::string(),
                    free > 0 ? sheet.say("page.blocks.apart", {{"n", std::int64_t{free}}}) : std::string(),
                    turning ? sheet.say(joined || free > 0 ? "page.blocks.turning.some" : "page.blocks.turning") : std::string()});
}

/// Where every stitch goes down on the inner side of a closed ring, or where all do on the outer one.
std::string inner_side(const Sheet& sheet, const guide::CloseUp& close_up) {
  const trail::Trail& trail = sheet.trail(close_up.trail).trail;
  const guide::Section& section = section_of(sheet, close_up);
  const stitch::Pass& pass = sheet.pass(close_up.trail);
  if (!trail.closed) return {};
  for (int k = section.first; k <= section.last; ++k) {
    const trail::Worked& w = trail.stitches[k];
    const stitch::Run& run = pass.runs[w.run];
    if (run.down == stitch::DownSide::none) return {};
    const cloth::Stitch& stitch = run.stitches[w.place];
    if (w.down != (run.down == stitch::DownSide::a ? stitch.a : stitch.b)) return {};
  }
  return sheet.say(sheet.part(close_up.trail).work.up_on_cut_side ? "page.blocks.down-outside" : "page.blocks.down-inside");
}

void tell_blocks(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const trail::Worked& w = sheet.trail(close_up.trail).trail.stitches[close_up.first];
  telling.paragraph(
      sentences({block_size(sheet, close_up), first_block(sheet, "blocks", w), inner_side(sheet, close_up), next_blocks(sheet, close_up)}));
}

// ---- other pieces ----

/// Does every leg of the trail go down where the others do: in the centre?
bool down_in_centre(const trail::Trail& trail) { return trail.stitches.size() < 2 || trail.stitches[0].down == trail.stitches[1].down; }

void tell_eyelets(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const stitch::Work& work = sheet.part(close_up.trail).work;
  const bool down = down_in_centre(sheet.trail(close_up.trail).trail);
  std::vector<std::string> said{sheet.say("page.eyelets.size", {{"n", static_cast<std::int64_t>(work.features.front().stitches.size())}}),
                                sheet.say(down ? "page.eyelets.down" : "page.eyelets.up")};
  if (work.piece == stitch::Piece::open_eyelet) said.push_back(sheet.say("page.eyelets.open"));
  said.push_back(sheet.say("page.eyelets.clear"));
  telling.paragraph(sentences(said));
}

void tell_satin(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  const auto& stitches = sheet.trail(close_up.trail).trail.stitches;
  const std::string_view pieces = sheet.pieces(close_up.trail);
  const std::size_t many = sheet.part(close_up.trail).work.features.front().stitches.size();
  telling.paragraph(sentences({sheet.say(fmt::format("page.{}.size", pieces), {{"n", static_cast<std::int64_t>(many)}}),
                               first_block(sheet, pieces, stitches[close_up.first])}));
}

void tell_pieces(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  switch (sheet.part(close_up.trail).work.piece) {
    case stitch::Piece::block:
      return tell_blocks(sheet, close_up, telling);
    case stitch::Piece::bar:
    case stitch::Piece::petal:
      return tell_satin(sheet, close_up, telling);
    case stitch::Piece::eyelet:
    case stitch::Piece::open_eyelet:
      return tell_eyelets(sheet, close_up, telling);
    case stitch::Piece::side_there_and_back: {
      const auto& first = sheet.trail(close_up.trail).trail.stitches[close_up.first];
      return telling.paragraph(sheet.say("page.sides.there-and-back", {{"n", std::int64_t{threads_over(first)}}}));
    }
    case stitch::Piece::edge:
      return tell_edge(sheet, close_up, telling);
    case stitch::Piece::square:
    case stitch::Piece::side: {
      const auto& first = sheet.trail(close_up.trail).trail.stitches[close_up.first];
      return telling.paragraph(
          sheet.say(fmt::format("page.{}.size", sheet.pieces(close_up.trail)), {{"n", std::int64_t{threads_over(first)}}}));
    }
  }
}

}  // namespace

void tell_rhythm(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  telling.strong(heading(sheet, close_up));
  sheet.by_rows(close_up.trail) ? tell_rows(sheet, close_up, telling) : tell_pieces(sheet, close_up, telling);
}

}  // namespace picture
