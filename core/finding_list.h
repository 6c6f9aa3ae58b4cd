#pragma once

#include "core/base/finding.h"
#include "core/plan.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace core {

inline FindingValue value(std::string name, double number, Unit unit = Unit::none) {
  return {std::move(name), number, unit, {}};
}

inline FindingValue token(std::string name, std::string text) {
  return {std::move(name), 0, Unit::none, std::move(text)};
}

/// Findings as they are raised.
class FindingList {
public:
  void note(std::string code, std::vector<FindingValue> values, std::string source, std::string field = {}) {
    add(Severity::note, std::move(code), std::move(values), std::move(source), std::move(field));
  }
  void caution(std::string code, std::vector<FindingValue> values, std::string source,
               std::string field = {}) {
    add(Severity::caution, std::move(code), std::move(values), std::move(source), std::move(field));
  }
  void stop(std::string code, std::vector<FindingValue> values, std::string source, std::string field = {}) {
    add(Severity::stop, std::move(code), std::move(values), std::move(source), std::move(field));
  }
  /// Stops first, then cautions, then notes.
  std::vector<Finding> sorted() {
    std::stable_sort(all_.begin(), all_.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    return std::move(all_);
  }

private:
  std::vector<Finding> all_;
  void add(Severity severity, std::string code, std::vector<FindingValue> values, std::string source,
           std::string field) {
    all_.push_back({std::move(code), severity, std::move(values), std::move(source), std::move(field)});
  }
};

/// What there is to know of the ground, the water in it, the cut, the edge and the people nearby.
void siteFindings(const Project& project, const Plan& plan, FindingList& out);

/// Where the test pits of the field notes show a worse site than the one entered.
void notesFindings(const Project& project, const Plan& plan, FindingList& out);

/// What there is to know of source, need, weather and whether the water lasts.
void waterFindings(const Project& project, const Plan& plan, FindingList& out);

/// What there is to know of pipes, siphon, overflow, spill path, silt trap and leak test.
void deliveryFindings(const Project& project, const Plan& plan, FindingList& out);

/// What there is to know of crews, dates, filling, weather and records.
void worksFindings(const Project& project, const Plan& plan, FindingList& out);

/// What there is to know of prices, loads and options.
void moneyFindings(const Project& project, const Plan& plan, FindingList& out);

/// Place on or about the tank that a finding is about, in the tank's frame; nothing when it is about no
/// place.
std::optional<Eigen::Vector3d> placeOf(const Finding& finding, const Plan& plan);

}  // namespace core
