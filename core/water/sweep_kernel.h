#pragma once

#include <array>
#include <cstddef>
#include <span>

namespace core::water::kernel {

/// Lanes that are taken through the days together; a multiple of every vector width.
inline constexpr std::size_t kPackLanes = 64;

using Column = std::array<float, kPackLanes>;

/// Tanks side by side: constants, state and sums of each. Volumes are counted from the dead volume, so that a
/// tank near it is reckoned finely.
struct alignas(64) Pack {
  Column a0, a1, a2;                    // surface [m2] by level [m]
  Column seepage0, seepage1, seepage2;  // seepage [m3/day] by level
  Column volume0, volume2, volume3;     // volume [m3] by level; the coefficient of the level itself is a0
  Column tangent0, tangent1;            // level by volume, straight on from where the tank is full
  Column low_tangent0, low_tangent1;    // and from a low level
  Column catch_m2, bed_factor;
  Column empty_m3, full_m3;
  // state
  Column volume_m3, carry_m3, level_m, slope;  // slope: rise of the level with volume [1/m2]
  Column slack_m3;  // least of 0 and what could be drawn less what had to be; below 0 after a dry day
  // sums, by Keep::totals only
  Column dry_days, evaporation_m3, seepage_m3, drawn_m3, unmet_m3, spill_m3;

  std::size_t lanes = 0;  // in use, from the first on; stands last to keep the columns aligned
};

/// One day as every lane meets it.
struct Day {
  float supply_m3, rain_m, evaporation_m, household_m3, beds_m3;
};

enum class Keep { slack, totals };

/// Takes all lanes of a pack through the days.
void runDays(Pack& pack, std::span<const Day> days, Keep keep);

const char* target();  ///< name of the vector instructions used

}  // namespace core::water::kernel
