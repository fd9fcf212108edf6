// Type: widths against FreeType's own reading of the font file, and against the ink that is drawn.
#include <doctest/doctest.h>
#include <ft2build.h>
#include FT_FREETYPE_H

#include <array>

#include "page.h"
#include "paint/cairo/fonts.h"

using list::Weight, list::TypeStyle, page::type;

namespace {

/// What FreeType says of one glyph, in millimetres at this size, without any layout.
struct RawFont {
  FT_Library library = nullptr;
  FT_Face face = nullptr;
  explicit RawFont(const std::string& path) {
    REQUIRE(FT_Init_FreeType(&library) == 0);
    REQUIRE(FT_New_Face(library, path.c_str(), 0, &face) == 0);
  }
  ~RawFont() { FT_Done_Face(face), FT_Done_FreeType(library); }
  RawFont(const RawFont&) = delete;
  RawFont& operator=(const RawFont&) = delete;

  double mm(FT_Long units, double pt) const { return static_cast<double>(units) / face->units_per_EM * pt * list::mm_per_pt; }
  double advance(FT_ULong letter, double pt) const {
    REQUIRE(FT_Load_Char(face, letter, FT_LOAD_NO_SCALE) == 0);
    return mm(face->glyph->metrics.horiAdvance, pt);
  }
};

double width(std::string_view text, TypeStyle style) { return type().measure(text, style).width; }

}  // namespace

TEST_CASE("widths are the font's own, in every weight and size") {
  const std::array paths = {"Regular", "SemiBold", "Bold"};
  for (const auto weight : {Weight::regular, Weight::semibold, Weight::bold}) {
    const RawFont raw(std::string("/usr/share/fonts/opentype/inter/Inter-") + paths[static_cast<std::size_t>(weight)] + ".otf");
    for (const double pt : {7.0, 12.0, 24.5}) {
      CAPTURE(pt);
      CHECK(width("H", {pt, weight}) == doctest::Approx(raw.advance('H', pt)).epsilon(0.001));
      CHECK(width("HHHHHHHH", {pt, weight}) == doctest::Approx(8 * raw.advance('H', pt)).epsilon(0.001));
      const list::TypeSize size = type().measure("H", {pt, weight});
      CHECK(size.ascent == doctest::Approx(raw.mm(raw.face->ascender, pt)).epsilon(0.001));
      CHECK(size.descent == doctest::Approx(raw.mm(-raw.face->descender, pt)).epsilon(0.001));
    }
  }
}

TEST_CASE("letters that Inter lacks come from Noto Sans") {
  const RawFont noto("/usr/share/fonts/truetype/noto/NotoSansHebrew-Regular.ttf");
  CHECK(width("\u05D0", {12, Weight::regular}) == doctest::Approx(noto.advance(0x05D0, 12)).epsilon(0.001));
}

TEST_CASE("measured and drawn agree: ink lies where the alignment and the width say") {
  constexpr double dpi = 1200;
  const RawFont raw("/usr/share/fonts/opentype/inter/Inter-Regular.otf");
  REQUIRE(FT_Load_Char(raw.face, 'H', FT_LOAD_NO_SCALE) == 0);
  const double pt = 20, bearing = raw.mm(raw.face->glyph->metrics.horiBearingX, pt),
               tall = raw.mm(raw.face->glyph->metrics.horiBearingY, pt);
  const std::string text = "HOLES 12 BLOCH";
  const double advance = width(text, {pt, Weight::regular});
  for (const auto& [align, left] :
       {std::pair{list::Align::left, 60.0}, {list::Align::centre, 60 - advance / 2}, {list::Align::right, 60 - advance}}) {
    const list::Text line{{60, 15}, text, {pt, Weight::regular}, align, page::black};
    const list::Rect ink = page::inked_box(page::draw(page::sheet(130, 20, {page::item(line)}), dpi), dpi);
    CHECK(std::abs(ink.x - (left + bearing)) < 0.03);                    // a dot is 0.021 mm
    CHECK(std::abs(ink.x + ink.w - (left + advance - bearing)) < 0.03);  // H stands in the middle of its advance
    CHECK(std::abs(ink.y + ink.h - 15) < 0.2);                           // round letters reach a little below the base line
    CHECK(std::abs(ink.y - (15 - tall)) < 0.2);
  }
}

