// Random ways of writing a course down: keys in any order, texts and numbers in any of TOML's forms, tables with headers, in braces or with
// dots, blank lines and comments everywhere.
#pragma once

#include <algorithm>

#include "messy_course.h"

namespace messy {

enum class Comments { none, everywhere };

class Writer {
 public:
  Writer(unsigned seed, Comments comments) : random_(seed), comments_(comments) {}

  std::string write(const Course& course) {
    line("format = 1");
    std::vector<const Table*> order;
    for (const Table& table : course) order.push_back(&table);
    shuffle_kinds(order);
    // dots before any header, since a header ends what stands at the top
    for (const Table*& t : order)
      if (!t->many && t->of.empty() && t->name == "cloth" && coin(random_)) dotted(*std::exchange(t, nullptr));
    for (const Table* t : order)
      if (t) table(*t);
    loose();
    return std::move(out_);
  }

 private:
  /// Tables of one kind keep their order; the kinds come in any order.
  void shuffle_kinds(std::vector<const Table*>& order) {
    std::vector<std::string> kinds{"course", "cloth", "thread", "habits", "habits.count_cost", "habits.stitches_a_minute",
                                   "part",   "lesson"};
    std::shuffle(kinds.begin(), kinds.end(), random_);
    const auto rank = [&](const Table* t) {
      return std::find(kinds.begin(), kinds.end(), t->of.empty() ? t->name : t->of) - kinds.begin();
    };
    std::stable_sort(order.begin(), order.end(), [&](const Table* a, const Table* b) { return rank(a) < rank(b); });
  }

  void table(const Table& t) {
    loose();
    const std::string name = t.of.empty() ? t.name : t.of + '.' + key(t.name);
    line(t.many ? fmt::format("[[{}]]", name) : fmt::format("[ {} ]", name));
    Pairs pairs = t.pairs;
    std::shuffle(pairs.begin(), pairs.end(), random_);
    for (const auto& [k, v] : pairs) {
      loose();
      line(fmt::format("{}{}{}", key(k), coin(random_) ? "=" : "  =  ", value(v, true)));
    }
    loose();
  }

  void dotted(const Table& t) {
    for (const auto& [k, v] : t.pairs) line(fmt::format("{} . {} = {}", t.name, key(k), value(v, true)));
  }

  std::string comment() { return comments_ == Comments::none ? "" : fmt::format("# c{} \" ' [ {{ = ", ++count_); }

  void line(const std::string& text) {
    out_.append(static_cast<std::size_t>(dice(random_, 0, 2)), ' ');
    out_ += text;
    if (dice(random_, 0, 3) == 0) out_ += fmt::format("\t{}", comment());
    out_ += '\n';
  }

  /// Blank lines and whole-line comments.
  void loose() {
    for (int n = dice(random_, 0, 3); n > 0; --n) {
      if (coin(random_)) out_ += fmt::format("  {}", comment());
      out_ += '\n';
    }
  }

  std::string key(const std::string& k) {
    const bool bare = k.find_first_not_of("abcdefghijklmnopqrstuvwxyz_0123456789") == std::string::npos;
    return bare && coin(random_) ? k : basic(k);
  }

  std::string value(const Value& v, bool alone) {
    if (const auto* t = std::get_if<std::string>(&v.value)) return text(*t, alone);
    if (const auto* n = std::get_if<Number>(&v.value)) return number(n->digits);
    if (const auto* b = std::get_if<Bare>(&v.value)) return b->text;
    const auto& items = std::get<std::vector<Value>>(v.value);
    std::string out = "[";
    for (const Value& item : items) out += fmt::format("{}{}{},", gap(), value(item, false), gap());
    if (!items.empty() && coin(random_)) out.pop_back();
    return fmt::format("{}{}]", out, gap());
  }

  /// Between the items of a list: nothing, blanks, or line ends with comments.
  std::string gap() {
    if (dice(random_, 0, 3) > 0) return std::string(static_cast<std::size_t>(dice(random_, 0, 2)), ' ');
    return fmt::format("{}\n{}", coin(random_) ? comment() : "", coin(random_) ? fmt::format(" {}\n", comment()) : "");
  }

  std::string number(const std::string& digits) {
    if (digits.find('.') != std::string::npos || digits[0] == '-') return digits;
    const int n = std::stoi(digits);
    switch (dice(random_, 0, 4)) {
      case 0: return fmt::format("0x{:X}", n);
      case 1: return fmt::format("+{}", digits);
      case 2: return n > 9 ? fmt::format("{}_{}", digits.substr(0, 1), digits.substr(1)) : digits;
      default: return digits;
    }
  }

  std::string text(const std::string& t, bool alone) {
    const bool breaks = t.find('\n') != std::string::npos;
    const bool marks = t.find('\'') != std::string::npos;
    if (!breaks && !marks && coin(random_)) return fmt::format("'{}'", t);
    if (alone && !marks && coin(random_)) return fmt::format("'''\n{}'''", t);
    if (alone && coin(random_)) return fmt::format("\"\"\"{}{}\"\"\"", escaped(t), coin(random_) ? "\\\n   " : "");
    return basic(t);
  }

  std::string basic(const std::string& t) { return fmt::format("\"{}\"", escaped(t)); }

  std::string escaped(const std::string& t) {
    std::string out;
    for (const char c : t) {
      if (c == '"' || c == '\\') (out += '\\') += c;
      else if (c == '\n') out += coin(random_) ? "\\n" : "\\u000A";
      else if (c == '\t') out += "\\t";
      else if (c == 'a' && coin(random_)) out += coin(random_) ? "\\u0061" : "\\U00000061";
      else out += c;
    }
    return out;
  }

  Random random_;
  Comments comments_;
  int count_ = 0;
  std::string out_;
};

inline std::string write(const Course& course, unsigned seed, Comments comments) { return Writer(seed, comments).write(course); }

/// The comments of a text of write(), each by its number.
inline std::vector<int> comments_in(const std::string& text) {
  std::vector<int> numbers;
  for (std::size_t at = text.find("# c"); at != std::string::npos; at = text.find("# c", at + 1))
    if (text[at + 3] >= '0' && text[at + 3] <= '9') numbers.push_back(std::stoi(text.substr(at + 3)));
  return numbers;
}

}  // namespace messy
