#include "core/exchange/short_form.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/qr_code.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/symbols.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;

constexpr drawings::Lettering kAnswer{4.4, true};
constexpr int kMostBags = 40;
constexpr double kLeastPicture = 25, kMostPicture = 62;
constexpr double kLeastCode = 28, kCodeGap = 4;

struct Fact {
  QString what, answer;
};

QString size(double length_m, double width_m, const core::Plan& plan, const Formatter& format) {
  const QString length = format.quantity(length_m, Unit::metre, 2);
  if (plan.geometry.outline().isCircle()) return Text::tr("%1 across").arg(length);
  return Text::tr("%1 × %2", "length by width").arg(length, format.quantity(width_m, Unit::metre, 2));
}

const core::lining::Material* material(const core::Plan& plan, const char* id) {
  const auto& all = plan.quantities.materials;
  const auto found = std::ranges::find(all, id, &core::lining::Material::id);
  return found == all.end() ? nullptr : &*found;
}

std::vector<Fact> tankFacts(const Content& content) {
  const auto& [project, plan, format] = content;
  const auto& tank = plan.tank;
  const auto& pit = plan.earthwork;
  return {
      {Text::tr("Holds when full"), format.litres(tank.full_volume_m3)},
      {Text::tr("Can be drawn from it"), format.litres(tank.usable_volume_m3)},
      {Text::tr("Clear size at the floor"),
       size(tank.clear_floor_length_m, tank.clear_floor_width_m, plan, format)},
      {Text::tr("Clear size at the rim"),
       size(tank.clear_rim_length_m, tank.clear_rim_width_m, plan, format)},
      {Text::tr("Pit to dig, at the ground"), size(pit.pit_top_length_m, pit.pit_top_width_m, plan, format)},
      {Text::tr("Pit depth to dig"), format.quantity(pit.pit_depth_m, Unit::metre, 2)},
      {Text::tr("Clear depth when finished"), format.quantity(tank.depth_m, Unit::metre, 2)}};
}

QString bagText(const Content& content) {
  const auto* bags = material(content.plan, "cement_bags");
  const QString kg = content.format.quantity(content.project.lining.cement_bag_kg, Unit::kilogram, 0);
  return Text::tr("%1 of %2", "so many bags of so many kilograms")
      .arg(words::amount(bags->order, bags->unit, content.format), kg);
}

void addWorkFacts(std::vector<Fact>& facts, const Content& content) {
  const auto& [project, plan, format] = content;
  if (!plan.works || plan.works->schedule.empty()) return;
  facts.push_back({Text::tr("Work, all together"),
                   format.quantity(std::ceil(plan.works->person_days), Unit::person_day, 0)});
  facts.push_back({Text::tr("Work starts"), format.date(plan.works->schedule.front().start)});
  for (const auto& task : plan.works->schedule) {
    if (task.id == "fill_by")
      facts.push_back({Text::tr("Start filling no later than"), format.date(task.finish)});
  }
}

/// Two boxes side by side, each with a question and a big answer.
void addFacts(Sheet& sheet, const std::vector<Fact>& facts) {
  const double wide = (sheet.width() - 3) / 2, high = lineHeight_mm(kBody) + lineHeight_mm(kAnswer) + 3;
  for (std::size_t k = 0; k < facts.size(); k += 2) {
    const std::vector<Fact> row(facts.begin() + static_cast<std::ptrdiff_t>(k),
                                facts.begin() + static_cast<std::ptrdiff_t>(std::min(facts.size(), k + 2)));
    sheet.add(
        {high + 1.5, [=](QPainter& painter, QPointF at) {
           for (std::size_t i = 0; i < row.size(); ++i) {
             const QPointF corner = at + QPointF(0.35 + static_cast<double>(i) * (wide + 2.3), 0.35);
             painter.setPen(line(0.7));
             painter.setBrush(Qt::NoBrush);
             painter.drawRect(QRectF(corner, QSizeF(wide, high - 0.7)));
             drawLines(painter, corner + QPointF(2.5, 0.8), {elided(row[i].what, kBody, wide - 5)}, kBody);
             const auto big = fitting(row[i].answer, kAnswer, wide - 5);
             drawLines(painter, corner + QPointF(2.5, 0.8 + lineHeight_mm(kBody)), {row[i].answer}, big);
           }
         }});
  }
}

