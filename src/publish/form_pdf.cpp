// Pages as PDF: one file a lesson, one of the whole course; page by page, two side by side, or in the order of a folded booklet.
#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "paint/cairo/pdf.h"
#include "publish/forms.h"

namespace publish {
namespace {

/// A page on its way onto a sheet.
struct Leaf {
  paint::PdfPart part;
  std::string label;  ///< lesson and page: "2-1", "what-to-buy-1"
};

std::vector<Leaf> leaves_of(const HandPages::Lesson& lesson, int first_order) {
  std::vector<Leaf> leaves;
  const std::string scope = lesson.number > 0 ? std::to_string(lesson.number) : lesson.stem;
  for (std::size_t p = 0; p < lesson.pages.size(); ++p) {
    paint::PdfPart part;
    part.list = &lesson.pages[p];
    part.scope = scope;
    if (p == 0) part.chapter = lesson.title;
    part.order = first_order + static_cast<int>(p);
    leaves.push_back({part, fmt::format("{}-{}", scope, p + 1)});
  }
  return leaves;
}

paint::PdfSheet sheet_of(const std::vector<Leaf>& leaves, std::size_t left, std::optional<std::size_t> right) {
  const list::List& page = *leaves[0].part.list;
  paint::PdfSheet sheet{right ? 2 * page.width : page.width, page.height, "", {}};
  const auto put = [&](std::size_t i, double x) {
    if (i >= leaves.size()) return;  // an empty half of a booklet
    sheet.parts.push_back(leaves[i].part);
    sheet.parts.back().at.x = x;
    sheet.label += (sheet.label.empty() ? "" : ", ") + leaves[i].label;
  };
  put(left, 0);
  if (right) put(*right, page.width);
  return sheet;
}

/// Printed on both sides, laid on one another and folded in the middle, the pages follow one another.
std::vector<paint::PdfSheet> booklet(const std::vector<Leaf>& leaves) {
  std::vector<paint::PdfSheet> sheets;
  const std::size_t n = (leaves.size() + 3) / 4 * 4;
  for (std::size_t i = 0; i < n / 2; ++i) sheets.push_back(i % 2 == 0 ? sheet_of(leaves, n - 1 - i, i) : sheet_of(leaves, i, n - 1 - i));
  return sheets;
}

std::vector<paint::PdfSheet> impose(const std::vector<Leaf>& leaves, Sheets sheets) {
  if (leaves.empty()) return {};
  if (sheets == Sheets::booklet) return booklet(leaves);
  std::vector<paint::PdfSheet> all;
  if (sheets == Sheets::single)
    for (std::size_t i = 0; i < leaves.size(); ++i) all.push_back(sheet_of(leaves, i, std::nullopt));
  else
    for (std::size_t i = 0; i < leaves.size(); i += 2) all.push_back(sheet_of(leaves, i, i + 1));
  return all;
}

Job job_of(const Making& making, std::filesystem::path path, std::vector<Leaf> leaves, const std::string& title,
           const std::string& subject) {
  paint::PdfFacts facts{title, making.course.teacher, subject, making.phrases.language(), paint::Duplex::unsaid};
  if (making.order.sheets == Sheets::booklet) facts.duplex = paint::Duplex::short_edge;
  return {std::move(path), [leaves = std::move(leaves), facts, sheets = making.order.sheets](const paint::Type& type) {
            return paint::pdf(impose(leaves, sheets), facts, type);
          }};
}

}  // namespace

void add_pdf(const Making& making, const HandPages& pages, std::vector<Job>& jobs) {
  std::vector<Leaf> all;
  for (const std::vector<HandPages::Lesson>* some : {&pages.lessons, &pages.of_course})
    for (const HandPages::Lesson& lesson : *some) {
      std::vector<Leaf> leaves = leaves_of(lesson, static_cast<int>(all.size()));
      all.insert(all.end(), leaves.begin(), leaves.end());
      jobs.push_back(job_of(making, pages.folder / (lesson.stem + ".pdf"), std::move(leaves), lesson.title, making.course.title));
    }
  if (!making.order.lesson && !all.empty())
    jobs.push_back(
        job_of(making, pages.folder / ("course-" + file_stem(making.course.title) + ".pdf"), std::move(all), making.course.title, ""));
}

}  // namespace publish
