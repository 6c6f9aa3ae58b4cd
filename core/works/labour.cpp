#include "core/works/labour.h"

#include "core/works/rates.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

namespace core::works {
namespace {

constexpr double kClearBeyond_m = 1;     // own: outside the walkway
constexpr double kFenceBeyond_m = 1;     // own: outside the opening
constexpr double kRoundsOfTheTable = 3;  // of the rate of wetting
constexpr const char* kLabourer = "labourer";
constexpr const char* kMason = "mason_and_helpers";

Figure times(Figure figure, double factor) {
  figure.low *= factor;
  figure.typical *= factor;
  figure.high *= factor;
  return figure;
}

/// Two works done on one quantity.
Figure plus(Figure a, const Figure& b, double factor) {
  a.low += b.low * factor;
  a.typical += b.typical * factor;
  a.high += b.high * factor;
  if (b.source == "user") a.source = b.source;
  return a;
}

class Lines {
public:
  explicit Lines(const LabourInput& input)
      : geometry_(input.geometry),
        project_(input.project),
        works_(*input.project.works),
        quantities_(input.quantities),
        platform_(input.platform) {}

  std::vector<Labour> all() {
    ground();
    pit();
    lining();
    around();
    water();
    return std::move(lines_);
  }

private:
  const geometry::TankGeometry& geometry_;
  const Project& project_;
  const core::Works& works_;
  const lining::Quantities& quantities_;
  const Platform& platform_;
  std::vector<Labour> lines_;

  Figure inForce(std::string_view key) const { return rateInForce(key, project_); }

  void add(std::string task, double quantity, const char* unit, const Figure& rate,
           const char* skill = kLabourer, double mason_share = 0) {
    if (!(quantity > 0)) return;
    lines_.push_back({.task = std::move(task),
                      .days = quantity * rate.typical,
                      .low_days = quantity * rate.low,
                      .high_days = quantity * rate.high,
                      .skill = skill,
                      .mason_days = quantity * rate.typical * mason_share,
                      .quantity = quantity,
                      .unit = unit,
                      .rate = rate.typical,
                      .source = rate.source});
  }

  void ground() {
    const double rim = geometry_.pitOffset(geometry_.depth());
    const double beyond = project_.site.platform.walkway_m + kClearBeyond_m;
    add("clear", geometry_.outline().area(rim + beyond), "m2", inForce("clearing"));
    add("set_out", 1, "job", inForce("set_out"));
    add("strip_topsoil", platform_.topsoil_m3, "m3", inForce("topsoil"));
    add("platform_cut", platform_.cut_m3, "m3", digging());
    add("platform_fill", platform_.fill_m3, "m3", inForce("ramming"));
  }

  Figure digging() const { return inForce(diggingKey(project_.site.soil)); }

  void pit() {
    const double deep = deepVolume();
    add("excavate", geometry_.pitVolume() - deep, "m3", digging());
    add("excavate_deep", deep, "m3", times(digging(), works_.deep_digging_factor));
    carrying();
    add("trim", pitFaces(), "m2", inForce("trimming"));
  }

  /// Dug lower than `kDeepDigging_m` below the ground beside the tank [m3].
  double deepVolume() const {
    const double deep_m = geometry_.pitDepth() - kDeepDigging_m;
    if (deep_m <= 0) return 0;
    const double floor = geometry_.depth() - geometry_.pitDepth();
    return geometry_.outline().volume(geometry_.pitOffset(floor), geometry_.pitOffset(floor + deep_m),
                                      deep_m);
  }

  /// Floor and walls of the pit as dug [m2].
  double pitFaces() const {
    const double floor = geometry_.depth() - geometry_.pitDepth();
    const double half_way = geometry_.pitOffset(floor + geometry_.pitDepth() / 2);
    return geometry_.outline().area(geometry_.pitOffset(floor)) +
           geometry_.outline().perimeter(half_way) * geometry_.pitDepth() * geometry_.slant();
  }

  /// What is left to carry over the lead that the digging rate includes.
  void carrying() {
    const Figure dig = digging();
    const double included = dig.source == "user" ? 0 : leadIncluded_m(dig.key);
    if (works_.spoil_lead_m <= included) return;
    Figure carry = inForce(carryingKey(works_.spoil_lead_m));
    if (included > 0) carry = beyond(carry, inForce(carryingKey(included)));
    if (carry.typical > 0) add("carry_spoil", platform_.spoil_bank_m3, "m3", carry);
  }

  /// What a longer way takes beyond a shorter one.
  static Figure beyond(const Figure& longer, const Figure& shorter) {
    Figure rest = plus(longer, shorter, -1);
    rest.low = std::max(0.0, std::min(rest.low, rest.typical));
    rest.high = std::max(rest.high, rest.typical);
    return rest;
  }

  static const char* carryingKey(double lead_m) {
    if (lead_m <= 10) return "carrying.10";
    return lead_m <= 20 ? "carrying.20" : "carrying.50";
  }

  void lining() {
    if (project_.delivery)
      add("pipes", routeLength(project_.delivery->source.route) + routeLength(project_.delivery->field.route),
          "m", inForce("pipe_laying"));
    add("stone_bed", quantities_.stone_net_m3, "m3", inForce("stone_bed"), kMason, masonShareOfBed());
    int cure_days = 0;
    for (const lining::CoatQuantities& q : quantities_.coats) {
      coat(q);
      cure_days += project_.lining.coats[static_cast<std::size_t>(q.coat) - 1].cure_days;
    }
    const double share = works_.wetting_people * works_.wettings_per_day / kRoundsOfTheTable;
    if (share > 0) add("curing", cure_days, "day", times(inForce("wetting"), share));
  }

  /// Spreading by face and mixing by volume of plaster.
  void coat(const lining::CoatQuantities& q) {
    const Figure rate = plus(inForce("plaster"), inForce("mixing"), q.placed_m3 / q.face_m2);
    add(fmt::format("coat_{}", q.coat), q.face_m2, "m2", rate, kMason, masonShareOfPlaster());
  }

  void around() {
    const std::optional<Delivery>& delivery = project_.delivery;
    const bool has_trap = delivery && (delivery->silt_trap.length_m || delivery->silt_trap.width_m ||
                                       delivery->silt_trap.depth_m);
    if (has_trap || project_.site.silt_trap_planned.value_or(false))
      add("silt_trap", 1, "job", inForce("silt_trap"), kMason, masonShareOfBed());
    if (delivery) add("overflow", 1, "job", inForce("overflow"), kMason, masonShareOfBed());
    if (project_.site.fence_planned.value_or(false))
      add("fence", fenceLength(geometry_), "m", inForce("fence"));
  }

  void water() {
    if (!quantities_.coats.empty()) {
      add("fill", 1, "day", inForce("filling"));
      add("leak_test", 1, "job", inForce("leak_test"));
    }
    if (!project_.water) return;
    double beds_m2 = 0;
    for (const Bed& bed : project_.water->beds) beds_m2 += bed.area_m2;
    add("planting", beds_m2, "m2", inForce("planting"));
  }
};

}  // namespace

std::vector<Labour> labour(const LabourInput& input) {
  return Lines(input).all();
}

double fenceLength(const geometry::TankGeometry& geometry) {
  return geometry.outline().perimeter(geometry.clearOffset(geometry.depth()) + kFenceBeyond_m);
}

double masonShareOfPlaster() {
  return 0.074 / 0.260;
}

double masonShareOfBed() {
  return 1 / 4.5;
}

}  // namespace core::works
