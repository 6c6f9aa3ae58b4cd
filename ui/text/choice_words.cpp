#include "ui/text/notes_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>
#include <string>

namespace ui::words {
namespace {

/// Ids are the field's id, a colon and the token.
constexpr std::array kChoices{
    Entry{"site.ground.kind:level", QT_TRANSLATE_NOOP("ui::words", "level")},
    Entry{"site.ground.kind:slope", QT_TRANSLATE_NOOP("ui::words", "even slope")},
    Entry{"site.ground.kind:spot_heights", QT_TRANSLATE_NOOP("ui::words", "surveyed spot heights")},
    Entry{"site.platform.level_by:natural_ground", QT_TRANSLATE_NOOP("ui::words", "tank in natural ground")},
    Entry{"site.platform.level_by:balanced", QT_TRANSLATE_NOOP("ui::words", "cut and fill balanced")},
    Entry{"site.platform.level_by:given", QT_TRANSLATE_NOOP("ui::words", "level set by hand")},
    Entry{"site.soil:stiff_clay", QT_TRANSLATE_NOOP("ui::words", "stiff clay")},
    Entry{"site.soil:firm_loam", QT_TRANSLATE_NOOP("ui::words", "firm loam")},
    Entry{"site.soil:sandy", QT_TRANSLATE_NOOP("ui::words", "sandy")},
    Entry{"site.soil:loose_fill", QT_TRANSLATE_NOOP("ui::words", "loose fill")},
    Entry{"site.soil:soft_wet", QT_TRANSLATE_NOOP("ui::words", "soft and wet")},
    Entry{"site.soil:rock", QT_TRANSLATE_NOOP("ui::words", "rock")},
    Entry{"tank.shape:rectangle", QT_TRANSLATE_NOOP("ui::words", "rectangle")},
    Entry{"tank.shape:round", QT_TRANSLATE_NOOP("ui::words", "round")},
    Entry{"tank.shape:polygon", QT_TRANSLATE_NOOP("ui::words", "polygon")},
    Entry{"tank.measured_at:floor", QT_TRANSLATE_NOOP("ui::words", "finished floor")},
    Entry{"tank.measured_at:rim", QT_TRANSLATE_NOOP("ui::words", "rim")},
    Entry{"works.rest_day:none", QT_TRANSLATE_NOOP("ui::words", "none")},
    Entry{"works.rest_day:monday", QT_TRANSLATE_NOOP("ui::words", "Monday")},
    Entry{"works.rest_day:tuesday", QT_TRANSLATE_NOOP("ui::words", "Tuesday")},
    Entry{"works.rest_day:wednesday", QT_TRANSLATE_NOOP("ui::words", "Wednesday")},
    Entry{"works.rest_day:thursday", QT_TRANSLATE_NOOP("ui::words", "Thursday")},
    Entry{"works.rest_day:friday", QT_TRANSLATE_NOOP("ui::words", "Friday")},
    Entry{"works.rest_day:saturday", QT_TRANSLATE_NOOP("ui::words", "Saturday")},
    Entry{"works.rest_day:sunday", QT_TRANSLATE_NOOP("ui::words", "Sunday")},
    Entry{"records.work[].soil:stiff_clay", QT_TRANSLATE_NOOP("ui::words", "stiff clay")},
    Entry{"records.work[].soil:firm_loam", QT_TRANSLATE_NOOP("ui::words", "firm loam")},
    Entry{"records.work[].soil:sandy", QT_TRANSLATE_NOOP("ui::words", "sandy")},
    Entry{"records.work[].soil:loose_fill", QT_TRANSLATE_NOOP("ui::words", "loose fill")},
    Entry{"records.work[].soil:soft_wet", QT_TRANSLATE_NOOP("ui::words", "soft and wet")},
    Entry{"records.work[].soil:rock", QT_TRANSLATE_NOOP("ui::words", "rock")},
    Entry{"records.work[].work:digging", QT_TRANSLATE_NOOP("ui::words", "digging")},
    Entry{"records.work[].work:ramming", QT_TRANSLATE_NOOP("ui::words", "ramming fill")},
    Entry{"records.work[].work:stone_bed", QT_TRANSLATE_NOOP("ui::words", "laying the stone bed")},
    Entry{"records.work[].work:spreading", QT_TRANSLATE_NOOP("ui::words", "spreading plaster")},
    Entry{"records.work[].work:mixing", QT_TRANSLATE_NOOP("ui::words", "mixing mortar")},
    Entry{"prices.items[].carried_by:none", QT_TRANSLATE_NOOP("ui::words", "not carried")},
    Entry{"prices.items[].carried_by:porter", QT_TRANSLATE_NOOP("ui::words", "porter")},
    Entry{"prices.items[].carried_by:mule", QT_TRANSLATE_NOOP("ui::words", "mule")},
    Entry{"prices.items[].carried_by:trolley", QT_TRANSLATE_NOOP("ui::words", "trolley")},
    Entry{"prices.linings[].lining:soil_cement", QT_TRANSLATE_NOOP("ui::words", "soil-cement plaster")},
    Entry{"prices.linings[].lining:plastic_sheet", QT_TRANSLATE_NOOP("ui::words", "plastic sheet")},
    Entry{"prices.linings[].lining:ferrocement", QT_TRANSLATE_NOOP("ui::words", "ferrocement")},
    Entry{"prices.linings[].lining:stone_masonry", QT_TRANSLATE_NOOP("ui::words", "stone masonry")},
    Entry{"prices.linings[].lining:moulded_tank", QT_TRANSLATE_NOOP("ui::words", "moulded plastic tank")},
    Entry{"prices.linings[].per:job", QT_TRANSLATE_NOOP("ui::words", "the whole job")},
    Entry{"prices.linings[].per:square_metre", QT_TRANSLATE_NOOP("ui::words", "one m² of face")},
    Entry{"prices.linings[].per:cubic_metre", QT_TRANSLATE_NOOP("ui::words", "one m³ held")},
    Entry{"ranges.inputs[].input:thickness", QT_TRANSLATE_NOOP("ui::words", "thickness of the coats")},
    Entry{"ranges.inputs[].input:unevenness", QT_TRANSLATE_NOOP("ui::words", "unevenness of dug faces")},
    Entry{"ranges.inputs[].input:dry_to_wet",
          QT_TRANSLATE_NOOP("ui::words", "loose ingredients per placed plaster")},
    Entry{"ranges.inputs[].input:cement_density", QT_TRANSLATE_NOOP("ui::words", "loose weight of cement")},
    Entry{"ranges.inputs[].input:digging", QT_TRANSLATE_NOOP("ui::words", "time for digging")},
    Entry{"ranges.inputs[].input:plastering", QT_TRANSLATE_NOOP("ui::words", "time for plastering")},
    Entry{"ranges.inputs[].input:prices", QT_TRANSLATE_NOOP("ui::words", "prices of goods")},
    Entry{"ranges.inputs[].input:wages", QT_TRANSLATE_NOOP("ui::words", "wages")},
    Entry{"ranges.inputs[].input:flow", QT_TRANSLATE_NOOP("ui::words", "flow of the source")},
    Entry{"water.beds[].method:watering_can", QT_TRANSLATE_NOOP("ui::words", "watering can or bucket")},
    Entry{"water.beds[].method:hose", QT_TRANSLATE_NOOP("ui::words", "hose")},
    Entry{"water.beds[].method:furrow", QT_TRANSLATE_NOOP("ui::words", "furrows")},
    Entry{"water.beds[].method:sprinkler", QT_TRANSLATE_NOOP("ui::words", "sprinkler")},
    Entry{"water.beds[].method:drip", QT_TRANSLATE_NOOP("ui::words", "drip lines")},
    Entry{"water.animals[].kind:cattle", QT_TRANSLATE_NOOP("ui::words", "cattle")},
    Entry{"water.animals[].kind:dairy_cow", QT_TRANSLATE_NOOP("ui::words", "cow in milk")},
    Entry{"water.animals[].kind:buffalo", QT_TRANSLATE_NOOP("ui::words", "buffalo")},
    Entry{"water.animals[].kind:horse_or_mule", QT_TRANSLATE_NOOP("ui::words", "horse or mule")},
    Entry{"water.animals[].kind:donkey", QT_TRANSLATE_NOOP("ui::words", "donkey")},
    Entry{"water.animals[].kind:goat_or_sheep", QT_TRANSLATE_NOOP("ui::words", "goat or sheep")},
    Entry{"water.animals[].kind:pig", QT_TRANSLATE_NOOP("ui::words", "pig")},
    Entry{"water.animals[].kind:poultry", QT_TRANSLATE_NOOP("ui::words", "hen or other poultry")},
    Entry{"water.climate.kind:monthly", QT_TRANSLATE_NOOP("ui::words", "monthly means")},
    Entry{"water.climate.kind:daily", QT_TRANSLATE_NOOP("ui::words", "daily record")},
    Entry{"water.climate.et0_method:penman_monteith", QT_TRANSLATE_NOOP("ui::words", "Penman-Monteith")},
    Entry{"water.climate.et0_method:hargreaves", QT_TRANSLATE_NOOP("ui::words", "Hargreaves")},
    Entry{"water.climate.gaps:leave_out_year", QT_TRANSLATE_NOOP("ui::words", "leave the year out")},
    Entry{"water.climate.gaps:nearest_year", QT_TRANSLATE_NOOP("ui::words", "fill in from the nearest year")},
    Entry{"delivery.source.pipe.grade:pe80", "PE 80"},
    Entry{"delivery.source.pipe.grade:pe100", "PE 100"},
    Entry{"delivery.field.pipe.grade:pe80", "PE 80"},
    Entry{"delivery.field.pipe.grade:pe100", "PE 100"},
    Entry{"delivery.field.outlet:open_pipe", QT_TRANSLATE_NOOP("ui::words", "open end of the pipe")},
    Entry{"delivery.field.outlet:tap", QT_TRANSLATE_NOOP("ui::words", "tap")},
    Entry{"delivery.field.outlet:hose", QT_TRANSLATE_NOOP("ui::words", "hose")},
    Entry{"delivery.field.outlet:drip_low_cost", QT_TRANSLATE_NOOP("ui::words", "low-head drip kit")},
    Entry{"delivery.field.outlet:drip_standard",
          QT_TRANSLATE_NOOP("ui::words", "drip lines at full pressure")},
    Entry{"delivery.field.outlet:micro_sprinkler", QT_TRANSLATE_NOOP("ui::words", "micro-sprinkler")},
    Entry{"delivery.field.outlet:sprinkler", QT_TRANSLATE_NOOP("ui::words", "sprinkler")},
    Entry{"delivery.overflow.kind:notch", QT_TRANSLATE_NOOP("ui::words", "notch in the rim")},
    Entry{"delivery.overflow.kind:pipe", QT_TRANSLATE_NOOP("ui::words", "pipe")},
    Entry{"delivery.spill.cover:soil", QT_TRANSLATE_NOOP("ui::words", "bare soil")},
    Entry{"delivery.spill.cover:grass", QT_TRANSLATE_NOOP("ui::words", "grass")},
    Entry{"delivery.spill.cover:stone_pitching", QT_TRANSLATE_NOOP("ui::words", "stone pitching")},
    Entry{"delivery.spill.cover:plaster", QT_TRANSLATE_NOOP("ui::words", "plaster")},
};

}  // namespace

QString choiceLabel(std::string_view field_id, std::string_view token) {
  const std::string id = std::string(field_id) + ":" + std::string(token);
  return lookUp(has(notesChoices(), id) ? notesChoices() : std::span<const Entry>(kChoices), id, "choice");
}

}  // namespace ui::words
