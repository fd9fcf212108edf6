// Two small pictures kept in expected/: every kind of item, and type. They must come out the same to the last pixel, with the fonts and
// libraries of Debian 12. After a wished-for change run the program once with TELLEKANT_UPDATE=1 and look at the new pictures.
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "page.h"
#include "read_png.h"

using page::accent, page::black, page::ink, page::item, page::pale, page::white;

namespace {

namespace fs = std::filesystem;
using Bytes = std::vector<std::uint8_t>;

Bytes load(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return Bytes(std::istreambuf_iterator<char>(file), {});
}

void save(const fs::path& path, const paint::Pixels& pixels, double dpi) {
  const auto bytes = paint::png(pixels, dpi, {});
  REQUIRE(bytes.has_value());
  REQUIRE(bytes->size() <= 20'000);
  std::ofstream(path, std::ios::binary).write(reinterpret_cast<const char*>(bytes->data()), static_cast<std::streamsize>(bytes->size()));
}

/// White where both agree; the farther apart, the darker.
paint::Pixels difference(const paint::Pixels& one, const paint::Pixels& other) {
  paint::Pixels result = one;
  for (std::size_t i = 0; i < result.bytes.size(); ++i)
    result.bytes[i] = static_cast<std::uint8_t>(255 - std::abs(one.bytes[i] - other.bytes[i]));
  return result;
}

void leave_traces(const std::string& name, const paint::Pixels& expected, const paint::Pixels& actual, double dpi) {
  const fs::path folder = fs::temp_directory_path() / "tellekant_paint";
  fs::create_directories(folder);
  save(folder / (name + ".actual.png"), actual, dpi);
  save(folder / (name + ".expected.png"), expected, dpi);
  if (expected.bytes.size() == actual.bytes.size()) save(folder / (name + ".difference.png"), difference(expected, actual), dpi);
  FAIL_CHECK("expected, actual and difference lie in " << folder.string());
}

void check(const std::string& name, const list::List& list, double dpi) {
  const fs::path path = fs::path(TELLEKANT_ROOT) / "tests/paint_cairo/expected" / (name + ".png");
  const paint::Pixels actual = page::draw(list, dpi);
  if (const char* update = std::getenv("TELLEKANT_UPDATE"); update && *update) return save(path, actual, dpi);
  REQUIRE_MESSAGE(fs::exists(path), path.string());
  const paint::Pixels expected = page::read_png(load(path)).pixels;
  const bool same =
      expected.width == actual.width && expected.height == actual.height && expected.grey == actual.grey && expected.bytes == actual.bytes;
  CHECK_MESSAGE(same, name);
  if (!same) leave_traces(name, expected, actual, dpi);
}

list::Item line(list::Point from, list::Point to, double width, list::Colour colour, list::Dash dash = list::Dash::none,
                list::Cap cap = list::Cap::round) {
  return item(list::Stroke{.points = {from, to}, .width = width, .colour = colour, .dash = dash, .cap = cap});
}

list::List every_item() {
  list::List list = page::sheet(36, 26, {});
  list.items = {item(list::Panel{{1, 1, 34, 24}, 2, true, {0xF6, 0xF8, 0xFB}, 0.3, ink}), item(list::ClipIn{{3, 3, 16, 13}, 2})};
  for (int i = 0; i <= 8; ++i)
    list.items.push_back(line({3 + 2.0 * i, 3}, {3 + 2.0 * i, 16}, i % 4 ? 0.14 : 0.22, pale, list::Dash::none, list::Cap::flat));
  for (const list::Item& more : {
           line({4, 15}, {14, 5}, 1.2, ink),
           line({2, 8}, {22, 8}, 0.8, pale),
           item(list::ClipIn{{12, 10, 10, 10}, 0}),
           item(list::Fill{{{10, 9}, {20, 12}, {14, 17}}, accent}),
           item(list::ClipOut{}),
           item(list::ClipOut{}),
           item(list::Panel{{3, 3, 16, 13}, 2, false, {}, 0.35, ink}),
           line({22, 4}, {33, 4}, 0.4, ink, list::Dash::back, list::Cap::flat),
           line({22, 6}, {33, 6}, 0.8, ink, list::Dash::back, list::Cap::round),
           item(list::Stroke{.points = {{22, 9}, {26, 14}, {29, 8}, {33, 14}}, .width = 0.9, .colour = accent}),
           item(list::Stroke{.points = {{22, 16}, {25, 16}, {25, 18}, {22, 18}}, .width = 0.6, .colour = ink, .closed = true}),
           item(list::Disc{{28, 17}, 1.2, ink, 0, {}}),
           item(list::Disc{{32, 17}, 1.2, white, 0.35, ink}),
           item(list::Text{{3, 22.5}, "Step 12", {9, list::Weight::semibold}, list::Align::left, ink}),
           item(list::Text{{33, 22.5}, "2, 5", {9, list::Weight::bold}, list::Align::right, accent}),
       })
    list.items.push_back(more);
  return list;
}

list::List letters() {
  list::List list = page::sheet(60, 34, {});
  double y = 6;
  for (const auto& [text, weight] : {std::pair{"Hardanger – «telle» ½ → 17", list::Weight::regular},
                                     {"Semibold: after 1 count 4", list::Weight::semibold},
                                     {"Иней Πάχνη שלום", list::Weight::bold},
                                     {"نقش नमस्ते ✂ \U000F1234", list::Weight::regular}}) {
    list.add(list::Role::text, list::Text{{2, y}, text, {12, weight}, list::Align::left, black});
    y += 8;
  }
  return list;
}

}  // namespace

TEST_CASE("every kind of item") { check("every_item", every_item(), 150); }
TEST_CASE("letters as outlines, on coarse pixels") { check("letters_100", letters(), 100); }
TEST_CASE("letters as glyphs, on fine pixels") { check("letters_200", letters(), 200); }
