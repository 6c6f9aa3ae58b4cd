#include "core/hydraulics/figures.h"
#include "ui/text/words.h"

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string>

#include <catch2/catch.hpp>

namespace words = ui::words;
namespace fs = std::filesystem;
using core::FindingValue;
using core::Unit;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};
const ui::Formatter kFeet{QLocale("en_GB"), ui::UnitSystem::feet_inches};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

FindingValue value(std::string name, double number, Unit unit = Unit::none) {
  return {std::move(name), number, unit, {}};
}

FindingValue token(std::string name, std::string text) {
  return {std::move(name), 0, Unit::none, std::move(text)};
}

QString text(std::string_view code, std::vector<FindingValue> values, const ui::Formatter& format = kMetric) {
  core::Finding finding;
  finding.code = code;
  finding.values = std::move(values);
  return spaced(words::findingText(finding, format));
}

struct Wanted {
  std::vector<FindingValue> values;
  QStringList quoted;
};

const auto kFlow = [](std::string name, double l_per_min) {
  return value(std::move(name), l_per_min, Unit::litre_per_minute);
};
const auto kMetre = [](std::string name, double m) { return value(std::move(name), m, Unit::metre); };
const auto kSpeed = [](std::string name, double m_s) {
  return value(std::move(name), m_s, Unit::metre_per_second);
};
const auto kMm = [](std::string name, double mm) { return value(std::move(name), mm, Unit::millimetre); };

/// Every code with the values that core/base/finding.h gives it, and what its sentence must say.
std::multimap<std::string, Wanted> lineFindings() {
  const FindingValue source = token("line", "source"), field = token("line", "field");
  return {
      {"delivery_line_no_flow",
       {{source, token("fault", "no_head")}, {"line from the source", "there is no fall"}}},
      {"delivery_static_over_class",
       {{field, value("static_bar", 7.26, Unit::bar), value("class_bar", 6, Unit::bar)},
        {"line to the field", "7.3 bar", "6.0 bar"}}},
      {"delivery_vapour",
       {{source, kMetre("station_m", 112), kMetre("pressure_m", -9.3), kMetre("lowest_m", -7.1)},
        {"112 m", "-9.3 m", "-7.1 m"}}},
      {"delivery_above_head_line",
       {{source, kMetre("from_m", 40), kMetre("to_m", 66), kMetre("pressure_m", -1.8)},
        {"From 40 m to 66 m along the line from the source", "-1.8 m"}}},
      {"delivery_air_lock",
       {{source, kMetre("station_m", 40), kMetre("air_m", 3.2), kMetre("head_m", 2.5)},
        {"40 m", "3.2 m", "2.5 m"}}},
      {"delivery_flow_small",
       {{source, kFlow("flow_l_per_min", 6.4), kFlow("wanted_l_per_min", 12), kMm("outside_mm", 40),
         value("class_bar", 12.5, Unit::bar)},
        {"Only 6.4 L/min", "12.0 L/min are wanted", "40 mm outside", "class 12.5 bar"}}},
      {"delivery_flow_small",
       {{source, kFlow("flow_l_per_min", 6.4), kFlow("wanted_l_per_min", 12)}, {"find more fall"}}},
      {"delivery_through_lining", {{}, {"siphon over the rim"}}},
      {"delivery_siphon_too_high",
       {{kMetre("lift_m", 7.44), kMetre("most_lift_m", 6.85)}, {"7.44 m", "6.85 m"}}},
      {"delivery_siphon_throttle",
       {{kFlow("throttled_l_per_min", 18.3), kMetre("lift_m", 5.1)}, {"18.3 L/min", "5.10 m"}}},
      {"delivery_siphon_throttle",
       {{kFlow("throttled_l_per_min", 0), kMetre("lift_m", 5.1)}, {"5.10 m", "Lay the top lower"}}},
      {"delivery_siphon_air",
       {{kSpeed("velocity_m_s", 0.31), kSpeed("clearing_m_s", 0.52)}, {"0.31 m/s", "0.52 m/s"}}},
      {"delivery_outlet_head",
       {{token("outlet", "sprinkler"), token("verdict", "too_low"), kMetre("head_full_m", 6.2),
         kMetre("head_low_m", 4.9), kMetre("wanted_m", 20)},
        {"sprinkler", "20.0 m", "6.2 m", "4.9 m", "does not work"}}},
  };
}

