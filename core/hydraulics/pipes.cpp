#include "core/hydraulics/pipes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace core::hydraulics {
namespace {

// ISO 4427-2: series and their nominal pressures with C = 1.25
constexpr std::array kSdr{6.0, 7.4, 9.0, 11.0, 13.6, 17.0, 21.0, 26.0};
constexpr std::array kPn80{25.0, 20.0, 16.0, 12.5, 10.0, 8.0, 6.0, 5.0};
constexpr std::array kPn100{0.0, 25.0, 20.0, 16.0, 12.5, 10.0, 8.0, 6.0};  // SDR 6: no PE 100 class

struct Row {
  double outside_mm;
  std::array<double, kSdr.size()> wall_mm;  // least wall, 0: not made
};

constexpr std::array kRows{
    Row{20, {3.4, 3.0, 2.3, 2.0, 0, 0, 0, 0}},
    Row{25, {4.2, 3.5, 3.0, 2.3, 2.0, 0, 0, 0}},
    Row{32, {5.4, 4.4, 3.6, 3.0, 2.4, 2.0, 0, 0}},
    Row{40, {6.7, 5.5, 4.5, 3.7, 3.0, 2.4, 2.0, 0}},
    Row{50, {8.3, 6.9, 5.6, 4.6, 3.7, 3.0, 2.4, 2.0}},
    Row{63, {10.5, 8.6, 7.1, 5.8, 4.7, 3.8, 3.0, 2.5}},
    Row{75, {12.5, 10.3, 8.4, 6.8, 5.6, 4.5, 3.6, 2.9}},
    Row{90, {15.0, 12.3, 10.1, 8.2, 6.7, 5.4, 4.3, 3.5}},
    Row{110, {18.3, 15.1, 12.3, 10.0, 8.1, 6.6, 5.3, 4.2}},
};

std::vector<PipeSize> table(PipeGrade grade) {
  const auto& pn = grade == PipeGrade::pe80 ? kPn80 : kPn100;
  std::vector<PipeSize> sizes;
  for (const Row& row : kRows) {
    for (std::size_t i = kSdr.size(); i-- > 0;) {
      if (row.wall_mm[i] > 0 && pn[i] > 0)
        sizes.push_back({grade, row.outside_mm, row.wall_mm[i], kSdr[i], pn[i], "iso_4427"});
    }
  }
  return sizes;
}

}  // namespace

std::span<const PipeSize> pipeSizes(PipeGrade grade) {
  static const std::vector<PipeSize> pe80 = table(PipeGrade::pe80);
  static const std::vector<PipeSize> pe100 = table(PipeGrade::pe100);
  return grade == PipeGrade::pe80 ? pe80 : pe100;
}

std::vector<PipeSize> pipeSizes(PipeGrade grade, double outside_mm) {
  std::vector<PipeSize> found;
  const auto all = pipeSizes(grade);
  std::copy_if(all.begin(), all.end(), std::back_inserter(found),
               [&](const PipeSize& size) { return size.outside_mm == outside_mm; });
  return found;
}

double pressureFromWall(PipeGrade grade, double sdr) {
  const double strength_mpa = grade == PipeGrade::pe80 ? 8 : 10;
  return 20 * strength_mpa / (1.25 * (sdr - 1));  // ISO 4427: 20 sigma / (SDR - 1), sigma = MRS / C
}

Result<double> pressureShare(double temperature_c) {
  if (!(temperature_c >= 0 && temperature_c <= 40)) return fault("temperature_out_of_range");
  // ISO 4427-1 annex A: 1.00 at 20 C, 0.87 at 30 C, 0.74 at 40 C, straight between
  return temperature_c <= 20 ? 1.0 : 1 - 0.013 * (temperature_c - 20);
}

}  // namespace core::hydraulics
