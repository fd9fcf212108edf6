// The house in order: what stands at the top, lengths of files and functions, names, first lines, no notes left lying about.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "base/functions.h"
#include "base/sources.h"

using house::Source;

namespace {

using Lines = std::vector<std::string>;

std::string said(const Lines& lines) { return fmt::format("{}", fmt::join(lines, "\n")); }

const std::vector<Source>& code() {
  static const auto files = house::sources_under({"src", "tests", "assets"}, {".h", ".cpp"});
  return files;
}

const std::vector<Source>& all_written() {
  static const auto files = house::sources_under({"src", "tests", "assets", "third_party", "lessons"},
                                                 {".h", ".cpp", ".cmake", ".txt", ".sh", ".py", ".toml", ".json", ".md"});
  return files;
}

int length(const Source& file) { return static_cast<int>(house::lines_of(file.text).size()); }

Lines longer_than(int limit, const std::vector<Source>& files) {
  Lines found;
  for (const Source& file : files)
    if (length(file) > limit) found.push_back(fmt::format("{}: {} lines", file.path, length(file)));
  return found;
}

Lines long_functions(int limit, const std::vector<Source>& files) {
  Lines found;
  for (const Source& file : files)
    for (const house::Function& function : house::functions_of(file))
      if (function.lines > limit) found.push_back(fmt::format("{}:{}: {} lines: {}", file.path, function.line, function.lines, function.head));
  return found;
}

/// Marks of things put off, in text or code. Put together here, so that this file does not hold them.
Lines marks_left(const std::vector<Source>& files) {
  const std::string marks[] = {std::string("TO") + "DO", std::string("FIX") + "ME", std::string("XX") + "X", std::string("HA") + "CK"};
  const auto has = [](const std::string& line, const std::string& mark) {
    const std::size_t at = line.find(mark), end = at + mark.size();
    return at != std::string::npos && (at == 0 || !house::word_letter(line[at - 1])) && (end == line.size() || !house::word_letter(line[end]));
  };
  Lines found;
  for (const Source& file : files) {
    const Lines lines = house::lines_of(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i)
      if (std::any_of(std::begin(marks), std::end(marks), [&](const std::string& mark) { return has(lines[i], mark); }))
        found.push_back(fmt::format("{}:{}: {}", file.path, i + 1, lines[i]));
  }
  return found;
}

Lines bad_first_lines(const std::vector<Source>& files) {
  Lines found;
  for (const Source& file : files) {
    const bool header = file.path.ends_with(".h");
    if (header && !file.text.starts_with("// ")) found.push_back(file.path + ": a header opens with what it is for");
    if (header && file.text.find("\n#pragma once\n") == std::string::npos) found.push_back(file.path + ": #pragma once");
    if (!header && !file.text.starts_with("// ") && !file.text.starts_with("#include \"") && !file.text.starts_with("#define "))
      found.push_back(file.path + ": a file opens with what it is for, or with the header that says so");
  }
  return found;
}

Lines bad_names(const std::vector<Source>& files) {
  const house::Pattern good("^[a-z0-9_]+\\.(h|cpp)$"), vague("^(.*_)?(utils?|helpers?|misc|common|stuff)\\.(h|cpp)$");
  Lines found;
  for (const Source& file : files) {
    const std::string name = file.path.substr(file.path.rfind('/') + 1);
    if (!good.in(name) || vague.in(name)) found.push_back(file.path);
  }
  return found;
}

Source made_up(const std::string& text) { return house::source("src/x/y.cpp", text); }

}  // namespace

TEST_CASE("code is told from comments and quotes") {
  CHECK(house::code_of("a // b\nc") == "a     \nc");
  CHECK(house::code_of("a /* b\n */ c") == "a     \n    c");
  CHECK(house::code_of("f(\"{ \\\" //\") {") == "f(         ) {");
  CHECK(house::code_of("f('{', '\\'', 1'000) {") == "f(   ,     , 1'000) {");
  CHECK(house::code_of("R\"x({ )\" })x\" }") == "              }");
  CHECK(house::code_of("\"open\n}") == "     \n}");
}

TEST_CASE("functions are found by their braces") {
  const auto functions = house::functions_of(made_up("namespace a {\nstruct B {\n  int c{1};\n  void d() const {\n    if (x) {\n    }\n  }\n};\n"
                                                     "template <class T>\nT e(T f) {\n  return [&](int g) { return g; }(f);\n}\n"
                                                     "const int h[] = {1, 2};\nenum class I { j };\n}  // namespace a\nTEST_CASE(\"k {\") {\n}\n"));
  CHECK(house::functions_of(made_up("int f() {\n  // why\n\n  return g(R\"(\none\ntwo)\");\n}"))[0].lines == 6);
  REQUIRE(functions.size() == 3);
  CHECK(functions[0].head == "void d() const");
  CHECK(functions[0].line == 4);
  CHECK(functions[0].lines == 4);
  CHECK(functions[1].head == "template <class T> T e(T f)");
  CHECK(functions[1].lines == 3);
  CHECK(functions[2].head == "TEST_CASE( )");
  CHECK(functions[2].lines == 2);
}

TEST_CASE("what is too long, put off or badly named is found") {
  std::string body = "void f() {\n";
  for (int i = 0; i < 59; ++i) body += "  g();\n";
  CHECK(long_functions(60, {made_up(body + "}\n")}) == Lines{"src/x/y.cpp:1: 61 lines: void f()"});
  CHECK(long_functions(61, {made_up(body + "}\n")}).empty());
  CHECK(longer_than(60, {made_up(body + "}\n")}) == Lines{"src/x/y.cpp: 61 lines"});
  CHECK(marks_left({made_up(std::string("// FIX") + "ME later\n")}).size() == 1);
  CHECK(marks_left({made_up("// to do so\n")}).empty());
  CHECK(bad_names({house::source("src/x/Big.cpp", ""), house::source("src/x/string_utils.h", ""), house::source("src/x/paint.h", "")}).size() == 2);
  CHECK(bad_first_lines({made_up("int x;\n")}).size() == 1);
  CHECK(bad_first_lines({house::source("src/x/y.h", "#pragma once\n")}).size() == 2);
}

TEST_CASE("nothing else stands at the top") {
  const std::set<std::string> allowed{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "src", "third_party", "lessons", "tests", "assets", "build"};
  Lines others;
  for (const auto& entry : std::filesystem::directory_iterator(TELLEKANT_ROOT)) {
    const std::string name = entry.path().filename().string();
    if (!allowed.contains(name) && !name.starts_with('.')) others.push_back(name);
  }
  CHECK(said(others) == "");
}

TEST_CASE("no file over 500 lines, nine in ten under 300") {
  REQUIRE(code().size() > 80);
  CHECK(said(longer_than(500, code())) == "");
  const Lines long_ones = longer_than(300, code());
  if (!long_ones.empty()) MESSAGE("over 300 lines:\n" << said(long_ones));
  CHECK(long_ones.size() * 10 <= code().size());
}

TEST_CASE("no function over 60 lines") { CHECK(said(long_functions(60, code())) == ""); }

TEST_CASE("nothing is put off by a mark in the text") { CHECK(said(marks_left(all_written())) == ""); }

TEST_CASE("files open with what they are for") { CHECK(said(bad_first_lines(code())) == ""); }

TEST_CASE("files are named in small letters, after what is in them") { CHECK(said(bad_names(code())) == ""); }
