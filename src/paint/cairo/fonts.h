// The font files that all pages use, and a font set-up of our own that knows no others.
#pragma once

#include <fontconfig/fontconfig.h>

#include <span>
#include <string>
#include <vector>

#include "base/result.h"
#include "paint/cairo/owned.h"

namespace paint {

using FontSet = Owned<FcConfig, FcConfigDestroy>;

struct FontFile {
  std::string path;
  std::string package;  ///< the Debian package that brings it
};

/// Inter in the weights of list::Weight, then Noto Sans and its sisters for other scripts and signs.
std::vector<FontFile> font_files();
/// The families in the order in which a letter is looked for.
const char* font_families();

/// A set of just these files. A file that is missing, unreadable or no font is a Trouble that names it and its package.
base::Result<FontSet> make_font_set(std::span<const FontFile> files);

}  // namespace paint
