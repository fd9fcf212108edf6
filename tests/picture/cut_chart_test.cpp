// The chart of the screen while the cloth is cut, on random courses: every square that is drawn without a thread is one that the plan's own
// cuttings leave without it at that moment, and every such square is drawn so. The squares are worked out here a second time, snip by snip
// from the plan; the fully open ones are held against the plan's openings by the shoelace formula.
#include <fmt/format.h>

#include <cmath>
#include <cstdint>
#include <map>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "course_text.h"
#include "picture/chart.h"

namespace {

using cutwork::Axis;
using Square = std::pair<int, int>;
struct Out {
  std::set<Square> upright, across;  ///< squares whose thread of that way is out
};

struct Case {
  course::Course course;
  plan::Plan plan;
  explicit Case(const std::string& parts) : course(course_of(parts)), plan(*plan::make_plan(course)) {}
};

class Designer {
 public:
  explicit Designer(unsigned seed) : random_(seed) {}
  std::string parts() {
    std::string text, lessons;
    for (int i = 0, n = between(1, 3); i < n; ++i) {
      const std::string ring = fmt::format("ring{}", i), heart = fmt::format("heart{}", i);
      text += part_text(ring, "blocks", fmt::format("[{}, {}]", 90 * i + between(-9, 9), between(-30, 30)), blocks());
      text += fmt::format("[[part]]\nname = \"{}\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"{}\"]\n", heart, ring);
      if (between(0, 3) > 0) lessons += fmt::format("[[lesson]]\nwork = [\"{}\"]\n[[lesson]]\nwork = [\"{} / cut\"]\n[[lesson]]\nwork = [\"{} / bars\"]\n", ring, heart, heart);
    }
    return text + lessons;
  }
  int between(int least, int most) { return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1)); }

 private:
  std::string blocks() {
    const int n = 2 * between(1, 4), broken = n > 2 && between(0, 4) == 0 ? 1 : 0;  // a ring that is open is not cut
    if (between(0, 3) == 0) return "first = \"upright\"\npath = \"E 3, SE 1, S 2, SW 1, W 2, NW 1, N 2\"";
    return fmt::format("first = \"across\"\npath = \"NE {}, SE {}, SW {}{}\"", n, n - 1, n - 1 - broken,
                       n > 2 ? fmt::format(", NW {}", n - 2) : "");
  }
  std::mt19937 random_;
};

/// Every snip made by then, from the lessons' own lists.
std::set<std::string> snips_made(const plan::Plan& plan, int lesson, int snips) {
  std::set<std::string> made;
  for (const plan::LessonPlan& l : plan.lessons) {
    int left = l.number < lesson ? 1 << 30 : l.number == lesson ? snips : 0;
    for (const int c : l.cuttings)
      for (const cutwork::Cut& cut : plan.cuttings[static_cast<std::size_t>(c)].cutting.cuts)
        if (left-- > 0)
          made.insert(fmt::format("{} {} {} {}", c, cut.axis == Axis::v, cut.thread, cut.axis == Axis::v ? cut.at.y : cut.at.x));
  }
  return made;
}

Out planned(const plan::Plan& plan, int lesson, int snips) {
  const std::set<std::string> made = snips_made(plan, lesson, snips);
  Out out;
  for (std::size_t c = 0; c < plan.cuttings.size(); ++c)
    for (const cutwork::Span& span : plan.cuttings[c].cutting.withdrawn) {
      const bool v = span.axis == Axis::v;
      if (!made.contains(fmt::format("{} {} {} {}", c, v, span.thread, span.from)) ||
          !made.contains(fmt::format("{} {} {} {}", c, v, span.thread, span.to)))
        continue;
      for (int k = span.from; k < span.to; ++k) v ? out.upright.insert({span.thread, k}) : out.across.insert({k, span.thread});
    }
  return out;
}

picture::ChartView view_of(const Case& course, const picture::CutIndex& cuts, int lesson, int snips, bool mirror, double pixels = 16) {
  const cloth::Box box = course::extent(course.course).widened(5);
  picture::ChartView view;
  view.x = mirror ? -box.x1 : box.x0;
  view.y = box.y0;
  view.width = box.width();
  view.height = box.height();
  view.pixels = pixels;
  view.lesson = lesson;
  view.mirror = mirror;
  view.cuts = &cuts;
  view.snips = snips;
  view.at_hand = true;
  return view;
}

/// What the list shows: squares on `cut_out` ground, less the threads that lie across them.
Out drawn(const list::List& list, const picture::ChartView& view) {
  std::set<Square> open;
  Out left;
  const auto square = [&](double x, double y) {
    const double cloth_x = x + view.x;
    return Square{static_cast<int>(std::floor(view.mirror ? -cloth_x : cloth_x)), static_cast<int>(std::floor(y + view.y))};
  };
  for (const list::Item& item : list.items) {
    if (item.role == list::Role::cut_out) {
      const list::Rect rect = std::get<list::Panel>(item.what).rect;
      for (double y = rect.y + 0.5; y < rect.y + rect.h; ++y)
        for (double x = rect.x + 0.5; x < rect.x + rect.w; ++x) CHECK_MESSAGE(open.insert(square(x, y)).second, "drawn twice");
    } else if (item.role == list::Role::thread_left) {
      const auto& p = std::get<list::Stroke>(item.what).points;
      const bool v = p[0].x == p[1].x;
      const double length = v ? p[1].y - p[0].y : std::abs(p[1].x - p[0].x), x0 = std::min(p[0].x, p[1].x);
      for (double k = 0.5; k < length; ++k)
        v ? left.upright.insert(square(p[0].x, p[0].y + k)) : left.across.insert(square(x0 + k, p[0].y));
    }
  }
  Out out{open, open};
  for (const Square& s : left.upright) CHECK(out.upright.erase(s) == 1);
  for (const Square& s : left.across) CHECK(out.across.erase(s) == 1);
  return out;
}

