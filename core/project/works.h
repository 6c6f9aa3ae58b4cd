#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace core {

enum class Soil { stiff_clay, firm_loam, sandy, loose_fill, soft_wet, rock };
enum class RestDay { none, monday, tuesday, wednesday, thursday, friday, saturday, sunday };
/// Work that is measured on site to learn the district's own rates.
enum class RecordedWork { digging, ramming, stone_bed, spreading, mixing };

/// Days in a row on which nobody works: a feast, a burial, a market.
struct ClosedDays {
  std::chrono::year_month_day from{std::chrono::year{2027}, std::chrono::March, std::chrono::day{1}};
  int days = 1;
  std::string why;
  bool operator==(const ClosedDays&) const = default;
};

/// What someone wishes for one task of the works.
struct TaskWish {
  std::string task;                                       ///< id of a task, "coat_1"
  std::optional<std::chrono::year_month_day> not_before;  ///< it starts on this day or later
  std::optional<int> people;                              ///< on the task; absent: as usual
  bool operator==(const TaskWish&) const = default;
};

/// The district's own rate for one kind of work, in place of the table's.
struct OwnRate {
  std::string work;  ///< key of the table of rates, "carrying.20"
  double low = 0.5, typical = 0.6, high = 0.8;
  bool operator==(const OwnRate&) const = default;
};

/// One batch that was mixed and put on, to learn what this soil and sand yield.
struct TrialBatch {
  int coat = 1;
  double bags = 1;
  double area_m2 = 4;  ///< that it covered
  double thickness_m = 0.06;
  bool operator==(const TrialBatch&) const = default;
};

/// Work done and the person-days it took. Digging: of the first 1.5 m of depth.
struct WorkRecord {
  RecordedWork work = RecordedWork::digging;
  double quantity = 10;  ///< m3; m2 for spreading
  double person_days = 6;
  std::optional<Soil> soil = {};  ///< of digging; absent: of the soil of this site
  bool operator==(const WorkRecord&) const = default;
};

/// What was measured on site, here and on earlier tanks of the district.
struct Records {
  bool in_force = true;  ///< the medians stand in place of the figures entered
  std::vector<TrialBatch> batches;
  std::vector<WorkRecord> work;
  bool operator==(const Records&) const = default;
};

struct Works {
  std::chrono::year_month_day start_date{std::chrono::year{2027}, std::chrono::February,
                                         std::chrono::day{15}};
  int diggers = 4;
  int plasterers = 12;  ///< people on a coat: masons, mixers, carriers
  int masons = 3;       ///< skilled ones among them
  RestDay rest_day = RestDay::saturday;
  std::vector<ClosedDays> closed;
  int fill_within_days = 4;  ///< latest start of filling, days after the last coat
  double hours_per_day = 8;  ///< of a person-day
  double coat_hours = 8;     ///< in which a coat can be put on
  int mixing_places = 2;
  double minutes_per_batch = 20;  ///< to mix one batch at one place
  double placing_minutes = 60;    ///< in which a batch must be on the wall
  int wetting_people = 1;
  int wettings_per_day = 3;
  double spoil_lead_m = 10;  ///< carried to the heap
  double deep_digging_factor = 1.5;
  std::optional<double> digging_person_day_per_m3;  ///< absent: by soil
  double bed_person_day_per_m3 = 4.5;
  double plaster_person_day_per_m2 = 0.26;
  double mixing_person_day_per_m3 = 0.75;
  std::optional<double> fill_inflow_l_per_day;  ///< absent: what the source gives in that month
  double fill_most_rise_m_per_day = 0.5;
  double wall_band_m = 0.25;
  double heavy_rain_mm = 10;  ///< in a day; spoils a fresh coat
  std::vector<TaskWish> wishes;
  std::vector<OwnRate> rates;
  bool operator==(const Works&) const = default;
};

}  // namespace core
