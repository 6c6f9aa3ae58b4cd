// Settling of grains and the silt trap against printed values; each has its source beside it. `fluids` is an
// open fluid library (MIT licence).
#include "core/hydraulics/settling.h"

#include "core/hydraulics/silt_trap.h"

#include <cmath>

#include <catch2/catch.hpp>

using namespace core::hydraulics;

namespace {

/// The water of the textbook examples.
const Water kTextbook{20, 1000, 1e-3, 2339};

Approx printed(double value, double last_digit) {
  return Approx(value).margin(last_digit / 2 * 1.0001).epsilon(0);
}

Approx within(double value, double share) {
  return Approx(value).epsilon(share);
}

double ball(double mm, double density) {
  return settlingVelocity({mm, density, GrainShape::ball}, kTextbook)->velocity_m_s;
}

double sand(double mm, double temperature_c) {
  return settlingVelocity({mm, 2650, GrainShape::natural}, *waterAt(temperature_c))->velocity_m_s;
}

}  // namespace

TEST_CASE("Stokes' law: printed values") {
  // Rushton, Ward, Holdich 1996, as quoted in fluids; g 9.81 there
  CHECK(stokesVelocity(50e-6, 2800, 1000, 1e-3) == within(0.002453, 1e-3));
  // fluids test suite, g 9.80665
  CHECK(stokesVelocity(70e-9, 2600, 1000, 1e-3) == within(4.271340888888889e-9, 1e-14));
  CHECK(stokesVelocity(70e-6, 2600, 1000, 1e-1) == within(4.271340888888888e-5, 1e-14));
}

TEST_CASE("drag of a ball: Stokes' limit and the curve of Clift, Grace, Weber in the fluids test suite") {
  CHECK(*ballDrag(0.001) == within(24000, 2e-4));  // 24/Re
  CHECK(*ballDrag(0.5) == within(51.538273834491875, 1e-12));
  CHECK(*ballDrag(50) == within(1.5742657203722197, 1e-12));
  CHECK(*ballDrag(500) == within(0.5549240285782678, 1e-12));
  CHECK(*ballDrag(0.00999999) == within(*ballDrag(0.01), 1e-4));  // the pieces meet
  CHECK(*ballDrag(20) == within(*ballDrag(20.0001), 1e-2));
  CHECK(*ballDrag(260) == within(*ballDrag(260.001), 1e-2));
  CHECK(ballDrag(1501).error() == "grain_beyond_drag_curve");
}

TEST_CASE("falling balls: Rushton and fluids") {
  // Rushton, Ward, Holdich 1996: 70 um with Oseen's correction 0.00406; fluids with another drag curve
  // 0.0041425
  CHECK(ball(0.07, 2600) == within(0.00406, 0.01));
  CHECK(ball(0.07, 2600) == within(0.00414249724453, 0.02));
  CHECK(ball(0.05, 2800) == within(0.0024195143465496655, 0.02));
  // negative check: Stokes alone is too fast there
  CHECK_FALSE(stokesVelocity(70e-6, 2600, 1000, 1e-3) == within(0.00406, 0.01));
}

TEST_CASE("fine grains fall by Stokes, coarse ones slower") {
  for (const GrainShape shape : {GrainShape::ball, GrainShape::natural}) {
    const Settling fine = *settlingVelocity({0.005, 2650, shape}, *waterAt(20));
    CHECK(fine.velocity_m_s == within(fine.stokes_m_s, 0.005));
    const Settling coarse = *settlingVelocity({0.3, 2650, shape}, *waterAt(20));
    CHECK(coarse.velocity_m_s < 0.6 * coarse.stokes_m_s);
  }
}

