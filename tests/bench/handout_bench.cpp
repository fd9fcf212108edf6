// A course of eight lessons in every form, on one core and on all, and what laying out, drawing, packing and writing take of a page.
// Nothing is compared with other programs: the table's baseline is one core of the same run.
#include <benchmark/benchmark.h>
#include <sys/resource.h>
#include <tbb/global_control.h>

#include <cstdlib>
#include <filesystem>
#include <memory>

#include "assets/assets.h"
#include "base/require.h"
#include "base/whole_file.h"
#include "file/course_file.h"
#include "picture/film.h"
#include "plan/plan.h"
#include "publish/publish.h"

namespace {

using publish::Form;

/// The sample's design with its work parted into eight lessons.
struct Eight {
  course::Course course;
  plan::Plan plan;
  words::Phrases phrases;
};

std::string text_of_eight() {
  std::string text(assets::table("lessons/frost.course.toml"));
  text.resize(text.find("[[lesson]]"));
  for (const char* work :
       {"\"ring / 1..50\"", "\"ring / 51..100\"", "\"ring / 101..140\"", "\"inner cable / 1..78\"", "\"inner cable / 79..156\"",
        "\"border / pass 1 / 1..106\"", "\"border / pass 1 / 107..212\"", "\"border / pass 2\""})
    text += std::string("[[lesson]]\nwork = [") + work + "]\n";
  return text;
}

const Eight& eight() {
  static const Eight made = [] {
    file::Read read = file::read(text_of_eight());
    base::require(read.faults.empty(), "the sample can be read");
    auto plan = plan::make_plan(read.course);
    auto phrases = words::Phrases::read(assets::table("phrases/en.toml"), "en.toml");
    base::require(plan && phrases && plan->lessons.size() == 8, "the sample has eight lessons");
    return Eight{std::move(read.course), std::move(*plan), std::move(*phrases)};
  }();
  return made;
}

struct Folder {
  std::filesystem::path path;
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "tellekant-bench-XXXXXX").string();
    path = mkdtemp(name.data());
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path, ignored);
  }
};

/// The most that the whole program has held at once, in MB; it never falls.
double peak_mb() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

void write_all(benchmark::State& state, std::vector<Form> forms) {
  const tbb::global_control cores(tbb::global_control::max_allowed_parallelism, static_cast<std::size_t>(state.range(0)));
  std::size_t files = 0;
  for (auto _ : state) {
    const Folder folder;
    publish::HandoutOrder order;
    order.into = folder.path;
    order.forms = forms;
    order.stamp = "20270112T173000Z";
    const auto written = publish::handouts(eight().course, eight().plan, eight().phrases, order, {}, {});
    base::require(written.has_value(), "handouts are written");
    files = written->files.size();
  }
  state.counters["files"] = static_cast<double>(files);
  state.counters["peak_MB"] = peak_mb();
}

void png(benchmark::State& state) { write_all(state, {Form::png}); }
void pdf(benchmark::State& state) { write_all(state, {Form::pdf}); }
void svg(benchmark::State& state) { write_all(state, {Form::svg}); }
void web(benchmark::State& state) { write_all(state, {Form::web}); }
void all_but_stills(benchmark::State& state) { write_all(state, {Form::png, Form::pdf, Form::svg, Form::web}); }
void stills(benchmark::State& state) { write_all(state, {Form::stills}); }
void every_form(benchmark::State& state) { write_all(state, {Form::png, Form::pdf, Form::svg, Form::web, Form::stills}); }
void packet(benchmark::State& state) { write_all(state, {Form::packet}); }

const paint::Type& type() {
  static const auto opened = paint::Type::open();
  base::require(opened.has_value(), "the fonts are installed");
  return **opened;
}

std::vector<list::List> pages() {
  std::vector<list::List> all;
  const say::Voice voice{eight().phrases, say::Hand::right, eight().course};
  for (int n = 1; n <= 8; ++n)
    for (list::List& page :
         picture::handout(eight().course, eight().plan, n, voice, type(), picture::page_size(course::Paper::a4), picture::Print::normal))
      all.push_back(std::move(page));
  return all;
}

// The shares of the PNG pages: laid out, drawn, packed, put on the disk; one core, one after another.
void page_layout(benchmark::State& state) {
  std::size_t n = 0;
  for (auto _ : state) n = pages().size();
  state.counters["pages"] = static_cast<double>(n);
}
void page_raster(benchmark::State& state) {
  const auto all = pages();
  for (auto _ : state)
    for (const list::List& page : all) benchmark::DoNotOptimize(paint::raster(page, type(), 300)->bytes.data());
}
void page_encode(benchmark::State& state) {
  std::vector<paint::Pixels> drawn;
  for (const list::List& page : pages()) drawn.push_back(*paint::raster(page, type(), 300));
  std::size_t bytes = 0;
  for (auto _ : state) {
    bytes = 0;
    for (const paint::Pixels& pixels : drawn) bytes += paint::png(pixels, 300, {})->size();
  }
  state.counters["bytes"] = static_cast<double>(bytes);
}
void page_write(benchmark::State& state) {
  std::vector<std::vector<std::uint8_t>> files;
  for (const list::List& page : pages()) files.push_back(*paint::png(*paint::raster(page, type(), 300), 300, {}));
  for (auto _ : state) {
    const Folder folder;
    base::Batch batch;
    for (std::size_t i = 0; i < files.size(); ++i)
      base::require(
          batch.add(folder.path / std::to_string(i), {reinterpret_cast<const char*>(files[i].data()), files[i].size()}).has_value(),
          "the disk takes it");
    base::require(batch.keep().has_value(), "the files appear");
  }
}

}  // namespace

// On two cores and on one; the least memory first, since its peak never falls.
BENCHMARK(png)->Arg(2)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(pdf)->Arg(2)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(svg)->Arg(2)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(web)->Arg(2)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(all_but_stills)->Arg(2)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(stills)->Arg(2)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);
BENCHMARK(every_form)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);
BENCHMARK(packet)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);
BENCHMARK(page_layout)->Unit(benchmark::kMillisecond);
BENCHMARK(page_raster)->Unit(benchmark::kMillisecond);
BENCHMARK(page_encode)->Unit(benchmark::kMillisecond);
BENCHMARK(page_write)->Unit(benchmark::kMillisecond)->UseRealTime();
