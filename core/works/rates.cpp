#include "core/works/rates.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <stdexcept>
#include <string>

namespace core::works {
namespace {

constexpr double kNormLead_m = 10;  // rate_norms_2073: within 1.5 m lift and 10 m lead

/// What the works' own field says of a rate; nothing when it stands as in the table.
std::optional<double> entered(std::string_view key, const core::Works& works) {
  if (key == "digging.practice" || key == "digging.norm") return std::nullopt;
  if (key.starts_with("digging.")) return works.digging_person_day_per_m3;
  std::optional<double> value;
  if (key == "stone_bed") value = works.bed_person_day_per_m3;
  if (key == "plaster") value = works.plaster_person_day_per_m2;
  if (key == "mixing") value = works.mixing_person_day_per_m3;
  return value == rate(key).typical ? std::nullopt : value;
}

Figure scaledTo(Figure figure, double typical) {
  const double low = figure.typical > 0 ? figure.low / figure.typical : 1;
  const double high = figure.typical > 0 ? figure.high / figure.typical : 1;
  return {std::move(figure.key), typical * low, typical, typical * high, figure.unit, "user"};
}

}  // namespace

const std::vector<Figure>& rates() {
  constexpr Unit m3 = Unit::person_day_per_m3, m2 = Unit::person_day_per_m2, each = Unit::person_day;
  // digging, stone bed, plaster, mixing: low and high are the spread of the published norms and of reported
  // practice; rock: memory, to be verified
  // topsoil: loose soil by hand; ramming: high for small lots, low after is7272 (0.25 in layers of 20 cm)
  // carrying: 6.25, 3.23, 2.13 m3/h in a day of 8 h, as it lies; high twice that: published day outputs
  // differ by two and more
  // wetting: one person, a day of curing with three rounds of about half an hour, of 8 h
  // filling: looking at the water twice a day; wetting goes with wetting
  static const std::vector<Figure> table{
      {"digging.stiff_clay", 0.62, 0.80, 1.00, m3, "rate_norms_2073"},
      {"digging.firm_loam", 0.50, 0.62, 0.80, m3, "is7272"},
      {"digging.sandy", 0.40, 0.50, 0.62, m3, "is7272"},
      {"digging.loose_fill", 0.40, 0.50, 0.62, m3, "is7272"},
      {"digging.soft_wet", 0.50, 0.80, 1.20, m3, "own"},
      {"digging.rock", 1.25, 2.50, 5.00, m3, "memory"},
      {"digging.practice", 0.62, 0.62, 0.62, m3, "common_practice"},
      {"digging.norm", 0.80, 0.80, 0.80, m3, "rate_norms_2073"},
      {"clearing", 0.005, 0.01, 0.03, m2, "own"},
      {"set_out", 0.50, 1.00, 2.00, each, "own"},
      {"topsoil", 0.40, 0.50, 0.62, m3, "is7272"},
      {"ramming", 0.25, 0.50, 0.75, m3, "rate_norms_2073"},
      {"carrying.10", 0.015, 0.020, 0.040, m3, "hand_output_tables"},
      {"carrying.20", 0.029, 0.0387, 0.0774, m3, "hand_output_tables"},
      {"carrying.50", 0.044, 0.0587, 0.1174, m3, "hand_output_tables"},
      {"trimming", 0.015, 0.03, 0.06, m2, "own"},
      {"pipe_laying", 0.06, 0.12, 0.25, each, "own"},
      {"stone_bed", 3.00, 4.50, 6.00, m3, "rate_norms_2073"},
      {"plaster", 0.17, 0.26, 0.40, m2, "cpwd_plaster"},
      {"mixing", 0.60, 0.75, 1.00, m3, "is7272"},
      {"wetting", 0.10, 0.20, 0.40, each, "own"},
      {"filling", 0.03, 0.06, 0.15, each, "own"},
      {"leak_test", 0.25, 0.50, 1.00, each, "own"},
      {"fence", 0.08, 0.15, 0.30, each, "own"},
      {"silt_trap", 1.50, 3.00, 6.00, each, "own"},
      {"overflow", 1.00, 2.00, 4.00, each, "own"},
      {"planting", 0.01, 0.02, 0.05, m2, "own"},
  };
  return table;
}

const Figure& rate(std::string_view key) {
  for (const Figure& figure : rates()) {
    if (figure.key == key) return figure;
  }
  throw std::logic_error("no rate with key " + std::string(key));
}

Figure rateInForce(std::string_view key, const Project& project) {
  Figure figure = rate(key);
  if (!project.works) return figure;
  for (const OwnRate& own : project.works->rates) {
    if (own.work == key) figure = {figure.key, own.low, own.typical, own.high, figure.unit, "user"};
  }
  // what is entered for this tank goes before the district's figure
  const std::optional<double> value = entered(key, *project.works);
  return value ? scaledTo(std::move(figure), *value) : figure;
}

std::string_view diggingKey(const std::optional<Soil>& soil) {
  constexpr std::array keys{"digging.stiff_clay", "digging.firm_loam", "digging.sandy",
                            "digging.loose_fill", "digging.soft_wet",  "digging.rock"};
  return keys[static_cast<std::size_t>(soil.value_or(Soil::firm_loam))];
}

double leadIncluded_m(std::string_view digging_key) {
  return rate(digging_key).source == "rate_norms_2073" ? kNormLead_m : 0;
}

}  // namespace core::works
