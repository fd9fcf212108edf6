// The end of a piece: washed after the last stitch, cut out last of all (Archer 1911, ch. XII, on scallops: cut out after the wash), each
// once.
#include "check/rules.h"

namespace check {
namespace {

/// Where the wash and the cutting out were done first: lesson from 1, or 0.
struct Done {
  int lesson = 0;
  const course::WorkItem* work = nullptr;
};

Snag about(std::string rule, Severity severity, const course::WorkItem& place, int lesson, const course::WorkItem& work, int before) {
  return {.rule = std::move(rule),
          .severity = severity,
          .place = place.place,
          .lesson = lesson,
          .part = work.part,
          .at = {},
          .also_at = {},
          .words = {{"work", work.text}},
          .numbers = {{"lesson", lesson}, {"before", before}}};
}

class Finish {
 public:
  explicit Finish(Snags& snags) : snags_(snags) {}

  void look(int lesson, const course::WorkItem& work) {
    if (work.part >= 0)
      stitched(lesson, work);
    else if (work.text == "wash")
      done(washed_, lesson, work);
    else
      done(out_, lesson, work);
  }

 private:
  /// Behind the cutting out every piece of work is told; of what comes behind the wash only the first, at the wash.
  void stitched(int lesson, const course::WorkItem& work) {
    if (out_.work) {
      snags_.push_back(about("cut-out-last", Severity::stop, work, lesson, work, out_.lesson));
    } else if (washed_.work && !told_of_wash_) {
      snags_.push_back(about("wash-early", Severity::ask, *washed_.work, washed_.lesson, work, washed_.lesson));
      told_of_wash_ = true;
    }
  }

  void done(Done& first, int lesson, const course::WorkItem& work) {
    if (first.work)
      snags_.push_back(about("finish-doubled", Severity::ask, work, lesson, work, first.lesson));
    else if (&first == &washed_ && out_.work)
      snags_.push_back(about("cut-out-unwashed", Severity::ask, work, lesson, work, out_.lesson));
    if (!first.work) first = {lesson, &work};
  }

  Snags& snags_;
  Done washed_, out_;
  bool told_of_wash_ = false;
};

}  // namespace

void finish(const course::Course& course, const plan::Plan&, Snags& snags) {
  Finish rule(snags);
  for (std::size_t i = 0; i < course.lessons.size(); ++i)
    for (const course::WorkItem& work : course.lessons[i].work) rule.look(static_cast<int>(i) + 1, work);
}

}  // namespace check
