// The same course gives the same bytes: below the programs nobody asks a clock, a locale, the surroundings or chance, and nothing that has
// no order of its own reaches output. A loop over an unordered container stands only under the remark "order does not matter: WHY".
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "base/pattern.h"
#include "base/sources.h"

using house::Match;
using house::Pattern;
using house::Source;

namespace {

using Lines = std::vector<std::string>;

bool program(const Source& file) { return file.path.starts_with("src/cli/") || file.path.starts_with("src/app/"); }

/// What asks the surroundings, and what is asked. The fragments are looked for first, because they are found sooner.
struct Call {
  std::vector<std::string_view> fragments;
  Pattern pattern;
  const char* asked;
};

const std::vector<Call>& ambient() {
  static const std::vector<Call> calls{
      {{"clock", "time"}, Pattern("\\b(system_clock|high_resolution_clock|utc_clock)\\b|(^|[^[:alnum:]_.>])(time|gettimeofday|clock_gettime|localtime(_r)?|gmtime(_r)?)\\s*\\("), "the clock"},
      {{"random", "rand"}, Pattern("\\b(random_device|default_random_engine)\\b|(^|[^[:alnum:]_.>])s?rand\\s*\\("), "chance"},
      {{"locale", "imbue"}, Pattern("\\bsetlocale\\b|\\bstd::locale\\b|\\bimbue\\b"), "the locale"},
      {{"env"}, Pattern("\\b(secure_)?getenv\\b|\\benviron\\b"), "the environment"},
      {{"current_path", "getcwd"}, Pattern("\\bcurrent_path\\b|\\bgetcwd\\b"), "the folder it is run in"},
      {{"map<", "set<"}, Pattern("\\b(map|set)<\\s*(const\\s+)?[[:alnum:]_:]+\\s*(const\\s*)?\\*"), "the order of addresses"},
  };
  return calls;
}

Lines ambient_calls(const Source& file) {
  Lines found;
  const Lines code = house::lines_of(file.code);
  for (std::size_t i = 0; i < code.size(); ++i) {
    if (code[i].starts_with("#include")) continue;
    for (const Call& call : ambient()) {
      const auto within = [&](std::string_view fragment) { return code[i].find(fragment) != std::string::npos; };
      if (std::any_of(call.fragments.begin(), call.fragments.end(), within) && call.pattern.in(code[i]))
        found.push_back(fmt::format("{}:{}: asks {}", file.path, i + 1, call.asked));
    }
  }
  return found;
}

/// One past the bracket that closes the one at `open`.
std::size_t past_closing(const std::string& code, std::size_t open, char opens, char closes) {
  int depth = 0;
  for (std::size_t at = open; at < code.size(); ++at) {
    depth += code[at] == opens;
    depth -= code[at] == closes;
    if (depth == 0) return at + 1;
  }
  return code.size();
}

/// The name that a type is followed by: "std::unordered_map<int, A>& name"; "name[" where the type stands within another template, since
/// only what is taken out of that has no order.
std::string name_after(const std::string& code, std::size_t at) {
  static const Pattern name("^\\s*(>?)[>[:space:]&*]*(const\\b)?[[:space:]&*]*([A-Za-z_]\\w*)");
  const auto matches = name.all(code.substr(at, 200));
  return matches.empty() ? "" : matches[0].groups[3] + (matches[0].groups[1].empty() ? "" : "[");
}

/// Variables, members, functions and other names of a type without order.
std::set<std::string> unordered_names(const std::string& code) {
  static const Pattern type("(using\\s+(\\w+)\\s*=\\s*)?(std::)?unordered_(map|set|multimap|multiset)\\s*<");
  std::set<std::string> names, types;
  if (code.find("unordered_") == std::string::npos) return names;
  for (const Match& match : type.all(code)) {
    if (!match.groups[2].empty()) types.insert(match.groups[2]);
    else names.insert(name_after(code, past_closing(code, match.end - 1, '<', '>')));
  }
  for (const std::string& own : types)
    for (const Match& use : Pattern("\\b" + own + "\\b").all(code)) names.insert(name_after(code, use.end));
  names.erase("");
  return names;
}

bool mentions(const std::string& expression, const std::set<std::string>& names) {
  static const Pattern word("\\w+\\[?");
  const auto words = word.all(expression);
  return std::any_of(words.begin(), words.end(), [&](const Match& match) { return names.contains(match.groups[0]); });
}

/// What a range-for goes over: behind the last single colon at its own depth; "" for other loops.
std::string range_of(const std::string& head) {
  for (std::size_t at = head.size(); at-- > 1;)
    if (head[at] == ':' && head[at - 1] != ':' && (at + 1 == head.size() || head[at + 1] != ':')) return head.substr(at + 1);
  return {};
}

bool remarked(const Lines& text, int line) {
  static const Pattern remark("// order does not matter: \\S");
  const auto has = [&](int n) { return n >= 1 && remark.in(text[static_cast<std::size_t>(n) - 1]); };
  return has(line) || has(line - 1);
}

/// Loops over what has no order, in the file; `declared` are names from its own header.
Lines unordered_loops(const Source& file, const std::set<std::string>& declared = {}) {
  std::set<std::string> names = unordered_names(file.code);
  names.insert(declared.begin(), declared.end());
  if (names.empty()) return {};
  const Lines text = house::lines_of(file.text);
  Lines found;
  const auto flag = [&](std::size_t at) {
    const int line = house::line_at(file.code, at);
    if (!remarked(text, line)) found.push_back(fmt::format("{}:{}: goes over what has no order", file.path, line));
  };
  static const Pattern loop("\\bfor\\s*\\("), begin("(\\w+)\\s*(\\.|->)\\s*c?begin\\s*\\(");
  for (const Match& match : loop.all(file.code)) {
    const std::size_t open = match.end - 1;
    const std::size_t end = past_closing(file.code, open, '(', ')');
    if (mentions(range_of(file.code.substr(open + 1, end - open - 2)), names)) flag(open);
  }
  for (const Match& match : begin.all(file.code))
    if (names.contains(match.groups[1])) flag(match.at);
  return found;
}

Lines below_programs(const std::vector<Source>& sources) {
  std::map<std::string, std::set<std::string>> header_names;
  for (const Source& file : sources)
    if (file.path.ends_with(".h")) header_names[file.path.substr(0, file.path.size() - 2)] = unordered_names(file.code);
  Lines found;
  for (const Source& file : sources) {
    if (program(file)) continue;
    const Lines calls = ambient_calls(file), loops = unordered_loops(file, header_names[file.path.substr(0, file.path.rfind('.'))]);
    found.insert(found.end(), calls.begin(), calls.end());
    found.insert(found.end(), loops.begin(), loops.end());
  }
  return found;
}

Lines in(const std::string& text, const std::string& path = "src/x/y.cpp") { return below_programs({house::source(path, text)}); }

}  // namespace

