#include "file/work_item.h"

#include <fmt/format.h>

#include <algorithm>

#include "file/schema.h"
#include "file/values.h"

namespace file {
namespace {

/// A stretch of the text between two slashes, blanks at its ends taken off.
struct Stretch {
  std::string_view text;
  std::size_t offset = 0;
};

std::vector<Stretch> pieces_of(std::string_view text) {
  std::vector<Stretch> pieces;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find('/', begin), text.size());
    std::size_t first = begin, last = end;
    while (first < last && text[first] == ' ') ++first;
    while (last > first && text[last - 1] == ' ') --last;
    pieces.push_back({text.substr(first, last - first), first});
    begin = end + 1;
  }
  return pieces;
}

struct Number {
  int value = 0;
  std::size_t offset = 0, length = 0;  // in the piece
};

/// A whole number of at most 9 digits at the offset; length 0 where there is none.
Number number_at(std::string_view text, std::size_t offset) {
  constexpr std::size_t most_digits = 9;
  Number number{0, offset, 0};
  while (offset + number.length < text.size() && number.length < most_digits && text[offset + number.length] >= '0' &&
         text[offset + number.length] <= '9')
    number.value = number.value * 10 + (text[offset + number.length++] - '0');
  return number;
}

std::size_t skip_blanks(std::string_view text, std::size_t at) {
  while (at < text.size() && text[at] == ' ') ++at;
  return at;
}

class ItemReader {
 public:
  ItemReader(const Node& node, const std::string& text, Reading& reading) : node_(node), reading_(reading), pieces_(pieces_of(text)) {
    item_.text = text;
    item_.place = node.place;
  }

  std::optional<course::WorkItem> read() {
    const Stretch& first = pieces_[0];
    if (first.text == "wash" || first.text == "cut out") {
      if (pieces_.size() > 1) wrong(pieces_[1], "a stage", fmt::format("nothing more behind {}", shown(first.text)));
    } else if (find_part(first)) {
      stages();
    }
    return fine_ ? std::optional(std::move(item_)) : std::nullopt;
  }

 private:
  void wrong(std::size_t offset, std::size_t length, std::string found, std::string expected, std::string suggestion = {}) {
    fine_ = false;
    reading_.faults.add_within(node_, offset, std::max<std::size_t>(1, length), std::move(found), std::move(expected),
                               std::move(suggestion));
  }
  void wrong(const Stretch& piece, std::string_view what, std::string expected, std::string suggestion = {}) {
    wrong(piece.offset, piece.text.size(), piece.text.empty() ? "nothing" : fmt::format("{} {}", what, shown(piece.text)),
          std::move(expected), std::move(suggestion));
  }

  bool find_part(const Stretch& piece) {
    const auto found = reading_.part_index.find(piece.text);
    if (found != reading_.part_index.end()) {
      item_.part = found->second;
      facts_ = reading_.parts[item_.part];
      return true;
    }
    fine_ = false;
    if (!reading_.names_known && !piece.text.empty()) return false;  // it may be the part whose name is wrong
    Keys names;
    if (!reading_.faults.gives_up())
      for (const auto& [name, index] : reading_.part_index) names.push_back(name);
    wrong(piece, "the part", "the name of a part, \"wash\" or \"cut out\"", reading_.faults.nearest(piece.text, names));
    return false;
  }

  void stages() {
    std::size_t at = 1;
    if (facts_.whole && facts_.cut) return cut_stages();
    if (at < pieces_.size() && pieces_[at].text.substr(0, 4) == "pass") pass(pieces_[at++]);
    if (at < pieces_.size()) range(pieces_[at++]);
    if (at < pieces_.size() && fine_) wrong(pieces_[at], "a further stage", "nothing more behind a range");
  }

  /// Cutwork has stages of its own. How many bars and fillings there are is not known before it is planned.
  void cut_stages() {
    if (pieces_.size() < 2) return;
    const Keys stages{"cut", "bars", "fillings"};
    const auto stage = std::find(stages.begin(), stages.end(), pieces_[1].text);
    if (stage == stages.end())
      return wrong(pieces_[1], "the stage", fmt::format("a stage: {}", one_of(stages)), reading_.faults.nearest(pieces_[1].text, stages));
    item_.stage = static_cast<course::Stage>(stage - stages.begin());
    counted_ = *stage;
    if (pieces_.size() > 2 && *stage == "cut") return wrong(pieces_[2], "a further stage", "nothing more behind \"cut\"");
    if (pieces_.size() > 2) range(pieces_[2]);
    if (pieces_.size() > 3 && fine_) wrong(pieces_[3], "a further stage", "nothing more behind a range");
  }

