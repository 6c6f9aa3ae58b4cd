#include "tests/ui/water_charts_support.h"

#include <QDate>
#include <QLocale>
#include <algorithm>
#include <cmath>

using core::water::ReliabilityMap;
using core::water::WaterPlan;
using ui::Formatter;
using ui::UnitSystem;
namespace drawings = ui::drawings;

namespace support {
namespace {

/// Share of the wettest month's rain.
double wetness(int month) {
  constexpr double kRain[] = {0.02, 0.02, 0.05, 0.1, 0.3, 0.9, 1, 0.95, 0.6, 0.2, 0.05, 0.02};
  return kRain[month];
}

}  // namespace

WaterPlan samplePlan(double full_m3, double need_scale) {
  WaterPlan plan;
  plan.years = 40;
  plan.years_in_ten = 6.56;
  plan.curve.full_m3 = full_m3;
  plan.curve.dead_m3 = 0.04 * full_m3;
  plan.bed_area_m2 = 120;
  plan.smallest_full_m3 = 1.229 * full_m3;
  double level[] = {0.1, 0.2, 0.35, 0.5, 0.7};  // share of full: least to most
  const QDate first(2001, kFirstMonth + 1, 1);
  for (int k = 0; k < static_cast<int>(core::water::kYearDays); ++k) {
    const QDate date = first.addDays(k);
    const int month = date.month() - 1;
    for (int i = 0; i < 5; ++i) {
      const double step = wetness(month) * (0.004 + 0.004 * i) - (1.1 - wetness(month)) * 0.0036;
      level[i] = std::clamp(level[i] + step, 0.04, 1.);
    }
    plan.band.push_back({month, date.day(), level[0] * full_m3, level[1] * full_m3, level[2] * full_m3,
                         level[3] * full_m3, level[4] * full_m3});
  }
  for (int month = 0; month < 12; ++month) {
    auto& flows = plan.months[static_cast<std::size_t>(month)];
    flows.source = full_m3 * (0.05 + 0.1 * wetness(month));
    flows.roof = full_m3 * 0.12 * wetness(month);
    flows.ground = full_m3 * 0.07 * wetness(month);
    flows.rain = full_m3 * 0.05 * wetness(month);
    flows.beds = need_scale * full_m3 * 0.24 * (1.05 - wetness(month));
    flows.animals = need_scale * full_m3 * 0.03;
    flows.people = need_scale * full_m3 * 0.015;
    if (month >= 2 && month <= 4) flows.unmet = flows.need() * 0.1 * month;
    flows.dry_days = flows.unmet > 0 ? 2.4 * month : 0;
    flows.drawn = flows.need() - flows.unmet;
  }
  for (int k = 0; k <= 20; ++k)
    plan.storage.push_back({full_m3 * 0.125 * k, 10 * (1 - std::exp(-0.15 * k * k / 9.))});
  return plan;
}

ReliabilityMap sampleMap(double most_full_m3, double most_area_m2, std::size_t cells) {
  ReliabilityMap map;
  for (std::size_t k = 0; k < cells; ++k) {
    const double share = static_cast<double>(k) / static_cast<double>(cells - 1);
    map.full_m3.push_back(most_full_m3 * (0.04 + 0.96 * share));
    map.bed_area_m2.push_back(most_area_m2 * share);
  }
  for (const double area : map.bed_area_m2) {
    for (const double full : map.full_m3) {
      const double ample = (full / most_full_m3 + 0.15) / (area / most_area_m2 + 0.02);
      map.years_in_ten.push_back(static_cast<float>(std::floor(std::min(1., ample * 0.62) * 50) / 5));
    }
  }
  return map;
}

using Draw =
    std::function<void(QPainter&, const QRectF&, const Subject&, const Formatter&, const drawings::Style&)>;

const std::vector<NamedChart>& allCharts() {
  static const std::vector<NamedChart> list{
      {"level",
       [](QPainter& p, const QRectF& box, const Subject& s, const Formatter& f,
          const drawings::Style& style) { drawings::drawLevelChart(p, box, s.plan, f, style, s.marks.day); }},
      {"flows",
       [](QPainter& p, const QRectF& box, const Subject& s, const Formatter& f,
          const drawings::Style& style) {
         drawings::drawFlowsChart(p, box, s.plan, f, style, s.marks.month);
       }},
      {"map",
       [](QPainter& p, const QRectF& box, const Subject& s, const Formatter& f,
          const drawings::Style& style) {
         drawings::drawReliabilityMap(p, box, s.map, s.plan, f, style,
                                      {s.target, s.marks.cell, s.marks.refining});
       }},
      {"storage", [](QPainter& p, const QRectF& box, const Subject& s, const Formatter& f,
                     const drawings::Style& style) {
         drawings::drawStorageChart(p, box, s.plan, f, style, s.target, s.marks.point);
       }}};
  return list;
}

const DrawChart& chart(const std::string& name) {
  return std::ranges::find(allCharts(), name, &NamedChart::name)->draw;
}

Formatter english(UnitSystem system) {
  return Formatter(QLocale(QLocale::English), system);
}

const std::vector<Formatter>& readers() {
  static const std::vector<Formatter> list{english(), english(UnitSystem::feet_inches),
                                           Formatter(QLocale(QStringLiteral("ne"))),
                                           Formatter(QLocale(QLocale::German))};
  return list;
}

drawings::Style screen(bool dark) {
  return {dark, 2.6, false};
}

DrawnChart::DrawnChart(const DrawChart& draw, const QRectF& box, const Subject& subject,
                       const Formatter& format, const drawings::Style& style)
    : Recorder(QSizeF(260, 297)) {
  QPainter painter(this);
  draw(painter, box, subject, format, style);
}

std::vector<Subject> subjects() {
  std::vector<Subject> list;
  for (const double full_m3 : {0.9, 22.5, 99., 2400.}) {
    Subject subject;
    subject.plan = samplePlan(full_m3);
    subject.map = sampleMap(2.5 * full_m3, 5 * full_m3);
    list.push_back(subject);
  }
  Subject plenty;
  plenty.plan = samplePlan(40, 0.1);
  plenty.plan.curve.dead_m3 = 0;
  plenty.plan.bed_area_m2 = 0;
  plenty.plan.years_in_ten = 10;
  plenty.target = 10;
  list.push_back(plenty);
  Subject scarce;
  scarce.plan.years_in_ten = 0;
  scarce.plan.bed_area_m2 = 300;
  scarce.plan.smallest_full_m3.reset();
  scarce.target = 6.5;
  list.push_back(scarce);
  Subject small_is_enough;  // the ring of the smallest tank is near the upright axis
  small_is_enough.plan.smallest_full_m3 = 0.02 * small_is_enough.plan.curve.full_m3;
  list.push_back(small_is_enough);
  return list;
}

QStringList faultsOnScreen(const Recorder& recorder, const QRectF& box) {
  QStringList faults;
  for (const QString& fault : support::faultsOnPaper(recorder, box)) {
    const bool paper_alone = fault.contains(QLatin1String("not black")) ||
                             fault.startsWith(QLatin1String("type under")) ||
                             fault.startsWith(QLatin1String("solid on text"));
    if (!paper_alone) faults << fault;
  }
  return faults;
}

double luminance(const QColor& colour) {
  const auto linear = [](double v) { return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}
double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a), y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

}  // namespace support
