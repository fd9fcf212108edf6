// Pages of the course as a whole, words and tables only: what to buy; how the cloth is prepared and the piece finished.
#pragma once

#include <string>
#include <vector>

#include "list/list.h"
#include "list/measure.h"
#include "picture/handout.h"

namespace picture {

struct CoursePages {
  std::string title;
  std::vector<list::List> pages;
};

CoursePages shopping_pages(const course::Course& course, const plan::Plan& plan, const say::Voice& voice, const list::Measure& measure,
                           PageSize page, Print print);
CoursePages preparing_pages(const course::Course& course, const plan::Plan& plan, const say::Voice& voice, const list::Measure& measure,
                            PageSize page, Print print);

}  // namespace picture
