#include "core/works/task_list.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

namespace core::works {
namespace {

constexpr int kSettingOut = 2;    // own
constexpr double kAlmost = 1e-9;  // a whole number in spite of rounding

std::int64_t quartersFor(double person_days, int people) {
  const double quarters = std::ceil(kQuarters * person_days / people - kAlmost);
  return std::max<std::int64_t>(1, static_cast<std::int64_t>(quarters));
}

bool isCoat(std::string_view id) {
  return id.starts_with("coat_");
}

/// Tasks in which nobody works but those who keep sacks wet and watch the water.
bool isWaiting(std::string_view id) {
  return id.starts_with("cure_") || id == "fill" || id == "leak_test";
}

class Builder {
public:
  Builder(const LabourInput& input, const std::vector<Labour>& labour, const FillTime& fill)
      : works_(*input.project.works), coats_(input.project.lining.coats), labour_(labour), fill_(fill) {}

  TaskList build() {
    for (const char* id : {"clear", "set_out", "strip_topsoil", "platform_cut", "platform_fill", "excavate",
                           "excavate_deep", "trim", "pipes", "stone_bed"})
      addNext(id);
    addCoats();
    addCarrying();
    addBeside();
    addFill();
    addPlanting();
    takeWishes();
    return std::move(list_);
  }

private:
  const core::Works& works_;
  const std::vector<Coat>& coats_;
  const std::vector<Labour>& labour_;
  FillTime fill_;
  TaskList list_;
  std::optional<std::size_t> last_;  // of the row that waits for one another
  std::optional<std::size_t> first_coat_, last_coat_;

  const Labour* line(std::string_view id) const {
    const auto found =
        std::find_if(labour_.begin(), labour_.end(), [id](const Labour& l) { return l.task == id; });
    return found == labour_.end() ? nullptr : &*found;
  }

  const TaskWish* wish(std::string_view id) const { return wishFor(works_, id); }

  int peopleFor(std::string_view id) const {
    const TaskWish* wished = wish(id);
    if (wished && wished->people) return *wished->people;
    if (isWaiting(id)) return works_.wetting_people;
    if (isCoat(id)) return works_.plasterers;
    return id == "set_out" ? std::min(kSettingOut, works_.diggers) : works_.diggers;
  }

  /// Masons among the people: all there are for a coat, else as many as the skilled share of the work asks
  /// for.
  Crew crewFor(const Labour& line, int people) const {
    if (line.mason_days <= 0) return {people, 0, 0};
    const int wanted =
        isCoat(line.task) ? people : static_cast<int>(std::ceil(people * line.mason_days / line.days));
    const int masons = std::min({works_.masons, wanted, people});
    return {people - masons, masons, 0};
  }

  std::size_t add(Activity activity, const Crew& crew) {
    const TaskWish* wished = wish(activity.id);
    if (wished && !activity.id.starts_with("cure_")) activity.not_before = wished->not_before;
    list_.activities.push_back(std::move(activity));
    list_.crews.push_back(crew);
    return list_.activities.size() - 1;
  }

  std::size_t addWork(const Labour& line) {
    const int people = peopleFor(line.task);
    const bool is_coat = isCoat(line.task);  // put on in one go, however many people it takes
    return add({.id = line.task,
                .quarters = is_coat ? kQuarters : quartersFor(line.days, people),
                .clock = Clock::working,
                .starts_a_day = is_coat},
               crewFor(line, people));
  }

  std::size_t addWaiting(const std::string& id, int days) {
    return add({.id = id, .quarters = days * kQuarters, .clock = Clock::calendar, .starts_a_day = true},
               {0, 0, peopleFor(id)});
  }

  void link(std::optional<std::size_t> from, std::size_t to, LinkKind kind = LinkKind::finish_start,
            std::int64_t lag = 0, Clock clock = Clock::working) {
    if (from) list_.links.push_back({*from, to, kind, lag, clock});
  }

