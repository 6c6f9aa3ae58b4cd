#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <cmath>
#include <optional>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using Rows = std::vector<std::vector<Cell>>;

QString percent(double value, const Formatter& format) {
  return format.quantity(value, Unit::percent, 0);
}

QString factor(std::optional<double> value, const Formatter& format) {
  return value && std::isfinite(*value) ? QStringLiteral("× ") + format.number(*value, Unit::factor, 2)
                                        : Text::tr("no answer");
}

QString mixText(const core::Coat& coat, const Formatter& format) {
  const auto part = [&](double parts) {
    return format.number(parts, Unit::part, std::abs(parts - std::round(parts)) < 0.005 ? 0 : 2);
  };
  return QStringLiteral("%1 : %2 : %3").arg(part(coat.soil), part(coat.sand), part(coat.cement));
}

Rows materialRows(const Content& content) {
  Rows rows;
  for (const auto& m : content.plan.quantities.materials) {
    rows.push_back({words::materialName(m.id), words::amount(m.net, m.unit, content.format),
                    words::amount(m.order, m.unit, content.format), Cell::box(), Cell::box()});
    rows.back()[2].strong = true;
  }
  return rows;
}

void addReckoning(Sheet& sheet, const Content& content) {
  const core::Project in_force = core::works::inForce(content.project, content.plan.calibration);
  const auto& l = in_force.lining;
  const auto& f = content.format;
  sheet.heading(Text::tr("How each is reckoned"));
  sheet.paragraph(Text::tr("Net: each coat's exact shell, taken from the geometry, times %1 loose parts for "
                           "one of placed plaster, shared out by "
                           "the parts of its mix. Cement weighs %2 loose.")
                      .arg(f.number(l.dry_to_wet, Unit::factor, 2),
                           f.quantity(l.cement_loose_kg_m3, Unit::kg_per_m3, 0)));
  sheet.paragraph(
      Text::tr("Order: net with %1 for uneven dug faces (stone bed and coat 1) and %2 waste; soil and sand "
               "with %3 sieving loss, damp "
               "sand with %4 bulking; loose stone is %5 times the compacted bed; cement in whole bags of %6.")
          .arg(percent(l.unevenness_percent, f), percent(l.waste_percent, f),
               percent(l.sieving_loss_percent, f), percent(l.sand_bulking_percent, f),
               f.number(l.stone_loose_factor, Unit::factor, 2),
               f.quantity(l.cement_bag_kg, Unit::kilogram, 0)));
  sheet.paragraph(Text::tr("Water: %1 for mixing, %2 for wetting each coat. Sacks: %3 each, %4 spare.")
                      .arg(f.quantity(l.mixing_water_l_per_m3, Unit::litre_per_m3, 0),
                           f.quantity(l.curing_water_l_per_m2_day, Unit::litre_per_m2_day, 0),
                           f.quantity(l.sack_covers_m2, Unit::square_metre, 1),
                           percent(l.sack_spare_percent, f)));
}

void addLayers(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Layers"));
  Rows rows;
  for (const auto& layer : content.plan.layers) {
    rows.push_back({words::layerName(layer.id), drawings::thicknessText(layer.thickness_m, content.format),
                    content.format.quantity(layer.area_m2, Unit::square_metre, 1),
                    content.format.quantity(layer.volume_m3, Unit::cubic_metre, 3)});
  }
  sheet.table({{Text::tr("Layer"), 0.34},
               {Text::tr("Thickness"), 0.22, CellAlign::right},
               {Text::tr("Face"), 0.22, CellAlign::right},
               {Text::tr("Volume"), 0.22, CellAlign::right}},
              rows);
}

Rows billRows(const core::lining::BillComparison& bill, const Formatter& format) {
  Rows rows;
  for (const auto& l : bill.lines) {
    rows.push_back({words::materialName(l.id), words::amount(l.customary, l.unit, format),
                    words::amount(l.shell, l.unit, format), factor(l.shell_ratio, format),
                    words::amount(l.by_area, l.unit, format), factor(l.by_area_ratio, format)});
  }
  return rows;
}

