#include "app/plan_summary.h"

#include "app/text_table.h"
#include "ui/drawings/drawings.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace app {
namespace {

using core::Unit;
using ui::Formatter;
namespace words = ui::words;

struct Summary {
  Q_DECLARE_TR_FUNCTIONS(Summary)
};

QString section(const QString& title, const TextTable& table) {
  return table.isEmpty() ? QString() : u'\n' + title + u'\n' + table.text();
}

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

QString cubicMetres(double value, const Formatter& format) {
  return format.quantity(value, Unit::cubic_metre, 2);
}

QString heading(const core::Project& project) {
  QStringList names;
  for (const std::string& text : {project.title, project.place}) {
    if (!text.empty()) names << QString::fromStdString(text);
  }
  if (names.isEmpty()) names << Summary::tr("Farm water tank");
  return names.join(QStringLiteral(", ")) + u'\n';
}

QString holds(const core::TankFigures& tank, const Formatter& format) {
  TextTable table;
  table.add({Summary::tr("to the rim"), format.litres(tank.brim_volume_m3)});
  table.add({Summary::tr("to the overflow level"), format.litres(tank.full_volume_m3)});
  table.add({Summary::tr("usable above the dead depth"), format.litres(tank.usable_volume_m3)});
  return section(Summary::tr("Holds"), table);
}

QString sizes(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const bool is_round = project.tank.shape == core::Shape::round;
  const auto row = [&](const QString& name, double length_m, double width_m) {
    const QString length = metres(length_m, format);
    return QStringList{name, is_round ? length : length + QStringLiteral(" x ") + metres(width_m, format)};
  };
  const core::TankFigures& t = plan.tank;
  const auto& e = plan.earthwork;
  TextTable table;
  table.add(row(Summary::tr("clear, at the finished floor"), t.clear_floor_length_m, t.clear_floor_width_m));
  table.add(row(Summary::tr("clear, at the rim"), t.clear_rim_length_m, t.clear_rim_width_m));
  table.add({Summary::tr("clear depth, floor to rim"), metres(t.depth_m, format)});
  table.add(row(Summary::tr("pit, at the ground"), e.pit_top_length_m, e.pit_top_width_m));
  table.add(row(Summary::tr("pit, at its floor"), e.pit_floor_length_m, e.pit_floor_width_m));
  table.add({Summary::tr("pit depth below the ground"), metres(e.pit_depth_m, format)});
  table.add({Summary::tr("earth dug, as it lies"), cubicMetres(e.pit_volume_m3, format)});
  if (e.spoil_loose_m3) {
    table.add({Summary::tr("spoil, loose"), cubicMetres(*e.spoil_loose_m3, format)});
  }
  const QString title = is_round ? Summary::tr("Sizes (diameters)") : Summary::tr("Sizes (length x width)");
  return section(title, table);
}

QString layers(const core::Plan& plan, const Formatter& format) {
  TextTable table;
  for (const core::geometry::Layer& layer : plan.layers) {
    table.add({words::layerName(layer.id), ui::drawings::thicknessText(layer.thickness_m, format),
               cubicMetres(layer.volume_m3, format), format.quantity(layer.area_m2, Unit::square_metre, 1)});
  }
  return section(Summary::tr("Layers (thickness, volume, face)"), table);
}

QString materials(const core::Plan& plan, const Formatter& format) {
  TextTable table;
  for (const core::lining::Material& material : plan.quantities.materials) {
    table.add({words::materialName(material.id), words::amount(material.net, material.unit, format),
               words::amount(material.order, material.unit, format)});
  }
  return section(Summary::tr("Materials (net, order)"), table);
}

QString customaryBill(const core::Plan& plan, const Formatter& format) {
  if (!plan.quantities.customary) return {};
  const auto times = [&](double ratio) {
    return QString(QChar(0x00D7)) + QChar(QChar::Nbsp) + format.number(ratio, Unit::factor, 2);
  };
  TextTable table;
  for (const core::lining::BillLine& line : plan.quantities.customary->lines) {
    table.add({words::materialName(line.id), words::amount(line.customary, line.unit, format),
               words::amount(line.shell, line.unit, format), times(line.shell_ratio),
               words::amount(line.by_area, line.unit, format), times(line.by_area_ratio)});
  }
  return section(
      Summary::tr("Customary bill beside the computed one (customary; exact shells; area times thickness)"),
      table);
}

QString thicknesses(const std::vector<double>& coats_m, const Formatter& format) {
  QStringList list;
  for (const double thickness_m : coats_m) list << ui::drawings::thicknessText(thickness_m, format);
  return list.isEmpty() ? Summary::tr("no answer") : list.join(QStringLiteral(" + "));
}

QString mixes(const std::vector<core::Coat>& coats, const Formatter& format) {
  const auto part = [&](double value) { return format.number(value, Unit::part, 1); };
  QStringList list;
  for (const core::Coat& coat : coats)
    list << part(coat.soil) + u':' + part(coat.sand) + u':' + part(coat.cement);
  return list.isEmpty() ? Summary::tr("no answer") : list.join(QStringLiteral(" + "));
}

/// The three ways out when the customary cement does not agree with thickness and mix.
QString answers(const core::Plan& plan, const Formatter& format) {
  if (!plan.quantities.customary || !plan.quantities.customary->cement) return {};
  const core::lining::BillAnswers& a = *plan.quantities.customary->cement;
  TextTable table;
  table.add({Summary::tr("trust thickness and mix: cement"), words::amount(a.cement_kg, "kg", format),
             words::amount(a.cement_by_area_kg, "kg", format)});
  table.add({Summary::tr("trust cement and mix: thickness of the coats"), thicknesses(a.thickness_m, format),
             thicknesses(a.thickness_by_area_m, format)});
  table.add({Summary::tr("trust cement and thickness: soil:sand:cement"), mixes(a.mix, format),
             mixes(a.mix_by_area, format)});
  return section(Summary::tr("Which to trust (exact shells; area times thickness)"), table);
}

QString labour(const core::works::Works& works, const Formatter& format) {
  TextTable table;
  for (const core::works::Labour& l : works.labour) {
    const QString range = Summary::tr("%1 to %2")
                              .arg(format.number(l.low_days, Unit::person_day, 1),
                                   format.number(l.high_days, Unit::person_day, 1));
    table.add({words::taskName(l.task), format.quantity(l.days, Unit::person_day, 1), range,
               words::skillName(l.skill)});
  }
  return section(Summary::tr("Labour (at the rate used, range, who)"), table);
}

QString schedule(const core::works::Works& works, const Formatter& format) {
  TextTable table;
  for (const core::works::Task& task : works.schedule) {
    const bool is_one_day = task.start == task.finish;
    table.add({words::taskName(task.id), format.date(task.start),
               is_one_day ? QString() : format.date(task.finish),
               task.crew > 0 ? format.quantity(task.crew, Unit::person, 0) : QString()});
  }
  return section(Summary::tr("Order of work (first day, last day, crew)"), table);
}

QString water(const core::water::WaterPlan& plan, const Formatter& format) {
  QString out = u'\n' + Summary::tr("Will the water last") + QStringLiteral("\n  ") +
                words::waterHeadline(plan, format) + u'\n';
  for (const QString& sentence : words::waterAnswers(plan, format))
    out += QStringLiteral("  ") + sentence + u'\n';
  return out;
}

QString sentences(const QString& title, const QStringList& all) {
  QString out;
  for (const QString& sentence : all) out += QStringLiteral("  ") + sentence + u'\n';
  return out.isEmpty() ? out : u'\n' + title + u'\n' + out;
}

QString works(const core::works::Works& works, const Formatter& format) {
  QString out = labour(works, format) + schedule(works, format);
  out += sentences(Summary::tr("Dates"), words::datesAnswers(works, format));
  out += sentences(Summary::tr("Coats in one go"), words::oneGoAnswers(works, format));
  if (works.filling) out += sentences(Summary::tr("First filling"), words::fillingAnswers(works, format));
  if (works.window) out += sentences(Summary::tr("Weather"), words::windowAnswers(works, format));
  return out;
}

QString bill(const core::Project& project, const core::cost::CostPlan& cost, const Formatter& format) {
  TextTable table;
  for (const core::cost::CostLine& line : cost.bill.lines) {
    const QString amount =
        line.amount ? words::money(*line.amount, project, format) : Summary::tr("no price");
    table.add(
        {words::priceItemName(line.item), words::costQuantity(line.quantity, line.unit, format), amount});
  }
  table.add(
      {Summary::tr("Carriage, together"), QString(), words::money(cost.bill.carriage, project, format)});
  table.add({Summary::tr("For what is not foreseen"), QString(),
             words::money(cost.bill.contingency, project, format)});
  table.add({Summary::tr("All together"), QString(), words::money(cost.bill.total, project, format)});
  return section(Summary::tr("Bill"), table) +
         sentences(Summary::tr("Money"), words::billAnswers(project, cost, format)) +
         sentences(Summary::tr("Linings by what they cost a year"),
                   words::liningAnswers(project, cost, format));
}

QString options(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  if (plan.options.size() < 2) return {};
  TextTable table;
  QStringList heads{QString()};
  for (const core::OptionResult& option : plan.options) heads << words::optionTitle(option);
  table.add(heads);
  for (const words::OptionRow& row : words::optionRows(project, plan.options, format))
    table.add(QStringList{row.name} + row.values);
  return section(Summary::tr("Options side by side"), table);
}

QString findings(const core::Plan& plan, const Formatter& format) {
  QString out;
  for (const core::Finding& finding : plan.findings) {
    out += QStringLiteral("  %1: %2\n")
               .arg(words::severityName(finding.severity), words::findingText(finding, format));
  }
  return out.isEmpty() ? out : u'\n' + Summary::tr("What to know") + u'\n' + out;
}

}  // namespace

QString planSummary(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  QString out = heading(project) + holds(plan.tank, format) + sizes(project, plan, format) +
                layers(plan, format) + materials(plan, format) + customaryBill(plan, format) +
                answers(plan, format);
  if (plan.works) out += works(*plan.works, format);
  if (plan.cost) out += bill(project, *plan.cost, format);
  if (plan.ranges)
    out += sentences(Summary::tr("How sure is it"), words::rangesAnswers(project, *plan.ranges, format));
  out += options(project, plan, format);
  if (plan.water) out += water(*plan.water, format);
  return out + findings(plan, format);
}

}  // namespace app
