#include "core/base/source.h"
#include "core/project/fields.h"
#include "tests/support/random_project.h"

#include <limits>
#include <set>
#include <string>

#include <catch2/catch.hpp>

using core::Field;
using core::FieldKind;
using core::FieldValue;

namespace {

bool isNumber(const Field& field) {
  return field.kind == FieldKind::number || field.kind == FieldKind::whole;
}

std::string codeOf(const Field& field, const FieldValue& value) {
  const core::Problems problems = core::checkValue(field, 0, value);
  return problems.empty() ? "" : problems.front().code;
}

}  // namespace

TEST_CASE("every field has an id of its own, a known source, sane limits and an editor step") {
  std::set<std::string> ids;
  for (const Field& field : core::fields()) {
    INFO(field.id);
    CHECK(ids.insert(std::string(field.id)).second);
    CHECK(&core::field(field.id) == &field);
    CHECK_NOTHROW(core::source(field.source));
    CHECK((field.kind == FieldKind::choice) == !field.choices.empty());
    CHECK(field.decimals >= 0);
    if (!isNumber(field)) continue;
    CHECK(field.least < field.most);
    CHECK(field.step > 0);
    CHECK(field.step < field.most - field.least);
  }
  CHECK_THROWS_AS(core::field("tank.colour"), std::logic_error);
}

TEST_CASE("the default of every field is within its own range") {
  core::Project project;
  project.water.emplace();
  project.delivery.emplace();
  project.prices.emplace();
  for (const Field& field : core::fields()) {
    for (std::size_t row = 0; row < core::rowCount(field, project); ++row) {
      INFO(core::pathOf(field, row));
      CHECK(core::checkValue(field, row, field.get(project, row)).empty());
    }
  }
}

TEST_CASE("what is set is what is got, in every field of random projects") {
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const core::Project from = support::randomProject(seed);
    core::Project to = support::randomProject(seed + 1000);
    to.works.reset();
    to.delivery = from.delivery ? std::optional(core::Delivery{}) : std::nullopt;
    to.water = from.water ? std::optional(core::Water{}) : std::nullopt;
    to.prices = from.prices ? std::optional(core::Prices{}) : std::nullopt;
    for (const core::List& list : core::lists()) {
      if (list.applies(from)) list.resize(to, list.size(from));
    }
    for (const Field& field : core::fields()) {
      for (std::size_t row = 0; row < core::rowCount(field, from); ++row) {
        const FieldValue value = field.get(from, row);
        if (std::holds_alternative<std::monostate>(value) && !field.nullable)
          continue;  // works or water are absent
        field.set(to, row, value);
        INFO(core::pathOf(field, row));
        CHECK(field.get(to, row) == value);
      }
    }
    to.tank.outline_m = from.tank.outline_m;
    to.site.ground.points_m = from.site.ground.points_m;
    if (to.water) to.water->climate.daily = from.water->climate.daily;
    to.options = from.options;
    to.kept = from.kept;
    if (from.works) CHECK(to == from);
  }
}

TEST_CASE("a number is taken at both ends of its range and not beyond") {
  const double infinity = std::numeric_limits<double>::infinity();
  for (const Field& field : core::fields()) {
    if (!isNumber(field)) continue;
    INFO(field.id);
    CHECK(codeOf(field, field.least) == "");
    CHECK(codeOf(field, field.most) == "");
    CHECK(codeOf(field, field.least - 1) == "out_of_range");
    CHECK(codeOf(field, field.most + 1) == "out_of_range");
    CHECK(codeOf(field, std::nextafter(field.most, infinity)) ==
          (field.kind == FieldKind::whole ? "wrong_type" : "out_of_range"));
    CHECK(codeOf(field, infinity) == "not_finite");
    CHECK(codeOf(field, -infinity) == "not_finite");
    CHECK(codeOf(field, std::numeric_limits<double>::quiet_NaN()) == "not_finite");
    CHECK(codeOf(field, std::string("1")) == "wrong_type");
    CHECK(codeOf(field, true) == "wrong_type");
    CHECK(codeOf(field, FieldValue{}) == (field.nullable ? "" : "missing"));
  }
}

TEST_CASE("choices, dates and texts are checked") {
  for (const Field& field : core::fields()) {
    for (const std::string_view choice : field.choices) CHECK(codeOf(field, std::string(choice)) == "");
    if (field.kind == FieldKind::choice) CHECK(codeOf(field, std::string("?")) == "unknown_choice");
    if (field.kind == FieldKind::text)
      CHECK(codeOf(field, std::string(static_cast<std::size_t>(field.most) + 1, 'x')) == "too_long");
    if (field.kind == FieldKind::date) CHECK(codeOf(field, std::string("2028-02-29")) == "");
    if (field.kind == FieldKind::date) CHECK(codeOf(field, std::string("2100-02-29")) == "bad_date");
  }
}

TEST_CASE("a path names the row") {
  CHECK(core::pathOf(core::field("tank.depth_m"), 0) == "tank.depth_m");
  CHECK(core::pathOf(core::field("lining.coats[].soil"), 1) == "lining.coats[1].soil");
}

TEST_CASE("a long value is shortened between two characters") {
  std::string text(59, 'x');
  text += "\u0915\u0916";
  CHECK(core::shortened(text) == std::string(59, 'x') + "...");
  CHECK(core::shortened(std::string(60, 'y')) == std::string(60, 'y'));
  CHECK(core::jsonText(std::string("a\"\n")) == "\"a\\\"\\u000a\"");
  CHECK(core::jsonText(0.1) == "0.1");
  CHECK(core::jsonText(FieldValue{}) == "null");
}
