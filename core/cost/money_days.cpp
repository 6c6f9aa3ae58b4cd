#include "core/cost/money_days.h"

#include <algorithm>
#include <array>
#include <map>
#include <string_view>
#include <utility>

namespace core::cost {
namespace {

using works::Day;

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> kFirstTask{{{"stone", "stone_bed"},
                                                                                   {"cement_bags", "coat_1"},
                                                                                   {"sand", "coat_1"},
                                                                                   {"soil", "coat_1"},
                                                                                   {"sacks", "coat_1"},
                                                                                   {"water", "coat_1"},
                                                                                   {"source_pipe", "pipes"},
                                                                                   {"field_pipe", "pipes"},
                                                                                   {"fence", "fence"}}};

Day firstDay(const works::Works& works) {
  return works.days.front().date;
}

Day dayOfNeed(const std::string& item, const works::Works& works) {
  const auto use = std::find_if(kFirstTask.begin(), kFirstTask.end(),
                                [&](const auto& entry) { return entry.first == item; });
  if (use == kFirstTask.end()) return firstDay(works);
  for (const works::Task& task : works.schedule) {
    if (task.id == use->second) return task.start;
  }
  return firstDay(works);
}

bool isOf(const works::Task& task, const works::Labour& labour) {
  if (task.is_mark) return false;
  return labour.task == "curing" ? task.id.starts_with("cure_") : task.id == labour.task;
}

void addDays(const works::Task& task, const works::Works& works, std::vector<Day>& days) {
  const std::size_t before = days.size();
  for (const works::DayLoad& day : works.days) {
    const bool is_within = task.start <= day.date && day.date <= task.finish;
    if (is_within && (day.is_worked || task.clock == works::Clock::calendar)) days.push_back(day.date);
  }
  if (days.size() == before) days.push_back(task.start);
}

std::vector<Day> daysOf(const works::Labour& labour, const works::Works& works) {
  std::vector<Day> days;
  for (const works::Task& task : works.schedule) {
    if (isOf(task, labour)) addDays(task, works, days);
  }
  if (days.empty()) days.push_back(firstDay(works));
  return days;
}

/// Person-days of each day.
struct PersonDays {
  std::map<Day, double> labourer, mason;
};

PersonDays spread(const works::Works& works) {
  PersonDays result;
  for (const works::Labour& labour : works.labour) {
    const std::vector<Day> days = daysOf(labour, works);
    const auto count = static_cast<double>(days.size());
    for (const Day& day : days) {
      result.labourer[day] += (labour.days - labour.mason_days) / count;
      result.mason[day] += labour.mason_days / count;
    }
  }
  return result;
}

void addWages(double cash, const std::map<Day, double>& person_days, const works::Works& works,
              std::map<Day, DayMoney>& money) {
  double all = 0;
  for (const auto& [day, days] : person_days) all += days;
  if (all <= 0) {
    money[firstDay(works)].wages += cash;
    return;
  }
  for (const auto& [day, days] : person_days) money[day].wages += cash * days / all;
}

std::vector<DayMoney> summedUp(const std::map<Day, DayMoney>& money) {
  std::vector<DayMoney> result;
  double together = 0;
  for (const auto& [day, needed] : money) {
    if (needed.goods + needed.wages <= 0) continue;
    together += needed.goods + needed.wages;
    result.push_back({day, needed.goods, needed.wages, together});
  }
  return result;
}

}  // namespace

std::vector<DayMoney> moneyDays(const Bill& bill, const works::Works& works) {
  if (works.days.empty()) return {};
  std::map<Day, DayMoney> money;
  const PersonDays person_days = spread(works);
  for (const CostLine& line : bill.lines) {
    if (line.group == "labour") {
      addWages(line.cash, line.item == "mason" ? person_days.mason : person_days.labourer, works, money);
      continue;
    }
    const double carriage = line.carriage ? line.carriage->amount.value_or(0) : 0;
    money[dayOfNeed(line.item, works)].goods += line.cash + carriage;
  }
  return summedUp(money);
}

}  // namespace core::cost
