// Designs that nobody drew: random rings, rows and lines of blocks, now and then one over another. Their pages keep every promise as well.
#include <fmt/format.h>

#include <random>

#include "pages_of.h"
#include "picture/overlaps.h"

namespace {

class Designer {
 public:
  explicit Designer(unsigned seed) : random_(seed) {}

  std::string course() {
    std::string text = fmt::format(
        "format = 1\n[course]\ntitle = \"Random\"\nfirst_day = 2027-01-12\nminutes = {}\n[cloth]\ncount = {}\nline = \"{}\"\nbegin = "
        "\"{}\"\n"
        "[thread.heavy]\npearl = 5\n",
        one_of(30, 60, 90, 180), one_of(14, 18, 22, 25, 28, 32), flip() ? "thread" : "hole", flip() ? "middle" : "edges");
    for (int i = 1, n = between(1, 4); i <= n; ++i) {
      const std::string start = fmt::format("[{}, {}]", between(-40, 60), between(-40, 60)), name = fmt::format("part {}", i);
      text += flip() ? part_text(name, "cable", start, fmt::format("path = \"{}\"\nrows = {}", cable(), between(2, 3)))
                     : part_text(name, "blocks", start, blocks());
    }
    return text;
  }

 private:
  int between(int least, int most) { return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1)); }
  bool flip() { return between(0, 1) == 1; }
  template <class... T>
  int one_of(T... values) {
    const int all[] = {values...};
    return all[between(0, static_cast<int>(sizeof...(values)) - 1)];
  }

  std::string cable() {
    const int a = 2 * between(6, 30), b = 2 * between(6, 20), c = 2 * between(6, 15);
    switch (between(0, 4)) {
      case 0:
        return fmt::format("E {0}, SE {1}, S {2}, SW {1}, W {0}, NW {1}, N {2}, NE {1}", a, b, c);
      case 1:
        return fmt::format("E {0}, S {1}, W {0}, N {1}", a, b);
      case 2:
        return fmt::format("SE {0}, SW {1}, NW {0}, NE {1}", a, b);
      case 3:
        return fmt::format("E {0}, SE {1}, E {2}, NE {1}", a, b, c);
      default:
        return fmt::format("E {}", a);
    }
  }

  std::string blocks() {
    const int n = 2 * between(2, 4);
    switch (between(0, 3)) {
      case 0:
        return fmt::format("first = \"across\"\npath = \"NE {}, SE {}, SW {}, NW {}\"", n, n - 1, n - 1, n - 2);
      case 1:
        return fmt::format("first = \"upright\"\npath = \"E {}\"", between(1, 9));
      case 2:
        return fmt::format("first = \"upright\"\npath = \"E {} apart\"", between(2, 6));
      default:
        return fmt::format("first = \"across\"\npath = \"NE {}, SE {}\"", between(2, 6), between(1, 5));
    }
  }

  std::mt19937 random_;
};

}  // namespace

TEST_CASE("pages of random designs have nothing on anything, either hand, either type") {
  for (unsigned seed = 1; seed <= 16; ++seed) {  // fixed seeds
    const std::string text = Designer(seed).course();
    CAPTURE(text);
    const course::Course course = course_from(text);
    const plan::Plan plan = test::planned(course);
    const test::Order large{seed % 2 == 0 ? say::Hand::left : say::Hand::right, picture::Print::large,
                            seed % 3 == 0 ? course::Paper::letter : course::Paper::a4};
    for (const test::Order& order : {test::Order{}, large})
      for (const list::List& page : test::pages(course, plan, order)) {
        const std::vector<std::string> faults = picture::overlaps(page, test::type());
        CHECK_MESSAGE(faults.empty(), (faults.empty() ? std::string() : faults.front()));
      }
  }
}
