#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/pictograms.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/symbols.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
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
  const auto row = [&](const QString& name, const QString& a, const QString& b) {
    return std::vector<Cell>{name, a, b};
  };
  std::vector<std::vector<Cell>> rows;
  rows.push_back(row(Text::tr("Cement"), f.quantity(whole.cement_kg, Unit::kilogram, 1),
                     f.quantity(half.cement_kg, Unit::kilogram, 1)));
  rows.push_back(row(Text::tr("Makes plaster"), volume(whole.yield_m3, f), volume(half.yield_m3, f)));
  rows.push_back(row(Text::tr("Covers at this thickness"), f.quantity(whole.covers_m2, Unit::square_metre, 1),
                     f.quantity(half.covers_m2, Unit::square_metre, 1)));
  rows.push_back(row(Text::tr("Batches for the whole coat"), f.integer(whole.count), f.integer(half.count)));
  for (Cell& cell : rows.back()) cell.strong = true;
  return rows;
}

/// How many of a vessel make the share of one ingredient in a batch of one bag, and of half a bag.
struct Count {
  Pictogram vessel;
  double number, half;
};

/// The counts of an ingredient in the reader's own box, pan or bucket, each beside its picture.
void addCounts(Sheet& sheet, const Pictogram& of, const std::array<Count, 3>& counts,
               const Formatter& format) {
  constexpr double kIcon = 12, kGap = 3;
  constexpr drawings::Lettering kNumber{4.4, true};
  const double pitch = (sheet.width() - kIcon) / static_cast<double>(counts.size());
  sheet.add({kIcon + 1.5, [=](QPainter& painter, QPointF at) {
               drawPictogram(painter, QRectF(at, QSizeF(kIcon, kIcon)), of.name());
               const double text = at.y() + (kIcon - lineHeight_mm(kNumber)) / 2;
               for (std::size_t k = 0; k < counts.size(); ++k) {
                 const double x = at.x() + kIcon + static_cast<double>(k) * pitch + 3 * kGap;
                 drawLines(painter, {x, text}, {k == 0 ? QStringLiteral("=") : Text::tr("or")}, kBody);
                 const double icon = x + 2.5 * kGap;
                 drawPictogram(painter, QRectF(icon, at.y(), kIcon, kIcon), counts[k].vessel.name());
                 const QString number = QStringLiteral("× ") + measure(counts[k].number, format);
                 const double after = icon + kIcon + 1.5;
                 drawLines(painter, {after, at.y()}, {number}, kNumber);
                 drawLines(painter, {after, at.y() + lineHeight_mm(kNumber) - 0.5},
                           {QStringLiteral("½: × ") + measure(counts[k].half, format)}, kBody);
               }
             }});
}

void addVessels(Sheet& sheet, const Batch& whole, const Batch& half, const Content& content) {
  const auto& l = content.project.lining;
  const auto litres = [&](double value) { return content.format.quantity(value, Unit::litre, 0); };
  sheet.paragraph(
      Text::tr("For 1 bag of cement, and below it for half a bag (½): boxes of %1, or pans of %2, or "
               "buckets of %3, level with the rim.")
          .arg(litres(l.gauge_box_l), litres(l.pan_l), litres(l.bucket_l)));
  if (whole.soil_m3 > 0)
    addCounts(sheet, "soil",
              {{{"gauge_box", whole.soil_boxes, half.soil_boxes},
                {"pan", whole.soil_pans, half.soil_pans},
                {"bucket", whole.soil_buckets, half.soil_buckets}}},
              content.format);
  if (whole.sand_m3 > 0)
    addCounts(sheet, "sand",
              {{{"gauge_box", whole.sand_boxes, half.sand_boxes},
                {"pan", whole.sand_pans, half.sand_pans},
                {"bucket", whole.sand_buckets, half.sand_buckets}}},
              content.format);
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
  addVessels(sheet, *whole, *half, content);
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
