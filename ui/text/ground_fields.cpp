#include "ui/text/ground_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kGroundLabels{
    Entry{"site.position.east_m", QT_TRANSLATE_NOOP("ui::words", "Middle of the tank, east")},
    Entry{"site.position.north_m", QT_TRANSLATE_NOOP("ui::words", "Middle of the tank, north")},
    Entry{"site.position.turn_deg", QT_TRANSLATE_NOOP("ui::words", "Tank turned by")},
    Entry{"site.platform.level_by", QT_TRANSLATE_NOOP("ui::words", "Level of the platform")},
    Entry{"site.platform.level_m", QT_TRANSLATE_NOOP("ui::words", "Platform over the ground at the middle")},
    Entry{"site.platform.walkway_m", QT_TRANSLATE_NOOP("ui::words", "Walkway round the rim")},
    Entry{"site.platform.cut_batter", QT_TRANSLATE_NOOP("ui::words", "Batter of the cut face")},
    Entry{"site.platform.fill_batter", QT_TRANSLATE_NOOP("ui::words", "Batter of the fill face")},
    Entry{"site.platform.topsoil_m", QT_TRANSLATE_NOOP("ui::words", "Topsoil stripped")},
    Entry{"site.platform.compacted_per_bank",
          QT_TRANSLATE_NOOP("ui::words", "Compacted fill per ground dug")},
    Entry{"site.spoil_azimuth_deg", QT_TRANSLATE_NOOP("ui::words", "Direction of the spoil heap")},
};

constexpr std::array kGroundHelp{
    Entry{"site.position.east_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Where the middle of the tank lies east of the zero of the spot heights; west of "
                            "it is negative.")},
    Entry{"site.position.north_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Where the middle of the tank lies north of the zero of the spot heights; south "
                            "of it is negative.")},
    Entry{"site.position.turn_deg",
          QT_TRANSLATE_NOOP("ui::words",
                            "Anticlockwise seen from above; at 0 the length runs east. A tank whose length "
                            "lies across the fall, on one level, needs the least digging.")},
    Entry{"site.platform.level_by",
          QT_TRANSLATE_NOOP("ui::words",
                            "How high the level place round the tank lies: so low that the whole tank stands "
                            "in natural ground, so that cut and fill balance, or as you give it.")},
    Entry{"site.platform.level_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Height of the platform, which the rim is level with, over the natural ground at "
                            "the middle of the tank; below that ground it is negative.")},
    Entry{"site.platform.walkway_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Level ground left all round outside the rim collar, to walk and carry on.")},
    Entry{"site.platform.cut_batter",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far the face cut into the hill leans back for each unit of height; look at "
                            "old cuts in the same soil that still stand.")},
    Entry{"site.platform.fill_batter",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far the filled face runs out for each unit of height; 1.5 is usual for "
                            "ground that is well rammed.")},
    Entry{"site.platform.topsoil_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Depth of the dark soil with roots in the trial pit, which is taken off first "
                            "and kept for beds.")},
    Entry{"site.platform.compacted_per_bank",
          QT_TRANSLATE_NOOP("ui::words",
                            "Volume that ground fills once it is placed in layers and rammed, for each unit "
                            "dug: 0.90 when it packs closer than it lay.")},
    Entry{"site.spoil_azimuth_deg",
          QT_TRANSLATE_NOOP("ui::words",
                            "Compass direction from the tank to the heap: north 0, east 90, south 180. Leave "
                            "empty to have it put across the fall.")},
};

}  // namespace

std::span<const Entry> groundLabels() {
  return kGroundLabels;
}

std::span<const Entry> groundHelp() {
  return kGroundHelp;
}

}  // namespace ui::words