  void follow(std::size_t task) {
    link(last_, task);
    last_ = task;
  }

  void addNext(std::string_view id) {
    if (const Labour* work = line(id)) follow(addWork(*work));
  }

  void addCoats() {
    for (std::size_t k = 0; k < coats_.size(); ++k) {
      addNext(fmt::format("coat_{}", k + 1));
      last_coat_ = last_;
      if (!first_coat_) first_coat_ = last_;
      if (coats_[k].cure_days > 0) follow(addWaiting(fmt::format("cure_{}", k + 1), coats_[k].cure_days));
    }
  }

  std::int64_t quartersOf(std::string_view id) const {
    const std::optional<std::size_t> task = list_.find(id);
    return task ? list_.activities[*task].quarters : 0;
  }

  /// Starts with the digging and goes on as long, the last of it a quarter of a day later; more days only
  /// when fewer people than it takes were wished for.
  void addCarrying() {
    const Labour* work = line("carry_spoil");
    const std::optional<std::size_t> dig = list_.find("excavate");
    if (!work || !dig) return;
    const std::int64_t digging = quartersOf("excavate") + quartersOf("excavate_deep");
    const TaskWish* wished = wish("carry_spoil");
    const double usual = std::ceil(kQuarters * work->days / static_cast<double>(digging) - kAlmost);
    const int people = wished && wished->people ? *wished->people : std::max(1, static_cast<int>(usual));
    const std::size_t carry = add({.id = work->task,
                                   .quarters = std::max(digging, quartersFor(work->days, people)),
                                   .clock = Clock::working},
                                  {people, 0, 0});
    link(dig, carry, LinkKind::start_start, 1);
    if (first_coat_) link(carry, *first_coat_);
  }

  void addBeside() {
    std::optional<std::size_t> before = first_coat_ ? first_coat_ : last_;
    for (const char* id : {"silt_trap", "overflow", "fence"}) {
      const Labour* work = line(id);
      if (!work) continue;
      const std::size_t task = addWork(*work);
      link(before, task);
      before = task;
      list_.beside.push_back(task);
    }
  }

  void addFill() {
    if (!last_coat_) return;
    const std::size_t fill = addWaiting("fill", std::max(1, fill_.days));
    const int after = std::max(1, std::min(coats_.back().cure_days, works_.fill_within_days));
    link(last_coat_, fill, LinkKind::finish_start, (after - 1) * kQuarters, Clock::calendar);
    if (!list_.beside.empty()) link(list_.beside.back(), fill);
    if (fill_.ends_full) link(fill, addWaiting("leak_test", 1));
  }

  void addPlanting() {
    const Labour* work = line("planting");
    if (!work) return;
    const std::size_t planting = addWork(*work);
    const std::optional<std::size_t> fill = list_.find("fill");
    link(fill ? fill : last_, planting, fill ? LinkKind::start_start : LinkKind::finish_start);
  }

  void takeWishes() {
    for (const TaskWish& wish : works_.wishes) {
      const bool is_late_cure = wish.task.starts_with("cure_") && wish.not_before;
      if (!list_.find(wish.task) || is_late_cure) list_.wishes_unused.push_back(wish.task);
    }
  }
};

}  // namespace

const TaskWish* wishFor(const core::Works& works, std::string_view task) {
  const TaskWish* last = nullptr;
  for (const TaskWish& wish : works.wishes) {
    if (wish.task == task) last = &wish;
  }
  return last;
}

std::optional<std::size_t> TaskList::find(std::string_view id) const {
  const auto found =
      std::find_if(activities.begin(), activities.end(), [id](const Activity& a) { return a.id == id; });
  if (found == activities.end()) return std::nullopt;
  return static_cast<std::size_t>(found - activities.begin());
}

TaskList taskList(const LabourInput& input, const std::vector<Labour>& labour, const FillTime& fill) {
  return Builder(input, labour, fill).build();
}

}  // namespace core::works
