// UTF-8 by way of glib, which pango brings anyway.
#include "paint/cairo/letters.h"

#include <glib.h>

#include "paint/cairo/owned.h"

namespace paint {

Letters read_letters(std::string_view utf8) {
  Letters letters;
  const auto length = static_cast<gssize>(utf8.size());
  letters.whole = g_utf8_validate(utf8.data(), length, nullptr);
  const Owned<gchar, g_free> valid(g_utf8_make_valid(utf8.data(), length));
  for (const char* at = valid.get(); *at; at = g_utf8_next_char(at)) letters.points.push_back(g_utf8_get_char(at));
  return letters;
}

bool is_control(char32_t point) { return g_unichar_iscntrl(point) || point == 0x2028 || point == 0x2029; }

std::string write_letters(std::u32string_view points) {
  std::string utf8;
  char bytes[6];
  for (const char32_t point : points) utf8.append(bytes, static_cast<std::size_t>(g_unichar_to_utf8(point, bytes)));
  return utf8;
}

}  // namespace paint
