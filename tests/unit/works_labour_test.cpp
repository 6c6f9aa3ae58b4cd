#include "core/base/source.h"
#include "core/works/labour.h"
#include "core/works/rates.h"
#include "tests/unit/works_support.h"

#include <set>
#include <stdexcept>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::Figure;
using core::works::Labour;
using core::works::labour;
using core::works::rate;
using core::works::rateInForce;
using support::findLine;
using support::line;
using support::Site;

/// 6 m by 3.5 m, pit 1.4 m deep with upright walls.
core::Project shallow() {
  core::Project p;
  p.tank.depth_m = 1.25;
  p.tank.batter = 0;
  p.lining.stone_bed_m = 0.03;
  return p;
}

std::vector<Labour> labourOf(const core::Project& p) {
  return labour(Site(p).input());
}

core::Delivery withPipes() {
  core::Delivery delivery;
  delivery.source.route = {{0, 5}, {40, 3}, {85, 0.5}};
  delivery.field.route = {{0, 0}, {30, -4}};
  return delivery;
}

}  // namespace

TEST_CASE("rates: every row rises from low to high, has a source and stands once") {
  std::set<std::string> keys;
  for (const Figure& r : core::works::rates()) {
    INFO(r.key);
    CHECK(r.low <= r.typical);
    CHECK(r.typical <= r.high);
    CHECK(r.low > 0);
    CHECK_NOTHROW(core::source(r.source));
    CHECK(keys.insert(r.key).second);
    CHECK(&rate(r.key) == &r);
  }
  CHECK_THROWS_AS(rate("digging.butter"), std::logic_error);
}

TEST_CASE("rates: published figures") {
  // district rate norms, mid-hill district, FY 2073/74, items 2-2, 2-25, 6-1
  CHECK(rate("digging.norm").typical == 0.8);
  CHECK(rate("ramming").typical == 0.5);
  CHECK(rate("stone_bed").typical == 1 + 3.5);
  // IS 7272 (second-hand): hard or dense soil, soft soil, mixing by hand
  CHECK(rate("digging.firm_loam").typical == 0.62);
  CHECK(rate("topsoil").typical == 0.50);
  CHECK(rate("mixing").typical == 0.75);
  // Central Public Works Department coefficients (second-hand)
  CHECK(rate("plaster").typical == Approx(0.074 + 0.093 + 0.093));
  CHECK(core::works::masonShareOfPlaster() == Approx(0.074 / 0.260));
  CHECK(core::works::masonShareOfBed() == Approx(1 / 4.5));
  // hand output tables (second-hand): 6.25, 3.23, 2.13 m3/h; a day of 8 h; printed to three figures
  CHECK(rate("carrying.10").typical == Approx(1 / (6.25 * 8)).epsilon(0.002));
  CHECK(rate("carrying.20").typical == Approx(1 / (3.23 * 8)).epsilon(0.002));
  CHECK(rate("carrying.50").typical == Approx(1 / (2.13 * 8)).epsilon(0.002));
}

TEST_CASE("rates: the district's own figures and the works' fields go before the table") {
  core::Project p;
  CHECK(rateInForce("plaster", p).source == "cpwd_plaster");
  p.works->plaster_person_day_per_m2 = 0.52;
  const Figure doubled = rateInForce("plaster", p);
  CHECK(doubled.typical == 0.52);
  CHECK(doubled.low == Approx(2 * rate("plaster").low));
  CHECK(doubled.high == Approx(2 * rate("plaster").high));
  CHECK(doubled.source == "user");

  p.works->rates = {{"ramming", 0.3, 0.4, 0.9}, {"digging.firm_loam", 0.2, 0.4, 0.5}};
  CHECK(rateInForce("ramming", p).low == 0.3);
  CHECK(rateInForce("ramming", p).high == 0.9);
  CHECK(rateInForce("ramming", p).source == "user");
  CHECK(rateInForce("digging.firm_loam", p).typical == 0.4);
  CHECK(rateInForce("digging.sandy", p).source == "is7272");
  p.works->digging_person_day_per_m3 = 0.8;  // of this tank, with the district's spread
  CHECK(rateInForce("digging.firm_loam", p).low == Approx(0.4));
  CHECK(rateInForce("digging.firm_loam", p).high == Approx(1.0));
  CHECK(rateInForce("digging.norm", p).typical == 0.8);
  CHECK(rateInForce("digging.norm", p).source == "rate_norms_2073");
  p.works.reset();
  CHECK(rateInForce("ramming", p).typical == rate("ramming").typical);
}

