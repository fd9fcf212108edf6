// Functions of a C++ file by their braces: where each begins and how long it is. A block outside every function is one when a parenthesis
// stands before its brace; blocks within it (lambdas, loops) are part of it.
#pragma once

#include <string>
#include <vector>

#include "base/pattern.h"
#include "base/sources.h"

namespace house {

struct Function {
  std::string head;  ///< what stands before the brace, blanks made one
  int line = 0;      ///< of the opening brace
  int lines = 0;     ///< opening brace to closing brace, both counted; lines within a quoted text of several lines not
};

/// How many lines count, up to each line: all but those that only a text in quotes fills.
inline std::vector<int> counted_lines(const Source& file) {
  const std::vector<std::string> text = lines_of(file.text), code = lines_of(file.code);
  const auto blank = [](const std::string& line) { return line.find_first_not_of(" \t") == std::string::npos; };
  std::vector<int> counted{0};
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool quoted = blank(code[i]) && !blank(text[i]) && text[i].find("//") == std::string::npos;
    counted.push_back(counted.back() + !quoted);
  }
  counted.push_back(counted.back());  // behind the last line break
  return counted;
}

inline bool opens_function(const std::string& head) {
  static const Pattern other("^(template ?<.*> ?)?(inline )?(namespace|class|struct|enum|union|extern)\\b");
  return head.find('(') != std::string::npos && head.back() != '=' && !other.in(head);
}

inline std::string blanks_made_one(const std::string& text) {
  std::string made;
  for (const char c : text) {
    const bool blank = std::isspace(static_cast<unsigned char>(c)) != 0;
    if (!blank) made += c;
    else if (!made.empty() && made.back() != ' ') made += ' ';
  }
  if (made.ends_with(' ')) made.pop_back();
  return made;
}

inline std::vector<Function> functions_of(const Source& file) {
  const std::vector<int> counted = counted_lines(file);
  const auto upto = [&](int n) { return counted[static_cast<std::size_t>(n)]; };
  std::vector<Function> functions;
  std::vector<bool> blocks;  // open ones; true: a function
  bool within = false;
  std::string head;
  int line = 1;
  bool directive = false;  // #include and its like
  for (const char c : file.code) {
    line += c == '\n';
    directive = c == '#' || (directive && c != '\n');
    if (directive) continue;
    if (c == '{') {
      head = blanks_made_one(head);
      const bool function = !within && !head.empty() && opens_function(head);
      if (function) functions.push_back({head, line, 0});
      within = within || function;
      blocks.push_back(function);
    } else if (c == '}' && !blocks.empty()) {
      if (blocks.back()) {
        functions.back().lines = upto(line) - upto(functions.back().line - 1);
        within = false;
      }
      blocks.pop_back();
    }
    if (c == '{' || c == '}' || c == ';') head.clear();
    else head += c;
  }
  return functions;
}

}  // namespace house
