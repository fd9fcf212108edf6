// Supplies as text for a terminal or a letter: columns as wide as their longest entry, notes broken between words.
#include <algorithm>

#include "publish/publish.h"
#include "say/stage_pieces.h"
#include "say/supplies.h"

namespace publish {
namespace {

constexpr std::size_t line_width = 100;

/// Characters of valid UTF-8; every one is taken to be as wide as another.
std::size_t width_of(const std::string& text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

using Row = std::vector<std::string>;

std::string columns(const std::vector<Row>& rows) {
  std::vector<std::size_t> widths(rows.at(0).size());
  for (const Row& row : rows)
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], width_of(row[i]));
  std::string text;
  for (const Row& row : rows) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) {
      line += row[i];
      if (i + 1 < row.size() && widths[i + 1] > 0) line += std::string(widths[i] - width_of(row[i]) + 2, ' ');
    }
    text += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
  }
  return text;
}

std::string wrapped(const std::string& text) {
  std::string lines, line;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string word = text.substr(at, end - at);
    if (!line.empty() && width_of(line) + 1 + width_of(word) > line_width) {
      lines += line + '\n';
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
    at = end + 1;
  }
  return lines + line + '\n';
}

}  // namespace

std::string supplies_text(const say::Voice& voice, const plan::Plan& plan) {
  const say::SuppliesTold told = say::supplies(voice, plan);
  const bool costs = std::any_of(told.rows.begin(), told.rows.end(), [](const say::SupplyRow& row) { return !row.cost.empty(); });
  const auto head = [&](const char* key) { return voice.phrases.say(std::string("supplies.head.") + key); };
  std::vector<Row> rows{{head("what"), head("one"), head("all"), costs ? head("cost") : ""}};
  for (const say::SupplyRow& row : told.rows) rows.push_back({row.what, row.one, row.all, row.cost});
  std::string text = voice.phrases.say("supplies.title", {{"title", voice.course.title}}) + '\n' +
                     voice.phrases.say("supplies.for", {{"sets", told.sets}}) + "\n\n" + columns(rows);
  if (!told.sums.empty()) text += '\n';
  for (const std::string& sum : told.sums) text += sum + '\n';
  for (const std::string& note : told.notes) text += '\n' + wrapped(words::capitalised(note));
  return text;
}

std::string stage_text(const say::Voice& voice, const plan::Plan& plan) {
  const auto head = [&](const char* key) { return voice.phrases.say(std::string("stage.head.") + key); };
  std::vector<Row> rows{{head("shown"), head("done"), head("own"), head("on"), head("thread")}};
  for (const say::StagePiece& piece : say::stage_pieces(voice, plan)) rows.push_back({piece.shown, piece.done, piece.own, piece.on, piece.thread});
  return voice.phrases.say("stage.title", {{"title", voice.course.title}}) + "\n\n" + columns(rows) + '\n' +
         wrapped(voice.phrases.say("stage.cloth", {{"n", static_cast<std::int64_t>(rows.size()) - 1}, {"size", say::cloth_size(voice)}}));
}

}  // namespace publish
