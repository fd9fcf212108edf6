#include "paint/cairo/pdf.h"

#include <cairo-pdf.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <new>

#include "paint/cairo/owned.h"
#include "paint/cairo/pdf_finish.h"
#include "paint/cairo/play.h"
#include "paint/cairo/reach.h"

namespace paint {
namespace {

using Surface = Owned<cairo_surface_t, cairo_surface_destroy>;
using Context = Owned<cairo_t, cairo_destroy>;
using Bytes = std::vector<std::uint8_t>;

constexpr double pt = 72.0 / 25.4;  // points in a mm

cairo_status_t keep_bytes(void* bytes, const unsigned char* data, unsigned length) {
  try {
    static_cast<Bytes*>(bytes)->insert(static_cast<Bytes*>(bytes)->end(), data, data + length);
    return CAIRO_STATUS_SUCCESS;
  } catch (const std::bad_alloc&) {
    return CAIRO_STATUS_NO_MEMORY;
  }
}

/// Where a place, or a chapter, is: page counted from 1, points from its upper left corner.
struct Spot {
  int page = 1;
  double x = 0, y = 0;
  std::string link() const { return fmt::format("page={} pos=[{:.3f} {:.3f}]", page, x, y); }
};

/// Where a bookmark stands among the others: its page, the chapter itself first, then places from the top.
struct Rank {
  int order = 0, place = 0;
  auto operator<=>(const Rank&) const = default;
};
struct Bookmark {
  std::string title;
  Spot spot;
  bool chapter = false;
};

class Book {
 public:
  Book(std::span<const PdfSheet> sheets, const PdfFacts& facts, const Type& type) : sheets_(sheets), facts_(facts), type_(type) {}

  base::Result<Bytes> make() {
    find_places();
    Bytes bytes;
    Surface surface(cairo_pdf_surface_create_for_stream(keep_bytes, &bytes, 10, 10));
    Context cr(cairo_create(surface.get()));
    set_facts(surface.get());
    for (const PdfSheet& sheet : sheets_) draw(surface.get(), cr.get(), sheet);
    add_bookmarks(surface.get());
    cairo_surface_finish(surface.get());
    for (const cairo_status_t status : {cairo_status(cr.get()), cairo_surface_status(surface.get())})
      if (status != CAIRO_STATUS_SUCCESS)
        return base::trouble(base::TroubleKind::output, fmt::format("the PDF cannot be drawn: {}", cairo_status_to_string(status)));
    return bytes;
  }

 private:
  void set_facts(cairo_surface_t* surface) const {
    const auto set = [&](cairo_pdf_metadata_t what, const std::string& text) {
      if (!text.empty()) cairo_pdf_surface_set_metadata(surface, what, text.c_str());
    };
    set(CAIRO_PDF_METADATA_TITLE, facts_.title);
    set(CAIRO_PDF_METADATA_AUTHOR, facts_.author);
    set(CAIRO_PDF_METADATA_SUBJECT, facts_.subject);
    set(CAIRO_PDF_METADATA_CREATOR, "Tellekant");
    set(CAIRO_PDF_METADATA_CREATE_DATE, "2000-01-01T00:00:00Z");  // taken out again: a clock would change the bytes
  }

  void find_places() {
    int page = 0;
    for (const PdfSheet& sheet : sheets_) {
      ++page;
      for (const PdfPart& part : sheet.parts) {
        if (!part.chapter.empty()) bookmarks_[{part.order, 0}] = {part.chapter, {page, part.at.x * pt, part.at.y * pt}, true};
        int number = 0;
        for (const list::Place& place : part.list->places) {
          const Spot spot{page, (part.at.x + place.rect.x) * pt, (part.at.y + place.rect.y) * pt};
          spots_.emplace(std::pair(part.scope, place.name), spot);
          bookmarks_[{part.order, ++number}] = {place.title, spot, false};
        }
      }
    }
  }

  void draw(cairo_surface_t* surface, cairo_t* cr, const PdfSheet& sheet) const {
    cairo_pdf_surface_set_size(surface, sheet.width * pt, sheet.height * pt);
    if (!sheet.label.empty()) cairo_pdf_surface_set_page_label(surface, sheet.label.c_str());
    for (const PdfPart& part : sheet.parts) {
      cairo_save(cr);
      cairo_scale(cr, pt, pt);
      cairo_translate(cr, part.at.x, part.at.y);
      play(cr, *part.list, type_.inside(), Lettering::glyphs);
      cairo_restore(cr);
      for (const list::Jump& jump : part.list->jumps) link(cr, part, jump);
    }
    cairo_show_page(cr);
  }

  void link(cairo_t* cr, const PdfPart& part, const list::Jump& jump) const {
    const auto found = spots_.find({part.scope, jump.to});
    if (found == spots_.end()) return;
    const list::Rect& r = jump.rect;
    const std::string where = fmt::format("rect=[{:.3f} {:.3f} {:.3f} {:.3f}] {}", (part.at.x + r.x) * pt, (part.at.y + r.y) * pt, r.w * pt,
                                          r.h * pt, found->second.link());
    cairo_tag_begin(cr, CAIRO_TAG_LINK, where.c_str());
    cairo_tag_end(cr, CAIRO_TAG_LINK);
  }

  void add_bookmarks(cairo_surface_t* surface) const {
    int chapter = CAIRO_PDF_OUTLINE_ROOT;
    for (const auto& [rank, bookmark] : bookmarks_) {
      const std::string where = bookmark.spot.link();
      const int parent = bookmark.chapter ? CAIRO_PDF_OUTLINE_ROOT : chapter;
      const int id = cairo_pdf_surface_add_outline(surface, parent, bookmark.title.c_str(), where.c_str(), CAIRO_PDF_OUTLINE_FLAG_OPEN);
      if (bookmark.chapter) chapter = id;
    }
  }

  std::span<const PdfSheet> sheets_;
  const PdfFacts& facts_;
  const Type& type_;
  std::map<std::pair<std::string, std::string>, Spot> spots_;
  std::map<Rank, Bookmark> bookmarks_;
};

}  // namespace

base::Result<Bytes> pdf(std::span<const PdfSheet> sheets, const PdfFacts& facts, const Type& type) {
  for (const PdfSheet& sheet : sheets)
    for (const PdfPart& part : sheet.parts)
      if (auto near = check_reach(*part.list); !near) return tl::make_unexpected(near.error());
  auto file = Book(sheets, facts, type).make();
  if (!file) return file;
  return finish_pdf(*file, facts);
}

}  // namespace paint
