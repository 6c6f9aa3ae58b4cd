#include "core/compare/refine.h"
#include "core/exchange/csv_rows.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/sites_csv.h"
#include "core/plan.h"

#include <algorithm>

namespace core::exchange {
namespace {

using std::string_view;

int countOf(const Plan& plan, Severity severity) {
  return static_cast<int>(std::count_if(plan.findings.begin(), plan.findings.end(),
                                        [&](const Finding& f) { return f.severity == severity; }));
}

void putFigures(SiteResult& result, const Plan& plan) {
  result.full_volume_m3 = plan.tank.full_volume_m3;
  result.usable_volume_m3 = plan.tank.usable_volume_m3;
  result.cement_bags = lining::orderOf(plan.quantities, "cement_bags");
  if (plan.works) result.person_days = plan.works->person_days;
  if (plan.cost && plan.cost->bill.missing.empty()) {
    result.cost = plan.cost->bill.total;
    result.per_m3_stored = plan.cost->per_m3_stored;
  }
  if (plan.water) result.years_in_ten = plan.water->years_in_ten;
  result.stops = countOf(plan, Severity::stop);
  result.cautions = countOf(plan, Severity::caution);
}

std::string textOf(const Problems& problems) {
  std::string text;
  for (const Problem& problem : problems) {
    if (!text.empty()) text += "; ";
    text += problem.code;
    if (!problem.path.empty()) text += ' ' + problem.path;
  }
  return text;
}

std::string cell(const std::optional<double>& value) {
  return value ? compactText(jsonNumber(*value)) : std::string();
}

std::string cell(const std::optional<int>& value) {
  return value ? std::to_string(*value) : std::string();
}

std::string rowText(const std::vector<std::string>& cells) {
  std::string text;
  for (std::size_t k = 0; k < cells.size(); ++k) text += (k > 0 ? "," : "") + csvField(cells[k]);
  return text + "\r\n";
}

std::string rowText(const SiteResult& r) {
  return rowText({r.id, textOf(r.problems), r.title, r.place, cell(r.full_volume_m3),
                  cell(r.usable_volume_m3), cell(r.cement_bags), cell(r.person_days), cell(r.cost),
                  cell(r.per_m3_stored), cell(r.years_in_ten), cell(r.stops), cell(r.cautions)});
}

}  // namespace

SiteResult siteResult(const SiteRow& row) {
  SiteResult result;
  result.id = row.id;
  result.title = row.project.title;
  result.place = row.project.place;
  auto planned = plan(row.project);
  if (!planned) {
    result.problems = std::move(planned.error());
    return result;
  }
  compare::refine(row.project, *planned);
  putFigures(result, *planned);
  return result;
}

std::string resultsCsv(const std::vector<SiteResult>& results) {
  std::string text =
      "id,problems,title,place,full_volume_m3,usable_volume_m3,cement_bags,person_days,cost,per_m3_stored,"
      "years_in_ten,stops,cautions\r\n";
  for (const SiteResult& result : results) text += rowText(result);
  return text;
}

}  // namespace core::exchange
