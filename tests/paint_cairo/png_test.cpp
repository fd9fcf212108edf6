// PNG files read back with libpng and, where it is installed, looked over by pngcheck.
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <thread>

#include "page.h"
#include "read_png.h"

using page::draw, page::item, page::read_png, page::sheet;

namespace {

using Bytes = std::vector<std::uint8_t>;

list::List colourful() {
  return sheet(40, 30,
               {item(list::Panel{{2, 2, 36, 26}, 3, true, page::pale, 0.4, page::ink}),
                item(list::Disc{{12, 15}, 5, page::accent, 0.5, page::black}),
                item(list::Text{{38, 20}, "Frost 12", {16, list::Weight::bold}, list::Align::right, page::ink})});
}

list::List greyish() {
  return sheet(40, 30,
               {item(list::Stroke{.points = {{2, 2}, {38, 28}}, .width = 2, .colour = {70, 70, 70}}),
                item(list::Text{{4, 20}, "Frost 12", {16, list::Weight::regular}, list::Align::left, page::black})});
}

Bytes write(const paint::Pixels& pixels, double dpi, const std::vector<paint::PngText>& texts = {},
            paint::Packing packing = paint::Packing::small) {
  auto file = paint::png(pixels, dpi, texts, packing);
  REQUIRE_MESSAGE(file.has_value(), (file ? std::string() : file.error().what));
  return std::move(*file);
}

std::filesystem::path scratch() {
  const auto folder = std::filesystem::temp_directory_path() / ("tellekant_png_test_" + std::to_string(std::random_device{}()));
  std::filesystem::create_directory(folder);
  return folder;
}

void save(const std::filesystem::path& path, const Bytes& bytes) {
  std::ofstream(path, std::ios::binary).write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
}

Bytes load(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return Bytes(std::istreambuf_iterator<char>(file), {});
}

void append(png_structp to, png_bytep data, size_t length) {
  auto& file = *static_cast<Bytes*>(png_get_io_ptr(to));
  file.insert(file.end(), data, data + length);
}

Bytes libpng_level_6(const paint::Pixels& pixels) {
  Bytes file;
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, page::inside::fail, page::inside::warn);
  png_infop info = png_create_info_struct(png);
  png_set_write_fn(png, &file, append, nullptr);
  png_set_compression_level(png, 6);
  const auto width = static_cast<png_uint_32>(pixels.width), height = static_cast<png_uint_32>(pixels.height);
  png_set_IHDR(png, info, width, height, 8, pixels.grey ? PNG_COLOR_TYPE_GRAY : PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_write_info(png, info);
  for (std::size_t y = 0; y < height; ++y) png_write_row(png, pixels.bytes.data() + y * width * (pixels.grey ? 1U : 3U));
  png_write_end(png, info);
  png_destroy_write_struct(&png, &info);
  return file;
}

const std::vector<paint::PngText> words = {{"Title", "Frost on the Pane \u2744\uFE0F\U0001F9F5"},
                                           {"Author", "Kari B\u00F8"},
                                           {"Description", "first line\nsecond\tline"},
                                           {"Software", "Tellekant"}};

}  // namespace

TEST_CASE("libpng reads exactly the pixels that were drawn") {
  for (const list::List& list : {colourful(), greyish()})
    for (const double dpi : {72.0, 150.0, 299.5}) {
      const paint::Pixels drawn = draw(list, dpi);
      const page::ReadPng read = read_png(write(drawn, dpi));
      CHECK(read.bit_depth == 8);
      CHECK(read.pixels.width == drawn.width);
      CHECK(read.pixels.height == drawn.height);
      CHECK(read.pixels.grey == drawn.grey);
      CHECK(read.pixels.bytes == drawn.bytes);
      CHECK(read_png(write(drawn, dpi, words, paint::Packing::quick)).pixels.bytes == drawn.bytes);
    }
}

TEST_CASE("libpng reads exactly any pixels, not only ours") {
  std::mt19937 random(7);
  for (const auto& [width, height] : {std::pair{1, 1}, {3, 1}, {1, 5}, {64, 65}, {257, 3}, {1200, 900}})
    for (const bool grey : {true, false}) {
      paint::Pixels pixels{width, height, grey, Bytes(static_cast<std::size_t>(width * height * (grey ? 1 : 3)))};
      for (std::uint8_t& byte : pixels.bytes) byte = static_cast<std::uint8_t>(random());
      CHECK(read_png(write(pixels, 300)).pixels.bytes == pixels.bytes);
      CHECK(read_png(write(pixels, 300, {}, paint::Packing::quick)).pixels.bytes == pixels.bytes);
    }
}

