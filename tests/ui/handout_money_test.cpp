#include "core/compare/refine.h"
#include "tests/ui/handout_site_support.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

using core::Unit;
using support::contentOf;
using support::english;
using support::PageRecord;
using support::pagesWith;
using support::ReadPages;
using ui::Formatter;
using ui::handouts::Content;
using ui::handouts::Handout;

namespace words = ui::words;

namespace {

const QStringList kSheets{"F7", "P10", "P11"};

/// Prices are invented.
core::Prices prices() {
  core::Prices prices;
  const auto set = [&](const char* item, double price) {
    std::ranges::find(prices.items, item, &core::PriceItem::item)->price = price;
  };
  set("cement_bags", 820);
  set("sand", 2400);
  set("stone", 1900);
  set("labourer", 900);
  set("mason", 1400);
  set("sacks", 15);
  for (core::PriceItem& item : prices.items) {
    if (item.item == "cement_bags") item.carried_by = core::Carrier::porter;
    if (item.item == "labourer") item.own_percent = 60;
  }
  prices.items.push_back({"blessing of the site", 1500, 1, 100, core::Carrier::none, {}});
  prices.porter.price_per_trip = 250;
  prices.linings[1].price = 700;
  prices.linings[2].price = 3500;
  return prices;
}

core::Project priced() {
  core::Project project = support::deliveryProject();
  project.currency = "Rs";
  project.prices = prices();
  return project;
}

/// Every price known.
core::Project allPriced() {
  core::Project project = priced();
  for (core::PriceItem& item : project.prices->items)
    if (!item.price) item.price = 10;
  return project;
}

core::Project withOptions() {
  core::Project project = allPriced();
  project.options = {{"deeper", {{"tank.depth_m", 1.8}}},
                     {"longer, with more cement", {{"tank.length_m", 7.0}, {"lining.coats[0].cement", 1.5}}}};
  return project;
}

core::Project notBuildable() {
  core::Project project = withOptions();
  project.options.push_back({"dead water up to the overflow",
                             {{"tank.depth_m", 1.0}, {"tank.freeboard_m", 0.6}, {"tank.dead_depth_m", 0.5}}});
  return project;
}

core::Project manyOptions() {
  core::Project project = withOptions();
  for (int k = 0; k < 6; ++k)
    project.options.push_back({"a long name of an option " + std::to_string(k),
                               {{"tank.width_m", 3.0 + 0.2 * k}, {"tank.batter", 0.15}}});
  return project;
}

core::Project crowded() {
  core::Project project = priced();
  project.currency = "dollars";
  for (int k = 0; k < 40; ++k)
    project.prices->items.push_back({"something of one's own with a long name, number " + std::to_string(k),
                                     123456.5, 12.5, 30, core::Carrier::mule, 7.5});
  for (int k = 0; k < 4; ++k) project.prices->linings.push_back(project.prices->linings[2]);
  return project;
}

Content refined(const core::Project& project, const Formatter& format = english()) {
  Content content = contentOf(project, format);
  core::compare::refine(project, content.plan);
  return content;
}

QString bare(double amount, const Formatter& format) {
  return words::money(amount, core::Project{}, format);
}

std::size_t pageCount(const Content& content, const QString& code) {
  return pagesWith(Handout(content, {}), code).size();
}

}  // namespace

TEST_CASE("sheets of money and options are printed when there are any and only then") {
  const Content without = refined(support::levelProject());
  for (const QString& code : kSheets) CHECK(pageCount(without, code) == 0);
  const Content money = refined(priced());
  CHECK(pageCount(money, "F7") > 0);
  CHECK(pageCount(money, "P10") > 0);
  CHECK(pageCount(money, "P11") == 0);
  CHECK(pageCount(refined(withOptions()), "P11") == 1);
}

TEST_CASE("sheets of money and options are clean on paper") {
  struct Way {
    Formatter format;
    QPageSize::PageSizeId page;
  };
  const std::vector<Way> ways{
      {english(), QPageSize::A4},
      {Formatter(QLocale(QLocale::English), ui::UnitSystem::feet_inches), QPageSize::Letter},
      {Formatter(QLocale("ne")), QPageSize::A4},
      {Formatter(QLocale("de")), QPageSize::Letter}};
  const std::vector<std::pair<std::string, core::Project>> projects{{"priced", priced()},
                                                                    {"options", notBuildable()},
                                                                    {"many options", manyOptions()},
                                                                    {"crowded", crowded()}};
  for (const auto& [name, project] : projects) {
    Content content = refined(project);
    for (const Way& way : ways) {
      content.format = way.format;
      const Handout handout(content, {way.page});
      const QRectF allowed = QRectF(QPointF(0, 0), handout.pageSize_mm()).adjusted(12, 12, -12, -12);
      for (const QString& code : kSheets) {
        for (const int page : pagesWith(handout, code)) {
          const QStringList faults = support::faultsOnPaper(PageRecord(handout, page).recorder, allowed);
          INFO(name << ", " << handout.pageTitle(page).toStdString() << "\n"
                    << faults.join(u'\n').toStdString());
          CHECK(faults.isEmpty());
        }
      }
    }
  }
}

