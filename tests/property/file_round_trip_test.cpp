#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "core/plan.h"
#include "tests/support/random_project.h"
#include "tests/support/temporary_folder.h"

#include <filesystem>
#include <set>
#include <string>

#include <catch2/catch.hpp>

using core::exchange::parseProject;
using core::exchange::projectText;

TEST_CASE("project to text to project is identity for 2,000 random projects, and text to project to text") {
  std::set<core::Shape> shapes;
  std::size_t with_kept = 0;
  for (std::uint64_t seed = 0; seed < 2000; ++seed) {
    INFO("seed " << seed);
    const core::Project project = support::randomProject(seed);
    const std::string text = projectText(project);
    const auto read = parseProject(text);
    REQUIRE(read.has_value());
    REQUIRE(read->project == project);
    REQUIRE(projectText(read->project) == text);
    shapes.insert(project.tank.shape);
    with_kept += project.kept.empty() ? 0 : 1;
  }
  CHECK(shapes.size() == 3);
  CHECK(with_kept > 500);
}

TEST_CASE("the random projects differ and the same seed gives the same project") {
  for (std::uint64_t seed = 0; seed < 30; ++seed) {
    CHECK(support::randomProject(seed) == support::randomProject(seed));
    CHECK_FALSE(support::randomProject(seed) == support::randomProject(seed + 1));
  }
}

TEST_CASE("the same project gives the same plan, byte for byte") {
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const core::Project project = support::randomProject(seed);
    const auto once = core::plan(project);
    const auto twice = core::plan(project);
    REQUIRE(once.has_value());
    REQUIRE(twice.has_value());
    const std::string text = core::exchange::planText(*once);
    CHECK(core::exchange::planText(*twice) == text);
    CHECK(core::exchange::planText(*once) == text);
    CHECK(core::exchange::planCsv(*once) == core::exchange::planCsv(*twice));
    const auto reread = core::plan(parseProject(projectText(project))->project);
    CHECK(core::exchange::planText(*reread) == text);
  }
}

TEST_CASE("every demo project is planned and is written as it stands") {
  std::set<core::Shape> shapes;
  for (const auto& entry : std::filesystem::directory_iterator(TANKWRIGHT_SOURCE_DIR "/resources/demo")) {
    INFO(entry.path().filename());
    const auto read = core::exchange::readProject(entry.path());
    REQUIRE(read.has_value());
    CHECK(read->notes.empty());
    CHECK(projectText(read->project) == support::bytesOf(entry.path()));
    CHECK(core::plan(read->project).has_value());
    shapes.insert(read->project.tank.shape);
  }
  CHECK(shapes.size() == 3);
}