  void pass(const Stretch& piece) {
    const std::size_t from = skip_blanks(piece.text, 4);
    const Number number = number_at(piece.text, from);
    if (number.length == 0 || from + number.length != piece.text.size()) return wrong(piece, "the stage", "a pass, e.g. \"pass 1\"");
    item_.pass = number.value;
    const auto passes = static_cast<int>(facts_.stitches.size());
    if (!facts_.whole || (number.value >= 1 && number.value <= passes)) return;
    const std::string& part = reading_.course.parts[item_.part].name;
    wrong(
        piece.offset + from, number.length, fmt::format("the pass {}", number.value),
        passes == 1 ? fmt::format("pass 1: {} has one pass", shown(part)) : fmt::format("a pass from 1 to {} of {}", passes, shown(part)));
  }

  void range(const Stretch& piece) {
    if (piece.text.empty() || piece.text[0] < '0' || piece.text[0] > '9') return not_a_range(piece);
    const Number first = number_at(piece.text, 0);
    const std::size_t dots = skip_blanks(piece.text, first.length);
    const Number last = number_at(piece.text, skip_blanks(piece.text, std::min(dots + 2, piece.text.size())));
    if (piece.text.substr(dots, 2) != ".." || last.length == 0 || last.offset + last.length != piece.text.size()) return not_a_range(piece);
    item_.first = first.value;
    item_.last = last.value;
    if (first.value < 1) return wrong(piece.offset, first.length, counted_.empty() ? "the stitch 0" : "the number 0", fmt::format("{} counted from 1", counted_.empty() ? "stitches" : counted_));
    if (last.value < first.value)
      return wrong(piece.offset + last.offset, last.length, fmt::format("the {} {} as last", counted_.empty() ? "stitch" : "number", last.value),
                   fmt::format("the first {}, {}, or a later one", counted_.empty() ? "stitch" : "number", first.value));
    if (facts_.whole && fine_ && !facts_.cut) check_range(piece, last);
  }

  void check_range(const Stretch& piece, const Number& last) {
    const std::string& part = reading_.course.parts[item_.part].name;
    const std::size_t passes = facts_.stitches.size();
    if (!item_.pass && passes > 1)
      return wrong(piece, "the range", fmt::format("the pass as well: {} has {} passes", shown(part), passes),
                   fmt::format("{} / pass 1 / {}", part, piece.text));
    const int stitches = passes == 0 ? 0 : facts_.stitches[item_.pass.value_or(1) - 1];
    if (last.value > stitches)
      wrong(piece.offset + last.offset, last.length, fmt::format("the stitch {}", last.value),
            fmt::format("at most {}: that many stitches {} has", stitches,
                        item_.pass ? fmt::format("pass {} of {}", *item_.pass, shown(part)) : shown(part)));
  }

  void not_a_range(const Stretch& piece) {
    const std::string expected = !counted_.empty() ? fmt::format("a range of {}, e.g. \"1..8\"", counted_)
                                 : item_.pass      ? "a range of stitches, e.g. \"1..20\""
                                                   : "a pass, e.g. \"pass 1\", or a range of stitches, e.g. \"1..20\"";
    wrong(piece, "the stage", expected, likely_range(piece.text));
  }

  /// "1-20", "1...20", "1–20": two numbers with something else between them.
  static std::string likely_range(std::string_view text) {
    const Number first = number_at(text, 0);
    const std::size_t second = std::min(text.find_first_of("0123456789", first.length), text.size());
    const Number last = number_at(text, second);
    const bool two = first.length > 0 && last.length > 0 && last.offset > first.length && last.offset + last.length == text.size();
    return two ? fmt::format("{}..{}", first.value, last.value) : std::string();
  }

  const Node& node_;
  Reading& reading_;
  std::vector<Stretch> pieces_;
  course::WorkItem item_;
  PartFacts facts_;
  std::string counted_;  ///< of cutwork: what a range counts
  bool fine_ = true;
};

}  // namespace

std::optional<course::WorkItem> read_work_item(const Node& node, Reading& reading) {
  const auto text = read_line(node, line_limit, reading.faults);
  return text ? ItemReader(node, *text, reading).read() : std::nullopt;
}

}  // namespace file