TEST_CASE("labour: quantities times published rates") {
  core::Project p;
  p.site.soil = core::Soil::stiff_clay;
  const Site site(p);
  const std::vector<Labour> all = labour(site.input());
  const double pit = site.tank.pitVolume();
  CHECK(line(all, "excavate").quantity + line(all, "excavate_deep").quantity == Approx(pit));
  // hard soil 0.8 person-day/m3; dry stone soling 1 skilled + 3.5 unskilled (district rate norms)
  CHECK(line(all, "excavate").rate == 0.8);
  const Labour& bed = line(all, "stone_bed");
  CHECK(bed.days == Approx(4.5 * site.quantities.stone_net_m3));
  CHECK(bed.mason_days == Approx(1.0 * site.quantities.stone_net_m3));
  // 0.26 day/m2 of face and 0.75 day/m3 mixed
  const core::lining::CoatQuantities& q = site.quantities.coats[0];
  const Labour& coat = line(all, "coat_1");
  CHECK(coat.days == Approx(0.26 * q.face_m2 + 0.75 * q.placed_m3));
  CHECK(coat.quantity == Approx(q.face_m2));
  CHECK(coat.mason_days == Approx(coat.days * 0.074 / 0.260));
  for (const Labour& l : all) {
    INFO(l.task);
    CHECK(l.low_days <= l.days);
    CHECK(l.days <= l.high_days);
    CHECK(l.days == Approx(l.quantity * l.rate));
    CHECK(l.mason_days <= l.days);
    CHECK((l.mason_days > 0) == (l.skill == "mason_and_helpers"));
  }
}

TEST_CASE("labour: a pit no deeper than 1.5 m is dug at one rate, the depth below it costs more") {
  core::Project p = shallow();
  p.site.soil = core::Soil::stiff_clay;
  const Site site(p);
  REQUIRE(site.tank.pitDepth() == Approx(1.4));
  const std::vector<Labour> all = labour(site.input());
  CHECK(line(all, "excavate").days == Approx(0.8 * site.tank.pitVolume()));
  CHECK(findLine(all, "excavate_deep") == nullptr);

  p.tank.depth_m = 1.85;  // pit 2 m deep, upright: 0.5 m of it lie deep
  const Site deep(p);
  const Labour low = line(labour(deep.input()), "excavate_deep");
  CHECK(low.quantity == Approx(deep.tank.pitVolume() * 0.5 / 2));
  CHECK(low.rate == Approx(0.8 * 1.5));
  p.works->digging_person_day_per_m3 = 2;
  p.works->deep_digging_factor = 1.2;
  const std::vector<Labour> own = labour(Site(p).input());
  CHECK(line(own, "excavate").rate == 2);
  CHECK(line(own, "excavate_deep").rate == Approx(2.4));
  CHECK(line(own, "excavate").source == "user");
}

TEST_CASE("labour: with battered walls the deep part is the lower slice of the pit") {
  core::Project p;
  p.tank.depth_m = 2;
  p.tank.batter = 0.25;
  const Site site(p);
  const double deep_m = site.tank.pitDepth() - 1.5;
  // many thin slices
  double volume = 0;
  constexpr int kSlices = 2000;
  for (int k = 0; k < kSlices; ++k) {
    const double z = site.tank.depth() - site.tank.pitDepth() + deep_m * (k + 0.5) / kSlices;
    volume += site.tank.outline().area(site.tank.pitOffset(z)) * deep_m / kSlices;
  }
  CHECK(line(labour(site.input()), "excavate_deep").quantity == Approx(volume).epsilon(1e-6));
}