TEST_CASE("the bill prints each line, the loads, the sums and what is given") {
  const Content content = refined(priced());
  const auto& bill = content.plan.cost->bill;
  const auto& format = content.format;
  const ReadPages page(content, "F7");
  page.hasAll(words::billAnswers(content.project, *content.plan.cost, format));
  REQUIRE(bill.lines.size() >= 7);
  for (const auto& item : bill.lines) {
    INFO(item.item);
    page.has(words::priceItemName(item.item));
    if (!item.amount) continue;
    page.hasRow({bare(*item.price, format), bare(*item.amount, format), bare(item.own, format),
                 bare(item.cash, format)});
  }
  const auto sum = [&](const char* what, double amount) {
    page.hasRow({what, words::money(amount, content.project, format)});
  };
  sum("Materials", bill.materials);
  sum("Wages", bill.labour);
  sum("Other things", bill.other);
  sum("Carrying", bill.carriage);
  sum("Put aside for what is not foreseen, 10 %", bill.contingency);
  sum("All together", bill.total);
  sum("Of it given in work and kind", bill.own);
  sum("Of it in cash", bill.cash);
  const auto& cement = *std::ranges::find(bill.lines, "cement_bags", &core::cost::CostLine::item);
  REQUIRE(cement.carriage);
  CHECK(cement.carriage->loads_per_piece == 2);  // a bag of 50 kg, a load of 30 kg
  page.hasRow({format.quantity(cement.carriage->kg, Unit::kilogram, 0),
               format.integer(cement.carriage->loads) + "; split each piece into 2"});
  page.has("Not in these sums, for the price");
  page.has(words::priceItemName("soil"));
}

TEST_CASE("a bill with all prices does not speak of missing ones") {
  const Content content = refined(allPriced());
  REQUIRE(content.plan.cost->bill.missing.empty());
  CHECK_FALSE(ReadPages(content, "F7").text.contains("Not in these sums"));
}

TEST_CASE("the bill has boxes for names, signatures and thumbs, all on one page") {
  const Handout handout(refined(priced()), {});
  std::vector<std::ptrdiff_t> boxes;
  for (const int page : pagesWith(handout, "F7"))
    boxes.push_back(std::ranges::count_if(PageRecord(handout, page).recorder.strokes, [](const auto& stroke) {
      return std::abs(stroke.path.boundingRect().height() - 27) < 1e-6;
    }));
  CHECK(std::ranges::max(boxes) == 16);  // four people, four boxes each
  CHECK(std::ranges::count(boxes, 0) == static_cast<std::ptrdiff_t>(boxes.size()) - 1);
}

TEST_CASE("linings stand side by side with the factor, its formula and the cost a year") {
  const Content content = refined(allPriced());
  const auto& linings = content.plan.cost->linings;
  const auto& format = content.format;
  const ReadPages page(content, "P10");
  page.hasAll(words::liningAnswers(content.project, *content.plan.cost, format));
  REQUIRE(linings.size() == 5);
  QStringList annual{"Cost a year"}, factors{"Factor"}, lives{"Life"};
  for (const auto& lining : linings) {
    annual << (lining.annual ? words::money(*lining.annual, content.project, format) : QString("–"));
    factors << format.number(lining.recovery, Unit::factor, 4);
    lives << format.quantity(lining.life_years, Unit::year, 0);
  }
  page.hasRow(annual);
  page.hasRow(factors);
  page.hasRow(lives);
  page.has("(1 + i)^n");
  page.has(words::sourceText("capital_recovery"));
  // i = 10 %, n = 10 years: 0.1627, any table of capital recovery factors
  page.has("0.1627");
}

