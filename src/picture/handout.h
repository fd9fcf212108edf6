// A lesson's handout as finished display lists, one a page.
#pragma once

#include <vector>

#include "list/list.h"
#include "list/measure.h"
#include "plan/plan.h"
#include "say/say.h"

namespace picture {

struct PageSize {
  double width = 210, height = 297;  ///< mm
};
PageSize page_size(course::Paper paper);  ///< A4 (ISO 216) or Letter (8.5 x 11 in)

enum class Print { normal, large };  ///< large: 18 pt

/// The pages of lesson `number` (from 1). Left hand: pictures mirrored and words with them.
std::vector<list::List> handout(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                                const list::Measure& measure, PageSize page, Print print = Print::normal);

}  // namespace picture
