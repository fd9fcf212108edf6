// The same pages in Norwegian, whose words are longer: nothing on anything, either hand, either size of type.
#include <doctest/doctest.h>

#include "pages_of.h"
#include "picture/overlaps.h"

TEST_CASE("pages in Norwegian have nothing on anything, either hand, either type") {
  const auto norwegian = words::Phrases::read(assets::table("phrases/nb.toml"), "assets/phrases/nb.toml");
  REQUIRE(norwegian.has_value());
  for (const auto& [name, text] : test::all_designs()) {
    CAPTURE(name);
    const course::Course course = course_from(text);
    const plan::Plan plan = test::planned(course);
    for (const say::Hand hand : {say::Hand::right, say::Hand::left})
      for (const picture::Print print : {picture::Print::normal, picture::Print::large})
        for (const list::List& page : test::pages(course, plan, {hand, print, course::Paper::a4}, *norwegian)) {
          CAPTURE(page.title);
          for (const std::string& fault : picture::overlaps(page, test::type())) FAIL_CHECK(fault);
        }
  }
}