TEST_CASE("what a cubic metre costs is printed with the reckoning in words") {
  const Content content = refined(allPriced());
  const auto& cost = *content.plan.cost;
  const auto& format = content.format;
  const auto money = [&](double amount) { return words::money(amount, content.project, format); };
  const ReadPages page(content, "P10");
  page.has(money(cost.bill.total) + " ÷ " +
           format.quantity(content.plan.tank.full_volume_m3, Unit::cubic_metre, 1) + " = " +
           money(cost.per_m3_stored.value()));
  page.has(money(cost.annual.value()) + " ÷ " +
           format.quantity(cost.delivered_m3.value(), Unit::cubic_metre, 1) + " = " +
           money(cost.per_m3_delivered.value()));
  ReadPages(refined(priced()), "P10").has("Not reckoned while prices are missing.");
  core::Project dry = allPriced();
  dry.water.reset();
  ReadPages(refined(dry), "P10").has("What a m³ delivered costs is not reckoned");
}

TEST_CASE("ranges are printed with P10, P50, P90 and what drives them; not drawn, they say so") {
  const Content content = refined(allPriced());
  const auto& format = content.format;
  const ReadPages page(content, "P10");
  REQUIRE(content.plan.ranges);
  page.hasAll(words::rangesAnswers(content.project, *content.plan.ranges, format));
  for (const auto& spread : content.plan.ranges->spreads) {
    const auto amount = [&](double value) {
      return words::outcomeAmount(value, spread.outcome, content.project, format);
    };
    page.hasRow({words::outcomeName(spread.outcome), amount(spread.typical), amount(spread.p10),
                 amount(spread.p50), amount(spread.p90)});
    const auto& first = spread.drivers.front();  // a minus is painted by itself
    page.has((first.correlation < 0 ? "− " : "+") + format.quantity(100 * first.share, Unit::percent, 0));
  }
  page.hasRow({words::rangedInputName(core::RangedInput::thickness), "− 10 %", "+25 %"});
  Content unrefined = content;
  unrefined.plan.ranges.reset();
  ReadPages(unrefined, "P10").has("were not drawn");
}

TEST_CASE("cash is printed by day, then by week") {
  const Content content = refined(priced());
  const auto& days = content.plan.cost->days;
  const auto& format = content.format;
  const auto money = [&](double amount) { return words::money(amount, content.project, format); };
  const ReadPages page(content, "P10");
  REQUIRE(days.size() > 3);
  for (std::size_t k = 0; k < std::min<std::size_t>(14, days.size()); ++k)
    page.hasRow(
        {format.date(days[k].date), money(days[k].goods), money(days[k].wages), money(days[k].together)});
  page.has(money(days.back().together));
}

TEST_CASE("options stand on one page, differences marked by a sign and heavy type") {
  const Content content = refined(withOptions());
  const auto& format = content.format;
  REQUIRE(content.plan.options.size() == 3);
  const Handout handout(content, {});
  REQUIRE(pagesWith(handout, "P11").size() == 1);
  const ReadPages page(content, "P11");
  for (const auto& option : content.plan.options) page.has(words::optionTitle(option));
  page.hasRow({"A", "B", "C"});
  // cells may break after a hyphen; a full page leaves out lines that are the same in all options
  const QString flat = QString(page.text).replace("- ", "-");
  const bool is_full = page.text.contains("are left out");
  bool any_differs = false;
  for (const auto& row : words::optionRows(content.project, content.plan.options, format)) {
    const bool differs_here = std::ranges::find(row.differs, true) != row.differs.end();
    any_differs = any_differs || differs_here;
    if (is_full && !differs_here) continue;
    for (qsizetype k = 0; k < row.values.size(); ++k) {
      const QString cell = (row.differs[static_cast<std::size_t>(k)] ? "≠ " : "") + row.values[k];
      INFO(row.name.toStdString() << ": " << cell.toStdString());
      CHECK(flat.contains(support::simplified(cell).replace("- ", "-")));
    }
  }
  CHECK(any_differs);
}

TEST_CASE("an option that cannot be built says why on the sheet of options") {
  const Content content = refined(notBuildable());
  const auto& last = content.plan.options.back();
  REQUIRE_FALSE(last.problems.empty());
  const ReadPages page(content, "P11");
  page.has("Option D cannot be built: " + words::problemText(last.problems.front(), content.format));
}

TEST_CASE("more options than have room beside A go on below, with A beside them") {
  const Content content = refined(manyOptions());
  REQUIRE(content.plan.options.size() == 9);
  const ReadPages page(content, "P11");
  for (const auto& option : content.plan.options) page.has(words::optionTitle(option));
}
