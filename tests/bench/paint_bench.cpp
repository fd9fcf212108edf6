// One A4 page at 300 dots an inch, drawn and written. The yardstick is the machine itself: a memset of the page's 34.8 MB in 32-bit pixels,
// already touched once; and for the file, libpng at level 6 on the same pixels.
#include <benchmark/benchmark.h>
#include <png.h>

#include <algorithm>
#include <cstddef>
#include <cstring>
#include <ctime>
#include <vector>

#include "base/require.h"
#include "paint/cairo/paint.h"
#include "sample_page.h"

namespace {

constexpr double dpi = 300;
constexpr std::size_t page_bytes = std::size_t{2480} * 3508 * 4;

const paint::Type& type() {
  static const auto opened = paint::Type::open();
  base::require(opened.has_value(), "the fonts are installed");
  return **opened;
}

const paint::Pixels& page(bench::Ink ink) {
  static const auto coloured = paint::raster(bench::sample_page(type(), bench::Ink::coloured), type(), dpi);
  static const auto grey = paint::raster(bench::sample_page(type(), bench::Ink::grey), type(), dpi);
  return ink == bench::Ink::coloured ? *coloured : *grey;
}

/// Processor time of the whole process, so that what else the machine does counts little.
double now() {
  timespec time{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
  return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
}

template <class Work>
double seconds(const Work& work) {
  const double start = now();
  work();
  return now() - start;
}

double median(std::vector<double> times) {
  const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
  std::ranges::nth_element(times, middle);
  return *middle;
}

/// Of eleven, so that one interruption does not count.
template <class Work>
double median_seconds(const Work& work) {
  std::vector<double> times(11);
  for (double& time : times) time = seconds(work);
  return median(times);
}

double memset_seconds() {
  static std::vector<char> room(page_bytes, 1);
  return median_seconds([] {
    std::memset(room.data(), 2, room.size());
    benchmark::DoNotOptimize(room.data());
    benchmark::ClobberMemory();
  });
}

void append(png_structp png, png_bytep data, size_t length) {
  auto& file = *static_cast<std::vector<std::uint8_t>*>(png_get_io_ptr(png));
  file.insert(file.end(), data, data + length);
}

std::vector<std::uint8_t> libpng_level_6(const paint::Pixels& pixels) {
  std::vector<std::uint8_t> file;
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
  png_infop info = png_create_info_struct(png);
  png_set_write_fn(png, &file, append, nullptr);
  png_set_compression_level(png, 6);
  const auto width = static_cast<png_uint_32>(pixels.width), height = static_cast<png_uint_32>(pixels.height);
  png_set_IHDR(png, info, width, height, 8, pixels.grey ? PNG_COLOR_TYPE_GRAY : PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_write_info(png, info);
  for (png_uint_32 y = 0; y < height; ++y) png_write_row(png, pixels.bytes.data() + std::size_t{y} * width * (pixels.grey ? 1 : 3));
  png_write_end(png, info);
  png_destroy_write_struct(&png, &info);
  return file;
}

bench::Ink ink_of(const benchmark::State& state) { return state.range(0) ? bench::Ink::grey : bench::Ink::coloured; }

void fill_memory(benchmark::State& state) {
  std::vector<char> room(page_bytes, 1);
  for (auto _ : state) {
    std::memset(room.data(), 2, room.size());
    benchmark::DoNotOptimize(room.data());
    benchmark::ClobberMemory();
  }
}

void draw_page(benchmark::State& state) {
  const list::List list = bench::sample_page(type(), ink_of(state));
  for (auto _ : state) benchmark::DoNotOptimize(paint::raster(list, type(), dpi));
}

/// Aim: memsets at most 30.
void draw_and_write_page(benchmark::State& state) {
  const list::List list = bench::sample_page(type(), ink_of(state));
  std::vector<double> times;
  std::size_t bytes = 0;
  for (auto _ : state) times.push_back(seconds([&] { bytes = paint::png(*paint::raster(list, type(), dpi), dpi, {})->size(); }));
  state.counters["memsets"] = median(times) / memset_seconds();
  state.counters["bytes"] = static_cast<double>(bytes);
}

/// Aims: size_ratio and time_ratio, ours over libpng's, below 1.
void write_page(benchmark::State& state) {
  const paint::Pixels& pixels = page(ink_of(state));
  std::vector<double> times;
  std::size_t bytes = 0;
  for (auto _ : state) times.push_back(seconds([&] { bytes = paint::png(pixels, dpi, {})->size(); }));
  const auto theirs = static_cast<double>(libpng_level_6(pixels).size());
  state.counters["size_ratio"] = static_cast<double>(bytes) / theirs;
  state.counters["time_ratio"] = median(times) / median_seconds([&] { benchmark::DoNotOptimize(libpng_level_6(pixels)); });
  state.counters["bytes"] = static_cast<double>(bytes);
  state.counters["libpng_bytes"] = theirs;
}

void write_page_libpng(benchmark::State& state) {
  const paint::Pixels& pixels = page(ink_of(state));
  for (auto _ : state) benchmark::DoNotOptimize(libpng_level_6(pixels));
}

void open_fonts(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(paint::Type::open());
}

void measure_line(benchmark::State& state) {
  for (auto _ : state)
    benchmark::DoNotOptimize(type().measure("From the upper end of the topmost block's left-hand stitch", {12, list::Weight::regular}));
}

}  // namespace

BENCHMARK(fill_memory)->Unit(benchmark::kMillisecond)->Name("paint/memset_34.8_MB");
BENCHMARK(open_fonts)->Unit(benchmark::kMillisecond)->Name("paint/open_fonts");
BENCHMARK(measure_line)->Unit(benchmark::kMicrosecond)->Name("paint/measure_line");
BENCHMARK(draw_page)->ArgName("grey")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Name("paint/draw_A4_300");
BENCHMARK(write_page)->ArgName("grey")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Name("paint/write_A4_300");
BENCHMARK(write_page_libpng)->ArgName("grey")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Name("paint/write_A4_300_libpng_6");
BENCHMARK(draw_and_write_page)->ArgName("grey")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Name("paint/page_A4_300");
