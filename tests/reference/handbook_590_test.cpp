// USDA NRCS, Agriculture Handbook 590, Ponds - Planning, Design, Construction (1997), excavated ponds: volume
// by the prismoidal formula. Printed digits from memory; the arithmetic was checked.
#include "core/geometry/mesh.h"
#include "core/geometry/outline.h"

#include <catch2/catch.hpp>

namespace {

using core::geometry::Outline;

constexpr double kFoot_m = 0.3048;                // international foot, 1959 agreement, exact
constexpr double kCubicYard_m3 = 0.764554857984;  // (0.9144 m)^3, exact
constexpr double kAcreFoot_ft3 = 43560;           // by definition

// Bottom 40 ft x 100 ft, 12 ft deep, sides 2:1, one end 2:1 and the ramp end 4:1. The sides and ends differ
// in slope, so the example is split into its printed areas; our outline has one batter.
constexpr double kDepth_ft = 12;
constexpr double kTop_ft2 = 88 * 172;
constexpr double kMiddle_ft2 = 64 * 136;
constexpr double kBottom_ft2 = 40 * 100;

}  // namespace

TEST_CASE("AH-590 prismoidal example: printed areas, sum and volume") {
  CHECK(kTop_ft2 == 15136);         // printed
  CHECK(4 * kMiddle_ft2 == 34816);  // printed
  const double sum = kTop_ft2 + 4 * kMiddle_ft2 + kBottom_ft2;
  CHECK(sum == 53952);                                                       // printed
  CHECK(sum / 6 * kDepth_ft / 27 == Approx(3996).margin(0.5));               // cubic yards, printed
  CHECK(sum / 6 * kDepth_ft / kAcreFoot_ft3 == Approx(2.48).margin(0.005));  // acre-feet, printed
}

TEST_CASE("AH-590 example through our geometry: two half ponds of one batter each give the printed volume") {
  // The pond of 2:1 sides with ends 2:1 and 4:1 has the same sections as a pond whose ends both slope 3:1. A
  // rectangle with batter 2 all round, plus the wedge its ends gain from 2:1 to 3:1, makes it up exactly:
  // width(z) * z * 2 * 1 integrated.
  const Outline floor = Outline::rectangle(100 * kFoot_m, 40 * kFoot_m, 0);
  const double depth = kDepth_ft * kFoot_m;
  const double even = floor.volume(0, 2 * depth, depth);
  const auto ends = [&](double z) { return floor.size(2 * z).y() * 2 * z; };
  const double extra = depth / 6 * (ends(0) + 4 * ends(depth / 2) + ends(depth));
  CHECK((even + extra) / kCubicYard_m3 == Approx(3996).margin(0.5));  // printed
  CHECK(even + extra == Approx(3055.50).margin(0.05));                // m3, from the printed sum of areas
  // printed areas at the top and middle
  CHECK((floor.area(2 * depth) + ends(depth)) / (kFoot_m * kFoot_m) == Approx(15136));
  CHECK((floor.area(depth) + ends(depth / 2)) / (kFoot_m * kFoot_m) == Approx(8704));
}

TEST_CASE("the mean of the end areas is not the volume") {
  // AH-590 example: average-end-area gives 4,252 yd3, 6.4 % too much
  const double average = (kTop_ft2 + kBottom_ft2) / 2 * kDepth_ft / 27;
  CHECK(average == Approx(4252.44).margin(0.01));
  CHECK(average / 3996.44 == Approx(1.064).margin(0.0005));
}

TEST_CASE("rectangular tank with one batter: closed form of the textbooks") {
  // V = d (ab + (a + b) z d + 4/3 z^2 d^2), bottom a x b, depth d, side slope z horizontal to 1 vertical;
  // plain algebra
  for (const auto& [a, b, d, z] :
       {std::tuple(6.5, 3.2, 1.4, 0.15), {5.0, 3.0, 1.5, 0.0}, {30.48, 12.192, 3.6576, 2.0}}) {
    const Outline o = Outline::rectangle(a, b, 0);
    const double closed = d * (a * b + (a + b) * z * d + 4.0 / 3 * z * z * d * d);
    CHECK(o.volume(0, z * d, d) == Approx(closed).epsilon(1e-12));
    CHECK(core::geometry::volume(o, {{{0, 0}, {z * d, d}}}) == Approx(closed).epsilon(1e-12));
  }
}
