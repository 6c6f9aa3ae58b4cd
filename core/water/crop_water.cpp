#include "core/water/crop_water.h"

#include "core/water/evapotranspiration.h"
#include "core/water/rain_month.h"

#include <algorithm>
#include <cmath>

namespace core::water {
namespace {

constexpr double kStandardWind_m_s = 2;  // climate that the tabled Kc hold for
constexpr double kStandardRhMin = 45;    // [%]
constexpr double kDryEndKc = 0.45;       // a crop left to dry in the field: end Kc not adjusted
constexpr double kMmPerMetre = 1000;

constexpr std::size_t kMidStage = 2, kLateStage = 3;

bool isLastOfMonth(const Weather& weather, std::size_t i) {
  return i + 1 < weather.days() && weather.day[i + 1] == 1;
}

/// Whether day `i` is the day of planting. In a month without that day it is the month's last.
bool isPlanting(const Weather& weather, std::size_t i, int month, int day) {
  if (weather.month[i] + 1 != month) return false;
  return weather.day[i] == day || (weather.day[i] < day && isLastOfMonth(weather, i));
}

/// Counts the days of a season from 1; 0 outside of it. The next planting ends a season.
class SeasonCounter {
public:
  SeasonCounter(const Weather& weather, int season_days, int month, int day)
      : weather_(weather), season_days_(season_days), month_(month), day_(day) {}

