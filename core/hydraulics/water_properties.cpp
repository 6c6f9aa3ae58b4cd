#include "core/hydraulics/water_properties.h"

#include "core/water/evapotranspiration.h"

#include <cmath>

namespace core::hydraulics {
namespace {

constexpr double kMost_c = 50;
constexpr double kLowest_m = -430;  // shore of the Dead Sea
constexpr double kHighest_m = 5000;
constexpr double kKelvin = 273.15;
constexpr double kCriticalTemperature_k = 647.096;
constexpr double kCriticalPressure_pa = 22.064e6;
constexpr double kPascalPerKilopascal = 1000;

double density(double t) {
  // Kell 1975 eq. 16
  const double above =
      999.83952 +
      t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
  return above / (1 + 16.879850e-3 * t);
}

double viscosity(double t) {
  const double r = (t + kKelvin) / 300;
  // Huber et al. 2009, liquid water at 0.1 MPa [micropascal second]
  const double sum = 280.68 * std::pow(r, -1.9) + 511.45 * std::pow(r, -7.7) + 61.131 * std::pow(r, -19.6) +
                     0.45903 * std::pow(r, -40);
  return sum * 1e-6;
}

double vapourPressure(double t) {
  const double kelvin = t + kKelvin;
  const double v = 1 - kelvin / kCriticalTemperature_k;
  // Wagner, Pruss 2002 eq. 2.5
  const double sum = -7.85951783 * v + 1.84408259 * std::pow(v, 1.5) - 11.7866497 * std::pow(v, 3) +
                     22.6807411 * std::pow(v, 3.5) - 15.9618719 * std::pow(v, 4) +
                     1.80122502 * std::pow(v, 7.5);
  return kCriticalPressure_pa * std::exp(kCriticalTemperature_k / kelvin * sum);
}

}  // namespace

Result<Water> waterAt(double temperature_c) {
  if (!(temperature_c >= 0 && temperature_c <= kMost_c)) return fault("temperature_out_of_range");
  return Water{temperature_c, density(temperature_c), viscosity(temperature_c),
               vapourPressure(temperature_c)};
}

Result<double> airPressure(double altitude_m) {
  if (!(altitude_m >= kLowest_m && altitude_m <= kHighest_m)) return fault("altitude_out_of_range");
  return kPascalPerKilopascal * water::fao56::atmosphericPressure(altitude_m);
}

Result<double> barometricHeight(double altitude_m, double temperature_c) {
  const Result<double> air = airPressure(altitude_m);
  if (!air) return air;
  const Result<Water> water = waterAt(temperature_c);
  if (!water) return fault(water.error());
  return (*air - water->vapour_pressure_pa) / (water->density_kg_m3 * kGravity_m_s2);
}

}  // namespace core::hydraulics
