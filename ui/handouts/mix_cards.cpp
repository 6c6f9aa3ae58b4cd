#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/symbols.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::lining::Batch;

const Batch* batchFor(const core::Plan& plan, int coat, double bags) {
  for (const Batch& batch : plan.quantities.batches) {
    if (batch.coat == coat && batch.bags == bags) return &batch;
  }
  return nullptr;
}

QString parts(double value, const Formatter& format) {
  return format.number(value, Unit::part, std::abs(value - std::round(value)) < 0.005 ? 0 : 1);
}

QString measure(double value, const Formatter& format) {
  return format.number(value, Unit::none, 1);
}

QString volume(double value, const Formatter& format) {
  return format.quantity(value, Unit::cubic_metre, 3);
}

std::vector<std::vector<Cell>> cardRows(const Batch& whole, const Batch& half, const Content& content) {
  const auto& f = content.format;
  const auto& l = content.project.lining;
  const auto row = [&](const QString& name, const QString& a, const QString& b) {
    return std::vector<Cell>{name, a, b};
  };
  const auto litres = [&](double value) { return f.quantity(value, Unit::litre, 0); };
  const QString boxes = Text::tr("gauge boxes of %1").arg(litres(l.gauge_box_l));
  const QString pans = Text::tr("or pans of %1").arg(litres(l.pan_l));
  const QString buckets = Text::tr("or buckets of %1").arg(litres(l.bucket_l));
  std::vector<std::vector<Cell>> rows;
  rows.push_back(row(Text::tr("Cement"), f.quantity(whole.cement_kg, Unit::kilogram, 1),
                     f.quantity(half.cement_kg, Unit::kilogram, 1)));
  if (whole.soil_m3 > 0) {
    rows.push_back(
        row(Text::tr("Soil: %1").arg(boxes), measure(whole.soil_boxes, f), measure(half.soil_boxes, f)));
    rows.push_back(row(pans, measure(whole.soil_pans, f), measure(half.soil_pans, f)));
    rows.push_back(row(buckets, measure(whole.soil_buckets, f), measure(half.soil_buckets, f)));
  }
  if (whole.sand_m3 > 0) {
    rows.push_back(
        row(Text::tr("Sand: %1").arg(boxes), measure(whole.sand_boxes, f), measure(half.sand_boxes, f)));
    rows.push_back(row(pans, measure(whole.sand_pans, f), measure(half.sand_pans, f)));
    rows.push_back(row(buckets, measure(whole.sand_buckets, f), measure(half.sand_buckets, f)));
  }
  rows.push_back(row(Text::tr("Makes plaster"), volume(whole.yield_m3, f), volume(half.yield_m3, f)));
  rows.push_back(row(Text::tr("Covers at this thickness"), f.quantity(whole.covers_m2, Unit::square_metre, 1),
                     f.quantity(half.covers_m2, Unit::square_metre, 1)));
  rows.push_back(row(Text::tr("Batches for the whole coat"), f.integer(whole.count), f.integer(half.count)));
  for (Cell& cell : rows.back()) cell.strong = true;
  return rows;
}

void addCrew(Sheet& sheet, const Content& content, int coat) {
  if (!content.plan.works) return;
  const auto& format = content.format;
  for (const auto& check : content.plan.works->coat_checks) {
    if (check.coat != coat) continue;
    sheet.paragraph(
        Text::tr("Place the coat in one go, within %1: %2 people needed, %3 planned; masons among "
                 "them: %4 needed, %5 planned.")
            .arg(format.quantity(check.hours, Unit::hour, 1), format.integer(check.needed),
                 format.integer(check.people), format.integer(check.masons_needed),
                 format.integer(check.masons)),
        check.is_enough() ? kBody : kStrong);
  }
}

void addCard(Sheet& sheet, const Content& content, const core::lining::CoatQuantities& coat) {
  const auto& f = content.format;
  const core::Coat& mix = content.project.lining.coats.at(static_cast<std::size_t>(coat.coat - 1));
  const Batch* whole = batchFor(content.plan, coat.coat, 1);
  const Batch* half = batchFor(content.plan, coat.coat, 0.5);
  if (!whole || !half) return;
  sheet.heading(Text::tr("Coat %1: %2 thick on %3")
                    .arg(f.integer(coat.coat), drawings::thicknessText(coat.thickness_m, f),
                         f.quantity(coat.face_m2, Unit::square_metre, 1)));
  sheet.paragraph(Text::tr("%1 soil : %2 sand : %3 cement, by loose volume")
                      .arg(parts(mix.soil, f), parts(mix.sand, f), parts(mix.cement, f)),
                  kStrong);
  addMixParts(sheet,
              {{mix.soil, Text::tr("soil")}, {mix.sand, Text::tr("sand")}, {mix.cement, Text::tr("cement")}});
  sheet.table({{Text::tr("For one batch"), 0.5},
               {Text::tr("1 bag of cement"), 0.25, CellAlign::right},
               {Text::tr("half a bag"), 0.25, CellAlign::right}},
              cardRows(*whole, *half, content));
  sheet.paragraph(Text::tr(
      "Measure loose, level with the rim. Mix dry until one colour, then add clean water little by little."));
  addCrew(sheet, content, coat.coat);
  const Tally tally = tallyFor(whole->count);
  sheet.paragraph(tally.each == 1
                      ? Text::tr("Tick a box for each one-bag batch:")
                      : Text::tr("Tick a box for every %1 one-bag batches:").arg(f.integer(tally.each)));
  addTally(sheet, tally);
}

}  // namespace

void buildMixCards(Sheet& sheet, const Content& content) {
  for (const auto& coat : content.plan.quantities.coats) {
    if (coat.coat > 1) sheet.breakPage();
    addCard(sheet, content, coat);
  }
}

}  // namespace ui::handouts
