// Every sample's plan fits assets/plan.schema.json, for both hands.
#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include "cli/call.h"

namespace {

std::string faults(const valijson::Schema& schema, const nlohmann::json& plan) {
  valijson::ValidationResults results;
  valijson::Validator validator;
  std::string text;
  if (validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(plan), &results)) return text;
  valijson::ValidationResults::Error error;
  while (results.popError(error)) {
    for (const std::string& step : error.context) text += step;
    text += ": " + error.description + "\n";
  }
  return text.empty() ? "it does not fit" : text;
}

}  // namespace

TEST_CASE("plans of all samples fit the schema, and one with a strange key does not") {
  const std::filesystem::path root = TELLEKANT_ROOT;
  const auto text = nlohmann::json::parse(bytes_of(root / "assets/plan.schema.json"));
  valijson::Schema schema;
  valijson::SchemaParser().populateSchema(valijson::adapters::NlohmannJsonAdapter(text), schema);
  const TestFolder folder;
  int samples = 0;
  for (const auto& entry : std::filesystem::directory_iterator(root / "lessons")) {
    if (entry.path().extension() != ".toml") continue;
    for (const char* hand : {"right", "left"}) {
      const Said said = call(folder, "plan '" + entry.path().string() + "' --hand " + hand);
      CHECK(said.code == 0);
      auto plan = nlohmann::json::parse(said.out);
      CHECK(faults(schema, plan) == "");
      plan["trails"][0]["strange"] = 1;
      CHECK(faults(schema, plan) != "");
      ++samples;
    }
  }
  CHECK(samples >= 2);
}
