// Reads paths by descent: a sequence of items, an item a leg or a group, a group a sequence again, 8 deep at most. A faulty item is told
// once, then reading goes on behind its comma. Groups are written out as they close, once the limit has been looked at.
#include "stitch/path.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <utility>

#include "base/nearest.h"
#include "stitch/path_tokens.h"
#include "stitch/way_words.h"

namespace stitch {
namespace {

constexpr std::string_view ways_in_words = "a direction (N, NE, E, SE, S, SW, W or NW)";
constexpr std::string_view item_in_words = "a direction and a number (NE 8), or a group (6 x (S 4, E 4))";

bool near_apart(std::string_view word) { return base::nearest_word(word, {"apart"}) == "apart"; }
bool is_times(const Token& token) { return token.kind == TokenKind::word && token.text == "x"; }
bool like_times(const Token& token) { return token.text == "X" || token.text == "\u00D7" || token.text == "*"; }
bool is_way(const Token& token) { return token.kind == TokenKind::word && cloth::parse_way(token.text).has_value(); }

class Reader {
 public:
  Reader(std::string_view key, std::string_view text, Apart apart) : key_(key), tokens_(text), apart_(apart) {}

  ParsedPath read() {
    if (tokens_.peek().kind == TokenKind::end) {
      fault(tokens_.peek(), "an empty path", std::string(item_in_words));
    } else {
      parsed_.items = sequence(0);
    }
    std::stable_sort(parsed_.faults.begin(), parsed_.faults.end(),
                     [](const KeyFault& a, const KeyFault& b) { return a.offset < b.offset; });
    if (parsed_.faults.size() > path_fault_limit) parsed_.faults.resize(path_fault_limit);
    if (!parsed_.faults.empty()) parsed_.items.clear();
    return std::move(parsed_);
  }

 private:
  using Items = std::vector<PathItem>;

  void fault_at(std::size_t offset, std::size_t length, std::string found, std::string expected, std::string suggestion = "") {
    parsed_.faults.push_back({key_, offset, length, std::move(found), std::move(expected), std::move(suggestion)});
    if (parsed_.faults.size() > path_fault_limit) tokens_ = Tokens("");  // enough is told: the rest is not read
  }
  void fault(const Token& token, std::string found, std::string expected, std::string suggestion = "") {
    fault_at(token.offset, token.text.size(), std::move(found), std::move(expected), std::move(suggestion));
  }
  void fault(const Token& token, std::string_view expected) { fault(token, in_words(token), std::string(expected)); }

  /// Skips the rest of a faulty item: up to the next comma or bracket that belongs to what surrounds it.
  void skip_item() {
    for (int open = 0;;) {
      const TokenKind kind = tokens_.peek().kind;
      if (kind == TokenKind::end) return;
      if (open == 0 && (kind == TokenKind::comma || kind == TokenKind::close)) return;
      open += kind == TokenKind::open ? 1 : kind == TokenKind::close ? -1 : 0;
      tokens_.take();
    }
  }

  /// Skips all up to the bracket that closes the one just taken.
  void skip_brackets() {
    for (int open = 1; open > 0 && tokens_.peek().kind != TokenKind::end;) {
      const TokenKind kind = tokens_.take().kind;
      open += kind == TokenKind::open ? 1 : kind == TokenKind::close ? -1 : 0;
    }
  }

  /// Items up to the closing bracket (left standing) or the end.
  Items sequence(int depth) {
    Items items;
    std::optional<Token> comma;  // the last one, after which an item must stand
    for (;;) {
      const Token next = tokens_.peek();
      const bool stray = next.kind == TokenKind::close && depth == 0;
      if (next.kind == TokenKind::end || (next.kind == TokenKind::close && !stray)) {
        if (comma) fault(*comma, "a comma with nothing after it", std::string(item_in_words));
        return items;
      }
      if (next.kind == TokenKind::comma) {
        fault(tokens_.take(), item_in_words);
        comma.reset();
        continue;
      }
      if (stray) {
        fault(tokens_.take(), "a closing bracket without an opening one", "no bracket there");
      } else {
        item(items, depth);
      }
      comma = separator(depth);
    }
  }

  /// The comma after an item, or none where the sequence ends or the next item has run into this one (which is told).
  std::optional<Token> separator(int depth) {
    const Token next = tokens_.peek();
    const bool excused = std::exchange(run_on_, false);
    if (next.kind == TokenKind::comma) return tokens_.take();
    if (next.kind == TokenKind::end || next.kind == TokenKind::close) return std::nullopt;
    if (excused) return std::nullopt;
    const Token after = tokens_.after();
    if (is_way(next) || next.kind == TokenKind::open ||
        (next.kind == TokenKind::number && (is_times(after) || after.kind == TokenKind::open))) {
      fault(next, in_words(next), "a comma before it");
      return std::nullopt;
    }
    const bool meant_apart = next.kind == TokenKind::word && next.text != "apart" && near_apart(next.text);
    const std::string suggestion = meant_apart ? "apart" : next.kind == TokenKind::other ? "," : "";
    fault(next, in_words(next), depth > 0 ? "a comma or a closing bracket" : "a comma or the end of the path", suggestion);
    skip_item();
    return separator(depth);
  }

