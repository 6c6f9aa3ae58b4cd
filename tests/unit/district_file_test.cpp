#include "core/exchange/district_file.h"

#include "core/exchange/project_file.h"
#include "core/plan.h"
#include "tests/support/random_project.h"

#include <algorithm>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using core::exchange::districtText;
using core::exchange::withDistrict;
using nlohmann::json;

core::Project known() {
  core::Project project;
  project.title = "upper tank";
  project.currency = "NPR";
  project.prices.emplace();
  project.prices->items = {{"cement_bags", 950.0, {}, 0, core::Carrier::porter, 50.0},
                           {"lime", 30.0, 2.0, 100, {}, {}}};
  project.prices->porter.price_per_trip = 300;
  project.prices->linings.pop_back();
  project.records.batches = {{1, 1, 3.5, 0.06}};
  project.records.work = {{core::RecordedWork::digging, 12, 9.5}};
  project.works->hours_per_day = 7;
  project.works->digging_person_day_per_m3 = 0.7;
  project.works->plaster_person_day_per_m2 = 0.3;
  project.works->rates = {{"carrying.10", 0.1, 0.2, 0.3}};
  project.works->start_date = std::chrono::year{2030} / 1 / 5;
  return project;
}

core::exchange::ReadProject put(const core::Project& project, const json& district) {
  const auto result = withDistrict(project, district.dump());
  REQUIRE(result.has_value());
  return *result;
}

std::vector<std::string> faultsOf(const core::Project& project, const json& district) {
  const auto result = withDistrict(project, district.dump());
  REQUIRE_FALSE(result.has_value());
  std::vector<std::string> faults;
  for (const core::Problem& p : result.error()) faults.push_back(p.code + " " + p.path);
  return faults;
}

json head() {
  return {{"format", "tankwright-district"}, {"version", 1}};
}

}  // namespace

TEST_CASE("prices, records and rates go from one project to the next by the district's file") {
  const core::Project from = known();
  const auto result = withDistrict(core::Project{}, districtText(from, "Upper valley"));
  REQUIRE(result.has_value());
  CHECK(result->notes.empty());
  core::Project expected;
  expected.currency = from.currency;
  expected.prices = from.prices;
  expected.records = from.records;
  expected.works->hours_per_day = 7;
  expected.works->digging_person_day_per_m3 = 0.7;
  expected.works->plaster_person_day_per_m2 = 0.3;
  expected.works->rates = from.works->rates;
  CHECK(result->project == expected);
}

TEST_CASE("the district's file has its own head and nothing of the site") {
  const json file = json::parse(districtText(known(), "Upper valley"));
  CHECK(file["format"] == "tankwright-district");
  CHECK(file["version"] == 1);
  CHECK(file["name"] == "Upper valley");
  CHECK(file["currency"] == "NPR");
  CHECK(file.size() == 7);
  CHECK(file["works"].size() == 6);
  CHECK_FALSE(file["works"].contains("start_date"));
  CHECK(file["prices"]["items"][1]["item"] == "lime");
}

TEST_CASE("a random project is left as it is by its own district file") {
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    INFO("seed " << seed);
    core::Project project = support::randomProject(seed);
    project.kept.clear();
    const auto result = withDistrict(project, districtText(project, ""));
    REQUIRE(result.has_value());
    CHECK(result->project == project);
  }
}

TEST_CASE("what a district's file does not name stays") {
  json district = head();
  district["prices"] = {{"porter", {{"price_per_trip", 350}}}};
  const core::Project before = known();
  core::Project expected = before;
  expected.prices->porter.price_per_trip = 350;
  CHECK(put(before, district).project == expected);
  district["prices"] = nullptr;
  district["currency"] = "";
  CHECK(put(before, district).project == before);
  district["works"] = {{"digging_person_day_per_m3", nullptr}, {"rates", json::array()}};
  expected = before;
  expected.works->digging_person_day_per_m3.reset();
  expected.works->rates.clear();
  CHECK(put(before, district).project == expected);
}

TEST_CASE("a district's file with something wrong is refused whole, and all of it is said") {
  json district = head();
  district["prices"] = {{"items", {{{"item", "sand"}, {"price", -4}}, 7}}, {"contingency_percent", "ten"}};
  district["records"] = {{"work", {{{"work", "dancing"}}}}};
  district["works"] = {{"hours_per_day", 40}};
  district["currency"] = 5;
  district["name"] = std::string(201, 'x');
  std::vector<std::string> faults = faultsOf(known(), district);
  std::sort(faults.begin(), faults.end());
  CHECK(faults == std::vector<std::string>{
                      "out_of_range prices.items[0].price", "out_of_range works.hours_per_day",
                      "too_long name", "unknown_choice records.work[0].work", "wrong_type currency",
                      "wrong_type prices.contingency_percent", "wrong_type prices.items[1]"});
  district = head();
  district["works"] = {{"rates", {{{"work", "no such work"}, {"low", 1}, {"typical", 2}, {"high", 3}}}}};
  CHECK(faultsOf(known(), district).size() == 1);
}

TEST_CASE("what is no district's file is refused") {
  CHECK(faultsOf(known(), json::array()) == std::vector<std::string>{"not_a_district "});
  CHECK(faultsOf(known(), json::parse(core::exchange::projectText(known()))) ==
        std::vector<std::string>{"not_a_district format"});
  json later = head();
  later["version"] = 2;
  CHECK(faultsOf(known(), later) == std::vector<std::string>{"unknown_version version"});
  later.erase("version");
  CHECK(faultsOf(known(), later) == std::vector<std::string>{"missing version"});
  CHECK(withDistrict(known(), "{").error().front().code == "not_json");
}

TEST_CASE("unknown keys of a district's file are said; those of prices and records are kept") {
  json district = head();
  district["region"] = "hills";
  district["prices"] = {{"tax_percent", 13}};
  district["records"] = {{"batches", {{{"mixer", "drum"}}}}};
  district["works"] = {{"start_date", "2031-01-01"}};
  core::Project before = known();
  before.kept = {{"/colour", "1"}};
  const auto [project, notes] = put(before, district);
  std::vector<std::string> said;
  for (const core::Problem& note : notes) said.push_back(note.code + " " + note.path);
  std::sort(said.begin(), said.end());
  CHECK(said == std::vector<std::string>{"unknown_key prices.tax_percent",
                                         "unknown_key records.batches[0].mixer", "unknown_key region",
                                         "unknown_key works.start_date"});
  CHECK(project.works->start_date == before.works->start_date);
  CHECK(project.kept == std::vector<core::KeptKey>{{"/colour", "1"},
                                                   {"/prices/tax_percent", "13"},
                                                   {"/records/batches/1/mixer", "\"drum\""}});
  CHECK(json::parse(districtText(project, ""))["prices"]["tax_percent"] == 13);
}

TEST_CASE("a project without works gets no works from a district") {
  core::Project project;
  project.works.reset();
  const auto result = withDistrict(project, districtText(known(), ""));
  REQUIRE(result.has_value());
  CHECK_FALSE(result->project.works.has_value());
  CHECK(result->project.prices == known().prices);
  json district = head();
  district["works"] = {{"hours_per_day", 40}};
  CHECK(faultsOf(project, district) == std::vector<std::string>{"out_of_range works.hours_per_day"});
}