  int next(std::size_t i) {
    if (isPlanting(weather_, i, month_, day_))
      count_ = 1;
    else if (count_ > 0)
      ++count_;
    if (count_ > season_days_) count_ = 0;
    return count_;
  }

private:
  const Weather& weather_;
  int season_days_, month_, day_;
  int count_ = 0;
};

/// Day of the season on each day of the weather. The first year begins with what the last one leaves in the
/// ground, as the tank does.
std::vector<int> seasonDays(const Weather& weather, int season_days, int month, int day) {
  std::vector<int> of_season(weather.days(), 0);
  if (weather.years() == 0) return of_season;
  SeasonCounter season(weather, season_days, month, day);
  for (std::size_t i = weather.year_start[weather.years() - 1]; i < weather.days(); ++i) season.next(i);
  for (std::size_t i = 0; i < weather.days(); ++i) of_season[i] = season.next(i);
  return of_season;
}

std::vector<int> seasonDays(const BedInput& bed, const Weather& weather) {
  return seasonDays(weather, bed.crop.seasonDays(), bed.plant_month, bed.plant_day);
}

/// Least humidity of a day [%] from its mean humidity: the vapour pressure is the mean humidity's share of
/// the mean saturation pressure, and humidity is least at Tmax.
double rhMin(const Weather& weather, std::size_t i) {
  const double t_min = weather.t_min_c[i];
  const double t_max = weather.t_max_c[i];
  // FAO-56 eq. 19 in eq. 63: e0(Tdew) = ea
  const double ea = fao56::vapourPressureFromMeanHumidity(t_min, t_max, weather.humidity_percent[i]);
  return std::min(100 * ea / fao56::saturationPressure(t_max), 100.0);
}

/// Mean wind and RHmin over one stage of all seasons.
struct StageClimate {
  double wind_m_s = 0, rh_min_percent = 0;
  std::size_t days = 0;
};

StageClimate stageClimate(const Weather& weather, const std::vector<int>& of_season, int first, int last) {
  StageClimate mean;
  for (std::size_t i = 0; i < weather.days(); ++i) {
    if (of_season[i] < first || of_season[i] > last) continue;
    mean.wind_m_s += weather.wind_m_s[i];
    mean.rh_min_percent += rhMin(weather, i);
    ++mean.days;
  }
  if (mean.days == 0) return mean;
  mean.wind_m_s /= static_cast<double>(mean.days);
  mean.rh_min_percent /= static_cast<double>(mean.days);
  return mean;
}

double useOnDay(const Crop& crop, const Weather& weather, std::size_t i, int season_day) {
  const std::optional<double> kc = kcOnDay(crop, season_day);
  return kc ? *kc * weather.et0_mm[i] : 0;  // FAO-56 eq. 58
}

}  // namespace

double adjustedKc(double kc, double wind_m_s, double rh_min_percent, double height_m) {
  const double u2 = std::clamp(wind_m_s, 1.0, 6.0);
  const double rh = std::clamp(rh_min_percent, 20.0, 80.0);
  const double h = std::clamp(height_m, 0.1, 10.0);
  // FAO-56 eq. 62 and 65
  return kc + (0.04 * (u2 - kStandardWind_m_s) - 0.004 * (rh - kStandardRhMin)) * std::pow(h / 3, 0.3);
}

std::optional<double> kcOnDay(const Crop& crop, int day) {
  if (day < 1) return {};
  const std::array<double, 5> kc{crop.kc_ini, crop.kc_ini, crop.kc_mid, crop.kc_mid, crop.kc_end};
  int before = 0;
  for (std::size_t stage = 0; stage < crop.stage_days.size(); ++stage) {
    const int length = crop.stage_days[stage];
    if (day <= before + length)
      return kc[stage] + (kc[stage + 1] - kc[stage]) * (day - before) / length;  // FAO-56 eq. 66
    before += length;
  }
  return {};
}

Crop adjusted(const Crop& crop, const Weather& weather, int plant_month, int plant_day) {
  const std::vector<int> of_season = seasonDays(weather, crop.seasonDays(), plant_month, plant_day);
  const int late = crop.seasonDays() - crop.stage_days[kLateStage];  // last day before the late stage
  const StageClimate mid = stageClimate(weather, of_season, late - crop.stage_days[kMidStage] + 1, late);
  const StageClimate end = stageClimate(weather, of_season, late + 1, crop.seasonDays());
  Crop fitted = crop;
  if (mid.days > 0) fitted.kc_mid = adjustedKc(crop.kc_mid, mid.wind_m_s, mid.rh_min_percent, crop.height_m);
  if (end.days > 0 && crop.kc_end > kDryEndKc)
    fitted.kc_end = adjustedKc(crop.kc_end, end.wind_m_s, end.rh_min_percent, crop.height_m);
  return fitted;
}

std::vector<float> netIrrigation_mm(const BedInput& bed, const Weather& weather) {
  const double total = bed.soil_water_mm_per_m * bed.crop.root_depth_m;  // FAO-56 eq. 82
  const double readily = bed.crop.depletion * total;                     // FAO-56 eq. 83
  const std::vector<int> of_season = seasonDays(bed, weather);
  std::vector<float> need(weather.days(), 0);
  double depletion = readily;
  for (std::size_t i = 0; i < weather.days(); ++i) {
    if (of_season[i] == 0) continue;
    if (of_season[i] == 1) depletion = readily;
    // FAO-56 eq. 85; below 0 it drains, eq. 88
    depletion += useOnDay(bed.crop, weather, i, of_season[i]) - weather.rain_mm[i];
    depletion = std::max(depletion, 0.0);
    const double water = std::max(depletion - readily, 0.0);  // Ks stays 1, FAO-56 eq. 84
    depletion -= water;
    need[i] = static_cast<float>(water);
  }
  return need;
}

std::vector<float> cropUse_mm(const BedInput& bed, const Weather& weather) {
  const std::vector<int> of_season = seasonDays(bed, weather);
  std::vector<float> use(weather.days(), 0);
  for (std::size_t i = 0; i < weather.days(); ++i)
    use[i] = static_cast<float>(useOnDay(bed.crop, weather, i, of_season[i]));
  return use;
}

std::vector<float> runoff_m3(const Catchment& catchment, const Weather& weather) {
  std::vector<float> runoff(weather.days(), 0);
  bool after_dry_day = true;
  for (std::size_t i = 0; i < weather.days(); ++i) {
    const double flush = after_dry_day ? catchment.first_flush_mm : 0;
    const double rain = std::max(weather.rain_mm[i] - flush, 0.0);
    runoff[i] = static_cast<float>(catchment.runoff * catchment.area_m2 * rain / kMmPerMetre);
    after_dry_day = weather.rain_mm[i] < kWetDay_mm;
  }
  return runoff;
}

}  // namespace core::water
