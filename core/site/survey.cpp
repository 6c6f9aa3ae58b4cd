#include "core/site/survey.h"

#include "core/project/fields.h"
#include "core/site/spikes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <string>
#include <vector>

#include <fmt/format.h>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Index = std::uint32_t;

constexpr std::size_t kMostProblems = 100;
constexpr std::size_t kFewest = 3;
constexpr std::array<std::string_view, 3> kNotes{"survey_duplicate", "survey_spike", "survey_far"};

std::string pathOf(Index k) {
  return fmt::format("site.ground.points_m[{}]", k);
}

Problem problemOf(std::string_view code, std::string path, std::string value) {
  Problem problem;
  problem.code = code;
  problem.path = std::move(path);
  problem.value = std::move(value);
  return problem;
}

class Checker {
public:
  Checker(std::span<const Vector3d> points, const SurveyLimits& limits, const std::atomic<bool>* cancel)
      : points_(points), limits_(limits), cancel_(cancel) {}

  enum class Scope { faults, all };

  Problems run(Scope scope) {
    if (points_.size() > kMostSpotHeights) {
      Problem many = problemOf("too_many", "site.ground.points_m", std::to_string(points_.size()));
      many.most = static_cast<double>(kMostSpotHeights);
      return {many};
    }
    takeFinite();
    takePlaces();
    if (places_.size() < kFewest) {
      Problem few = problemOf("survey_too_few", "site.ground.points_m", std::to_string(places_.size()));
      few.least = kFewest;
      add(std::move(few));
    } else if (isCollinear()) {
      add(problemOf("survey_collinear", "site.ground.points_m", ""));
    } else if (scope == Scope::all) {
      findFar();
      findSpikes();
    }
    return std::move(problems_);
  }

private:
  std::span<const Vector3d> points_;
  const SurveyLimits& limits_;
  const std::atomic<bool>* cancel_;
  std::vector<Index> finite_;
  std::vector<Vector3d> places_;  // each place once
  std::vector<Index> number_;     // of the places in the list as given
  Problems problems_;

  void add(Problem problem) {
    if (problems_.size() < kMostProblems) problems_.push_back(std::move(problem));
  }

  void takeFinite() {
    for (Index k = 0; k < points_.size(); ++k) {
      for (Eigen::Index axis = 0; axis < 3; ++axis) {
        const double value = points_[k][axis];
        if (std::isfinite(value)) continue;
        const char* text = std::isnan(value) ? "NaN" : value > 0 ? "Infinity" : "-Infinity";
        add(problemOf("not_finite", fmt::format("{}[{}]", pathOf(k), axis), text));
      }
      if (points_[k].allFinite()) finite_.push_back(k);
    }
  }

  /// Keeps the first of all points at one place and reports the others in the order of the list.
  void takePlaces() {
    std::vector<Index> order = finite_;
    const auto place = [&](Index k) { return std::array{points_[k].x(), points_[k].y()}; };
    std::stable_sort(order.begin(), order.end(), [&](Index a, Index b) { return place(a) < place(b); });
    std::vector<std::array<Index, 2>> again;
    for (std::size_t i = 0; i < order.size();) {
      const Index first = order[i];
      number_.push_back(first);
      for (++i; i < order.size() && place(order[i]) == place(first); ++i) again.push_back({order[i], first});
    }
    std::sort(again.begin(), again.end());
    for (const auto& [k, first] : again) addRepeated(k, first);
    std::sort(number_.begin(), number_.end());
    for (const Index k : number_) places_.push_back(points_[k]);
  }

  void addRepeated(Index k, Index first) {
    const bool is_same = points_[k].z() == points_[first].z();
    Problem problem = problemOf(is_same ? "survey_duplicate" : "survey_conflict", pathOf(k),
                                fmt::format("{}", points_[k].z()));
    problem.allowed = pathOf(first);
    problem.least = problem.most = points_[first].z();
    problem.unit = Unit::metre;
    add(std::move(problem));
  }

  bool isCollinear() const {
    const Vector2d a = places_.front().head<2>();
    Vector2d far = Vector2d::Zero();
    for (const Vector3d& p : places_) {
      if ((p.head<2>() - a).squaredNorm() > far.squaredNorm()) far = p.head<2>() - a;
    }
    return std::all_of(places_.begin(), places_.end(), [&](const Vector3d& p) {
      const Vector2d d = p.head<2>() - a;
      return std::abs(far.x() * d.y() - far.y() * d.x()) <= 1e-9 * far.squaredNorm();
    });
  }

  double medianOf(std::vector<double> values) const {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
  }

  void findFar() {
    std::vector<double> x, y, distance;
    for (const Vector3d& p : places_) {
      x.push_back(p.x());
      y.push_back(p.y());
    }
    const Vector2d middle(medianOf(x), medianOf(y));
    for (const Vector3d& p : places_) distance.push_back((p.head<2>() - middle).norm());
    const double limit = limits_.far_ratio * medianOf(distance);
    for (std::size_t k = 0; k < places_.size(); ++k) {
      if (distance[k] <= limit) continue;
      Problem problem = problemOf("survey_far", pathOf(number_[k]), fmt::format("{:.2f}", distance[k]));
      problem.most = limit;
      problem.unit = Unit::metre;
      add(std::move(problem));
    }
  }

  void findSpikes() {
    const std::size_t room = kMostProblems - problems_.size();
    for (const Spike& spike : spikes(places_, limits_, std::min<std::size_t>(room, 50), cancel_)) {
      const Index k = number_[spike.point];
      Problem problem = problemOf("survey_spike", pathOf(k), fmt::format("{}", points_[k].z()));
      problem.least = spike.plane_m - spike.tolerance_m;
      problem.most = spike.plane_m + spike.tolerance_m;
      problem.unit = Unit::metre;
      add(std::move(problem));
    }
  }
};

}  // namespace

Problems checkSurvey(std::span<const Vector3d> points_m, const SurveyLimits& limits,
                     const std::atomic<bool>* cancel) {
  return Checker(points_m, limits, cancel).run(Checker::Scope::all);
}

Problems surveyFaults(std::span<const Vector3d> points_m) {
  Problems found = Checker(points_m, SurveyLimits{}, nullptr).run(Checker::Scope::faults);
  std::erase_if(found, [](const Problem& problem) { return isSurveyNote(problem.code); });
  return found;
}

std::optional<Vector2d> placeInSurvey(std::span<const Vector3d> points_m, const Vector2d& at_m) {
  if (points_m.empty()) return std::nullopt;
  Vector2d least = points_m.front().head<2>();
  Vector2d most = least;
  for (const Vector3d& p : points_m) {
    least = least.cwiseMin(p.head<2>());
    most = most.cwiseMax(p.head<2>());
  }
  const bool is_inside = (at_m.array() >= least.array()).all() && (at_m.array() <= most.array()).all();
  return is_inside ? std::nullopt : std::optional<Vector2d>((least + most) / 2);
}

bool isSurveyNote(std::string_view code) {
  return std::find(kNotes.begin(), kNotes.end(), code) != kNotes.end();
}

}  // namespace core::site