TEST_CASE("natural sand against handbook fall velocities") {
  // Civil works guidelines for micro-hydropower in Nepal, figure 5.2 and example 5.1: 0.3 mm at 15 C
  CHECK(sand(0.3, 15) == within(0.037, 0.03));
  // settling-basin tables: 0.020 at 0.2 mm, 0.006 at 0.1 mm, 20 C; these stand on the slow side of the
  // published curve for natural sand by up to 25 %
  CHECK(sand(0.2, 20) == within(0.020, 0.17));
  CHECK(sand(0.1, 20) == within(0.006, 0.27));
  // sediment-basin rules (from memory): 0.00028 m/s for 0.02 mm, cold water
  CHECK(sand(0.02, 10) == within(0.00028, 0.05));
  CHECK(sand(0.2, 20) < settlingVelocity({0.2, 2650, GrainShape::ball}, *waterAt(20))->velocity_m_s);
}

TEST_CASE("silt trap: Civil works guidelines for micro-hydropower in Nepal, example 5.1") {
  SiltTrapTask task;
  task.flow_m3_s = 0.455;
  task.grain = {0.3, 2650, GrainShape::natural};
  task.temperature_c = 15;
  task.width_m = 2.5;
  task.freeboard_m = 0.3;
  task.silt_kg_m3 = 2;
  task.cleaning_interval_days = 8.0 / 24;
  const SiltTrap trap = *siltTrap(task);
  CHECK(trap.area_m2 * trap.settling.velocity_m_s == within(2 * 0.455, 1e-12));
  CHECK(trap.area_m2 == within(24.6, 0.03));  // read from a chart there: w 0.037
  CHECK(trap.length_m == within(9.8, 0.03));
  CHECK(trap.speed_limit_m_s == printed(0.24, 0.01));
  CHECK(trap.settling_depth_m == printed(0.76, 0.01));
  CHECK(trap.deposit_kg == printed(26208, 1));
  CHECK(trap.deposit_m3 == printed(20.16, 0.01));
  CHECK(trap.depth_m == within(1.87, 0.02));  // 0.81 m of deposit there on the rounded 25 m2
}

TEST_CASE("silt trap: the trap made for a grain keeps that grain, at the allowed speed") {
  SiltTrapTask task;
  task.flow_m3_s = 0.5e-3;
  task.grain = {0.05, 2650, GrainShape::natural};
  const SiltTrap trap = *siltTrap(task);
  CHECK(trap.ideal_area_m2 * 2 == within(trap.area_m2, 1e-12));
  CHECK(trap.length_m / trap.width_m == within(6, 1e-12));
  const SiltTrapCheck check =
      *checkSiltTrap({trap.length_m, trap.width_m, trap.settling_depth_m}, 0.5e-3, task.grain, 10);
  CHECK(check.kept_mm == within(0.05, 1e-9));
  CHECK(check.forward_m_s == within(check.speed_limit_m_s, 1e-9));
  CHECK_FALSE(
      checkSiltTrap({trap.length_m, trap.width_m, trap.settling_depth_m * 0.9}, 0.5e-3, task.grain, 10)
          ->slow_enough);
}

TEST_CASE("silt trap: what cannot be is refused") {
  SiltTrapTask task;
  task.grain.diameter_mm = 0.05;
  CHECK(siltTrap(task).error() == "flow_out_of_range");
  task.flow_m3_s = 1e-3;
  task.grain.diameter_mm = 5;
  CHECK(siltTrap(task).error() == "grain_out_of_range");
  task.grain = {0.05, 900, GrainShape::natural};
  CHECK(siltTrap(task).error() == "density_out_of_range");
  task.grain = {0.05, 2650, GrainShape::natural};
  task.area_reserve = 0.5;
  CHECK(siltTrap(task).error() == "coefficient_out_of_range");
  task.area_reserve = 2;
  task.temperature_c = -1;
  CHECK(siltTrap(task).error() == "temperature_out_of_range");
  CHECK(checkSiltTrap({0.1, 0.1, 0.1}, 1, task.grain, 10).error() == "grain_out_of_range");
}
