#pragma once

#include <array>
#include <chrono>
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace core {

inline constexpr std::size_t kMonths = 12;

enum class ClimateKind { monthly, daily };
enum class Et0Method { penman_monteith, hargreaves };
enum class GapRule { leave_out_year, nearest_year };
enum class IrrigationMethod { watering_can, hose, furrow, sprinkler, drip };
enum class Animal { cattle, dairy_cow, buffalo, horse_or_mule, donkey, goat_or_sheep, pig, poultry };

/// What the tap or spring gives in one month of the year.
struct SourceMonth {
  double flow_l_per_min = 0;
  double hours_per_day = 24;
  bool operator==(const SourceMonth&) const = default;
};

/// One bucket-and-watch reading of the source.
struct FlowReading {
  int month = 1;
  double vessel_l = 15;
  double seconds = 60;
  bool operator==(const FlowReading&) const = default;
};

struct WaterSource {
  std::vector<SourceMonth> months = std::vector<SourceMonth>(kMonths);
  std::vector<FlowReading> readings;
  bool operator==(const WaterSource&) const = default;
};

/// A roof or a piece of ground whose runoff is led to the tank.
struct Catchment {
  double area_m2 = 0;
  double runoff = 0;          ///< share of the rain that runs off
  double first_flush_mm = 0;  ///< rain of a wet spell's first day that is let go
  bool operator==(const Catchment&) const = default;
};

struct Losses {
  double open_water_kc = 1.05;  ///< evaporation of open water over ET0
  double cover_percent = 0;     ///< share of the evaporation that a cover or shade stops
  double seepage_mm_day = 1.5;  ///< through the wetted lining
  bool operator==(const Losses&) const = default;
};

/// Beds of one crop, planted on the same day each year.
struct Bed {
  std::string crop = "tomato";  ///< id of the crop table, or the name of one of the user's own crops
  double area_m2 = 50;
  int plant_month = 11;
  int plant_day = 1;
  IrrigationMethod method = IrrigationMethod::watering_can;
  std::optional<double> efficiency_percent;  ///< absent: by method
  bool operator==(const Bed&) const = default;
};

struct Herd {
  Animal kind = Animal::goat_or_sheep;
  double head = 1;
  std::optional<double> l_per_head_day;  ///< absent: by kind
  bool operator==(const Herd&) const = default;
};

/// A crop of the user's own, beside those of the table.
struct OwnCrop {
  std::string name;
  double kc_ini = 0.6, kc_mid = 1.05, kc_end = 0.9;
  double height_m = 0.5;
  int ini_days = 25, dev_days = 35, mid_days = 40, late_days = 20;
  double root_depth_m = 0.5;
  double depletion = 0.4;  ///< share of the root zone's water that may be used before the crop suffers
  bool operator==(const OwnCrop&) const = default;
};

/// Means of one month over many years. Rain, wet days and both temperatures are needed; the others may be
/// absent.
struct ClimateMonth {
  std::optional<double> rain_mm, wet_days, t_min_c, t_max_c;
  std::optional<double> humidity_percent, wind_m_s, sun_hours;
  bool operator==(const ClimateMonth&) const = default;
};

/// One day of a weather record; what was not measured is absent.
struct DailyWeather {
  std::chrono::year_month_day date;
  std::optional<double> rain_mm, t_min_c, t_max_c, wind_m_s, humidity_percent, sun_hours;
  bool operator==(const DailyWeather&) const = default;
};

/// A weather record, shared by all copies of a project; equal when its days are. Never changed in place.
class DailyRecord {
public:
  DailyRecord() = default;
  explicit DailyRecord(std::vector<DailyWeather> days)
      : days_(days.empty() ? nullptr : std::make_shared<const std::vector<DailyWeather>>(std::move(days))) {}

  const std::vector<DailyWeather>& days() const {
    static const std::vector<DailyWeather> none;
    return days_ ? *days_ : none;
  }
  bool empty() const { return !days_; }
  bool operator==(const DailyRecord& other) const { return days_ == other.days_ || days() == other.days(); }

private:
  std::shared_ptr<const std::vector<DailyWeather>> days_;
};

struct Climate {
  ClimateKind kind = ClimateKind::monthly;
  std::vector<ClimateMonth> months = std::vector<ClimateMonth>(kMonths);
  std::optional<double> rain_cv_percent;  ///< standard deviation over mean of the yearly rain
  int years = 50;                         ///< weather years made from the monthly means
  int seed = 1;
  Et0Method et0_method = Et0Method::penman_monteith;
  double radiation_factor = 0.16;  ///< kRs of FAO-56 eq. 50: 0.16 inland, 0.19 at a coast [1/sqrt(C)]
  GapRule gaps = GapRule::leave_out_year;
  DailyRecord daily;
  bool operator==(const Climate&) const = default;
};

/// Everything that brings water, takes it and needs it.
struct Water {
  WaterSource source;
  Catchment roof{0, 0.8, 1};
  Catchment ground{0, 0.2, 5};
  Losses losses;
  std::vector<Bed> beds;
  std::vector<Herd> animals;
  double people = 0;
  double l_per_person_day = 15;
  std::vector<OwnCrop> crops;
  double soil_water_mm_per_m = 140;  ///< water that roots can use, per metre of root depth
  Climate climate;
  double target_years_in_ten = 8;
  bool operator==(const Water&) const = default;
};

}  // namespace core
