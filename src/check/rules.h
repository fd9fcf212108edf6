// Every rule's function; the file of each has its name.
#pragma once

#include "check/check.h"

namespace check {

using Snags = std::vector<Snag>;

/// What the kinds themselves found questionable while a part was worked out: row-shrinks, row-crosses-itself, edge-crosses-itself, blocks-overlap,
/// image-lies-over.
void doubts(const course::Course&, const plan::Plan&, Snags&);
/// What planning found: work-doubled, begin-at-missed, count-from-missing, too-many-lessons,
/// stage-doubled, stage-beyond, filling-nowhere, filling-does-not-fit.
void findings(const course::Course&, const plan::Plan&, Snags&);
/// Work behind the cutting out: stitching (cut-out-last), the wash (cut-out-unwashed); stitching behind the wash (wash-early); either of the
/// two a second time (finish-doubled).
void finish(const course::Course&, const plan::Plan&, Snags&);
/// Stitches of one part that lie over stitches of another.
void lies_over(const course::Course&, const plan::Plan&, Snags&);
/// Stitches that no lesson works: a whole part (part-in-no-lesson) or a stretch of one (work-forgotten).
void work_forgotten(const course::Course&, const plan::Plan&, Snags&);
/// A second pass before the first (pass-order), a later stretch before an earlier one (stretch-order).
void work_order(const course::Course&, const plan::Plan&, Snags&);
void lesson_minutes(const course::Course&, const plan::Plan&, Snags&);
void lesson_empty(const course::Course&, const plan::Plan&, Snags&);
/// Lessons without a day, on a holiday, or not in the order of their days.
void lesson_days(const course::Course&, const plan::Plan&, Snags&);
/// A written lesson that ends within a side and finishes nothing.
void nothing_to_show(const course::Course&, const plan::Plan&, Snags&);
/// More than two new techniques in a written lesson.
void new_techniques(const course::Course&, const plan::Plan&, Snags&);
/// A written cloth that the design does not fit on.
void cloth_size(const course::Course&, const plan::Plan&, Snags&);
/// A thread that must end in mid-work because the way on the back would be too long.
void thread_parted(const course::Course&, const plan::Plan&, Snags&);

/// What forbids a cutting: cut-ring-open, cut-no-partner, cut-partner-aside and the like.
void cutting(const course::Course&, const plan::Plan&, Snags&);
/// A cutting before its blocks or the surface stitches beside it (cut-before-work), or without them (cut-without-work).
void cutting_order(const course::Course&, const plan::Plan&, Snags&);

/// A class list of more than the students (class-larger), or with a hand that the pages are not for (class-left-hand, class-right-hand).
void class_list(const course::Course&, const plan::Plan&, Snags&);
/// Thread on the back that runs across cloth that is cut.
void back_over_cut(const course::Course&, const plan::Plan&, Snags&);

/// An edge on the other side of the cutting than the teacher's habit says: edge-after-cutting, edge-before-cutting.
void edge_order(const course::Course&, const plan::Plan&, Snags&);
/// Stitched work on the cloth that a closed edge cuts off: within an opening (edge-cuts-off-inside), or outside the piece (edge-cuts-off-outside).
void edge_cuts_off(const course::Course&, const plan::Plan&, Snags&);
/// The order of cutting, bars and fillings: bars-before-cutting, fillings-before-cutting, fillings-before-bars, bars-out-of-turn,
/// fillings-out-of-turn; what no lesson works: bars-in-no-lesson, fillings-in-no-lesson.
void bars_order(const course::Course&, const plan::Plan&, Snags&);

}  // namespace check
