#include "ui/text/hydraulics_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kNames{
    Entry{"roughness.plastic", QT_TRANSLATE_NOOP("ui::words", "roughness, plastic pipe")},
    Entry{"roughness.steel", QT_TRANSLATE_NOOP("ui::words", "roughness, steel pipe")},
    Entry{"roughness.galvanised", QT_TRANSLATE_NOOP("ui::words", "roughness, galvanised pipe")},
    Entry{"roughness.cast_iron", QT_TRANSLATE_NOOP("ui::words", "roughness, cast iron pipe")},
    Entry{"roughness.concrete", QT_TRANSLATE_NOOP("ui::words", "roughness, concrete pipe")},
    Entry{"hazen_williams.plastic", QT_TRANSLATE_NOOP("ui::words", "Hazen-Williams C, plastic pipe")},
    Entry{"hazen_williams.galvanised", QT_TRANSLATE_NOOP("ui::words", "Hazen-Williams C, galvanised pipe")},
    Entry{"minor.entrance_sharp", QT_TRANSLATE_NOOP("ui::words", "loss, sharp entrance")},
    Entry{"minor.entrance_projecting", QT_TRANSLATE_NOOP("ui::words", "loss, entrance that juts out")},
    Entry{"minor.entrance_bell", QT_TRANSLATE_NOOP("ui::words", "loss, rounded entrance")},
    Entry{"minor.foot_valve", QT_TRANSLATE_NOOP("ui::words", "loss, foot valve")},
    Entry{"minor.elbow_90", QT_TRANSLATE_NOOP("ui::words", "loss, 90° elbow")},
    Entry{"minor.elbow_90_long", QT_TRANSLATE_NOOP("ui::words", "loss, wide 90° elbow")},
    Entry{"minor.elbow_45", QT_TRANSLATE_NOOP("ui::words", "loss, 45° elbow")},
    Entry{"minor.tee_through", QT_TRANSLATE_NOOP("ui::words", "loss, tee, straight on")},
    Entry{"minor.tee_branch", QT_TRANSLATE_NOOP("ui::words", "loss, tee, into the branch")},
    Entry{"minor.gate_valve", QT_TRANSLATE_NOOP("ui::words", "loss, gate valve, open")},
    Entry{"minor.gate_valve_half_closed", QT_TRANSLATE_NOOP("ui::words", "loss, gate valve, half closed")},
    Entry{"minor.globe_valve", QT_TRANSLATE_NOOP("ui::words", "loss, globe valve, open")},
    Entry{"minor.ball_valve", QT_TRANSLATE_NOOP("ui::words", "loss, ball valve, open")},
    Entry{"minor.check_valve", QT_TRANSLATE_NOOP("ui::words", "loss, check valve")},
    Entry{"minor.water_meter", QT_TRANSLATE_NOOP("ui::words", "loss, water meter")},
    Entry{"minor.screen", QT_TRANSLATE_NOOP("ui::words", "loss, screen")},
    Entry{"pipe.reserve", QT_TRANSLATE_NOOP("ui::words", "head kept over vapour in a pipe")},
    Entry{"siphon.reserve", QT_TRANSLATE_NOOP("ui::words", "head kept over vapour at the top of a siphon")},
    Entry{"manning.plastic_pipe", QT_TRANSLATE_NOOP("ui::words", "Manning's n, plastic pipe")},
    Entry{"manning.plaster", QT_TRANSLATE_NOOP("ui::words", "Manning's n, plaster")},
    Entry{"manning.earth", QT_TRANSLATE_NOOP("ui::words", "Manning's n, bare earth")},
    Entry{"manning.short_grass", QT_TRANSLATE_NOOP("ui::words", "Manning's n, short grass")},
    Entry{"manning.stone_pitching", QT_TRANSLATE_NOOP("ui::words", "Manning's n, stone pitching")},
    Entry{"weir.broad_crest_theory", QT_TRANSLATE_NOOP("ui::words", "broad sill, flow in theory")},
    Entry{"weir.broad_crest", QT_TRANSLATE_NOOP("ui::words", "broad sill, share of the flow in theory")},
    Entry{"orifice.sharp", QT_TRANSLATE_NOOP("ui::words", "opening with a sharp edge")},
    Entry{"storm_runoff.roof", QT_TRANSLATE_NOOP("ui::words", "storm runoff, roof")},
    Entry{"storm_runoff.woodland", QT_TRANSLATE_NOOP("ui::words", "storm runoff, woodland")},
    Entry{"storm_runoff.pasture", QT_TRANSLATE_NOOP("ui::words", "storm runoff, pasture")},
    Entry{"storm_runoff.cultivated", QT_TRANSLATE_NOOP("ui::words", "storm runoff, tilled ground")},
    Entry{"storm_runoff.bare_packed", QT_TRANSLATE_NOOP("ui::words", "storm runoff, bare packed ground")},
    Entry{"storm_runoff.open_water", QT_TRANSLATE_NOOP("ui::words", "storm runoff, the tank itself")},
    Entry{"silt.reserve", QT_TRANSLATE_NOOP("ui::words", "silt trap, area over the least in theory")},
    Entry{"silt.speed", QT_TRANSLATE_NOOP("ui::words", "silt trap, speed factor")},
    Entry{"silt.grain_density", QT_TRANSLATE_NOOP("ui::words", "silt, weight of the sinking grain")},
    Entry{"silt.deposit_grain_density", QT_TRANSLATE_NOOP("ui::words", "silt, weight of settled grains")},
    Entry{"silt.packing", QT_TRANSLATE_NOOP("ui::words", "silt, share of grain in the mud")},
    Entry{"silt.length_over_width", QT_TRANSLATE_NOOP("ui::words", "silt trap, length over width")},
    Entry{"leak.tight", QT_TRANSLATE_NOOP("ui::words", "leak up to which a tank is tight")},
    Entry{"leak.watch", QT_TRANSLATE_NOOP("ui::words", "leak up to which a tank is watched")},
    Entry{"leak.repair", QT_TRANSLATE_NOOP("ui::words", "leak up to which a tank is mended in use")},
    Entry{"leak.published_drop", QT_TRANSLATE_NOOP("ui::words", "leak of concrete tanks, drop allowed")},
    Entry{"leak.published_drop_days", QT_TRANSLATE_NOOP("ui::words", "leak of concrete tanks, within")},
    Entry{"leak.published_share",
          QT_TRANSLATE_NOOP("ui::words", "leak of concrete tanks, share of the volume a day")},
};

/// "outlet.tap.head"
QString outletFigure(std::string_view key) {
  const std::size_t dot = key.find('.');
  if (dot == key.npos) return lookUp({}, key, "figure");
  const QString outlet = choiceLabel("delivery.field.outlet", key.substr(0, dot));
  const std::string_view what = key.substr(dot + 1);
  if (what == "head") return QCoreApplication::translate("ui::words", "head wanted, %1").arg(outlet);
  if (what == "flow") return QCoreApplication::translate("ui::words", "usual flow, %1").arg(outlet);
  return lookUp({}, key, "figure");
}

}  // namespace

QString hydraulicsFigureName(std::string_view key) {
  constexpr std::string_view kErosion = "erosion.";
  constexpr std::string_view kOutlet = "outlet.";
  if (key.starts_with(kErosion))
    return QCoreApplication::translate("ui::words", "speed that scours, %1")
        .arg(spillBed(key.substr(kErosion.size())));
  if (key.starts_with(kOutlet)) return outletFigure(key.substr(kOutlet.size()));
  return lookUp(kNames, key, "figure");
}

}  // namespace ui::words
