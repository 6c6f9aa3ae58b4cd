#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kDates[]{
    {"schedule[].start", none, QT_TRANSLATE_NOOP("ui::words", "Each task starts"), QT_TRANSLATE_NOOP("ui::words", "latest of: start of the works, the day wished, what each arrow to it asks for; forward pass on days that are worked; last day to start filling: last coat + days within which filling must start"), "@works.start_date links[].lag_days schedule[].work_days @works.rest_day @works.closed[].from @works.closed[].days @works.fill_within_days", "kelley_walker_1959"},
    {"schedule[].finish", none, QT_TRANSLATE_NOOP("ui::words", "Each task ends"), QT_TRANSLATE_NOOP("ui::words", "start + duration on its clock, last day on which anything is done"), "schedule[].start schedule[].work_days", "kelley_walker_1959"},
    {"schedule[].work_days", day, QT_TRANSLATE_NOOP("ui::words", "Duration of each task"), QT_TRANSLATE_NOOP("ui::words", "person-days ÷ people, up to the next quarter of a day, at least one; a coat one day; curing, filling and leak test their days"), "labour[].days schedule[].crew @lining.coats[].cure_days", "own"},
    {"schedule[].days", piece, QT_TRANSLATE_NOOP("ui::words", "Days with work on them"), QT_TRANSLATE_NOOP("ui::words", "days from start to end that are worked; all days for curing and filling"), "schedule[].start schedule[].finish @works.rest_day", "sums"},
    {"schedule[].crew", piece, QT_TRANSLATE_NOOP("ui::words", "People on each task"), QT_TRANSLATE_NOOP("ui::words", "labourers + masons"), "schedule[].labourers schedule[].masons", "sums"},
    {"schedule[].labourers", piece, QT_TRANSLATE_NOOP("ui::words", "Labourers on each task"), QT_TRANSLATE_NOOP("ui::words", "diggers, or people on a coat, or as wished; less the masons; spoil: as few as carry it while the pit is dug"), "@works.diggers @works.plasterers @works.wishes[].people", "user"},
    {"schedule[].masons", piece, QT_TRANSLATE_NOOP("ui::words", "Masons on each task"), QT_TRANSLATE_NOOP("ui::words", "all there are for a coat, else people × skilled share, rounded up"), "@works.masons labour[].mason_days labour[].days", "own"},
    {"schedule[].wetters", piece, QT_TRANSLATE_NOOP("ui::words", "People wetting on each task"), QT_TRANSLATE_NOOP("ui::words", "as entered, on curing, filling and leak test"), "@works.wetting_people", "user"},
    {"schedule[].start_in_day", factor, QT_TRANSLATE_NOOP("ui::words", "Share of the first day gone at the start"), QT_TRANSLATE_NOOP("ui::words", "quarters of a day from the start of the day"), "schedule[].start", "kelley_walker_1959"},
    {"schedule[].float_days", day, QT_TRANSLATE_NOOP("ui::words", "Room of each task"), QT_TRANSLATE_NOOP("ui::words", "late start − early start on its clock; backward pass from the last end; curing has none of its own"), "schedule[].start links[].lag_days", "kelley_walker_1959"},
    {"schedule[].free_float_days", day, QT_TRANSLATE_NOOP("ui::words", "Room that moves no other task"), QT_TRANSLATE_NOOP("ui::words", "earliest that the next task asks for − early end"), "schedule[].start links[].lag_days", "kelley_walker_1959"},
    {"schedule[].not_before", none, QT_TRANSLATE_NOOP("ui::words", "Earliest start wished"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@works.wishes[].not_before", "user"},
    {"links[].lag_days", day, QT_TRANSLATE_NOOP("ui::words", "Days between two tasks"), QT_TRANSLATE_NOOP("ui::words", "0, one after the other; spoil a quarter of a day after the pit; filling: smaller of last curing and days within which it must start, less one"), "@lining.coats[].cure_days @works.fill_within_days", "own"},
    {"people_by_day[].date", none, QT_TRANSLATE_NOOP("ui::words", "Days of the works"), QT_TRANSLATE_NOOP("ui::words", "each day from the first start to the last end"), "schedule[].start schedule[].finish", "sums"},
    {"people_by_day[].labourers", piece, QT_TRANSLATE_NOOP("ui::words", "Labourers by day"), QT_TRANSLATE_NOOP("ui::words", "most who are there at one quarter of the day"), "schedule[].labourers", "sums"},
    {"people_by_day[].masons", piece, QT_TRANSLATE_NOOP("ui::words", "Masons by day"), QT_TRANSLATE_NOOP("ui::words", "most who are there at one quarter of the day"), "schedule[].masons", "sums"},
    {"people_by_day[].wetters", piece, QT_TRANSLATE_NOOP("ui::words", "Wetters by day"), QT_TRANSLATE_NOOP("ui::words", "those who see to all sacks"), "schedule[].wetters @works.wetting_people", "sums"},
    {"people_by_day[].wetting_l", litre, QT_TRANSLATE_NOOP("ui::words", "Water for sacks by day"), QT_TRANSLATE_NOOP("ui::words", "face of each coat that cures or waits for the next × litres a day for each m²; once filling has begun the bands of wall still to be wet"), "coats[].face_m2 filling.bands[].area_m2 @lining.curing_water_l_per_m2_day", "#lining.curing_water_l_per_m2_day"},
};

constexpr ReckoningEntry kRecords[]{
    {"count", piece, QT_TRANSLATE_NOOP("ui::words", "batches that count"), QT_TRANSLATE_NOOP("ui::words", "trial batches of a coat of this lining"), "@records.batches[].coat @records.batches[].bags", "user"},
    {"median", factor, QT_TRANSLATE_NOOP("ui::words", "middle of the batches"), QT_TRANSLATE_NOOP("ui::words", "loose soil, sand and cement ÷ (area × thickness); the middle one, or mean of the two middle ones"), "@records.batches[].bags @records.batches[].area_m2 @records.batches[].thickness_m @lining.cement_bag_kg @lining.cement_loose_kg_m3", "user"},
    {"least", factor, QT_TRANSLATE_NOOP("ui::words", "smallest of the batches"), QT_TRANSLATE_NOOP("ui::words", "as the middle"), "@records.batches[].bags @records.batches[].area_m2 @records.batches[].thickness_m", "user"},
    {"most", factor, QT_TRANSLATE_NOOP("ui::words", "largest of the batches"), QT_TRANSLATE_NOOP("ui::words", "as the middle"), "@records.batches[].bags @records.batches[].area_m2 @records.batches[].thickness_m", "user"},
    {"entered", factor, QT_TRANSLATE_NOOP("ui::words", "what stands in the project without them"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@records.in_force", "user"},
};

constexpr ReckoningPlace kRecordsPlaces[]{
    {"records.dry_to_wet.", QT_TRANSLATE_NOOP("ui::words", "Dry to wet, from trial batches")},
};

constexpr ReckoningEntry kRecords2[]{
    {"count", piece, QT_TRANSLATE_NOOP("ui::words", "records that count"), QT_TRANSLATE_NOOP("ui::words", "digging in this soil; other work all"), "@records.work[].work", "user"},
    {"median", factor, QT_TRANSLATE_NOOP("ui::words", "middle of the records"), QT_TRANSLATE_NOOP("ui::words", "person-days ÷ quantity; the middle one, or mean of the two middle ones"), "@records.work[].work @records.work[].person_days @records.work[].quantity", "user"},
    {"least", factor, QT_TRANSLATE_NOOP("ui::words", "smallest of the records"), QT_TRANSLATE_NOOP("ui::words", "as the middle"), "@records.work[].work @records.work[].person_days @records.work[].quantity", "user"},
    {"most", factor, QT_TRANSLATE_NOOP("ui::words", "largest of the records"), QT_TRANSLATE_NOOP("ui::words", "as the middle"), "@records.work[].work @records.work[].person_days @records.work[].quantity", "user"},
    {"entered", factor, QT_TRANSLATE_NOOP("ui::words", "what stands in the project without them"), QT_TRANSLATE_NOOP("ui::words", "as entered, else from the table of rates or the district's own"), "@records.in_force", "user"},
};

constexpr ReckoningPlace kRecords2Places[]{
    {"records.digging.", QT_TRANSLATE_NOOP("ui::words", "Digging")},
    {"records.ramming.", QT_TRANSLATE_NOOP("ui::words", "Ramming")},
    {"records.stone_bed.", QT_TRANSLATE_NOOP("ui::words", "Stone bed")},
    {"records.spreading.", QT_TRANSLATE_NOOP("ui::words", "Spreading")},
    {"records.mixing.", QT_TRANSLATE_NOOP("ui::words", "Mixing")},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> datesReckonings() {
  return {
      {"dates", {}, kDates}, {"records", kRecordsPlaces, kRecords}, {"records", kRecords2Places, kRecords2}};
}

}  // namespace ui::words
