#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kThresholds{
    Entry{"pit.ladder_from", QT_TRANSLATE_NOOP("ui::words", "pit depth from which a ladder stands in it")},
    Entry{"pit.cave_in_from",
          QT_TRANSLATE_NOOP("ui::words", "pit depth from which walls are held against cave-in")},
    Entry{"pit.deepest_by_hand", QT_TRANSLATE_NOOP("ui::words", "deepest pit dug by hand")},
    Entry{"pit.batter_table_to",
          QT_TRANSLATE_NOOP("ui::words", "pit depth to which the table of batters goes")},
    Entry{"pit.type_a_short_term_to",
          QT_TRANSLATE_NOOP("ui::words", "depth of an open cut in the firmest soil that stands a day")},
    Entry{"pit.ladder_travel", QT_TRANSLATE_NOOP("ui::words", "furthest way to the ladder")},
    Entry{"spoil.setback", QT_TRANSLATE_NOOP("ui::words", "toe of the heap back from the pit edge")},
    Entry{"spoil.most_height", QT_TRANSLATE_NOOP("ui::words", "height of the heap at most")},
    Entry{"spoil.off_fall", QT_TRANSLATE_NOOP("ui::words", "spoil heap off the line of the fall, least")},
    Entry{"spoil.repose", QT_TRANSLATE_NOOP("ui::words", "steepest side of loose ground")},
    Entry{"slope.caution", QT_TRANSLATE_NOOP("ui::words", "slope from which old slips are looked for")},
    Entry{"slope.stop", QT_TRANSLATE_NOOP("ui::words", "slope from which an engineer decides")},
    Entry{"slope.least_factor", QT_TRANSLATE_NOOP("ui::words", "factor of safety wanted of a slope")},
    Entry{"cut.least_factor", QT_TRANSLATE_NOOP("ui::words", "factor of safety wanted of a cut")},
    Entry{"bench.walkway", QT_TRANSLATE_NOOP("ui::words", "walkway round the rim")},
    Entry{"bench.cut_batter", QT_TRANSLATE_NOOP("ui::words", "batter of the cut face")},
    Entry{"bench.fill_batter", QT_TRANSLATE_NOOP("ui::words", "batter of the fill face")},
    Entry{"bench.topsoil", QT_TRANSLATE_NOOP("ui::words", "topsoil stripped")},
    Entry{"bench.compacted_per_bank", QT_TRANSLATE_NOOP("ui::words", "compacted fill per ground dug")},
    Entry{"cover.least", QT_TRANSLATE_NOOP("ui::words", "natural ground wanted over floor and walls")},
    Entry{"edge.footing_setback_share",
          QT_TRANSLATE_NOOP("ui::words", "distance to the edge, share of its drop, as for footings")},
    Entry{"edge.footing_setback_most",
          QT_TRANSLATE_NOOP("ui::words", "distance to the edge at most, as for footings")},
    Entry{"house.flow_path", QT_TRANSLATE_NOOP("ui::words", "house downhill within")},
    Entry{"uplift.least_factor", QT_TRANSLATE_NOOP("ui::words", "weight over uplift wanted")},
    Entry{"frost.water_within", QT_TRANSLATE_NOOP("ui::words", "ground water that feeds frost, within")},
    Entry{"swell.extensibility_moderate", QT_TRANSLATE_NOOP("ui::words", "shrinkage of moderate swelling")},
    Entry{"swell.extensibility_high", QT_TRANSLATE_NOOP("ui::words", "shrinkage of high swelling")},
    Entry{"swell.extensibility_very_high", QT_TRANSLATE_NOOP("ui::words", "shrinkage of very high swelling")},
    Entry{"swell.clay_share", QT_TRANSLATE_NOOP("ui::words", "clay from which soil may swell")},
};

constexpr std::array kStrengths{
    Entry{"low", QT_TRANSLATE_NOOP("ui::words", "low")},
    Entry{"typical", QT_TRANSLATE_NOOP("ui::words", "typical")},
    Entry{"high", QT_TRANSLATE_NOOP("ui::words", "high")},
};

}  // namespace

QString thresholdName(std::string_view key) {
  return lookUp(kThresholds, key, "threshold");
}

QString strengthName(std::string_view strength) {
  return lookUp(kStrengths, strength, "strength");
}

}  // namespace ui::words
