#include "core/exchange/short_form.h"
#include "core/exchange/short_form_fields.h"
#include "core/exchange/short_form_text.h"
#include "core/plan.h"
#include "tests/support/random_project.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

#include <catch2/catch.hpp>

using core::Project;
using core::exchange::fromShortForm;
using core::exchange::kShortFields;
using core::exchange::shortForm;

namespace {

bool isTold(const core::Field& field, const Project& project) {
  const bool is_survey = project.site.ground.kind == core::GroundKind::spot_heights;
  return field.applies(project) && !(is_survey && field.id == "site.ground.kind");
}

void checkSame(const Project& project, const Project& read) {
  for (const auto& item : kShortFields) {
    const core::Field& field = core::field(item.id);
    if (!isTold(field, project)) continue;
    INFO(item.id);
    REQUIRE(core::rowCount(field, read) == core::rowCount(field, project));
    for (std::size_t row = 0; row < core::rowCount(field, project); ++row)
      REQUIRE(field.get(read, row) == field.get(project, row));
  }
  if (project.tank.shape == core::Shape::polygon) REQUIRE(read.tank.outline_m == project.tank.outline_m);
}

/// As people enter it: no more than three decimals.
double rounded(double value) {
  return std::round(value * 1000) / 1000;
}

/// What a sheet would hold: the same kinds of project with lengths in millimetres.
Project asEntered(Project project) {
  for (const auto& item : kShortFields) {
    const core::Field& field = core::field(item.id);
    if (field.kind != core::FieldKind::number || !field.applies(project)) continue;
    for (std::size_t row = 0; row < core::rowCount(field, project); ++row) {
      const core::FieldValue value = field.get(project, row);
      if (const double* number = std::get_if<double>(&value)) field.set(project, row, rounded(*number));
    }
  }
  for (Eigen::Vector2d& corner : project.tank.outline_m) corner = corner.unaryExpr(&rounded);
  return project;
}

}  // namespace

TEST_CASE(
    "what the short form covers of 2,000 random projects reads back exactly, and is written the same again") {
  std::set<core::Shape> shapes;
  for (std::uint64_t seed = 0; seed < 2000; ++seed) {
    INFO("seed " << seed);
    const Project project = support::randomProject(seed);
    const std::string text = shortForm(project);
    INFO(text);
    const auto read = fromShortForm(text, Project{});
    REQUIRE(read.has_value());
    checkSame(project, *read);
    if (project.site.ground.kind != core::GroundKind::spot_heights) REQUIRE(shortForm(*read) == text);
    shapes.insert(project.tank.shape);
  }
  CHECK(shapes.size() == 3);
}

TEST_CASE("the short form uses only what a QR code holds as letters and digits, and one blank at a time") {
  constexpr std::string_view kAllowed = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ:./-* ";
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const std::string text = shortForm(support::randomProject(seed));
    INFO(text);
    CHECK(text.find_first_not_of(kAllowed) == std::string::npos);
    CHECK(text.find("  ") == std::string::npos);
    CHECK(text.find('\n') == std::string::npos);
    CHECK(text.size() <=
          3391);  // what the largest QR code holds with error correction M (ISO/IEC 18004, table 7)
  }
}

TEST_CASE(
    "a damaged text whose check group was made to fit is read or refused with known codes, and never "
    "throws") {
  support::Random random(7);
  const auto codes = core::problemCodes();
  int refused = 0, taken = 0;
  for (std::uint64_t seed = 0; seed < 3000; ++seed) {
    const std::string whole = shortForm(support::randomProject(seed % 100));
    std::string text = whole.substr(0, whole.find(" *"));
    for (int k = random.whole(0, 3); k > 0; --k) {
      const auto at = static_cast<std::size_t>(random.whole(3, static_cast<int>(text.size()) - 1));
      const auto from = static_cast<std::size_t>(random.whole(3, static_cast<int>(text.size()) - 1));
      if (random.chance(0.3)) {
        text[at] = static_cast<char>(random.whole(1, 255));
      } else if (random.chance(0.5)) {
        text.erase(at, static_cast<std::size_t>(random.whole(1, 9)));
      } else {
        text.insert(at, text.substr(from, static_cast<std::size_t>(random.whole(1, 60))));
      }
    }
    INFO(text);
    std::erase(text, '*');
    text +=
        " *" + core::exchange::checkGroup(core::exchange::joinedParts(core::exchange::typedForm(text).parts));
    const auto read = fromShortForm(text, Project{});
    (read ? taken : refused) += 1;
    if (read) REQUIRE(core::check(*read).empty());
    if (read) continue;
    REQUIRE_FALSE(read.error().empty());
    for (const core::Problem& problem : read.error()) {
      REQUIRE(problem.code != "short_form_check");
      REQUIRE(std::ranges::find(codes, problem.code) != codes.end());
    }
  }
  CHECK(refused > 500);
  CHECK(taken > 500);
}

TEST_CASE("a changed character is refused in 300 designs as people enter them") {
  support::Random random(20);
  constexpr std::string_view kSigns = "0123456789ABCDEFGHJKMNPQRSTUVWXYZ:./-+*$%";  // without I, L, O
  int tried = 0;
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const Project project = asEntered(support::randomProject(seed));
    if (!core::check(project).empty()) continue;
    const std::string text = shortForm(project);
    REQUIRE(fromShortForm(text, Project{}).has_value());
    for (int k = 0; k < 20; ++k) {
      std::string changed = text;
      char& c = changed[static_cast<std::size_t>(random.whole(0, static_cast<int>(text.size()) - 1))];
      const char other =
          kSigns[static_cast<std::size_t>(random.whole(0, static_cast<int>(kSigns.size()) - 1))];
      if (other == c) continue;
      c = other;
      INFO(changed);
      CHECK_FALSE(fromShortForm(changed, Project{}).has_value());
      ++tried;
    }
  }
  CHECK(tried > 4000);
}