TEST_CASE("who asks the surroundings is found") {
  for (const std::string line : {"auto t = std::chrono::system_clock::now();", "t = time(nullptr);", "t = std::time(nullptr);", "n = rand();", "std::random_device d;",
                                 "setlocale(LC_ALL, \"\");", "auto home = std::getenv(\"HOME\");", "p = fs::current_path();", "std::map<const Part*, int> m;", "std::set<Part *> s;"}) {
    CAPTURE(line);
    CHECK(in(line + "\n").size() == 1);
    CHECK(in(line + "\n", "src/cli/y.cpp").empty());
    CHECK(in("// " + line + "\n").empty());
  }
}

TEST_CASE("what only sounds alike is not") {
  for (const std::string line : {"auto t = part.time(3);", "first_time(3);", "operand(4);", "std::map<int, Part*> m;", "int time_of_day = 3;", "work->time();"}) CHECK(in(line + "\n").empty());
}

TEST_CASE("loops over what has no order are found") {
  const std::string map = "std::unordered_map<Hole, std::vector<int>> tiles_;\n";
  CHECK(in(map + "for (const auto& [k, v] : tiles_) f(k);\n") == Lines{"src/x/y.cpp:2: goes over what has no order"});
  CHECK(in(map + "for (const auto& [k, v]\n     : this->tiles_)\n  f(k);\n").size() == 1);
  CHECK(in(map + "std::vector<A> all(tiles_.begin(), tiles_.end());\n").size() == 1);
  CHECK(in("using Tiles = std::unordered_map<int, int>;\nvoid f(const Tiles& tiles) {\n  for (auto t : tiles) g(t);\n}\n").size() == 1);
  CHECK(in("void f(const std::unordered_set<int> & seen) {\n  for (int s : seen) g(s);\n}\n").size() == 1);
  CHECK(in("std::vector<std::unordered_set<int>> rows;\nfor (int s : rows[2]) g(s);\n").size() == 1);
}

TEST_CASE("a loop with a reason may stand, one with order always may") {
  const std::string map = "std::unordered_map<int, int> m;\n";
  CHECK(in(map + "for (auto& [k, v] : m) sum += v;  // order does not matter: a sum\n").empty());
  CHECK(in(map + "// order does not matter: sorted below\nfor (auto& [k, v] : m) all.push_back(k);\n").empty());
  CHECK(in("std::unordered_map<int, std::vector<int>> rows;\nfor (int s : rows[2]) g(s);\n").empty());
  CHECK(in("std::vector<std::unordered_set<int>> rows;\nfor (const auto& row : rows) g(row);\n").empty());
  CHECK(in(map + "for (auto& [k, v] : m) sum += v;  // order does not matter:\n").size() == 1);
  CHECK(in(map + "for (int n : numbers) m[n] = 1;\nif (m.find(3) == m.end()) f();\nfor (int i = 0; i < a ? b : c; ++i) f();\n").empty());
}

TEST_CASE("members declared in a file's own header count") {
  CHECK(below_programs({house::source("src/x/y.h", "std::unordered_set<int> seen_;\n"), house::source("src/x/y.cpp", "for (int s : seen_) f(s);\n")}).size() == 1);
  CHECK(below_programs({house::source("src/x/z.h", "std::unordered_set<int> seen_;\n"), house::source("src/x/y.cpp", "for (int s : seen_) f(s);\n")}).empty());
}

TEST_CASE("below the programs the same course gives the same bytes") {
  const auto sources = house::sources_under({"src"}, {".h", ".cpp"});
  REQUIRE(sources.size() > 50);
  CHECK(fmt::format("{}", fmt::join(below_programs(sources), "\n")) == "");
}
