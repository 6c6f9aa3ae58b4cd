#include "tests/ui/handout_support.h"

#include <QPainter>
#include <QProcess>
#include <cmath>

namespace support {
namespace {

core::Project base() {
  core::Project project;
  project.title = "Terrace tank above the upper field";
  project.place = "Halvarn ridge";
  project.prepared_by = "T. Ness";
  project.lining.customary = {3, 2, 1, 500};
  project.site.clay_percent = 25;
  return project;
}

core::Project sized(double length, double width, double depth, double batter) {
  core::Project project = base();
  project.tank.length_m = length;
  project.tank.width_m = width;
  project.tank.depth_m = depth;
  project.tank.batter = batter;
  return project;
}

core::Project round() {
  core::Project project = base();
  project.tank.shape = core::Shape::round;
  project.tank.diameter_m = 4.2;
  project.lining.cove_radius_m = 0.1;
  return project;
}

core::Project fiveSided() {
  core::Project project = base();
  project.tank.shape = core::Shape::polygon;
  project.tank.outline_m = {{0, 0}, {6, -1}, {8, 2}, {5, 5}, {1, 4}};
  project.lining.rim_width_m = 0.3;
  project.lining.rim_thickness_m = 0.06;
  project.works.reset();
  return project;
}

core::Project sixCoats() {
  core::Project project = base();
  project.lining.coats.assign(6, core::Coat{0.02, 3, 3, 1, 20});
  project.tank.batter = 0.5;
  project.tank.corner_radius_m = 0.5;
  return project;
}

core::Project wordy() {
  core::Project project = base();
  project.title = std::string(180, 'W');
  project.place = "a place with a name that goes on and on and on and does not stop for a good while yet";
  project.prepared_by = std::string(120, 'M');
  return project;
}

}  // namespace

std::vector<std::pair<std::string, core::Project>> sheetProjects() {
  return {{"usual", base()},
          {"round", round()},
          {"five-sided without works", fiveSided()},
          {"six coats, 20 days wet", sixCoats()},
          {"60 m by 20 m", sized(60, 20, 2.4, 1)},
          {"1 m by 1 m", sized(1, 1, 0.8, 0)},
          {"4 m deep", sized(8, 6, 4, 0.3)},
          {"long names", wordy()}};
}

ui::Formatter english() {
  return ui::Formatter(QLocale(QLocale::English));
}

ui::handouts::Content contentOf(const core::Project& project, const ui::Formatter& format) {
  return {project, core::plan(project).value(), format};
}

PageRecord::PageRecord(const ui::handouts::Handout& handout, int page) : recorder(handout.pageSize_mm()) {
  QPainter painter(&recorder);
  handout.paint(painter, page);
}

ToolRun tool(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  const bool ended = process.waitForStarted() && process.waitForFinished(60000);
  return {ended && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0,
          QString::fromUtf8(process.readAllStandardOutput())};
}

QString simplified(const QString& text) {
  return QString(text).replace(QChar::Nbsp, u' ').simplified();
}

}  // namespace support
