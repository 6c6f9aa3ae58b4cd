#include "tests/ui/handout_site_support.h"

#include "tests/support/water_project.h"

#include <catch2/catch.hpp>

namespace support {
namespace {

core::Project sloping(double fall_percent) {
  core::Project project = levelProject();
  project.site.ground = {core::GroundKind::slope, fall_percent, 160, {}};
  return project;
}

/// Numbers of the pipes are invented; each way is one that flows.
core::Delivery delivery() {
  core::Delivery d;
  d.source.route = {{0, 12}, {60, 5}, {90, 7}, {140, 0.4}};
  d.source.wanted_l_per_min = 25;
  d.field.route = {{0, 0}, {20, -4}, {45, -9}};
  d.overflow.storm_mm_h = 80;
  d.leak_test.tank_drop_mm = 9;
  d.leak_test.bucket_drop_mm = 4;
  return d;
}

core::Project noLines() {
  core::Project project = levelProject();
  project.delivery.emplace();
  return project;
}

/// Ground as steep as the cut face, which never meets it.
core::Project noPlatform() {
  return sloping(100);
}

}  // namespace

core::Project levelProject() {
  core::Project project = sheetProjects().front().second;
  project.site.soil = core::Soil::firm_loam;
  return project;
}

core::Project slopeProject() {
  return sloping(18);
}

core::Project deliveryProject() {
  core::Project project = slopeProject();
  const core::Project watered = waterProject();
  project.site.latitude_deg = watered.site.latitude_deg;
  project.site.elevation_m = watered.site.elevation_m;
  project.water = watered.water;
  project.water->roof.area_m2 = 45;
  project.delivery = delivery();
  return project;
}

core::Project liningPipeProject() {
  core::Project project = deliveryProject();
  project.delivery->field.over_rim = false;
  project.delivery->field.route = {{0, -1.4}, {30, -6}};
  project.delivery->overflow.kind = core::OverflowKind::pipe;
  project.delivery->overflow.storm_mm_h.reset();
  project.delivery->leak_test = {};
  return project;
}

core::Project dryLinesProject() {
  core::Project project = deliveryProject();
  project.delivery->source.route = {{0, -8}, {50, 0.4}};
  project.delivery->field.route = {{0, 0}, {20, 3}};
  project.delivery->overflow.width_m = 0.05;
  project.delivery->overflow.storm_mm_h = 500;
  project.water->ground.area_m2 = 20000;
  return project;
}

core::Project edgeProject() {
  core::Project project = levelProject();
  project.site.edge_distance_m = 2.5;
  project.site.edge_height_m = 2;
  return project;
}

core::Project balancedRoundProject() {
  core::Project project = sloping(25);
  project.tank.shape = core::Shape::round;
  project.site.platform.level_by = core::PlatformLevel::balanced;
  return project;
}

core::Project unknownSoilProject() {
  core::Project project = slopeProject();
  project.site.soil.reset();
  return project;
}

std::vector<std::pair<std::string, core::Project>> siteProjects() {
  return {{"level", levelProject()},
          {"slope and delivery", deliveryProject()},
          {"through the lining", liningPipeProject()},
          {"nothing flows", dryLinesProject()},
          {"no lines", noLines()},
          {"terrace edge", edgeProject()},
          {"no platform", noPlatform()},
          {"round on a slope", balancedRoundProject()},
          {"soil not known", unknownSoilProject()}};
}

std::vector<int> pagesWith(const ui::handouts::Handout& handout, const QString& code) {
  std::vector<int> pages;
  for (int page = 0; page < handout.pageCount(); ++page) {
    if (handout.pageCode(page) == code) pages.push_back(page);
  }
  return pages;
}

ReadPages::ReadPages(const ui::handouts::Content& content, const QString& code) : format(content.format) {
  const ui::handouts::Handout handout(content, {});
  for (const int page : pagesWith(handout, code))
    text += PageRecord(handout, page).recorder.allText() + u'\n';
  text = simplified(text);
}

void ReadPages::has(const QString& part) const {
  INFO(part.toStdString() << "\nis not in\n" << text.toStdString());
  CHECK(text.contains(simplified(part)));
}

void ReadPages::hasRow(const QStringList& cells) const {
  has(cells.join(u' '));
}

void ReadPages::hasAll(const QStringList& parts) const {
  REQUIRE_FALSE(parts.isEmpty());
  for (const QString& part : parts) has(part);
}

QString ReadPages::metres(double value, int decimals) const {
  return format.quantity(value, core::Unit::metre, decimals);
}

}  // namespace support