void addBagPicture(Sheet& sheet, const Content& content) {
  const auto* bags = material(content.plan, "cement_bags");
  if (!bags || bags->order < 1) return;
  const int count = static_cast<int>(std::lround(bags->order));
  int each = 1;
  for (const int next : {2, 5, 10, 20, 50, 100, 200, 500, 1000}) {
    if (count > kMostBags * each) each = next;
  }
  sheet.paragraph(each == 1 ? Text::tr("Cement to buy: one picture for each bag.")
                            : Text::tr("Cement to buy: one picture for every %1 bags, the last may be part.")
                                  .arg(content.format.integer(each)));
  addBags(sheet, {(count + each - 1) / each, each});
}

QString shortForm(const Content& content) {
  return QString::fromStdString(core::exchange::shortForm(content.project));
}

/// The design as a line to type; never turned about in a text that is written from the right.
void addShortForm(Sheet& sheet, const Content& content) {
  sheet.paragraph(Text::tr("The design in short form, to scan or to type into the program:"));
  for (const QString& text : wrapped(shortForm(content), kBody, sheet.width()))
    sheet.paragraph(isolated(text));
}

enum class Bags { pictured, told };

void addAnswers(Sheet& sheet, const Content& content, Bags bags) {
  sheet.space(2);
  std::vector<Fact> facts = tankFacts(content);
  facts.push_back({Text::tr("Cement to buy"), bagText(content)});
  addWorkFacts(facts, content);
  addFacts(sheet, facts);
  sheet.space(1);
  if (content.plan.water) sheet.paragraph(words::waterHeadline(*content.plan.water, content.format), kStrong);
  if (bags == Bags::pictured) addBagPicture(sheet, content);
  if (!content.plan.works) {
    sheet.paragraph(Text::tr(
        "No crew and dates were given, so these sheets have no work calendar and no wetting calendar."));
  }
  sheet.paragraph(Text::tr(
      "Clear sizes are what the water fills. Pit sizes are what is dug; the lining takes up the rest."));
  addShortForm(sheet, content);
  if (const QString word = overrideText(content); !word.isEmpty()) sheet.paragraph(word, kStrong);
  if (isStopped(content)) {
    sheet.paragraph(Text::tr("The construction sheets are marked NOT FOR CONSTRUCTION: see the findings."),
                    kStrong);
  }
}

}  // namespace

void buildCover(Sheet& sheet, const Content& content) {
  const QString code = shortForm(content);
  const double side = std::max(kLeastCode, drawings::leastQrSide_mm(code));
  const double least = std::max(kLeastPicture, side);
  Sheet answers({sheet.width(), sheet.height()});
  addAnswers(answers, content, Bags::pictured);
  if (answers.used() + least > sheet.height()) {  // long words: the bags are on the sheet of materials too
    answers = Sheet({sheet.width(), sheet.height()});
    addAnswers(answers, content, Bags::told);
  }
  const double high = std::clamp(sheet.height() - answers.used(), least, kMostPicture);
  sheet.drawing(high, [&content, code, side](QPainter& painter, const QRectF& box) {
    drawings::drawSectionPicture(painter, box.adjusted(0, 0, -side - kCodeGap, 0), content.plan, {});
    const QRectF room(box.right() - side, box.top(), side, side);
    if (!drawings::drawQr(painter, room, code)) throw std::logic_error("no room for the code of the design");
  });
  for (const Block& block : answers.blocks()) sheet.add(block);
}

}  // namespace ui::handouts
