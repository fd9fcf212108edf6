// The streamed JSON, read back by nlohmann-json.
#include "publish/json.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <sstream>

TEST_CASE("every sort of value reads back") {
  std::ostringstream out;
  publish::Json json(out);
  json.object([&] {
    json.member("text", "quote \" slash \\ tab \t line \n bell \a snow \xE2\x9D\x84");
    json.member("flag", true);
    json.member("whole", -7);
    json.key("decimal");
    json.value(1.2500, 4);
    json.key("small");
    json.value(-0.0001, 2);
    json.key("nothing");
    json.null();
    json.key("holes");
    json.array([&] {
      json.hole({1, -2});
      json.stitch({{0, 0}, {2, 2}});
    });
    json.key("empty");
    json.array([] {});
  });
  const auto read = nlohmann::json::parse(out.str());
  CHECK(read["text"] == "quote \" slash \\ tab \t line \n bell \a snow \xE2\x9D\x84");
  CHECK(read["flag"] == true);
  CHECK(read["whole"] == -7);
  CHECK(read["decimal"] == 1.25);
  CHECK(read["small"] == 0);
  CHECK(read["nothing"].is_null());
  CHECK(read["holes"] == nlohmann::json::parse("[[1,-2],[[0,0],[2,2]]]"));
  CHECK(read["empty"].empty());
  CHECK(out.str().find("\"decimal\": 1.25,") != std::string::npos);
}