  void item(Items& items, int depth) {
    const Token& next = tokens_.peek();
    if (next.kind == TokenKind::number) return group(items, depth);
    if (next.kind == TokenKind::word) return leg(items);
    if (next.kind == TokenKind::open) {
      fault(next, "a bracket without a number before it", "how many times it is to be done, such as 6 x (S 4, E 4)");
      bracketed(depth);
      return;
    }
    fault(next, item_in_words);
    skip_item();
  }

  void leg(Items& items) {
    const Token word = tokens_.take();
    const std::optional<cloth::Way> way = cloth::parse_way(word.text);
    if (!way) {
      fault(word, in_words(word), std::string(ways_in_words), nearest_way(word.text));
      return skip_item();
    }
    const Token number = tokens_.peek();
    if (number.kind != TokenKind::number) return number_missing(word, number);
    tokens_.take();
    const std::optional<int> value = whole(number, item_number_limit);
    PathItem item{*way, value.value_or(0), false, word.offset, number.end() - word.offset, number.offset, number.text.size()};
    if (const Token apart = tokens_.peek(); apart.kind == TokenKind::word && apart.text == "apart") {
      tokens_.take();
      item.apart = true;
      item.length = apart.end() - word.offset;
      if (apart_ == Apart::refused) fault(apart, "a comma: only steps of blocks stand apart");
    }
    if (value && room_for(1, 1, items.size(), word)) items.push_back(item);
  }

  void number_missing(const Token& way, const Token& next) {
    if (next.kind == TokenKind::word && !is_way(next)) {
      fault(next, fmt::format("a number after {}", way.text));
    } else {
      fault(way, fmt::format("{} without a number", way.text), fmt::format("a number after it, such as {} 8", way.text));
    }
    run_on_ = is_way(next);
    if (!run_on_) skip_item();
  }

  void group(Items& items, int depth) {
    const Token times = tokens_.take();
    const Token next = tokens_.peek();
    if (is_way(next)) {
      fault_at(times.offset, next.end() - times.offset, "a number before its direction", "the direction first",
               fmt::format("{} {}", next.text, times.text));
      return skip_item();
    }
    if (is_times(next) || like_times(next)) {
      tokens_.take();
      if (!is_times(next)) fault(next, in_words(next), "the letter x of a group", "x");
    } else if (next.kind == TokenKind::open) {
      fault(next, in_words(next), "an x before it", fmt::format("{} x (", times.text));
    } else {
      fault(times, item_in_words);
      return skip_item();
    }
    if (tokens_.peek().kind != TokenKind::open) {
      fault(tokens_.peek(), "an opening bracket after the x");
      run_on_ = is_way(tokens_.peek());
      if (!run_on_) skip_item();
      return;
    }
    const Items inner = bracketed(depth);
    const std::optional<int> count = whole(times, path_item_limit);
    if (count && !inner.empty() && room_for(*count, inner.size(), items.size(), times)) {
      for (int i = 0; i < *count; ++i) items.insert(items.end(), inner.begin(), inner.end());
    }
    if (const Token apart = tokens_.peek(); apart.kind == TokenKind::word && apart.text == "apart") {
      fault(tokens_.take(), "a comma: apart stands within the brackets, after each number it is meant for");
    }
  }

  /// The items between brackets.
  Items bracketed(int depth) {
    const Token open = tokens_.take();
    if (depth >= group_depth_limit) {
      fault(open, "a group within groups, too deep", fmt::format("groups at most {} deep", group_depth_limit));
      skip_brackets();
      return {};
    }
    if (tokens_.peek().kind == TokenKind::close) {
      fault_at(open.offset, tokens_.take().end() - open.offset, "brackets with nothing in them", std::string(item_in_words));
      return {};
    }
    Items items = sequence(depth + 1);
    if (tokens_.peek().kind == TokenKind::close) {
      tokens_.take();
    } else {
      fault(open, "an opening bracket that is never closed", "a closing bracket");
    }
    return items;
  }

  /// The number of a token, where it is whole and from 1 to the limit.
  std::optional<int> whole(const Token& token, int limit) {
    int value = 0;
    const char* end = token.text.data() + token.text.size();
    const auto [stop, error] = std::from_chars(token.text.data(), end, value);
    if (stop == end && error == std::errc{} && value >= 1 && value <= limit) return value;
    fault(token, fmt::format("a whole number from 1 to {}", limit));
    return std::nullopt;
  }

  /// May so many items be added? The first time they may not, this is told at the token; from then on nothing is.
  bool room_for(int times, std::size_t items, std::size_t there, const Token& token) {
    if (full_) return false;
    if (static_cast<std::size_t>(times) * items + there <= static_cast<std::size_t>(path_item_limit)) return true;
    full_ = true;
    fault(token, "more items than a path may have", fmt::format("at most {} with all groups written out", path_item_limit));
    return false;
  }

  std::string key_;
  Tokens tokens_;
  Apart apart_;
  ParsedPath parsed_;
  bool run_on_ = false;  // the next item follows without a comma, and this has been told
  bool full_ = false;    // more items than allowed: only faults are looked for from here on
};

}  // namespace

ParsedPath parse_path(std::string_view key, std::string_view text, Apart apart) { return Reader(key, text, apart).read(); }

}  // namespace stitch