TEST_CASE("a line is as wide at 72 dots an inch as at 1200") {
  const list::Text line{{2, 8}, "count 10 threads straight up H", {12, Weight::regular}, list::Align::left, page::black};
  const list::List list = page::sheet(80, 12, {page::item(line)});
  const auto right = [&](double dpi) {
    const list::Rect box = page::inked_box(page::draw(list, dpi), dpi);
    return box.x + box.w;
  };
  CHECK(right(72) == doctest::Approx(right(1200)).epsilon(0.01));
  CHECK(right(199) == doctest::Approx(right(1200)).epsilon(0.004));
  CHECK(right(300) == doctest::Approx(right(1200)).epsilon(0.004));
}

TEST_CASE("figures: equally wide only where that is asked for") {
  const TypeStyle plain{12, Weight::regular}, columns{12, Weight::regular, list::Figures::tabular};
  CHECK(width("1111", plain) < width("8888", plain) - 0.5);
  CHECK(width("1111", columns) == doctest::Approx(width("8888", columns)));
  CHECK(width("block", plain) == doctest::Approx(width("block", columns)));
}

TEST_CASE("a lacking letter is told") {
  const auto complete = [](std::string_view text) { return type().measure(text, {12, Weight::semibold}).complete; };
  for (const std::string text : {"", "Frost on the Pane", "Å æ ø ß ğ ł ő", "Hvetebrød – «telle» … ½ × ← ↑ → ↓ ✂", "Иней на окне", "Πάχνη",
                                 "שלום", "نقش", "नमस्ते", "สวัสดี"}) {
    CAPTURE(text);
    CHECK(complete(text));
  }
  for (const std::string text : {"\uF0AA", "Frost \U000F1234", "霜の窓", "bad \xFF byte", "cut \xC3"}) {
    CAPTURE(text);
    CHECK_FALSE(complete(text));
  }
  CHECK_FALSE(complete(std::string_view("nul\0nul", 7)));
}

TEST_CASE("titles in any script can be measured and drawn") {
  for (const std::string text : {"نقش على القماش", "רקמה לבנה", "霜の窓", "白い刺繍 42", "❄️ Frost 🧵🪡",
                                 "a\u0301\u0302\u0303\u0304", "\u202Eright to left", "\uF0AA", "\xFF\xFE\xC3"}) {
    CAPTURE(text);
    const double wide = width(text, {14, Weight::bold});
    CHECK(wide > 0);
    const list::Text line{{2, 8}, text, {14, Weight::bold}, list::Align::left, page::black};
    const paint::Pixels drawn = page::draw(page::sheet(wide + 10, 12, {page::item(line)}), 150);
    CHECK(page::inked_area(drawn, 150) > 0);
    const list::Rect box = page::inked_box(drawn, 150);
    CHECK(box.x > 1);  // right-to-left letters, too, begin at the left end of the room measured
    CHECK(box.x + box.w < 2 + wide + 1);
  }
}

TEST_CASE("line breaks, tabs and other controls stand as spaces") {
  const TypeStyle style{12, Weight::regular};
  const double spaced = width("one two three", style);
  CHECK(width("one\ntwo\tthree", style) == doctest::Approx(spaced));
  CHECK(width("one\u2028two\u0007three", style) == doctest::Approx(spaced));
  CHECK(type().measure("one\ntwo", style).complete);
}

TEST_CASE("a font file that is missing or none is named with its package") {
  const std::array missing = {paint::FontFile{"/usr/share/fonts/nowhere/None.otf", "fonts-inter"}};
  const auto none = paint::make_font_set(missing);
  REQUIRE_FALSE(none.has_value());
  CHECK(none.error().what ==
        "the font file /usr/share/fonts/nowhere/None.otf is missing or cannot be read; the Debian package fonts-inter brings it");
  const std::array no_font = {paint::FontFile{TELLEKANT_ROOT "/CMakeLists.txt", "fonts-noto-core"}};
  const auto unfit = paint::make_font_set(no_font);
  REQUIRE_FALSE(unfit.has_value());
  CHECK(unfit.error().what.find("cannot be used; the Debian package fonts-noto-core") != std::string::npos);
}