QString thicknesses(const std::vector<double>& coats, const Formatter& format) {
  QStringList parts;
  for (const double t : coats) parts << drawings::thicknessText(t, format);
  return parts.isEmpty() ? Text::tr("no answer") : parts.join(QStringLiteral(" + "));
}

QString mixes(const std::vector<core::Coat>& coats, const Formatter& format) {
  QStringList parts;
  for (const core::Coat& coat : coats) parts << mixText(coat, format);
  return parts.isEmpty() ? Text::tr("no answer") : parts.join(u'\n');
}

void addAnswers(Sheet& sheet, const core::lining::BillAnswers& a, const Formatter& format) {
  sheet.heading(Text::tr("Trust two, and the third follows"));
  const auto kg = [&](double value) { return format.quantity(value, Unit::kilogram, 0); };
  sheet.table(
      {{Text::tr("If these are right"), 0.26},
       {Text::tr("then"), 0.24},
       {Text::tr("by exact shells"), 0.25},
       {Text::tr("by area × thickness"), 0.25}},
      {{Text::tr("thickness and mix"), Text::tr("cement is"), kg(a.cement_kg), kg(a.cement_by_area_kg)},
       {Text::tr("cement and mix"), Text::tr("coats are"),
        thicknesses(a.thickness_m, format) + u'\n' + factor(a.thickness_factor, format),
        thicknesses(a.thickness_by_area_m, format) + u'\n' + factor(a.thickness_by_area_factor, format)},
       {Text::tr("cement and thickness"), Text::tr("mixes are, soil : sand : cement"),
        mixes(a.mix, format) + u'\n' + factor(a.filler_factor, format),
        mixes(a.mix_by_area, format) + u'\n' + factor(a.filler_by_area_factor, format)}});
}

}  // namespace

void buildMaterials(Sheet& sheet, const Content& content) {
  sheet.table({{Text::tr("Material"), 0.34},
               {Text::tr("Net"), 0.2, CellAlign::right},
               {Text::tr("Order"), 0.2, CellAlign::right},
               {Text::tr("Bought"), 0.13, CellAlign::centre},
               {Text::tr("On site"), 0.13, CellAlign::centre}},
              materialRows(content));
  addLayers(sheet, content);
  addReckoning(sheet, content);
}

void buildBill(Sheet& sheet, const Content& content) {
  const auto& bill = *content.plan.quantities.customary;
  const auto& format = content.format;
  sheet.paragraph(
      Text::tr("The customary bill as it was given stands beside what thicknesses and mixes need. Nothing "
               "has been scaled or averaged; "
               "all figures are net, without waste. Ratio: computed over customary."));
  sheet.table({{Text::tr("Material"), 0.2},
               {Text::tr("Customary"), 0.18, CellAlign::right},
               {Text::tr("Exact shells"), 0.18, CellAlign::right},
               {Text::tr("Ratio"), 0.13, CellAlign::right},
               {Text::tr("Area × thickness"), 0.18, CellAlign::right},
               {Text::tr("Ratio"), 0.13, CellAlign::right}},
              billRows(bill, format));
  sheet.paragraph(
      Text::tr("Exact shells: the solid between the outer and inner face of each coat. Area × thickness: the "
               "clear inside face times the "
               "thickness, as reckoned on paper; it leaves out what the corners add."));
  if (bill.bill_soil_per_sand) {
    sheet.paragraph(Text::tr("Soil for one part of sand: %1 in the bill, %2 in the mixes.")
                        .arg(format.number(*bill.bill_soil_per_sand, Unit::factor, 2),
                             format.number(bill.mix_soil_per_sand, Unit::factor, 2)));
  }
  if (bill.cement) addAnswers(sheet, *bill.cement, format);
  sheet.paragraph(
      Text::tr("Which two to trust is for the people on site to settle, by measuring a finished coat and "
               "counting the bags that went into it."));
}

}  // namespace ui::handouts