TEST_CASE("pHYs: dots per metre, as the PNG specification wants them") {
  const paint::Pixels drawn = draw(greyish(), 72);
  for (const auto& [dpi, per_metre] : {std::pair{300.0, 11811U}, {150.0, 5906U}, {600.0, 23622U}, {72.0, 2835U}, {1200.0, 47244U}}) {
    const page::ReadPng read = read_png(write(drawn, dpi));
    CHECK(read.dots_per_metre_x == per_metre);
    CHECK(read.dots_per_metre_y == per_metre);
    CHECK(read.unit == PNG_RESOLUTION_METER);
  }
}

TEST_CASE("texts: Latin-1 as tEXt, all others as iTXt, in their order") {
  const page::ReadPng read = read_png(write(draw(greyish(), 72), 72, words));
  REQUIRE(read.texts.size() == 4);
  CHECK(read.texts[0].keyword == "Title");
  CHECK(read.texts[0].compression == PNG_ITXT_COMPRESSION_NONE);
  CHECK(read.texts[0].text == words[0].text);
  CHECK(read.texts[1].compression == PNG_TEXT_COMPRESSION_NONE);
  CHECK(read.texts[1].text == "Kari B\xF8");
  CHECK(read.texts[2].text == "first line\nsecond line");
  CHECK(read.texts[3].keyword == "Software");
  CHECK(read.texts[3].text == "Tellekant");
}

TEST_CASE("texts that are no UTF-8 are written as what could be read of them") {
  const page::ReadPng read = read_png(write(draw(greyish(), 72), 72, {{"Title", "bad \xFF byte"}, {"Comment", ""}}));
  REQUIRE(read.texts.size() == 2);
  CHECK(read.texts[0].text == "bad \uFFFD byte");
  CHECK(read.texts[1].text.empty());
}

TEST_CASE("pngcheck finds no fault") {
  if (std::system("command -v pngcheck > /dev/null") != 0) return;
  const auto folder = scratch();
  save(folder / "colour.png", write(draw(colourful(), 150), 150, words));
  save(folder / "grey.png", write(draw(greyish(), 150), 150, words));
  save(folder / "quick.png", write(draw(colourful(), 150), 150, words, paint::Packing::quick));
  for (const char* name : {"colour.png", "grey.png", "quick.png"})
    CHECK(std::system(("pngcheck -q " + (folder / name).string()).c_str()) == 0);
  std::filesystem::remove_all(folder);
}

TEST_CASE("smaller than libpng's level 6 of the same pixels") {
  for (const list::List& list : {colourful(), greyish()}) {
    const paint::Pixels drawn = draw(list, 300);
    CHECK(write(drawn, 300).size() < libpng_level_6(drawn).size());
  }
}

TEST_CASE("the same list gives the same bytes: twice, with other fonts opened, and in two threads at once") {
  const Bytes first = write(draw(colourful(), 150), 150, words);
  CHECK(write(draw(colourful(), 150), 150, words) == first);
  Bytes results[2];
  const auto work = [&](Bytes& result) {
    const auto own = paint::Type::open();
    if (!own) return;
    for (int i = 0; i < 5; ++i) {
      const auto pixels = paint::raster(colourful(), **own, 150);
      if (pixels) result = paint::png(*pixels, 150, words).value_or(Bytes{});
    }
  };
  std::thread one(work, std::ref(results[0])), other(work, std::ref(results[1]));
  one.join(), other.join();
  CHECK(results[0] == first);
  CHECK(results[1] == first);
}

// Run by the next test in a process of its own, since fonts are set up once for a process.
TEST_CASE("write the colourful page where the environment says") {
  if (const char* path = std::getenv("TELLEKANT_TEST_PNG")) save(path, write(draw(colourful(), 150), 150, words));
}

TEST_CASE("the surroundings change nothing: no font set-up, another language, no home") {
  const auto folder = scratch();
  const std::string self = std::filesystem::read_symlink("/proc/self/exe").string();
  const std::string command =
      "FONTCONFIG_FILE=/dev/null LC_ALL=ar_EG.UTF-8 LANGUAGE=ja PANGO_LANGUAGE=tr HOME=/nowhere XDG_CACHE_HOME=/nowhere "
      "TELLEKANT_TEST_PNG='" +
      (folder / "page.png").string() + "' '" + self + "' -tc='write the colourful page*' > /dev/null";
  CHECK(std::system(command.c_str()) == 0);
  CHECK(load(folder / "page.png") == write(draw(colourful(), 150), 150, words));
  std::filesystem::remove_all(folder);
}

TEST_CASE("a density that cannot be and a picture too large are troubles") {
  const paint::Pixels drawn = draw(greyish(), 72);
  CHECK_FALSE(paint::png(drawn, 0, {}).has_value());
  CHECK(paint::png(drawn, 5000, {}).error().what == "5000 dots per inch cannot be drawn, only 72 to 1200");
}