list::List chart_of(const Case& course, const picture::ChartView& view) {
  return picture::chart(course.course, course.plan, picture::ChartIndex(course.course, course.plan), view, {});
}

double area(const std::vector<cloth::Hole>& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const cloth::Hole a = outline[i], b = outline[(i + 1) % outline.size()];
    twice += static_cast<double>(a.x) * b.y - static_cast<double>(b.x) * a.y;
  }
  return std::abs(twice) / 2;
}

std::size_t both(const Out& out) {
  std::size_t n = 0;
  for (const Square& s : out.upright) n += out.across.count(s);
  return n;
}

}  // namespace

TEST_CASE("nothing is drawn as cut that the plan does not cut, and all that it cuts is, at any snip, for both hands") {
  int cut = 0, stopped = 0;
  for (unsigned seed = 1; seed <= 40; ++seed) {
    Designer designer(seed);
    const Case course(designer.parts());
    const picture::CutIndex cuts(course.plan);
    for (const plan::PartCutting& c : course.plan.cuttings) (c.cutting.cuts.empty() ? stopped : cut) += 1;
    for (int lesson = 1; lesson <= static_cast<int>(course.plan.lessons.size()); ++lesson) {
      const int all = cuts.snips(lesson);
      for (const int snips : {0, designer.between(0, all), designer.between(0, all), all}) {
        INFO("seed " << seed << ", lesson " << lesson << ", snips " << snips << " of " << all);
        const picture::ChartView view = view_of(course, cuts, lesson, snips, designer.between(0, 1) == 1);
        const Out shown = drawn(chart_of(course, view), view), right = planned(course.plan, lesson, snips);
        CHECK(shown.upright == right.upright);
        CHECK(shown.across == right.across);
      }
    }
  }
  CHECK(cut > 20);
  CHECK(stopped > 5);
}

TEST_CASE("when all is cut the open squares are the plan's openings; from far away no more is shown than is open") {
  for (const int n : {2, 4, 6, 8}) {
    const Case course(part_text("ring", "blocks", "[0, 0]",
                                fmt::format("first = \"across\"\npath = \"NE {0}, SE {1}, SW {1}{2}\"", n, n - 1,
                                            n > 2 ? fmt::format(", NW {}", n - 2) : "")) +
                      "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n"
                      "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n[[lesson]]\nwork = [\"heart / bars\"]\n");
    const picture::CutIndex cuts(course.plan);
    const picture::ChartView near = view_of(course, cuts, 2, cuts.snips(2), false), far = view_of(course, cuts, 2, cuts.snips(2), false, 1);
    const Out out = drawn(chart_of(course, near), near), from_far = drawn(chart_of(course, far), far);
    double openings = 0;
    for (const cutwork::Opening& opening : course.plan.cuttings[0].cutting.openings) openings += area(opening.outline);
    CHECK(openings > 0);
    CHECK(static_cast<double>(both(out)) == openings);
    CHECK(both(from_far) == from_far.upright.size());
    CHECK(both(from_far) == both(out));
    const picture::ChartView before = view_of(course, cuts, 1, 0, false);
    CHECK(drawn(chart_of(course, before), before).upright.empty());
  }
}

TEST_CASE("a thread that comes out is held by the blocks at its snips; one that is left by those it runs under") {
  const Case course(part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"") +
                    "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n"
                    "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n[[lesson]]\nwork = [\"heart / bars\"]\n");
  const picture::CutIndex cuts(course.plan);
  const plan::PartCutting& part = course.plan.cuttings[0];
  int taken = 0, left = 0;
  const cloth::Box all = course::extent(course.course).widened(2);
  for (int y = all.y0; y < all.y1; ++y)
    for (int x = all.x0; x < all.x1; ++x)
      for (const picture::HeldThread& held : picture::held_at(course.plan, cuts, {x, y})) {
        const int along = held.axis == Axis::v ? y : x;
        bool in_span = false;
        for (const cutwork::Span& s : part.cutting.withdrawn)
          in_span = in_span || (s.axis == held.axis && s.thread == held.thread && s.from <= along && along < s.to);
        CHECK(in_span == (held.strand != nullptr));
        (held.strand ? taken : left) += 1;
        CHECK(held.from <= along);
        CHECK(along < held.to);
        for (const int end : {0, 1}) {
          REQUIRE(held.blocks[static_cast<std::size_t>(end)] >= 0);
          const int hole = end == 0 ? held.from : held.to;
          bool ends_there = false;  // an end of one of the block's stitches, beside the thread
          for (const cloth::Stitch& s : part.blocks[static_cast<std::size_t>(held.blocks[static_cast<std::size_t>(end)])].stitches)
            for (const cloth::Hole h : {s.a, s.b}) ends_there = ends_there || (held.axis == Axis::v ? h.y : h.x) == hole;
          CHECK(ends_there);
        }
      }
  CHECK(taken > 0);
  CHECK(left > 0);
}
