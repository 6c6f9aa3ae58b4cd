#include "ui/drawings/ground_drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/ground_words.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::PlatformLevel;
using core::Unit;
using core::site::BenchPeg;
using core::site::PlatformChoice;
using core::site::SitePlan;
using Rows = std::vector<std::vector<Cell>>;

constexpr DrawingHeight kBesideText{75, 150};
constexpr double kFillLayer_m = 0.15;                          // common practice, no source
constexpr double kLeastShown_m = 0.005, kLeastFill_m3 = 0.05;  // less is shown as nothing

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

QString cubicMetres(double value, const Formatter& format) {
  return format.quantity(value, Unit::cubic_metre, 1);
}

std::string_view tokenOf(PlatformLevel level_by) {
  switch (level_by) {
    case PlatformLevel::natural_ground:
      return "natural_ground";
    case PlatformLevel::balanced:
      return "balanced";
    case PlatformLevel::given:
      break;
  }
  return "given";
}

/// Natural ground at a corner, told from the platform.
QString groundAt(const BenchPeg& corner, const Formatter& format) {
  if (std::abs(corner.dig_m) < kLeastShown_m) return Text::tr("level with the platform");
  const QString height = metres(std::abs(corner.dig_m), format);
  return (corner.dig_m > 0 ? Text::tr("%1 above the platform") : Text::tr("%1 below the platform"))
      .arg(height);
}

QString workAt(const BenchPeg& corner, const Formatter& format) {
  if (std::abs(corner.dig_m) < kLeastShown_m) return Text::tr("nothing");
  const QString height = metres(std::abs(corner.dig_m), format);
  return (corner.dig_m > 0 ? Text::tr("dig down %1") : Text::tr("fill up %1")).arg(height);
}

/// Where the face out from a corner ends.
QString daylightAt(const BenchPeg& daylight, const Formatter& format) {
  const QString pattern =
      daylight.kind == "daylight_cut" ? Text::tr("%1: cut, %2 out") : Text::tr("%1: fill, %2 out");
  return pattern.arg(QString::fromStdString(daylight.id), metres(daylight.from_corner_m, format));
}

/// A row a corner, with the peg of its face, which follows it in the list.
Rows pegRows(const std::vector<BenchPeg>& pegs, const Formatter& format) {
  Rows rows;
  for (const BenchPeg& peg : pegs) {
    if (peg.kind != "platform_corner") {
      rows.back().back() = daylightAt(peg, format);
      continue;
    }
    rows.push_back(
        {QString::fromStdString(peg.id), groundAt(peg, format), workAt(peg, format), QStringLiteral("–")});
    rows.back()[0].strong = rows.back()[2].strong = true;
  }
  return rows;
}

void addPegs(Sheet& sheet, const Content& content) {
  const auto& pegs = content.plan.site.pegs;
  if (pegs.empty()) return;
  sheet.heading(Text::tr("Pegs of the platform"));
  sheet.paragraph(
      Text::tr("A peg P is a corner of the platform. Heights are told from the finished platform, which the "
               "rim of the tank is level with. A peg Q stands straight out from the corner of its number, "
               "where the face of the cut or the fill meets the ground."));
  sheet.table({{Text::tr("Peg"), 0.1},
               {Text::tr("Ground there"), 0.34},
               {Text::tr("What to do"), 0.24},
               {Text::tr("Where the face ends"), 0.32}},
              pegRows(pegs, content.format));
}

std::vector<Cell> choiceRow(const PlatformChoice& choice, bool is_chosen, const Formatter& format) {
  const QString name = words::choiceLabel("site.platform.level_by", tokenOf(choice.level_by));
  std::vector<Cell> row{is_chosen ? name + u'\n' + Text::tr("(chosen)") : name,
                        words::overMiddle(choice.over_middle_m, format), cubicMetres(choice.cut_m3, format),
                        cubicMetres(choice.fill_m3, format), metres(choice.cover_m, format)};
  for (Cell& cell : row) cell.strong = is_chosen;
  return row;
}

void addChoices(Sheet& sheet, const Content& content) {
  const SitePlan& site = content.plan.site;
  if (site.choices.empty()) return;
  Rows rows;
  for (const PlatformChoice& choice : site.choices) {
    const bool is_chosen = choice.level_by == content.project.site.platform.level_by;
    rows.push_back(choiceRow(choice, is_chosen, content.format));
  }
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("At which level the platform can lie"));
  sheet.table({{Text::tr("How the level is found"), 0.24},
               {Text::tr("The platform lies"), 0.33},
               {Text::tr("Cut"), 0.13, CellAlign::right},
               {Text::tr("Fill"), 0.13, CellAlign::right},
               {Text::tr("Ground over the pit"), 0.17, CellAlign::right}},
              rows);
  sheet.paragraph(
      Text::tr("Ground over the pit: natural ground over floor and walls of the pit where it is least. Less "
               "than nothing means that part of the tank stands on fill."));
  sheet.keepTogether(first);
}

void addTopsoil(Sheet& sheet, const SitePlan& site) {
  if (site.topsoil_m3 <= 0) return;
  sheet.task(Text::tr("Topsoil is kept apart: never under the fill, never in the plaster."));
}

/// Common practice, no source.
void addFilling(Sheet& sheet, const SitePlan& site, const Formatter& format) {
  if (!site.bench || site.bench->fill_m3 < kLeastFill_m3) return;
  sheet.task(Text::tr("Cut steps into the ground under the fill, so that it cannot slide."));
  sheet.task(
      Text::tr("Fill in layers of about %1. Break clods, take out roots and straw; the ground should be "
               "damp enough to hold together when pressed in the fist.")
          .arg(metres(kFillLayer_m, format)));
  sheet.task(
      Text::tr("Ram each layer until the rammer leaves hardly a mark, then bring the next. Begin at the "
               "foot and keep each layer level."));
  sheet.task(Text::tr("Never dump fill down the slope from above."));
  sheet.paragraph(Text::tr("Steps, layers and ramming: %1.").arg(words::sourceText("common_practice")));
}

void addSpoil(Sheet& sheet, const SitePlan& site, const Formatter& format) {
  sheet.task(
      Text::tr("The toe of every heap stays %1 or more back from the pit edge (29 CFR 1926.651(j)(2)).")
          .arg(metres(words::toShownStep(site.setback_m, Unit::metre, 2, format, words::Rounding::up),
                      format)));
}

void addWork(Sheet& sheet, const Content& content) {
  const SitePlan& site = content.plan.site;
  sheet.heading(Text::tr("Earth: how to work it"));
  addTopsoil(sheet, site);
  addFilling(sheet, site, content.format);
  addSpoil(sheet, site, content.format);
}

void addAnswers(Sheet& sheet, const Content& content) {
  for (const QString& answer : words::groundAnswers(content.project, content.plan, content.format))
    sheet.paragraph(answer);
}

}  // namespace

void buildGround(Sheet& sheet, const Content& content) {
  const auto draw = [&content](QPainter& painter, const QRectF& box) {
    drawings::drawGroundPlan(painter, box, content.plan, content.format, {});
  };
  if (content.plan.site.has_relief) {
    sheet.drawing(sheet.height(), draw);
    addAnswers(sheet, content);
    addPegs(sheet, content);
    addChoices(sheet, content);
    addWork(sheet, content);
    return;
  }
  Sheet below({sheet.width(), sheet.height()});
  below.space(3);
  addAnswers(below, content);
  addWork(below, content);
  addAbove(sheet, below, kBesideText, draw);
}

}  // namespace ui::handouts
