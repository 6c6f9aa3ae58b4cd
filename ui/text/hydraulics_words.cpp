#include "ui/text/hydraulics_words.h"

#include "core/project/fields.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

constexpr std::string_view kOutlets = "delivery.field.outlet";
constexpr std::string_view kCovers = "delivery.spill.cover";

constexpr std::array kFaults{
    Entry{"profile_too_short", QT_TRANSLATE_NOOP("ui::words", "its way needs two points at least")},
    Entry{"profile_not_onward",
          QT_TRANSLATE_NOOP("ui::words", "the points of its way do not follow one another")},
    Entry{"fitting_off_the_line", QT_TRANSLATE_NOOP("ui::words", "a fitting lies outside its way")},
    Entry{"inlet_dry", QT_TRANSLATE_NOOP("ui::words", "its inlet does not lie under water; lay it lower")},
    Entry{"no_head", QT_TRANSLATE_NOOP("ui::words",
                                       "there is no fall from the water at its inlet to its outlet; lay the "
                                       "outlet lower")},
    Entry{"no_pipe_strong_enough",
          QT_TRANSLATE_NOOP("ui::words", "no pipe of the table bears the pressure; break it on the way")},
    Entry{"no_pipe_large_enough",
          QT_TRANSLATE_NOOP("ui::words", "no pipe of the table is wide enough; find more fall")},
    Entry{"crest_below_outlet",
          QT_TRANSLATE_NOOP("ui::words", "its top lies below its outlet, so it is no siphon")},
    Entry{"outflow_stops", QT_TRANSLATE_NOOP("ui::words", "the outflow stops before the water is that low")},
    Entry{"siphon_does_not_run",
          QT_TRANSLATE_NOOP("ui::words", "the siphon does not run with its end wide open")},
    Entry{"does_not_empty",
          QT_TRANSLATE_NOOP("ui::words", "the outflow dies away, so that the end is never reached")},
    Entry{"pipe_without_fall", QT_TRANSLATE_NOOP("ui::words", "the overflow pipe has no fall")},
    Entry{"no_rim", QT_TRANSLATE_NOOP("ui::words", "there is no rim to run over")},
    Entry{"grain_beyond_drag_curve",
          QT_TRANSLATE_NOOP("ui::words", "the grain is too large for the law by which it sinks")},
    Entry{"bucket_gained_water",
          QT_TRANSLATE_NOOP("ui::words", "water rose in the bucket: it rained; test again in dry weather")},
    Entry{"unknown_key", QT_TRANSLATE_NOOP("ui::words", "a figure is not in the table")},
};

/// What lies outside the range that a formula or a table is made for.
constexpr std::array kOutOfRange{
    Entry{"temperature", QT_TRANSLATE_NOOP("ui::words", "the temperature of the water is out of range")},
    Entry{"altitude", QT_TRANSLATE_NOOP("ui::words", "the height above sea level is out of range")},
    Entry{"reynolds",
          QT_TRANSLATE_NOOP("ui::words", "the water flows too slowly or too fast to be reckoned")},
    Entry{"roughness", QT_TRANSLATE_NOOP("ui::words", "the roughness of the pipe is out of range")},
    Entry{"bore", QT_TRANSLATE_NOOP("ui::words", "the inside diameter of the pipe is out of range")},
    Entry{"length", QT_TRANSLATE_NOOP("ui::words", "a length is out of range")},
    Entry{"flow", QT_TRANSLATE_NOOP("ui::words", "the flow is out of range")},
    Entry{"head", QT_TRANSLATE_NOOP("ui::words", "the head is out of range")},
    Entry{"coefficient", QT_TRANSLATE_NOOP("ui::words", "a coefficient is out of range")},
    Entry{"loss", QT_TRANSLATE_NOOP("ui::words", "the loss of a fitting is out of range")},
    Entry{"slope", QT_TRANSLATE_NOOP("ui::words", "a slope is out of range")},
    Entry{"width", QT_TRANSLATE_NOOP("ui::words", "a width is out of range")},
    Entry{"depth", QT_TRANSLATE_NOOP("ui::words", "a depth is out of range")},
    Entry{"area", QT_TRANSLATE_NOOP("ui::words", "an area is out of range")},
    Entry{"grain", QT_TRANSLATE_NOOP("ui::words", "the size of the grain is out of range")},
    Entry{"density", QT_TRANSLATE_NOOP("ui::words", "the weight of the grain is out of range")},
    Entry{"concentration", QT_TRANSLATE_NOOP("ui::words", "the silt in the water is out of range")},
    Entry{"time", QT_TRANSLATE_NOOP("ui::words", "the time is out of range")},
    Entry{"level", QT_TRANSLATE_NOOP("ui::words", "a level is out of range")},
    Entry{"pressure", QT_TRANSLATE_NOOP("ui::words", "the pressure is out of range")},
    Entry{"reading", QT_TRANSLATE_NOOP("ui::words", "a reading is out of range")},
    Entry{"reserve", QT_TRANSLATE_NOOP("ui::words", "the reserve is out of range")},
    Entry{"intensity", QT_TRANSLATE_NOOP("ui::words", "the rain of the storm is out of range")},
};

