#include "ui/panels/figures.h"

#include "ui/text/money_words.h"
#include "ui/text/water_sizes.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QDate>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

using core::Unit;

const QChar kDash(0x2013);

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Figures)
};

struct Source {
  const core::Project& project;
  const core::Plan& plan;
  const Formatter& format;

  QString metres(double length_m) const { return format.quantity(length_m, Unit::metre, 2); }
  QString cubic(double volume_m3) const { return format.quantity(volume_m3, Unit::cubic_metre, 2); }
  QString square(double area_m2) const { return format.quantity(area_m2, Unit::square_metre, 2); }
  /// A round tank has a diameter, the others length and width.
  QString size(double length_m, double width_m) const {
    if (plan.geometry.outline().isCircle()) return Text::tr("diameter %1").arg(metres(length_m));
    return QStringLiteral("%1 × %2").arg(metres(length_m), metres(width_m));
  }
};

QString lines(const QStringList& list) {
  return list.join(QLatin1Char('\n'));
}

QString sourceLine(std::string_view key) {
  return Text::tr("Source: %1").arg(words::sourceText(key));
}

const core::lining::Material* material(const core::Plan& plan, std::string_view id) {
  const auto& all = plan.quantities.materials;
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& m) { return m.id == id; });
  return found == all.end() ? nullptr : &*found;
}

QString ordered(const Source& s, std::string_view id) {
  const core::lining::Material* m = material(s.plan, id);
  return m == nullptr ? QString(kDash) : words::amount(m->order, m->unit, s.format);
}

QString netAndOrder(const Source& s, std::string_view id) {
  const core::lining::Material* m = material(s.plan, id);
  if (m == nullptr) return {};
  return Text::tr("%1: net %2, to order %3")
      .arg(words::materialName(id), words::amount(m->net, m->unit, s.format),
           words::amount(m->order, m->unit, s.format));
}

Figure holds(const Source& s) {
  const auto& t = s.plan.tank;
  return {
      QStringLiteral("holds"), Text::tr("Holds, filled to the overflow"), s.format.litres(t.full_volume_m3),
      Text::tr("%1 to the rim").arg(s.format.litres(t.brim_volume_m3)),
      lines({Text::tr(
                 "Prismoidal formula: depth ÷ 6 × (floor + 4 × middle + surface), all clear inside areas."),
             Text::tr("Water depth %1, floor %2, water surface %3.")
                 .arg(s.metres(t.full_level_m), s.square(t.floor_m2), s.square(t.full_surface_m2)),
             sourceLine("exact")})};
}

Figure usable(const Source& s) {
  const auto& t = s.plan.tank;
  return {QStringLiteral("usable"), Text::tr("Usable water"), s.format.litres(t.usable_volume_m3), QString(),
          lines({Text::tr("Held to the overflow less what lies below the dead depth."),
                 Text::tr("%1 less %2 below %3.")
                     .arg(s.format.litres(t.full_volume_m3), s.format.litres(t.dead_volume_m3),
                          s.metres(t.dead_level_m)),
                 sourceLine("exact")})};
}

QString coatLine(const Source& s, const core::lining::CoatQuantities& coat) {
  return Text::tr("%1: shell %2, to mix %3, cement %4")
      .arg(words::layerName("coat_" + std::to_string(coat.coat)), s.cubic(coat.shell_m3),
           s.cubic(coat.placed_m3), s.format.quantity(coat.to_mix.cement_kg, Unit::kilogram, 0));
}

Figure cement(const Source& s) {
  const auto& lining = s.project.lining;
  QStringList how{
      Text::tr("Placed plaster × %1 loose ingredients, shared out by the parts of the mix; cement weighs %2.")
          .arg(s.format.number(lining.dry_to_wet, Unit::factor, 2),
               s.format.quantity(lining.cement_loose_kg_m3, Unit::kg_per_m3, 0))};
  for (const auto& coat : s.plan.quantities.coats) how << coatLine(s, coat);
  how << netAndOrder(s, "cement")
      << Text::tr("Unevenness %1 on coat 1, waste %2, whole bags.")
             .arg(s.format.quantity(lining.unevenness_percent, Unit::percent, 0),
                  s.format.quantity(lining.waste_percent, Unit::percent, 0))
      << sourceLine("dry_to_wet") << sourceLine("cpwd_density");
  return {QStringLiteral("cement"), Text::tr("Cement to order"), ordered(s, "cement_bags"),
          Text::tr("of %1 each").arg(s.format.quantity(lining.cement_bag_kg, Unit::kilogram, 0)), lines(how)};
}

