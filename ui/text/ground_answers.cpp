#include "ui/text/ground_words.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

using core::PlatformLevel;
using core::site::BenchFault;
using core::site::PlatformChoice;
using core::site::SitePlan;
using core::site::TinFault;

/// Clockwise from north, an eighth of the circle each.
constexpr std::array kCompass{
    QT_TRANSLATE_NOOP("ui::words", "north"), QT_TRANSLATE_NOOP("ui::words", "north-east"),
    QT_TRANSLATE_NOOP("ui::words", "east"),  QT_TRANSLATE_NOOP("ui::words", "south-east"),
    QT_TRANSLATE_NOOP("ui::words", "south"), QT_TRANSLATE_NOOP("ui::words", "south-west"),
    QT_TRANSLATE_NOOP("ui::words", "west"),  QT_TRANSLATE_NOOP("ui::words", "north-west"),
};

constexpr double kLeastCover_m = 0.005;    // less is shown as nothing
constexpr double kLeastVolume_m3 = 0.005;  // less is shown as nothing

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString metres(double length_m, const Formatter& format, int decimals = 2) {
  return format.quantity(length_m, core::Unit::metre, decimals);
}

/// Rounded up, so that keeping to what is shown keeps to it.
QString atLeast(double length_m, const Formatter& format) {
  return metres(toShownStep(length_m, core::Unit::metre, 2, format, Rounding::up), format);
}

QString volume(double volume_m3, const Formatter& format) {
  return format.quantity(volume_m3, core::Unit::cubic_metre, 1);
}

std::string_view tokenOf(BenchFault fault) {
  switch (fault) {
    case BenchFault::outside_survey:
      return "outside_survey";
    case BenchFault::leaves_survey:
      return "leaves_survey";
    case BenchFault::never_daylights:
      return "never_daylights";
    case BenchFault::cannot_balance:
      return "cannot_balance";
    case BenchFault::cancelled:
      break;
  }
  return {};
}

std::string_view tokenOf(TinFault fault) {
  switch (fault) {
    case TinFault::too_few:
      return "too_few";
    case TinFault::collinear:
      return "collinear";
    case TinFault::failed:
      return "failed";
    case TinFault::cancelled:
      break;
  }
  return {};
}

/// Why there is no platform; empty when there is one, or none is needed.
QString whyNoPlatform(const SitePlan& site) {
  if (site.ground && !site.ground->surface) {
    const std::string_view token = tokenOf(site.ground->surface.error());
    return token.empty() ? QString() : surveyFault(token);
  }
  if (!site.fault) return {};
  const std::string_view token = tokenOf(*site.fault);
  return token.empty() ? QString() : platformFault(token);
}

QString fall(const SitePlan& site, const Formatter& format) {
  const QString percent = format.quantity(site.fall.percent, core::Unit::percent, 1);
  if (!site.fall.azimuth_deg) return say(QT_TRANSLATE_NOOP("ui::words", "The ground is level."));
  return say(QT_TRANSLATE_NOOP("ui::words", "The ground falls %1 towards the %2."))
      .arg(percent, compass(*site.fall.azimuth_deg));
}

const PlatformChoice* choiceOf(const SitePlan& site, PlatformLevel level_by) {
  const auto found = std::ranges::find(site.choices, level_by, &PlatformChoice::level_by);
  return found == site.choices.end() ? nullptr : &*found;
}

QString level(const SitePlan& site, PlatformLevel level_by, const Formatter& format) {
  const PlatformChoice* const choice = choiceOf(site, level_by);
  if (!choice) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "The platform lies %1; the rim is level with it."))
      .arg(overMiddle(choice->over_middle_m, format));
}

QString cutAndFill(const SitePlan& site, const Formatter& format) {
  if (!site.bench) return {};
  constexpr double kShown_m3 = 0.05;
  if (site.bench->fill_m3 < kShown_m3)
    return say(QT_TRANSLATE_NOOP("ui::words", "To make it, %1 are cut; next to nothing is filled in."))
        .arg(volume(site.bench->cut_m3, format));
  return say(QT_TRANSLATE_NOOP("ui::words", "To make it, %1 are cut and %2 filled in, rammed in layers."))
      .arg(volume(site.bench->cut_m3, format), volume(site.bench->fill_m3, format));
}

