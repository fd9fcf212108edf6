// Which fonts, and where Debian puts them. All of them together are read in about five milliseconds, so nothing is put off until it is
// needed.
#include "paint/cairo/fonts.h"

#include <fmt/core.h>
#include <unistd.h>

#include <mutex>

#include "base/require.h"

namespace paint {

namespace {

constexpr const char* inter[] = {"Regular", "SemiBold", "Bold"};
constexpr const char* noto_sans[] = {"-Regular",           "-Bold",           "Armenian-Regular", "Armenian-Bold",  "Georgian-Regular",
                                     "Georgian-Bold",      "Hebrew-Regular",  "Hebrew-Bold",      "Arabic-Regular", "Arabic-Bold",
                                     "Devanagari-Regular", "Devanagari-Bold", "Thai-Regular",     "Thai-Bold",      "Symbols-Regular",
                                     "Symbols2-Regular",   "Math-Regular"};

/// Pango asks for fontconfig's current set-up in a thread of its own as soon as a font map is made. An empty one, put there first, keeps
/// the system's out: nothing ambient is read, and a start is milliseconds shorter. Never taken away again, since fontconfig is one for the
/// process.
void keep_system_fonts_out() {
  static std::once_flag once;
  std::call_once(once, [] {
    FcConfig* none = FcConfigCreate();
    base::require(none != nullptr && FcConfigSetCurrent(none), "fontconfig takes an empty set-up");
  });
}

base::Result<void> add(FcConfig* set, const FontFile& file) {
  const bool there = access(file.path.c_str(), R_OK) == 0;
  if (there && FcConfigAppFontAddFile(set, reinterpret_cast<const FcChar8*>(file.path.c_str()))) return {};
  return base::trouble(base::TroubleKind::input, fmt::format("the font file {} {}; the Debian package {} brings it", file.path,
                                                             there ? "cannot be used" : "is missing or cannot be read", file.package));
}

}  // namespace

std::vector<FontFile> font_files() {
  std::vector<FontFile> files;
  for (const char* name : inter) files.push_back({fmt::format("/usr/share/fonts/opentype/inter/Inter-{}.otf", name), "fonts-inter"});
  for (const char* name : noto_sans)
    files.push_back({fmt::format("/usr/share/fonts/truetype/noto/NotoSans{}.ttf", name), "fonts-noto-core"});
  return files;
}

const char* font_families() {
  return "Inter, Noto Sans, Noto Sans Armenian, Noto Sans Georgian, Noto Sans Hebrew, Noto Sans Arabic, Noto Sans Devanagari, "
         "Noto Sans Thai, Noto Sans Symbols, Noto Sans Symbols2, Noto Sans Math";
}

base::Result<FontSet> make_font_set(std::span<const FontFile> wanted) {
  keep_system_fonts_out();
  FontSet set(FcConfigCreate());
  if (!set) return base::trouble(base::TroubleKind::output, "no memory for the fonts");
  for (const FontFile& file : wanted)
    if (auto added = add(set.get(), file); !added) return tl::make_unexpected(added.error());
  return set;
}

}  // namespace paint