Figure fillers(const Source& s) {
  QStringList how{Text::tr(
      "From the exact shells and the mixes, with waste, sieving loss and the bulking of damp sand.")};
  for (const char* id : {"soil", "sand", "stone"}) how << netAndOrder(s, id);
  how << sourceLine("dry_to_wet") << sourceLine("sand_bulking");
  return {
      QStringLiteral("fillers"), Text::tr("Soil, sand and stone to bring"), QString(),
      Text::tr("Soil %1\nSand %2\nStone %3").arg(ordered(s, "soil"), ordered(s, "sand"), ordered(s, "stone")),
      lines(how)};
}

Figure work(const Source& s) {
  Figure figure{QStringLiteral("work"), Text::tr("Work"), kDash, QString(),
                Text::tr("People and dates are not part of this project.")};
  if (!s.plan.works) return figure;
  QStringList how;
  for (const core::works::Labour& labour : s.plan.works->labour) {
    how << Text::tr("%1: %2 (%3 to %4)")
               .arg(words::taskName(labour.task), s.format.quantity(labour.days, Unit::person_day, 1),
                    s.format.number(labour.low_days, Unit::person_day, 1),
                    s.format.number(labour.high_days, Unit::person_day, 1));
    const QString from = sourceLine(labour.source);
    if (!how.contains(from)) how << from;
  }
  figure.value = s.format.quantity(std::ceil(s.plan.works->person_days), Unit::person_day, 0);
  figure.reckoning = lines(how);
  return figure;
}

Figure cost(const Source& s) {
  Figure figure{QStringLiteral("cost"), Text::tr("Cost, all together"), kDash, QString(),
                Text::tr("Money is not part of this project: see the tab Money.")};
  if (!s.plan.cost) return figure;
  const core::cost::Bill& bill = s.plan.cost->bill;
  const auto money = [&](double amount) { return words::money(amount, s.project, s.format); };
  QStringList how{Text::tr("Materials %1, labour %2, other %3, carriage %4, contingency %5.")
                      .arg(money(bill.materials), money(bill.labour), money(bill.other), money(bill.carriage),
                           money(bill.contingency)),
                  Text::tr("Paid %1, given %2.").arg(money(bill.cash), money(bill.own))};
  if (s.plan.cost->per_m3_stored)
    how << Text::tr("%1 for each cubic metre held.").arg(money(*s.plan.cost->per_m3_stored));
  if (!bill.missing.empty())
    how << Text::tr("Prices that are missing: %1. The sum is too small.")
               .arg(s.format.integer(int(bill.missing.size())));
  figure.value = bill.missing.empty() ? money(bill.total) : Text::tr("over %1").arg(money(bill.total));
  figure.rest = Text::tr("paid %1, given %2").arg(money(bill.cash), money(bill.own));
  figure.reckoning = lines(how);
  return figure;
}

Figure fillBy(const Source& s) {
  Figure figure{QStringLiteral("fill_by"), Text::tr("Start filling no later than"), kDash, QString(),
                Text::tr("People and dates are not part of this project.")};
  if (!s.plan.works || s.plan.works->schedule.empty()) return figure;
  const auto& schedule = s.plan.works->schedule;
  QStringList how;
  for (const core::works::Task& task : schedule) {
    how << Text::tr("%1: %2 to %3")
               .arg(words::taskName(task.id), s.format.date(task.start), s.format.date(task.finish));
    if (task.id != "fill_by") continue;
    const qint64 days = toQDate(schedule.front().start).daysTo(toQDate(task.start));
    figure.value = s.format.date(task.start);
    figure.rest =
        Text::tr("%1 after the first day of the works, %2")
            .arg(s.format.quantity(double(days), Unit::day, 0), s.format.shortDate(schedule.front().start));
  }
  how << sourceLine("wocat_5684");
  figure.reckoning = lines(how);
  return figure;
}

Figure pit(const Source& s) {
  const auto& e = s.plan.earthwork;
  QStringList how{
      Text::tr(
          "The clear inside, grown by all coats square to their faces and by the stone bed under the floor."),
      Text::tr("Pit floor %1.").arg(s.size(e.pit_floor_length_m, e.pit_floor_width_m))};
  if (e.spoil_loose_m3) how << Text::tr("Loose spoil %1.").arg(s.cubic(*e.spoil_loose_m3));
  how << sourceLine("exact");
  return {QStringLiteral("pit"), Text::tr("Pit to dig"),
          s.format.quantity(e.pit_volume_m3, Unit::cubic_metre, 1),
          Text::tr("pit at ground %1, pit depth %2")
              .arg(s.size(e.pit_top_length_m, e.pit_top_width_m), s.metres(e.pit_depth_m)),
          lines(how)};
}

