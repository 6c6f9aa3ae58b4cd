#pragma once

#include <string_view>

#include <tl/expected.hpp>

namespace core::hydraulics {

/// A value, or the code of why there is none. No text: ui makes the sentence.
///
/// Codes (stable, never reused):
/// - range: temperature_out_of_range, altitude_out_of_range, reynolds_out_of_range, roughness_out_of_range,
///   bore_out_of_range, length_out_of_range, flow_out_of_range, head_out_of_range, coefficient_out_of_range,
///   loss_out_of_range, slope_out_of_range, width_out_of_range, depth_out_of_range, area_out_of_range,
///   grain_out_of_range, density_out_of_range, concentration_out_of_range, time_out_of_range,
///   level_out_of_range, pressure_out_of_range, reading_out_of_range, reserve_out_of_range,
///   intensity_out_of_range
/// - gravity line: profile_too_short, profile_not_onward, fitting_off_the_line, inlet_dry, no_head
/// - choice of pipe: no_pipe_strong_enough, no_pipe_large_enough
/// - siphon: crest_below_outlet
/// - emptying: outflow_stops, does_not_empty, siphon_does_not_run
/// - overflow: pipe_without_fall, no_rim
/// - silt trap: grain_beyond_drag_curve
/// - leak test: bucket_gained_water
/// - tables: unknown_key
template <typename T>
using Result = tl::expected<T, std::string_view>;

/// An error code that converts to any Result.
inline tl::unexpected<std::string_view> fault(std::string_view code) {
  return tl::unexpected<std::string_view>(code);
}

inline constexpr double kGravity_m_s2 = 9.80665;  ///< standard gravity, CGPM 1901
inline constexpr double kPascalPerBar = 1e5;

}  // namespace core::hydraulics
