// Spot heights: what is wrong with them, and reading them from a table.
#include "core/site/survey.h"

#include "core/exchange/survey_csv.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::Problem;
using core::Problems;
using core::exchange::parseSurveyCsv;
using core::site::checkSurvey;
using Eigen::Vector3d;

/// A square grid on an even slope, shaken by a few millimetres.
std::vector<Vector3d> grid(int side) {
  std::mt19937 dice(5);
  std::vector<Vector3d> points;
  for (int i = 0; i < side; ++i) {
    for (int k = 0; k < side; ++k)
      points.emplace_back(2.0 * i, 2.0 * k,
                          0.1 * i - 0.06 * k + 0.01 * (static_cast<double>(dice()) / 4294967296.0));
  }
  return points;
}

std::string codes(const Problems& problems) {
  std::string all;
  for (const Problem& p : problems) all += p.code + "@" + p.path + " ";
  return all;
}

std::string codes(const std::string& text) {
  const auto read = parseSurveyCsv(text);
  return read ? "" : codes(read.error());
}

}  // namespace

TEST_CASE("survey: a sound one has no problems") {
  CHECK(codes(checkSurvey(grid(12))).empty());
  CHECK(codes(checkSurvey(std::vector<Vector3d>{{0, 0, 1}, {5, 0, 2}, {0, 5, 1.5}})).empty());
}

TEST_CASE("survey: repeated points are named with the first of them") {
  std::vector<Vector3d> points = grid(5);
  points.push_back(points[7]);
  points.push_back(points[3] + Vector3d(0, 0, 0.4));
  const Problems found = checkSurvey(points);
  REQUIRE(codes(found) ==
          "survey_duplicate@site.ground.points_m[25] survey_conflict@site.ground.points_m[26] ");
  CHECK(found[0].allowed == "site.ground.points_m[7]");
  CHECK(found[1].allowed == "site.ground.points_m[3]");
  CHECK(*found[1].least == points[3].z());
  CHECK(core::site::isSurveyNote("survey_duplicate"));
  CHECK_FALSE(core::site::isSurveyNote("survey_conflict"));
}

TEST_CASE("survey: too few, in one line, not a number, too many") {
  CHECK(codes(checkSurvey({})) == "survey_too_few@site.ground.points_m ");
  const std::vector<Vector3d> two{{0, 0, 0}, {1, 0, 0}, {1, 0, 0}};
  CHECK(codes(checkSurvey(two)) ==
        "survey_duplicate@site.ground.points_m[2] survey_too_few@site.ground.points_m ");
  const std::vector<Vector3d> line{{0, 0, 0}, {1, 2, 5}, {2, 4, 1}, {-3, -6, 0}};
  CHECK(codes(checkSurvey(line)) == "survey_collinear@site.ground.points_m ");
  std::vector<Vector3d> points = grid(5);
  points[4].z() = std::numeric_limits<double>::quiet_NaN();
  points[9].x() = std::numeric_limits<double>::infinity();
  const Problems found = checkSurvey(points);
  CHECK(codes(found) == "not_finite@site.ground.points_m[4][2] not_finite@site.ground.points_m[9][0] ");
  CHECK(found[0].value == "NaN");
  CHECK(codes(checkSurvey(std::vector<Vector3d>(100001))) == "too_many@site.ground.points_m ");
}

TEST_CASE("survey: a mistyped height is found and its neighbours are not blamed") {
  for (const std::size_t at : {60u, 0u, 11u, 6u}) {  // inside, corners, edge
    std::vector<Vector3d> points = grid(12);
    const double right = points[at].z();
    points[at].z() += 10;
    const Problems found = checkSurvey(points);
    CAPTURE(at);
    REQUIRE(codes(found) == "survey_spike@site.ground.points_m[" + std::to_string(at) + "] ");
    CHECK(*found[0].least < right);
    CHECK(right < *found[0].most);
    CHECK(core::site::isSurveyNote(found[0].code));
  }
  // two side by side, and a limit that lets a bump pass
  std::vector<Vector3d> points = grid(12);
  points[65].z() += 3;
  points[66].z() -= 2;
  CHECK(codes(checkSurvey(points)) ==
        "survey_spike@site.ground.points_m[65] survey_spike@site.ground.points_m[66] ");
  points = grid(12);
  points[65].z() += 0.08;
  CHECK(codes(checkSurvey(points)).empty());
}

TEST_CASE("survey: a point far outside all others is noted") {
  std::vector<Vector3d> points = grid(8);
  points.emplace_back(900, 20, 10);
  const std::string found = codes(checkSurvey(points));
  CHECK(found.find("survey_far@site.ground.points_m[64]") != std::string::npos);
}