QString topsoil(const SitePlan& site, const Formatter& format) {
  if (site.topsoil_m3 < kLeastVolume_m3) return {};
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "First strip %1 of topsoil and keep it apart: it belongs on the beds."))
      .arg(volume(site.topsoil_m3, format));
}

QString standing(const SitePlan& site, const Formatter& format) {
  if (!site.cover) return {};
  if (site.cover->isInNaturalGround() && site.cover->least_m < kLeastCover_m)
    return say(QT_TRANSLATE_NOOP(
        "ui::words", "The whole tank just stands in natural ground: the platform may be no higher."));
  if (site.cover->isInNaturalGround())
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "The whole tank stands in natural ground; where it is least, %1 of it lie over the pit."))
        .arg(metres(site.cover->least_m, format));
  const QString on_fill =
      say(QT_TRANSLATE_NOOP("ui::words",
                            "Part of the tank would stand on fill: natural ground ends %1 short of the pit."))
          .arg(metres(std::abs(site.cover->least_m), format));
  const PlatformChoice* const natural = choiceOf(site, PlatformLevel::natural_ground);
  if (!natural) return on_fill;
  return on_fill + u' ' +
         say(QT_TRANSLATE_NOOP("ui::words", "It would not with the platform %1, or lower."))
             .arg(atMostOverMiddle(natural->over_middle_m, format));
}

/// The spoil and where it lies; its size needs the soil, which says how much ground swells.
QStringList spoil(const SitePlan& site, const Formatter& format) {
  if (site.lacking_bank_m3 > kLeastVolume_m3)
    return {
        say(QT_TRANSLATE_NOOP("ui::words",
                              "The fill takes all that is dug, and %1 more that would have to be brought."))
            .arg(volume(site.lacking_bank_m3, format))};
  if (site.spoil_bank_m3 < kLeastVolume_m3)
    return {say(QT_TRANSLATE_NOOP("ui::words", "The fill takes all that is dug; no spoil is left over."))};
  if (!site.heap)
    return {say(QT_TRANSLATE_NOOP(
                    "ui::words",
                    "As it lies, %1 of ground are left over; how large the heap gets depends on the soil, "
                    "which is not known."))
                .arg(volume(site.spoil_bank_m3, format))};
  QStringList told{
      say(QT_TRANSLATE_NOOP("ui::words", "Left over are %1 of loose ground: a heap %2 high and %3 across."))
          .arg(volume(site.heap->loose_m3, format), metres(site.heap->height_m, format, 1),
               metres(2 * site.heap->base_radius_m, format, 1))};
  if (site.heap_place)
    told
        << say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "Heap it to the %1 of the tank, its toe %2 back from the pit edge; never nearer than %3."))
               .arg(compass(site.heap_place->azimuth_deg), metres(site.heap_place->toe_to_edge_m, format),
                    atLeast(site.setback_m, format));
  return told;
}

/// Common practice, no source.
QStringList useOfSpoil(const SitePlan& site) {
  if (site.spoil_bank_m3 < kLeastVolume_m3) return {};
  QStringList told{say(QT_TRANSLATE_NOOP(
      "ui::words", "Later spread it thin on beds below, or raise the lips of terraces well away with it."))};
  told << (site.has_relief
               ? say(QT_TRANSLATE_NOOP("ui::words",
                                       "Never heap it uphill of the pit, where rain washes it in, nor on the "
                                       "downhill edge, which its weight can bring down."))
               : say(QT_TRANSLATE_NOOP("ui::words",
                                       "Never heap it beside the pit edge or on the edge of a terrace, which "
                                       "its weight can bring down.")));
  return told;
}

}  // namespace

QString compass(double azimuth_deg) {
  constexpr double kEighth_deg = 45;
  constexpr long kEighths = 8;
  const long eighth = std::lround(azimuth_deg / kEighth_deg) % kEighths;
  return say(kCompass[static_cast<std::size_t>((eighth + kEighths) % kEighths)]);
}

QStringList groundAnswers(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const SitePlan& site = plan.site;
  QStringList answers;
  if (const QString why = whyNoPlatform(site); !why.isEmpty()) {
    answers << why;
    if (site.fall.azimuth_deg) answers << fall(site, format);
    return answers;
  }
  answers << fall(site, format);
  if (site.has_relief) {
    answers << level(site, project.site.platform.level_by, format) << cutAndFill(site, format)
            << standing(site, format);
  }
  answers << topsoil(site, format) << spoil(site, format) << useOfSpoil(site);
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