constexpr std::array kVerdicts{
    Entry{"works", QT_TRANSLATE_NOOP("ui::words", "it works")},
    Entry{"works_poorly", QT_TRANSLATE_NOOP("ui::words", "it works, but weakly")},
    Entry{"works_full", QT_TRANSLATE_NOOP("ui::words", "it works only while the tank is rather full")},
    Entry{"too_low", QT_TRANSLATE_NOOP("ui::words", "it does not work")},
};

}  // namespace

QString hydraulicsFault(std::string_view code) {
  constexpr std::string_view kEnd = "_out_of_range";
  if (code.ends_with(kEnd))
    return lookUp(kOutOfRange, code.substr(0, code.size() - kEnd.size()), "fault of hydraulics");
  return lookUp(kFaults, code, "fault of hydraulics");
}

QString outletName(core::OutletKind kind) {
  return choiceLabel(kOutlets, core::hydraulics::outletKey(kind));
}

QString outletVerdict(std::string_view verdict) {
  return lookUp(kVerdicts, verdict, "verdict on outlet");
}

QString outletVerdict(core::hydraulics::OutletVerdict verdict) {
  using core::hydraulics::OutletVerdict;
  switch (verdict) {
    case OutletVerdict::works:
      return outletVerdict("works");
    case OutletVerdict::works_poorly:
      return outletVerdict("works_poorly");
    case OutletVerdict::works_full:
      return outletVerdict("works_full");
    case OutletVerdict::too_low:
      break;
  }
  return outletVerdict("too_low");
}

QString spillBed(std::string_view bed) {
  const auto covers = core::field(kCovers).choices;
  const bool is_cover = std::ranges::find(covers, bed) != covers.end();
  return choiceLabel(is_cover ? kCovers : "site.soil", bed);
}

QString millimetresUp(double width_m, const Formatter& format) {
  constexpr double kMillimetres = 1000;
  constexpr double kBinary = 1e-9;  // what binary fractions leave
  return format.quantity(std::ceil(width_m * kMillimetres - kBinary), core::Unit::millimetre, 0);
}

QString flowText(double flow_m3_s, const Formatter& format) {
  constexpr double kLitresPerMinute = 1000 * 60;
  constexpr double kSmall_l_per_min = 10;
  const double flow = flow_m3_s * kLitresPerMinute;
  return format.quantity(flow, core::Unit::litre_per_minute, std::abs(flow) < kSmall_l_per_min ? 1 : 0);
}

QString durationText(double seconds, const Formatter& format) {
  constexpr double kMinute = 60, kHour = 60 * kMinute, kDay = 24 * kHour;
  if (seconds < 2 * kHour)
    return QString(QCoreApplication::translate("ui::words", "%1 min"))
        .replace(u' ', QChar::Nbsp)
        .arg(format.integer(static_cast<int>(std::lround(seconds / kMinute))));
  if (seconds < 2 * kDay)
    return format.quantity(seconds / kHour, core::Unit::hour, seconds < 10 * kHour ? 1 : 0);
  return format.quantity(seconds / kDay, core::Unit::day, seconds < 10 * kDay ? 1 : 0);
}

}  // namespace ui::words