TEST_CASE("survey: 100,000 points are checked, and a cancelled check ends") {
  std::vector<Vector3d> points = grid(316);
  points[50000].z() += 5;
  CHECK(codes(checkSurvey(points)) == "survey_spike@site.ground.points_m[50000] ");
  const std::atomic<bool> cancel = true;
  CHECK(codes(checkSurvey(points, {}, &cancel)).empty());
}

TEST_CASE("survey table: with and without header, any separator") {
  for (const char* text :
       {"x,y,z\n1.5,2,3\n4,5,-6.25\n", "1.5,2,3\n4,5,-6.25", "Z;X;Y\r\n3;1,5;2\r\n-6,25;4;5\r\n",
        "1,5;2;3\n4;5;-6,25\n", "1,5\t2\t3\n\n4\t5\t-6,25\n", "1.5 2   3 \n4 5 -6.25\n",
        "\xEF\xBB\xBF"
        "Easting,Northing,Level_m\n1.5,2,3\n4,5,-6.25\n",
        "\"E\",\"N\",\"RL\"\n\"1.5\",2,3\n4,5,-6.25\n"}) {
    const auto read = parseSurveyCsv(text);
    CAPTURE(text);
    REQUIRE(read);
    REQUIRE(read->points_m.size() == 2);
    CHECK(read->points_m[0] == Vector3d(1.5, 2, 3));
    CHECK(read->points_m[1] == Vector3d(4, 5, -6.25));
    CHECK(read->taken_off_m.isZero());
  }
  const auto lines = parseSurveyCsv("1\t2\t3\n\n4\t5\t6\n");
  REQUIRE(lines);
  CHECK(lines->line == std::vector<std::size_t>{1, 3});
}

TEST_CASE("survey table: grid coordinates are moved to the middle") {
  const auto read = parseSurveyCsv("peg,E,N,level\nA,512340.5,3041200.25,1420\nB,512360.5,3041260.25,1421\n");
  REQUIRE(read);
  CHECK(codes(read->notes) == "unknown_key@row:1 ");
  CHECK(read->points_m[0] == Vector3d(-10.5, -29.75, 1420));
  CHECK(read->points_m[0].head<2>() + read->taken_off_m == Eigen::Vector2d(512340.5, 3041200.25));
  // a slip of the pen in a grid coordinate: too far from the others
  CHECK(codes("x,y,z\n512340,3041200,1\n512350,3041200,1\n512350,3081200,1\n") ==
        "out_of_range@row:2:y out_of_range@row:3:y out_of_range@row:4:y ");
}

TEST_CASE("survey table: what is wrong is named by row and column") {
  CHECK(codes("") == "too_few@ ");
  CHECK(codes("x,y,z\n") == "too_few@ ");
  CHECK(codes("x,y\n1,2\n") == "csv_column_missing@row:1:z ");
  CHECK(codes("x,x,y,z\n1,1,2,3\n") == "duplicate_key@row:1:x ");
  CHECK(codes("x,y,z\n1,2,3\n1,2\n1,2,3,4\n") == "csv_row_cells@row:3 csv_row_cells@row:4 ");
  CHECK(codes("1,2,3\n1,2\n") == "csv_row_cells@row:2 ");
  CHECK(codes("1,2,3\n1,-,3\n1,2,9001\n1,2,1e3\n") ==
        "missing@row:2:y out_of_range@row:3:z wrong_type@row:4:z ");
  CHECK(codes("x;y;z\n1;2;3,5,7\n") == "wrong_type@row:2:z ");
  CHECK(codes("x,y,z\n\"1,2,3\n") == "wrong_type@row:2 ");
  CHECK(codes("x,y,z\n1,\xFF,3\n") == "not_utf8@ ");
  CHECK(codes(std::string(17u << 20, '1')) == "too_large@ ");
  std::string many = "x,y,z\n";
  for (int k = 0; k < 100001; ++k) many += "1,2,3\n";
  CHECK(codes(many) == "too_many@ ");
  std::string bad = "x,y,z\n";
  for (int k = 0; k < 500; ++k) bad += "1,2,?\n";
  CHECK(parseSurveyCsv(bad).error().size() == 100);
}

TEST_CASE("survey table: what is written reads back") {
  const std::vector<Vector3d> points{{0.1, -2.25, 1e-3}, {1.0 / 3, 999.999, -12}};
  const auto read = parseSurveyCsv(core::exchange::surveyCsvText(points));
  REQUIRE(read);
  CHECK(read->points_m == points);
}
