#include "ui/window/examples.h"

#include "core/exchange/project_file.h"

#include <QDate>
#include <QFile>
#include <stdexcept>

namespace ui {

core::Project exampleProject() {
  QFile file(QStringLiteral(":/demo/terrace.tankwright"));
  if (!file.open(QIODevice::ReadOnly)) throw std::logic_error("the example is missing");
  const auto read = core::exchange::parseProject(file.readAll().toStdString());
  if (!read) throw std::logic_error("the example cannot be read");
  return read->project;
}

core::Project newProject() {
  core::Project project;
  const QDate today = QDate::currentDate();
  project.works->start_date = std::chrono::year(today.year()) / today.month() / today.day();
  return project;
}

}  // namespace ui
