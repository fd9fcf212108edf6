// Plays a list into SVG: real text, a title and a description that are read aloud. Nothing is measured; the type is asked for by name.
#pragma once

#include <string>

#include "list/list.h"

namespace paint {

/// What stands in a picture's head.
struct SvgHead {
  std::string id = "picture";                  ///< letters, digits, hyphens: begins every id in it, so that several can stand in one page
  std::string title, description;              ///< plain text; an empty description is left out
  enum class As { file, part } as = As::file;  ///< a file of its own with its size in mm, or a part of a page, as large as its place there
};

/// A whole element, as a file with XML's first line. Every shape carries its role as a class, so that a page may give it other colours.
/// Letters that XML cannot carry (controls) become U+FFFD.
std::string svg(const list::List& list, const SvgHead& head);

/// Text as it stands between tags or in a quoted attribute of XML and HTML: & < > " ' written as entities, controls but the line break and
/// the tab, and bytes that are no UTF-8, as U+FFFD.
std::string escaped(std::string_view text);

}  // namespace paint
