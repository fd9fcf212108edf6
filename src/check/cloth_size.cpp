// A cloth whose written size or middle leaves part of the design outside it.
#include <algorithm>

#include "check/rules.h"

namespace check {

void cloth_size(const course::Course& course, const plan::Plan&, Snags& snags) {
  if (!course.cloth.size_threads && !course.cloth.middle) return;
  const cloth::Box design = course::extent(course);
  const cloth::Hole corner = course::corner(course), size = course::size_threads(course);
  const int left = corner.x - design.x0, right = design.x1 - (corner.x + size.x);
  const int top = corner.y - design.y0, bottom = design.y1 - (corner.y + size.y);
  const int most = std::max({left, right, top, bottom});
  if (most <= 0) return;
  snags.push_back({.rule = "cloth-size", .severity = Severity::stop, .place = {}, .lesson = 0, .part = -1, .at = {}, .also_at = {}, .words = {},
                   .numbers = {{"n", most}, {"width", size.x}, {"height", size.y}, {"need-width", design.width()}, {"need-height", design.height()}}});
}

}  // namespace check
