#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kWorksHelp{
    Entry{"works.start_date",
          QT_TRANSLATE_NOOP("ui::words", "Day on which the first task may begin; nothing begins before it.")},
    Entry{"works.diggers",
          QT_TRANSLATE_NOOP("ui::words",
                            "People who dig, carry spoil and lay the stone bed each working day.")},
    Entry{"works.plasterers",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Masons, mixers and carriers together on a coat; a coat is placed in one go, within the day.")},
    Entry{"works.masons",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "How many of the people on a coat lay plaster with skill; the others mix, carry and hand up.")},
    Entry{"works.rest_day",
          QT_TRANSLATE_NOOP("ui::words", "Nobody digs or plasters on this day; wetting goes on.")},
    Entry{"works.closed[].from",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "First day on which nobody works: a feast, a market, a funeral, a day kept for sowing.")},
    Entry{"works.closed[].days",
          QT_TRANSLATE_NOOP("ui::words",
                            "How many days nobody works, the first one counted; wetting goes on.")},
    Entry{"works.closed[].why",
          QT_TRANSLATE_NOOP("ui::words",
                            "What the days are kept for, in a word; it is printed in the calendar.")},
    Entry{"works.fill_within_days",
          QT_TRANSLATE_NOOP("ui::words",
                            "Latest start of the first filling, counted in days after the last coat.")},
    Entry{"works.hours_per_day",
          QT_TRANSLATE_NOOP("ui::words", "Hours of work behind one person-day, breaks not counted.")},
    Entry{"works.coat_hours", QT_TRANSLATE_NOOP("ui::words",
                                                "Hours of daylight and cool weather in which a coat is begun "
                                                "and finished, without a stop over night.")},
    Entry{"works.mixing_places",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Boards or floors on which mortar is mixed at the same time, each with its own mixers.")},
    Entry{"works.minutes_per_batch", QT_TRANSLATE_NOOP("ui::words",
                                                       "Time it with a watch: from filling the gauge boxes "
                                                       "until the batch at one place is ready to carry.")},
    Entry{"works.placing_minutes",
          QT_TRANSLATE_NOOP("ui::words",
                            "Time from wetting the cement until the mortar stiffens; what is older is thrown "
                            "away, not wetted again. Try it on a hot day.")},
    Entry{"works.wetting_people",
          QT_TRANSLATE_NOOP("ui::words",
                            "People who pour water over the sacks on each day of curing, rest days too; they "
                            "are not counted among the diggers.")},
    Entry{"works.wettings_per_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "How often the sacks are wetted on a day of curing; in dry wind more often.")},
    Entry{
        "works.spoil_lead_m",
        QT_TRANSLATE_NOOP(
            "ui::words", "Measure it: level distance from the middle of the pit to the middle of the heap.")},
    Entry{"works.deep_digging_factor",
          QT_TRANSLATE_NOOP("ui::words",
                            "How many times as long the low part of a deep pit takes, where ground is thrown "
                            "up twice; 1 is the same.")},
    Entry{"works.digging_person_day_per_m3",
          QT_TRANSLATE_NOOP("ui::words",
                            "One person's days to dig and throw out ground as it lies; leave empty to take "
                            "it from the soil.")},
    Entry{"works.bed_person_day_per_m3",
          QT_TRANSLATE_NOOP("ui::words", "One person's days to lay and compact the stone bed.")},
    Entry{"works.plaster_person_day_per_m2",
          QT_TRANSLATE_NOOP("ui::words", "One person's days to plaster one coat, helpers counted.")},
    Entry{"works.mixing_person_day_per_m3",
          QT_TRANSLATE_NOOP("ui::words", "One person's days to mix mortar by hand.")},
    Entry{"works.fill_inflow_l_per_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water that runs or is carried into the new tank each day; leave empty to take "
                            "what the source gives in that month.")},
    Entry{"works.fill_most_rise_m_per_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "The inflow is held back to this rise, so that young plaster is loaded slowly.")},
    Entry{"works.wall_band_m",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "The walls are told in bands of this height: until when the sacks of each must stay wet.")},
    Entry{"works.heavy_rain_mm",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Rain of one day from which on a fresh coat is washed or pitted; a rain gauge shows it.")},
    Entry{"works.wishes[].task",
          QT_TRANSLATE_NOOP("ui::words", "The task for which a day or a number of people is wished.")},
    Entry{"works.wishes[].not_before",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "The task begins on this day or later; leave empty if it may begin as soon as it can.")},
    Entry{"works.wishes[].people",
          QT_TRANSLATE_NOOP("ui::words", "People on this task; leave empty for as many as usual.")},
    Entry{"works.rates[].work",
          QT_TRANSLATE_NOOP("ui::words", "The work for which the district has a rate of its own.")},
    Entry{"works.rates[].low",
          QT_TRANSLATE_NOOP("ui::words", "Person-days for one unit of this work when all goes well.")},
    Entry{"works.rates[].typical",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Person-days for one unit of this work on a usual day; the plan is reckoned with it.")},
    Entry{"works.rates[].high",
          QT_TRANSLATE_NOOP("ui::words", "Person-days for one unit of this work when it goes badly.")},
    Entry{"records.in_force",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Whether the middle values of what was measured stand in place of the figures entered.")},
    Entry{
        "records.batches[].coat",
        QT_TRANSLATE_NOOP("ui::words", "The coat whose mix the trial batch had, counted from the dug face.")},
    Entry{"records.batches[].bags",
          QT_TRANSLATE_NOOP("ui::words", "Cement in the trial batch, in bags and parts of a bag.")},
    Entry{"records.batches[].area_m2",
          QT_TRANSLATE_NOOP("ui::words",
                            "Face that the trial batch covered: measure length and height of the patch.")},
    Entry{"records.batches[].thickness_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Thickness of the patch, square to the face: push a nail in at several places "
                            "and take the middle.")},
    Entry{"records.work[].work",
          QT_TRANSLATE_NOOP("ui::words",
                            "What was done and measured, here or on an earlier tank of the district.")},
    Entry{"records.work[].quantity",
          QT_TRANSLATE_NOOP("ui::words",
                            "How much of it: ground dug as it lay, fill as rammed, stone bed and mortar as "
                            "placed in m³; spreading in m².")},
    Entry{
        "records.work[].person_days",
        QT_TRANSLATE_NOOP(
            "ui::words", "People times days that it took, helpers counted; half a day of four people is 2.")},
    Entry{"records.work[].soil",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Only digging in the soil of this site counts. Left empty: it was such soil. Record "
              "the first 1.5 m of depth; what lies deeper is reckoned slower.")},
};

}  // namespace

std::span<const Entry> worksHelp() {
  return kWorksHelp;
}

}  // namespace ui::words
