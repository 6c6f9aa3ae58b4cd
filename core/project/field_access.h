#pragma once

#include "core/project/fields.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cstddef>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

/// How one member of a Project is read and set as a FieldValue: by its type (Kind) and by its place (At,
/// InWorks, InWater, InDelivery, InPrices, InRow).
namespace core::access {

using std::string_view;

template <class Enum>
struct Tokens;
template <>
struct Tokens<Shape> {
  static constexpr std::array<string_view, 3> all{"rectangle", "round", "polygon"};
};
template <>
struct Tokens<MeasuredAt> {
  static constexpr std::array<string_view, 2> all{"floor", "rim"};
};
template <>
struct Tokens<Soil> {
  static constexpr std::array<string_view, 6> all{"stiff_clay", "firm_loam", "sandy",
                                                  "loose_fill", "soft_wet",  "rock"};
};
template <>
struct Tokens<GroundKind> {
  static constexpr std::array<string_view, 3> all{"level", "slope", "spot_heights"};
};
template <>
struct Tokens<PlatformLevel> {
  static constexpr std::array<string_view, 3> all{"natural_ground", "balanced", "given"};
};
template <>
struct Tokens<RestDay> {
  static constexpr std::array<string_view, 8> all{"none",     "monday", "tuesday",  "wednesday",
                                                  "thursday", "friday", "saturday", "sunday"};
};

template <>
struct Tokens<RecordedWork> {
  static constexpr std::array<string_view, 5> all{"digging", "ramming", "stone_bed", "spreading", "mixing"};
};
template <>
struct Tokens<BallTest> {
  static constexpr std::array<string_view, 2> all{"falls_apart", "holds"};
};
template <>
struct Tokens<Grit> {
  static constexpr std::array<string_view, 3> all{"gritty", "even", "smooth"};
};
template <>
struct Tokens<Carrier> {
  static constexpr std::array<string_view, 4> all{"none", "porter", "mule", "trolley"};
};
template <>
struct Tokens<LiningKind> {
  static constexpr std::array<string_view, 5> all{"soil_cement", "plastic_sheet", "ferrocement",
                                                  "stone_masonry", "moulded_tank"};
};
template <>
struct Tokens<PricePer> {
  static constexpr std::array<string_view, 3> all{"job", "square_metre", "cubic_metre"};
};
template <>
struct Tokens<RangedInput> {
  static constexpr std::array<string_view, 9> all{"thickness",      "unevenness", "dry_to_wet",
                                                  "cement_density", "digging",    "plastering",
                                                  "prices",         "wages",      "flow"};
};
template <>
struct Tokens<PipeGrade> {
  static constexpr std::array<string_view, 2> all{"pe80", "pe100"};
};
template <>
struct Tokens<OutletKind> {
  static constexpr std::array<string_view, 7> all{
      "open_pipe", "tap", "hose", "drip_low_cost", "drip_standard", "micro_sprinkler", "sprinkler"};
};
template <>
struct Tokens<OverflowKind> {
  static constexpr std::array<string_view, 2> all{"notch", "pipe"};
};
template <>
struct Tokens<SpillCover> {
  static constexpr std::array<string_view, 4> all{"soil", "grass", "stone_pitching", "plaster"};
};
template <>
struct Tokens<ClimateKind> {
  static constexpr std::array<string_view, 2> all{"monthly", "daily"};
};
template <>
struct Tokens<Et0Method> {
  static constexpr std::array<string_view, 2> all{"penman_monteith", "hargreaves"};
};
template <>
struct Tokens<GapRule> {
  static constexpr std::array<string_view, 2> all{"leave_out_year", "nearest_year"};
};
template <>
struct Tokens<IrrigationMethod> {
  static constexpr std::array<string_view, 5> all{"watering_can", "hose", "furrow", "sprinkler", "drip"};
};
template <>
struct Tokens<Animal> {
  static constexpr std::array<string_view, 8> all{"cattle", "dairy_cow",     "buffalo", "horse_or_mule",
                                                  "donkey", "goat_or_sheep", "pig",     "poultry"};
};

/// What stands in one member, by its type. The first one is for enumerations.
template <class T>
struct Kind {
  static_assert(std::is_enum_v<T>);
  static constexpr FieldKind kind = FieldKind::choice;
  static constexpr std::span<const string_view> choices = Tokens<T>::all;
  static FieldValue get(T value) { return std::string(choices[static_cast<std::size_t>(value)]); }
  static T from(const FieldValue& value) {
    for (std::size_t i = 0; i < choices.size(); ++i) {
      if (choices[i] == std::get<std::string>(value)) return static_cast<T>(i);
    }
    throw std::logic_error("no such choice");
  }
};

template <>
struct Kind<double> {
  static constexpr FieldKind kind = FieldKind::number;
  static constexpr std::span<const string_view> choices{};
  static FieldValue get(double value) { return value; }
  static double from(const FieldValue& value) { return std::get<double>(value); }
};

template <>
struct Kind<int> {
  static constexpr FieldKind kind = FieldKind::whole;
  static constexpr std::span<const string_view> choices{};
  static FieldValue get(int value) { return static_cast<double>(value); }
  static int from(const FieldValue& value) { return static_cast<int>(std::get<double>(value)); }
};

template <>
struct Kind<bool> {
  static constexpr FieldKind kind = FieldKind::flag;
  static constexpr std::span<const string_view> choices{};
  static FieldValue get(bool value) { return value; }
  static bool from(const FieldValue& value) { return std::get<bool>(value); }
};

template <>
struct Kind<std::string> {
  static constexpr FieldKind kind = FieldKind::text;
  static constexpr std::span<const string_view> choices{};
  static FieldValue get(const std::string& value) { return value; }
  static std::string from(const FieldValue& value) { return std::get<std::string>(value); }
};

inline constexpr int kFirstYear = 2000;
inline constexpr int kLastYear = 2199;

/// Date of a text "2027-02-15"; nothing when there is no such day or it is outside the years.
std::optional<std::chrono::year_month_day> dateFrom(string_view text, int first_year = kFirstYear,
                                                    int last_year = kLastYear);
std::string dateText(std::chrono::year_month_day date);

template <>
struct Kind<std::chrono::year_month_day> {
  static constexpr FieldKind kind = FieldKind::date;
  static constexpr std::span<const string_view> choices{};
  static FieldValue get(std::chrono::year_month_day date) { return dateText(date); }
  static std::chrono::year_month_day from(const FieldValue& value) {
    return dateFrom(std::get<std::string>(value)).value();
  }
};

template <class T>
struct Kind<std::optional<T>> : Kind<T> {
  static FieldValue get(const std::optional<T>& value) { return value ? Kind<T>::get(*value) : FieldValue{}; }
  static std::optional<T> from(const FieldValue& value) {
    if (std::holds_alternative<std::monostate>(value)) return std::nullopt;
    return Kind<T>::from(value);
  }
};

template <class T>
inline constexpr bool kIsOptional = false;
template <class T>
inline constexpr bool kIsOptional<std::optional<T>> = true;

/// A member reached through others from the Project.
template <auto... Members>
struct At {
  static auto* find(auto& project, std::size_t) { return &(project.*....*Members); }
  static auto& make(Project& project, std::size_t) { return (project.*....*Members); }
};

/// A member of the works, which may be absent; setting it makes them.
template <auto Member>
struct InWorks {
  static auto* find(auto& project, std::size_t) {
    return project.works ? &((*project.works).*Member) : nullptr;
  }
  static auto& make(Project& project, std::size_t) {
    if (!project.works) project.works.emplace();
    return (*project.works).*Member;
  }
};

/// A member of the water, reached through others; setting it makes the water.
template <auto... Members>
struct InWater {
  static auto* find(auto& project, std::size_t) {
    return project.water ? &((*project.water).*....*Members) : nullptr;
  }
  static auto& make(Project& project, std::size_t) {
    if (!project.water) project.water.emplace();
    return ((*project.water).*....*Members);
  }
};

/// A member of the delivery, reached through others; setting it makes the delivery.
template <auto... Members>
struct InDelivery {
  static auto* find(auto& project, std::size_t) {
    return project.delivery ? &((*project.delivery).*....*Members) : nullptr;
  }
  static auto& make(Project& project, std::size_t) {
    if (!project.delivery) project.delivery.emplace();
    return ((*project.delivery).*....*Members);
  }
};

/// A member of the prices, reached through others; setting it makes them.
template <auto... Members>
struct InPrices {
  static auto* find(auto& project, std::size_t) {
    return project.prices ? &((*project.prices).*....*Members) : nullptr;
  }
  static auto& make(Project& project, std::size_t) {
    if (!project.prices) project.prices.emplace();
    return ((*project.prices).*....*Members);
  }
};

/// A member of one row of a list. `Rows` finds the list.
template <class Rows, auto Member>
struct InRow {
  static auto* find(auto& project, std::size_t row) {
    auto* rows = Rows::find(project, 0);
    return rows ? &(rows->at(row).*Member) : nullptr;
  }
  static auto& make(Project& project, std::size_t row) { return Rows::make(project, 0).at(row).*Member; }
};

template <class Place>
using TypeAt = std::remove_cvref_t<decltype(Place::make(std::declval<Project&>(), 0))>;

template <class Place>
FieldValue getAt(const Project& project, std::size_t row) {
  const auto* member = Place::find(project, row);
  return member ? Kind<TypeAt<Place>>::get(*member) : FieldValue{};
}

template <class Place>
void setAt(Project& project, std::size_t row, const FieldValue& value) {
  // nothing is taken out of a part that is not there
  if (std::holds_alternative<std::monostate>(value) && !Place::find(project, row)) return;
  Place::make(project, row) = Kind<TypeAt<Place>>::from(value);
}

}  // namespace core::access
