// Handouts as PNG: pages are drawn and compressed in parallel, then all files appear together.
#include <fmt/format.h>
#include <tbb/blocked_range.h>
#include <tbb/enumerable_thread_specific.h>
#include <tbb/parallel_for.h>

#include <atomic>
#include <mutex>

#include "base/whole_file.h"
#include "paint/cairo/paint.h"
#include "publish/publish.h"

namespace publish {
namespace {

struct Page {
  list::List list;
  std::filesystem::path path;
};

std::vector<say::Hand> hands(course::Hand hand) {
  if (hand == course::Hand::both) return {say::Hand::right, say::Hand::left};
  return {hand == course::Hand::left ? say::Hand::left : say::Hand::right};
}

std::filesystem::path folder(const HandoutOrder& order, say::Hand hand) {
  if (order.hand != course::Hand::both) return order.into;
  return order.into / (hand == say::Hand::left ? "left" : "right");
}

std::vector<Page> pages_of(const course::Course& course, const plan::Plan& plan, const words::Phrases& phrases, const HandoutOrder& order,
                           const list::Measure& measure) {
  std::vector<Page> pages;
  for (const say::Hand hand : hands(order.hand)) {
    const say::Voice voice{phrases, hand, course};
    for (const plan::LessonPlan& lesson : plan.lessons) {
      if (order.lesson && *order.lesson != lesson.number) continue;
      auto lists = picture::handout(course, plan, lesson.number, voice, measure, picture::page_size(order.paper), order.print);
      const std::string stem = file_stem(say::lesson_title(voice, plan, lesson.number));
      for (std::size_t p = 0; p < lists.size(); ++p)
        pages.push_back({std::move(lists[p]), folder(order, hand) / fmt::format("lesson-{:02}-{}-p{}.png", lesson.number, stem, p + 1)});
    }
  }
  return pages;
}

/// Draws pages on all cores; the first trouble stops the rest.
class Press {
 public:
  Press(std::vector<Page>& pages, double dpi, std::stop_token stop, const std::function<void(int, int)>& progress)
      : pages_(pages), dpi_(dpi), stop_(std::move(stop)), progress_(progress), images_(pages.size()) {}

  base::Result<void> run() {
    tbb::parallel_for(std::size_t{0}, pages_.size(), [this](std::size_t i) { draw(i); });
    if (stop_.stop_requested()) return base::trouble(base::TroubleKind::cancelled, "stopped before the handouts were written; nothing was changed");
    if (trouble_) return tl::make_unexpected(*trouble_);
    return {};
  }
  const std::vector<std::uint8_t>& image(std::size_t i) const { return images_[i]; }

 private:
  void draw(std::size_t i) {
    if (stop_.stop_requested() || failed_) return;
    auto image = draw_with_own_type(pages_[i].list);
    const std::lock_guard lock(mutex_);
    if (!image) {
      if (!trouble_) trouble_ = image.error();
      failed_ = true;
      return;
    }
    images_[i] = std::move(*image);
    pages_[i].list.items.clear();
    if (progress_) progress_(++done_, static_cast<int>(pages_.size()));
  }

  /// Fonts are not shared between threads: each opens its own once.
  base::Result<std::vector<std::uint8_t>> draw_with_own_type(const list::List& list) {
    std::unique_ptr<paint::Type>& type = types_.local();
    if (!type) {
      auto opened = paint::Type::open();
      if (!opened) return tl::make_unexpected(opened.error());
      type = std::move(*opened);
    }
    auto pixels = paint::raster(list, *type, dpi_);
    if (!pixels) return tl::make_unexpected(pixels.error());
    const paint::PngText texts[] = {{"Title", list.title}, {"Software", "Tellekant"}};
    return paint::png(*pixels, dpi_, texts);
  }

  std::vector<Page>& pages_;
  double dpi_;
  std::stop_token stop_;
  const std::function<void(int, int)>& progress_;
  std::vector<std::vector<std::uint8_t>> images_;
  tbb::enumerable_thread_specific<std::unique_ptr<paint::Type>> types_;
  std::mutex mutex_;
  std::optional<base::Trouble> trouble_;
  std::atomic<bool> failed_ = false;
  int done_ = 0;
};

}  // namespace

base::Result<Written> handouts(const course::Course& course, const plan::Plan& plan, const words::Phrases& phrases, const HandoutOrder& order,
                               std::stop_token stop, const std::function<void(int done, int of)>& progress) {
  auto type = paint::Type::open();
  if (!type) return tl::make_unexpected(type.error());
  std::vector<Page> pages = pages_of(course, plan, phrases, order, **type);
  for (const say::Hand hand : hands(order.hand))
    if (auto made = base::make_folder(folder(order, hand)); !made) return tl::make_unexpected(made.error());
  Press press(pages, order.dpi, stop, progress);
  if (auto drawn = press.run(); !drawn) return tl::make_unexpected(drawn.error());
  base::Batch batch;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const auto& image = press.image(i);
    if (stop.stop_requested())
      return base::trouble(base::TroubleKind::cancelled, "stopped before the handouts were written; nothing was changed");
    if (auto added = batch.add(pages[i].path, {reinterpret_cast<const char*>(image.data()), image.size()}); !added)
      return tl::make_unexpected(added.error());
  }
  auto kept = batch.keep();
  if (!kept) return tl::make_unexpected(kept.error());
  return Written{std::move(*kept)};
}

}  // namespace publish
