#include "core/water/crop_water.h"
#include "core/water/figures.h"
#include "ui/handouts/water_inputs.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>
#include <string>
#include <tuple>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kLitresPerM3 = 1000;
constexpr std::size_t kShortTable = 6;

QString mm(double value, const Formatter& format) {
  return format.quantity(value, Unit::millimetre, 0);
}

QString litres(double volume_m3, const Formatter& format) {
  return format.quantity(volume_m3 * kLitresPerM3, Unit::litre, 0);
}

std::vector<Cell> bedRow(const core::Bed& bed, const core::water::BedNeed& need, const Formatter& format) {
  const QString season = Text::tr("%1 to %2")
                             .arg(format.dayOfYear(need.plant_month, need.plant_day),
                                  format.dayOfYear(need.end_month, need.end_day));
  return {words::cropName(need.crop) + u'\n' + season,
          words::figureName(core::water::efficiency(bed.method).key) + QStringLiteral(", ") +
              valueOf("water.beds[].efficiency_percent", need.efficiency_percent, format),
          valueOf("water.beds[].area_m2", need.area_m2, format),
          mm(need.use_mm, format) + u'\n' + mm(need.net_mm, format),
          litres(need.gross_m3, format),
          format.quantity(need.peak_l_day, Unit::litre, 0)};
}

/// Where the shares that reach the roots are from.
QString efficiencySources(const std::vector<core::Bed>& beds, SourceList& sources) {
  std::vector<std::string_view> keys;
  for (const core::Bed& bed : beds) {
    keys.push_back(bed.efficiency_percent ? std::string_view("user")
                                          : std::string_view(core::water::efficiency(bed.method).source));
  }
  return sources.marks(keys);
}

QString kcs(const core::water::Crop& crop, const Formatter& format) {
  QStringList parts;
  for (const double kc : {crop.kc_ini, crop.kc_mid, crop.kc_end}) parts << format.number(kc, Unit::factor, 2);
  return parts.join(u' ');
}

QString stages(const core::water::Crop& crop, const Formatter& format) {
  QStringList parts;
  for (const int days : crop.stage_days) parts << format.integer(days);
  return parts.join(u'+');
}

std::vector<Cell> cropRow(const core::Bed& bed, const Content& content) {
  const core::Water& water = *content.project.water;
  const auto& format = content.format;
  const auto crop = core::water::findCrop(bed.crop, water.crops).value();
  const auto fitted =
      core::water::adjusted(crop, *content.plan.water->weather, bed.plant_month, bed.plant_day);
  return {words::cropName(bed.crop),
          kcs(crop, format),
          kcs(fitted, format),
          stages(crop, format),
          valueOf("water.crops[].height_m", crop.height_m, format) + u'\n' +
              valueOf("water.crops[].root_depth_m", crop.root_depth_m, format),
          valueOf("water.crops[].depletion", crop.depletion, format)};
}

bool isOwn(const core::Bed& bed, const core::Water& water) {
  return std::ranges::find(water.crops, bed.crop, &core::OwnCrop::name) != water.crops.end();
}

QString cropSources(const core::Water& water, SourceList& sources) {
  std::vector<std::string_view> keys;
  for (const core::Bed& bed : water.beds) {
    const auto& table = core::water::crops();
    const auto row = std::ranges::find(table, bed.crop, &core::water::CropFigures::id);
    if (isOwn(bed, water) || row == table.end())
      keys.emplace_back("user");
    else
      keys.insert(keys.end(), {row->kc_source, row->stage_source, row->root_source});
  }
  return sources.marks(keys);
}

/// Keeps a short table with what stands over it.
void keepShort(Sheet& sheet, std::size_t first, const Rows& rows) {
  if (rows.size() <= kShortTable) sheet.keepTogether(first);
}

}  // namespace

void addBeds(Sheet& sheet, const Content& content, SourceList& sources) {
  const auto& beds = content.project.water->beds;
  if (beds.empty()) return;
  Rows rows;
  for (std::size_t k = 0; k < beds.size(); ++k)
    rows.push_back(bedRow(beds[k], content.plan.water->beds.at(k), content.format));
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Beds"));
  sheet.paragraph(
      Text::tr("Net need: what the crop uses and rain does not bring. Drawn: net need over the share "
               "that reaches the roots (%1).")
          .arg(efficiencySources(beds, sources)));
  sheet.table({{Text::tr("Crop, season"), 0.24},
               {Text::tr("Watered by, reaches the roots"), 0.24},
               {Text::tr("Area"), 0.13, CellAlign::right},
               {Text::tr("Crop use, net need"), 0.13, CellAlign::right},
               {Text::tr("Drawn in a year"), 0.14, CellAlign::right},
               {Text::tr("Peak in a day"), 0.12, CellAlign::right}},
              rows);
  keepShort(sheet, first, rows);
}

void addCrops(Sheet& sheet, const Content& content, SourceList& sources) {
  const core::Water& water = *content.project.water;
  if (water.beds.empty()) return;
  Rows rows;
  std::set<std::tuple<std::string, int, int>> told;  // a crop planted on one day is told once
  for (const core::Bed& bed : water.beds) {
    if (told.emplace(bed.crop, bed.plant_month, bed.plant_day).second) rows.push_back(cropRow(bed, content));
  }
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Crops"));
  sheet.paragraph(Text::tr("Kc: use of the crop over ET0. p: share of the water in the root zone that may be "
                           "used before the crop suffers. Sources: %1; Kc for this climate, daily use and "
                           "root zone: %2, eq. 62, 65, 66 and 82 to 85.")
                      .arg(cropSources(water, sources), sources.mark("fao56")));
  sheet.table({{Text::tr("Crop"), 0.2},
               {Text::tr("Kc: first, mid, end"), 0.18},
               {Text::tr("Kc for this climate"), 0.18},
               {Text::tr("Stages, days"), 0.19},
               {Text::tr("Height, roots"), 0.17, CellAlign::right},
               {Text::tr("p"), 0.08, CellAlign::right}},
              rows);
  keepShort(sheet, first, rows);
}

void addAnimals(Sheet& sheet, const Content& content, SourceList& sources) {
  const auto& herds = content.project.water->animals;
  if (herds.empty()) return;
  Rows rows;
  for (const core::Herd& herd : herds) {
    const core::Figure& usual = core::water::need(herd.kind);
    rows.push_back({words::figureName(usual.key), valueOf("water.animals[].head", herd.head, content.format),
                    valueOf("water.animals[].l_per_head_day", herd.l_per_head_day.value_or(usual.typical),
                            content.format),
                    sources.mark(herd.l_per_head_day ? "user" : std::string_view(usual.source))});
  }
  sheet.heading(Text::tr("Animals"));
  sheet.table({{Text::tr("Animal"), 0.4},
               {Text::tr("How many"), 0.18, CellAlign::right},
               {Text::tr("Each drinks"), 0.26, CellAlign::right},
               {Text::tr("Source"), 0.16, CellAlign::right}},
              rows);
}

}  // namespace ui::handouts
