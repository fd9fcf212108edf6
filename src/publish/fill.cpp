#include "publish/fill.h"

#include <glib.h>

#include <array>
#include <memory>
#include <sstream>

#include "base/require.h"
#include "paint/svg/svg.h"
#include "publish/json.h"

namespace publish {

std::string fill(std::string_view page, const std::map<std::string, std::string, std::less<>>& values, const words::Phrases& phrases) {
  std::string filled;
  for (std::size_t at = 0;;) {
    const std::size_t open = page.find("{{", at);
    filled += page.substr(at, open - at);
    if (open == std::string_view::npos) return filled;
    const std::size_t close = page.find("}}", open);
    base::require(close != std::string_view::npos, "a template's mark ends");
    const std::string_view name = page.substr(open + 2, close - open - 2);
    if (name.starts_with('=')) {
      const auto value = values.find(name.substr(1));
      base::require(value != values.end(), "a template asks for what the page has");
      filled += value->second;
    } else {
      filled += paint::escaped(phrases.say(name));
    }
    at = close + 2;
  }
}

std::string json_text(std::string_view text) {
  std::ostringstream out;
  Json(out).value(text);
  std::string safe;
  for (const char c : out.str()) safe += c == '<' ? std::string("\\u003c") : std::string(1, c);
  return safe;
}

std::string policy_hash(std::string_view text) {
  const std::unique_ptr<GChecksum, void (*)(GChecksum*)> sum(g_checksum_new(G_CHECKSUM_SHA256), g_checksum_free);
  g_checksum_update(sum.get(), reinterpret_cast<const guchar*>(text.data()), static_cast<gssize>(text.size()));
  std::array<guint8, 32> digest{};
  gsize length = digest.size();
  g_checksum_get_digest(sum.get(), digest.data(), &length);
  const std::unique_ptr<gchar, void (*)(void*)> base64(g_base64_encode(digest.data(), length), g_free);
  return std::string("sha256-") + base64.get();
}

}  // namespace publish
