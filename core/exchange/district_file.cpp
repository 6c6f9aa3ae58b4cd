#include "core/exchange/district_file.h"

#include "core/exchange/point_list.h"
#include "core/exchange/project_json.h"
#include "core/exchange/project_keys.h"
#include "core/exchange/unknown_keys.h"

#include <algorithm>
#include <array>
#include <utility>

namespace core::exchange {
namespace {

using std::string_view;

constexpr string_view kDistrictFormat = "tankwright-district";
constexpr std::array<string_view, 3> kParts{"prices", "records", "works"};
constexpr std::array<string_view, 6> kWorksKeys{"hours_per_day",
                                                "digging_person_day_per_m3",
                                                "bed_person_day_per_m3",
                                                "plaster_person_day_per_m2",
                                                "mixing_person_day_per_m3",
                                                "rates"};

template <std::size_t Count>
bool isAmong(const std::array<string_view, Count>& keys, string_view key) {
  return std::find(keys.begin(), keys.end(), key) != keys.end();
}

/// Of a project's works what belongs to the district.
Json ratesOf(const Json& works) {
  Json rates = Json::object();
  for (const string_view key : kWorksKeys) {
    if (works.contains(key)) rates[std::string(key)] = works.at(std::string(key));
  }
  return rates;
}

/// Puts members in place of those of the same name; objects are gone through, all else is replaced whole.
void replaceMembers(Json& target, const Json& from) {
  if (!target.is_object() || !from.is_object()) {
    target = from;
    return;
  }
  for (const auto& item : from.items()) replaceMembers(target[item.key()], item.value());
}

bool isBlank(const Json& json) {
  return json.is_string() && json.get_ref<const std::string&>().empty();
}

void leaveOutWorks(Project& project) {
  project.works.reset();
  std::erase_if(project.kept, [](const KeptKey& kept) { return kept.pointer.starts_with("/works/"); });
}

class DistrictReader {
public:
  explicit DistrictReader(const Json& root) : root_(root) {}

  tl::expected<ReadProject, Problems> putInto(const Project& project) {
    problems_ = checkFormat(root_, kDistrictFormat, "not_a_district");
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    readParts();
    Project with_works = project;
    if (!with_works.works) with_works.works.emplace();
    const Json own = projectJson(with_works);
    const Problems unknown = unknownKeys(parts_).notes;
    auto read = withParts(own);  // by itself first, so that problems count the file's own rows
    if (!read) problems_.insert(problems_.end(), read.error().begin(), read.error().end());
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    addRecords(own);
    read = withParts(own);
    if (!read) return tl::unexpected(read.error());
    if (!project.works) leaveOutRates(read->project);
    notes_.insert(notes_.end(), unknown.begin(), unknown.end());
    return ReadProject{std::move(read->project), std::move(notes_)};
  }

private:
  tl::expected<ReadProject, Problems> withParts(Json target) const {
    replaceMembers(target, parts_);
    return projectFrom(target);
  }

  /// What was measured here stays, and what others measured comes to it; rows that are alike count once.
  void addRecords(const Json& target) {
    const auto records = parts_.find("records");
    if (records == parts_.end() || !target.contains("records")) return;
    for (const char* list : {"batches", "work"}) {
      if (!records->contains(list) || !records->at(list).is_array()) continue;
      Json all = target.at("records").at(list);
      for (const Json& row : records->at(list)) {
        if (std::find(all.begin(), all.end(), row) == all.end()) all.push_back(row);
      }
      (*records)[list] = std::move(all);
    }
  }

  void leaveOutRates(Project& project) {
    leaveOutWorks(project);
    if (!parts_.contains("works")) return;
    Problem note;
    note.code = "part_absent";
    note.path = "works";
    notes_.push_back(std::move(note));
  }

  const Json& root_;
  Json parts_ = Json::object();  // as they stand in a project file
  Problems problems_, notes_;

  void add(string_view code, string_view path, const Json* found, string_view allowed) {
    problems_.push_back(problemAt(code, std::string(path), found, allowed));
  }

  void readParts() {
    for (const auto& item : root_.items()) {
      const std::string& key = item.key();
      if (key == "name") {
        checkName(item.value());
      } else if (key == "currency") {
        if (!isBlank(item.value())) parts_[key] = item.value();
      } else if (isAmong(kParts, key)) {
        readPart(key, item.value());
      } else if (key != "format" && key != "version") {
        note({key}, item.value());
      }
    }
  }

  void checkName(const Json& name) {
    if (!name.is_string()) return add("wrong_type", "name", &name, "text");
    if (name.get_ref<const std::string&>().size() <= kMostNameBytes) return;
    add("too_long", "name", &name, "text");
    problems_.back().most = static_cast<double>(kMostNameBytes);
  }

  void readPart(const std::string& key, const Json& part) {
    if (part.is_null()) return;
    if (!part.is_object()) return add("wrong_type", key, &part, "object");
    parts_[key] = key == "works" ? ratesOf(part) : part;
    if (key != "works") return;
    for (const auto& item : part.items()) {
      if (!isAmong(kWorksKeys, item.key())) note({key, item.key()}, item.value());
    }
  }

  void note(const std::vector<std::string>& keys, const Json& value) {
    Json::json_pointer at;
    for (const std::string& key : keys) at /= key;
    notes_.push_back(problemAt("unknown_key", dottedPath(at), &value, ""));
  }
};

}  // namespace

std::string districtText(const Project& project, string_view name) {
  const Json from = projectJson(project);
  Json root = {{"format", kDistrictFormat}, {"version", kVersion}, {"name", name}};
  root["currency"] = project.currency;
  for (const string_view part : kParts) {
    const std::string key(part);
    if (from.contains(key)) root[key] = key == "works" ? ratesOf(from.at(key)) : from.at(key);
  }
  return prettyText(root);
}

tl::expected<ReadProject, Problems> withDistrict(const Project& project, string_view json) {
  const auto root = parseJson(json);
  if (!root) return tl::unexpected(root.error());
  return DistrictReader(*root).putInto(project);
}

}  // namespace core::exchange
