#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kWorksLabels{
    Entry{"works.start_date", QT_TRANSLATE_NOOP("ui::words", "First day of the works")},
    Entry{"works.diggers", QT_TRANSLATE_NOOP("ui::words", "Diggers")},
    Entry{"works.plasterers", QT_TRANSLATE_NOOP("ui::words", "People on a coat")},
    Entry{"works.masons", QT_TRANSLATE_NOOP("ui::words", "Masons among them")},
    Entry{"works.rest_day", QT_TRANSLATE_NOOP("ui::words", "Weekly rest day")},
    Entry{"works.closed[].from", QT_TRANSLATE_NOOP("ui::words", "Closed from")},
    Entry{"works.closed[].days", QT_TRANSLATE_NOOP("ui::words", "Closed for")},
    Entry{"works.closed[].why", QT_TRANSLATE_NOOP("ui::words", "Why")},
    Entry{"works.fill_within_days", QT_TRANSLATE_NOOP("ui::words", "Start filling within")},
    Entry{"works.hours_per_day", QT_TRANSLATE_NOOP("ui::words", "Hours of a person-day")},
    Entry{"works.coat_hours", QT_TRANSLATE_NOOP("ui::words", "Hours to put on a coat")},
    Entry{"works.mixing_places", QT_TRANSLATE_NOOP("ui::words", "Mixing places")},
    Entry{"works.minutes_per_batch", QT_TRANSLATE_NOOP("ui::words", "Mixing one batch takes")},
    Entry{"works.placing_minutes", QT_TRANSLATE_NOOP("ui::words", "A batch must be on the wall within")},
    Entry{"works.wetting_people", QT_TRANSLATE_NOOP("ui::words", "People who keep the sacks wet")},
    Entry{"works.wettings_per_day", QT_TRANSLATE_NOOP("ui::words", "Wettings a day")},
    Entry{"works.spoil_lead_m", QT_TRANSLATE_NOOP("ui::words", "Way to the spoil heap")},
    Entry{"works.deep_digging_factor", QT_TRANSLATE_NOOP("ui::words", "Digging low in the pit takes, times")},
    Entry{"works.digging_person_day_per_m3", QT_TRANSLATE_NOOP("ui::words", "Digging")},
    Entry{"works.bed_person_day_per_m3", QT_TRANSLATE_NOOP("ui::words", "Laying the stone bed")},
    Entry{"works.plaster_person_day_per_m2", QT_TRANSLATE_NOOP("ui::words", "Plastering a coat")},
    Entry{"works.mixing_person_day_per_m3", QT_TRANSLATE_NOOP("ui::words", "Mixing mortar")},
    Entry{"works.fill_inflow_l_per_day",
          QT_TRANSLATE_NOOP("ui::words", "Water let in for the first filling")},
    Entry{"works.fill_most_rise_m_per_day", QT_TRANSLATE_NOOP("ui::words", "Water may rise in a day by")},
    Entry{"works.wall_band_m", QT_TRANSLATE_NOOP("ui::words", "Height of a band of wall")},
    Entry{"works.heavy_rain_mm", QT_TRANSLATE_NOOP("ui::words", "Heavy rain, in a day")},
    Entry{"works.wishes[].task", QT_TRANSLATE_NOOP("ui::words", "Task")},
    Entry{"works.wishes[].not_before", QT_TRANSLATE_NOOP("ui::words", "Not before")},
    Entry{"works.wishes[].people", QT_TRANSLATE_NOOP("ui::words", "Wanted")},
    Entry{"works.rates[].work", QT_TRANSLATE_NOOP("ui::words", "Work")},
    Entry{"works.rates[].low", QT_TRANSLATE_NOOP("ui::words", "Low")},
    Entry{"works.rates[].typical", QT_TRANSLATE_NOOP("ui::words", "Typical")},
    Entry{"works.rates[].high", QT_TRANSLATE_NOOP("ui::words", "High")},
    Entry{"records.in_force", QT_TRANSLATE_NOOP("ui::words", "Reckon with the records")},
    Entry{"records.batches[].coat", QT_TRANSLATE_NOOP("ui::words", "Coat")},
    Entry{"records.batches[].bags", QT_TRANSLATE_NOOP("ui::words", "Bags of cement")},
    Entry{"records.batches[].area_m2", QT_TRANSLATE_NOOP("ui::words", "Face covered")},
    Entry{"records.batches[].thickness_m", QT_TRANSLATE_NOOP("ui::words", "Thickness")},
    Entry{"records.work[].work", QT_TRANSLATE_NOOP("ui::words", "Work")},
    Entry{"records.work[].quantity", QT_TRANSLATE_NOOP("ui::words", "Work done")},
    Entry{"records.work[].person_days", QT_TRANSLATE_NOOP("ui::words", "It took")},
    Entry{"records.work[].soil", QT_TRANSLATE_NOOP("ui::words", "Soil dug")},
};

}  // namespace

std::span<const Entry> worksLabels() {
  return kWorksLabels;
}

}  // namespace ui::words