TEST_CASE("labour: spoil is carried over what the digging rate leaves of the way") {
  core::Project p = shallow();
  p.site.soil = core::Soil::firm_loam;  // IS 7272: thrown out 1 m, nothing carried
  const double spoil = Site(p).platform.spoil_bank_m3;
  CHECK(line(labourOf(p), "carry_spoil").days == Approx(spoil * rate("carrying.10").typical));
  p.works->spoil_lead_m = 35;
  CHECK(line(labourOf(p), "carry_spoil").days == Approx(spoil * rate("carrying.50").typical));
  p.works->spoil_lead_m = 0;
  CHECK(findLine(labourOf(p), "carry_spoil") == nullptr);

  p.site.soil = core::Soil::stiff_clay;  // district norm: within 10 m lead
  p.works->spoil_lead_m = 10;
  CHECK(findLine(labourOf(p), "carry_spoil") == nullptr);
  p.works->spoil_lead_m = 20;
  CHECK(line(labourOf(p), "carry_spoil").rate ==
        Approx(rate("carrying.20").typical - rate("carrying.10").typical));
  p.works->digging_person_day_per_m3 = 0.7;  // digging alone, as measured
  CHECK(line(labourOf(p), "carry_spoil").rate == Approx(rate("carrying.20").typical));
}

TEST_CASE("labour: trimming covers floor and walls of an upright pit") {
  const Site site(shallow());
  const Eigen::Vector2d pit = site.tank.outline().size(site.tank.pitOffset(0));
  CHECK(line(labour(site.input()), "trim").quantity ==
        Approx(pit.x() * pit.y() + 2 * (pit.x() + pit.y()) * 1.4));
}

TEST_CASE("labour: ground is cleared to a metre beyond the walkway") {
  core::Project p = shallow();
  p.site.platform.walkway_m = 0.5;
  const Site site(p);
  const Eigen::Vector2d pit = site.tank.outline().size(site.tank.pitOffset(0));
  CHECK(line(labour(site.input()), "clear").quantity == Approx((pit.x() + 3) * (pit.y() + 3)));
}

TEST_CASE("labour: what a plan does not have needs no hands") {
  core::Project p = shallow();
  const std::vector<std::string> none{"pipes",    "silt_trap",    "overflow",     "fence",
                                      "planting", "platform_cut", "platform_fill"};
  for (const std::string& task : none) {
    INFO(task);
    CHECK(findLine(labourOf(p), task) == nullptr);
  }
  p.delivery = withPipes();
  p.site.silt_trap_planned = true;
  p.site.fence_planned = true;
  p.water = core::Water{};
  p.water->beds = {{"tomato", 40, 11, 1, {}, {}}, {"cabbage", 25, 11, 1, {}, {}}};
  Site site(p);
  site.platform.cut_m3 = 7;
  site.platform.fill_m3 = 5;
  const std::vector<Labour> all = labour(site.input());
  CHECK(line(all, "pipes").quantity == Approx(85 + 30));
  CHECK(line(all, "silt_trap").quantity == 1);
  CHECK(line(all, "overflow").quantity == 1);
  CHECK(line(all, "fence").quantity == Approx(2 * (6 + 2 + 3.5 + 2)));
  CHECK(line(all, "planting").quantity == Approx(65));
  CHECK(line(all, "platform_cut").days == Approx(7 * 0.62));
  CHECK(line(all, "platform_fill").days == Approx(5 * 0.5));
  p.site.silt_trap_planned = false;
  CHECK(findLine(labourOf(p), "silt_trap") == nullptr);
  p.delivery->silt_trap.length_m = 1.5;
  CHECK(findLine(labourOf(p), "silt_trap") != nullptr);
}

TEST_CASE("labour: wetting goes with people, rounds and days of curing") {
  core::Project p = shallow();
  const Labour usual = line(labourOf(p), "curing");
  CHECK(usual.quantity == 3 + 4);
  CHECK(usual.days == Approx(7 * rate("wetting").typical));
  p.works->wettings_per_day = 6;
  p.works->wetting_people = 2;
  CHECK(line(labourOf(p), "curing").days == Approx(4 * usual.days));
  p.works->wetting_people = 0;
  CHECK(findLine(labourOf(p), "curing") == nullptr);
}
