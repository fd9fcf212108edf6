// Pages as PNG, one file a page.
#include <fmt/format.h>

#include "publish/forms.h"

namespace publish {
namespace {

base::Result<Bytes> page_png(const list::List& list, const paint::Type& type, double dpi) {
  auto pixels = paint::raster(list, type, dpi);
  if (!pixels) return tl::make_unexpected(pixels.error());
  const paint::PngText texts[] = {{"Title", list.title}, {"Software", "Tellekant"}};
  return paint::png(*pixels, dpi, texts);
}

}  // namespace

void add_png(const Making& making, const HandPages& pages, std::vector<Job>& jobs) {
  for (const std::vector<HandPages::Lesson>* all : {&pages.lessons, &pages.of_course})
    for (const HandPages::Lesson& lesson : *all)
      for (std::size_t p = 0; p < lesson.pages.size(); ++p)
        jobs.push_back({pages.folder / fmt::format("{}-p{}.png", lesson.stem, p + 1),
                        [&list = lesson.pages[p], dpi = making.order.dpi](const paint::Type& type) { return page_png(list, type, dpi); }});
}

}  // namespace publish