Figure inside(const Source& s) {
  const auto& t = s.plan.tank;
  return {QStringLiteral("inside"), Text::tr("Finished clear inside"), QString(),
          Text::tr("floor %1\nrim %2\nclear depth %3")
              .arg(s.size(t.clear_floor_length_m, t.clear_floor_width_m),
                   s.size(t.clear_rim_length_m, t.clear_rim_width_m), s.metres(t.depth_m)),
          lines({Text::tr("What the water touches, after all coats. The walls lean out by batter × height."),
                 Text::tr("Floor %1, walls along the slope %2, opening at the rim %3.")
                     .arg(s.square(t.floor_m2), s.square(t.wall_m2), s.square(t.brim_area_m2)),
                 sourceLine("exact")})};
}

Figure noWater(const Source& s, const QString& id, const QString& name) {
  const QString no_year = words::noWholeYear(s.project, s.plan);
  return {id, name, kDash, QString(),
          no_year.isEmpty()
              ? Text::tr("Latitude, weather, source and needs are not known yet: see the tab Water.")
              : no_year};
}

Figure lasting(const Source& s) {
  const QString name = Text::tr("Years in ten with water all year");
  if (!s.plan.water) return noWater(s, QStringLiteral("lasting"), name);
  const core::water::WaterPlan& w = *s.plan.water;
  const QStringList how{
      Text::tr(
          "Each day: water held + source + runoff + rain − evaporation − seepage − need, kept between empty "
          "and full; a day is short of water when less than the need can be drawn."),
      Text::tr("%1 of %2 weather years pass without a day short of water. Days met: %3, water met: %4.")
          .arg(s.format.integer(w.years_without_dry_day), s.format.integer(int(w.years)),
               s.format.quantity(w.days_met_percent, Unit::percent, 1),
               s.format.quantity(w.volume_met_percent, Unit::percent, 1)),
      Text::tr("Reference evapotranspiration %1 a year, rain %2.")
          .arg(s.format.quantity(w.et0_mm, Unit::millimetre, 0),
               s.format.quantity(w.rain_mm, Unit::millimetre, 0)),
      sourceLine("fao56"), sourceLine("richardson_1981")};
  return {QStringLiteral("lasting"), name, words::yearsInTenText(w.years_in_ten, s.format),
          Text::tr("days short of water in a mean year %1, in the worst %2")
              .arg(s.format.number(w.dry_days_mean, Unit::factor, 1), s.format.integer(w.dry_days_worst)),
          lines(how)};
}

QString tankLine(const words::MetSize& smallest) {
  switch (smallest.kind) {
    case words::MetSize::Kind::none:
      return Text::tr("no tank up to %1").arg(smallest.text);
    case words::MetSize::Kind::any:
      return Text::tr("almost any tank");
    default:
      return Text::tr("smallest tank %1").arg(smallest.text);
  }
}

QString bedsLine(const words::MetSize& largest) {
  switch (largest.kind) {
    case words::MetSize::Kind::none:
      return Text::tr("no beds, however small");
    case words::MetSize::Kind::all_tried:
      return Text::tr("beds of %1 or more").arg(largest.text);
    default:
      return Text::tr("largest beds %1").arg(largest.text);
  }
}

Figure sizes(const Source& s) {
  const QString name = Text::tr("Sizes that meet the target");
  if (!s.plan.water) return noWater(s, QStringLiteral("sizes"), name);
  const core::water::WaterPlan& w = *s.plan.water;
  const QString tank = tankLine(words::smallestTank(w, s.format));
  const QString beds = w.bed_area_m2 > 0 ? bedsLine(words::largestBeds(w, s.format)) : QString();
  const QStringList how{
      Text::tr("The tank's plan is made larger or smaller at the same depth and batter; the beds keep their "
               "shares. Every size is run through all weather years."),
      Text::tr("Target: %1 years in ten with water all year.")
          .arg(words::yearsInTenText(s.project.water->target_years_in_ten, s.format)),
      sourceLine("own")};
  return {QStringLiteral("sizes"), name, QString(), beds.isEmpty() ? tank : tank + QLatin1Char('\n') + beds,
          lines(how)};
}

}  // namespace

std::vector<Figure> figures(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const core::Project in_force = core::works::inForce(project, plan.calibration);
  const Source s{in_force, plan, format};
  return {holds(s), usable(s), lasting(s), sizes(s), cement(s), fillers(s),
          cost(s),  work(s),   fillBy(s),  pit(s),   inside(s)};
}

}  // namespace ui
