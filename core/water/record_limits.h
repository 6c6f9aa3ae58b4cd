#pragma once

namespace core::water {

/// Range of a measured value; what lies outside was not measured but mistyped.
struct RecordRange {
  double least, most;
  constexpr bool holds(double value) const { return value >= least && value <= most; }  ///< false for NaN
};

/// Ranges of a daily weather record. Rain: more than the largest measured in 24 h (1825 mm, Foc-Foc,
/// Reunion, 1966, World Meteorological Organization; from memory). Temperature: all measured on land but
/// Antarctica and the coldest Siberian winters.
inline constexpr RecordRange kRain_mm{0, 2000};
inline constexpr RecordRange kTemperature_c{-60, 60};
inline constexpr RecordRange kWind_m_s{0, 60};
inline constexpr RecordRange kHumidity_percent{0, 100};
inline constexpr RecordRange kSun_h{0, 24};
inline constexpr int kFirstRecordYear = 1850;
inline constexpr int kLastRecordYear = 2199;

}  // namespace core::water
