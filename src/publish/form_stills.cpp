// Stills for filming: every needle point of every close-up at two sizes, one moving picture a close-up, and the cue sheet.
#include <fmt/format.h>

#include <memory>
#include <mutex>

#include "paint/cairo/moving_png.h"
#include "picture/film.h"
#include "publish/cues.h"
#include "publish/forms.h"

namespace publish {
namespace {

/// A lesson's stills. The small ones are drawn once: as files of their own and in the pictures that move.
struct Film {
  explicit Film(std::vector<picture::Still> made) : stills(std::move(made)), once(stills.size()), small(stills.size()) {}
  const std::vector<picture::Still> stills;
  std::vector<std::once_flag> once;
  std::vector<base::Result<Bytes>> small;
};
using Stills = std::shared_ptr<Film>;

struct Size {
  int height;
  double dpi() const { return height * 25.4 / picture::film_height; }
};
constexpr Size sizes[] = {{1080}, {2160}};

base::Result<Bytes> drawn(const picture::Still& still, const paint::Type& type, Size size, paint::Ground ground) {
  auto pixels = paint::raster(still.list, type, size.dpi(), ground);
  if (!pixels) return tl::make_unexpected(pixels.error());
  const paint::PngText texts[] = {{"Title", still.title}, {"Description", still.words}, {"Software", "Tellekant"}};
  return paint::png(*pixels, size.dpi(), texts, paint::Packing::quick);
}

/// "lesson-03-the-inner-cable-017-b1.png": files sorted by name come in the order of the lesson.
std::string still_name(const std::string& stem, std::size_t i, const picture::Still& still) {
  return fmt::format("{}-{:03}-{}{}.png", stem, i + 1, file_stem(still.letter), still.number);
}

const base::Result<Bytes>& small_one(Film& film, std::size_t i, const paint::Type& type, paint::Ground ground) {
  std::call_once(film.once[i], [&] { film.small[i] = drawn(film.stills[i], type, sizes[0], ground); });
  return film.small[i];
}

base::Result<Bytes> moving(Film& film, const std::string& letter, const paint::Type& type, paint::Ground ground) {
  paint::MovingPng moving;
  for (std::size_t i = 0; i < film.stills.size(); ++i) {
    if (film.stills[i].letter != letter) continue;
    const auto& png = small_one(film, i, type, ground);
    if (!png) return png;
    if (auto added = moving.add(*png, film.stills[i].seconds); !added) return tl::make_unexpected(added.error());
  }
  return moving.file();
}

void add_lesson(const Making& making, const std::filesystem::path& into, const HandPages::Lesson& lesson, const Stills& stills,
                std::vector<Job>& jobs) {
  const paint::Ground ground = making.order.ground;
  std::vector<Cue> cues;
  for (std::size_t i = 0; i < stills->stills.size(); ++i) {
    const picture::Still& still = stills->stills[i];
    const std::string name = still_name(lesson.stem, i, still);
    jobs.push_back({into / fmt::format("{}", sizes[0].height) / name,
                    [stills, i, ground](const paint::Type& type) { return small_one(*stills, i, type, ground); }});
    jobs.push_back({into / fmt::format("{}", sizes[1].height) / name,
                    [stills, i, ground](const paint::Type& type) { return drawn(stills->stills[i], type, sizes[1], ground); }});
    cues.push_back({name, still.title, still.words, still.seconds});
    if (still.number == 1)
      jobs.push_back({into / fmt::format("{}-{}-moving.png", lesson.stem, file_stem(still.letter)),
                      [stills, letter = still.letter, ground](const paint::Type& type) { return moving(*stills, letter, type, ground); }});
  }
  if (cues.empty()) return;
  const auto add = [&](const char* ending, const std::string& text) {
    jobs.push_back({into / (lesson.stem + ending), [text](const paint::Type&) { return base::Result<Bytes>(bytes_of(text)); }});
  };
  add("-cues.txt", cues_text(making.phrases, lesson.title, cues));
  add("-cues.csv", cues_csv(making.phrases, cues));
  add("-cues.vtt", cues_vtt(cues));
  add("-chapters.vtt", chapters_vtt(cues));
}

}  // namespace

base::Result<void> add_stills(const Making& making, const HandPages& pages, Types& types, const std::stop_token& stop,
                              std::vector<Job>& jobs) {
  std::vector<Stills> all(pages.lessons.size());
  auto made = on_all_cores(all.size(), types, stop, [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    const say::Voice voice{making.phrases, pages.hand, making.course};
    all[i] = std::make_shared<Film>(picture::film(making.course, making.plan, pages.lessons[i].number, voice, type));
    return {};
  });
  if (!made) return made;
  for (std::size_t i = 0; i < all.size(); ++i) add_lesson(making, pages.folder, pages.lessons[i], all[i], jobs);
  return {};
}

}  // namespace publish