std::multimap<std::string, Wanted> tankFindings() {
  return {
      {"delivery_storm_unknown", {{value("storm_mm_h", 100, Unit::mm_per_hour)}, {"100 mm per hour"}}},
      {"delivery_overflow_small",
       {{kMetre("freeboard_m", 0.02), kMetre("wanted_m", 0.05), kFlow("flow_l_per_min", 412),
         kMetre("width_m", 0.721)},
        {"412 L/min", "0.02 m", "0.05 m", "notch 0.73 m wide"}}},
      {"delivery_rim_overtopped",
       {{kMetre("freeboard_m", -0.03), kMetre("wanted_m", 0.05), kFlow("flow_l_per_min", 412),
         kMetre("pipe_m", 0.1601)},
        {"412 L/min", "0.05 m", "over the rim", "161 mm inside"}}},
      {"delivery_rim_overtopped",
       {{kMetre("freeboard_m", -0.03), kMetre("wanted_m", 0.05), kFlow("flow_l_per_min", 412)},
        {"Give more freeboard"}}},
      {"delivery_blocked_anywhere", {{kMetre("deepest_m", 0.013)}, {"0.013 m deep"}}},
      {"delivery_spill_shallow", {{kMetre("depth_m", 0.27), kMetre("channel_m", 0.2)}, {"0.27 m", "0.20 m"}}},
      {"delivery_spill_scours",
       {{kSpeed("velocity_m_s", 1.94), kSpeed("limit_m_s", 1.2), token("cover", "grass")},
        {"1.94 m/s", "1.20 m/s", "grass"}}},
      {"delivery_spill_scours",
       {{kSpeed("velocity_m_s", 1.94), kSpeed("limit_m_s", 0.6), token("cover", "firm_loam")},
        {"firm loam"}}},
      {"delivery_trap_small",
       {{kMm("kept_mm", 0.34), kMm("grain_mm", 0.1), kMetre("length_m", 2.411), kMetre("width_m", 0.402)},
        {"0.34 mm", "0.10 mm", "2.42 m long", "0.41 m wide"}}},
      {"delivery_trap_small", {{kMm("kept_mm", 0.34), kMm("grain_mm", 0.1)}, {"deeper, longer or wider"}}},
      {"delivery_leak_watch",
       {{value("mm_per_day", 3.3, Unit::mm_per_day), value("l_per_day", 81, Unit::litre_per_day),
         token("band", "watch")},
        {"3.3 mm per day", "81 L per day", "some weeks"}}},
      {"delivery_leak_repair",
       {{value("mm_per_day", 8.1, Unit::mm_per_day), value("l_per_day", 180, Unit::litre_per_day),
         token("band", "repair")},
        {"8.1 mm per day", "180 L per day", "Mend the cracks"}}},
      {"delivery_leak_repair",
       {{value("mm_per_day", 31, Unit::mm_per_day), value("l_per_day", 700, Unit::litre_per_day),
         token("band", "empty_and_mend")},
        {"31.0 mm per day", "no more water in"}}},
      {"delivery_not_reckoned",
       {{token("part", "overflow"), token("fault", "slope_out_of_range")},
        {"The overflow could not be reckoned", "nothing is known of it"}}},
      {"delivery_leak_unsure",
       {{value("mm_per_day", 0.9, Unit::mm_per_day), value("error_mm_per_day", 1.4, Unit::mm_per_day),
         token("verdict", "unsure")},
        {"0.9 mm per day", "1.4 mm per day", "tells nothing"}}},
      {"delivery_leak_unsure",
       {{value("mm_per_day", -2.9, Unit::mm_per_day), value("error_mm_per_day", 1.4, Unit::mm_per_day),
         token("verdict", "gains")},
        {"gained 2.9 mm per day", "1.4 mm per day", "water ran in"}}},
  };
}

}  // namespace

TEST_CASE("every delivery finding quotes its numbers, in both unit systems") {
  auto wanted = lineFindings();
  wanted.merge(tankFindings());
  for (const std::string_view code : core::findingCodes()) {
    if (!code.starts_with("delivery_")) continue;
    INFO(code);
    CHECK(wanted.count(std::string(code)) > 0);
  }
  for (const auto& [code, one] : wanted) {
    const QString told = text(code, one.values);
    INFO(told.toStdString());
    CHECK(told[0].isUpper());
    CHECK(told.endsWith(u'.'));
    for (const QString& quoted : one.quoted) {
      INFO(quoted.toStdString());
      CHECK(told.contains(quoted));
    }
    for (const char* leftover : {"%1", "%2", "%3", "%4", "%5"}) CHECK_FALSE(told.contains(leftover));
    CHECK_FALSE(text(code, one.values, kFeet).isEmpty());
  }
}

TEST_CASE("every fault that core::hydraulics can name has words") {
  const std::regex named("(?:fault\\(|return |\\? )\"([a-z]+(?:_[a-z]+)+)\"");
  std::set<std::string> codes;
  for (const auto& entry : fs::directory_iterator(fs::path(TANKWRIGHT_SOURCE_DIR) / "core/hydraulics")) {
    if (entry.path().extension() != ".cpp") continue;
    std::ifstream file(entry.path());
    std::stringstream source;
    source << file.rdbuf();
    const std::string content = source.str();
    for (std::sregex_iterator it(content.begin(), content.end(), named), end; it != end; ++it)
      if (const std::string code = (*it)[1];
          code.ends_with("_out_of_range") || it->str().starts_with("fault"))
        codes.insert(code);
  }
  CHECK(codes.size() > 20);
  for (const std::string& code : codes) {
    INFO(code);
    const QString told = words::hydraulicsFault(code);
    CHECK(told[0].isLower());
    CHECK_FALSE(told.endsWith(u'.'));
  }
  CHECK_THROWS_AS(words::hydraulicsFault("no_moon"), std::logic_error);
}

TEST_CASE("every figure of hydraulics says what it is for, each in its own words") {
  std::set<QString> names;
  for (const core::Figure& figure : core::hydraulics::figures()) {
    INFO(figure.key);
    CHECK(names.insert(words::figureName(figure.key)).second);
  }
  CHECK(words::figureName("outlet.hose.head").contains(words::outletName(core::OutletKind::hose)));
  for (const char* key : {"outlet.moon.head", "outlet.hose", "outlet.hose.colour", "erosion.moon", "manning"})
    CHECK_THROWS_AS(words::figureName(key), std::logic_error);
}
