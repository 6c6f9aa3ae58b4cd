#include "ui/panels/point_lists.h"

#include "ui/document/document.h"
#include "ui/widgets/point_table.h"

#include <QCoreApplication>

namespace ui {

namespace {

using Points = std::vector<PointTable::Point>;

QString text(const char* source) {
  return QCoreApplication::translate("ui::PointTable", source);
}

Points outlineOf(const core::Project& project) {
  Points points;
  for (const Eigen::Vector2d& corner : project.tank.outline_m) points.push_back({corner.x(), corner.y()});
  return points;
}

core::Problems takeOutline(Document& document, const Points& points) {
  return document.change(text(QT_TRANSLATE_NOOP("ui::PointTable", "Clear outline")),
                         [&](core::Project& project) {
                           project.tank.outline_m.clear();
                           for (const PointTable::Point& point : points)
                             project.tank.outline_m.emplace_back(point[0], point[1]);
                         });
}

template <class Read, class Shown>
PointTable* follow(Document& document, PointTable* table, Read read, Shown shown) {
  const auto refresh = [&document, table, read, shown] {
    table->setVisible(shown(document.project()));
    table->showPoints(read(document.project()));
  };
  QObject::connect(&document, &Document::projectChanged, table, refresh);
  QObject::connect(&document, &Document::loaded, table, &PointTable::giveUp);
  refresh();
  return table;
}

}  // namespace

PointTable* makeOutlineTable(Document& document, QWidget* parent) {
  auto* table =
      new PointTable(QStringLiteral("tank.outline_m"), {QStringLiteral("x"), QStringLiteral("y")}, parent);
  table->setTake([&document](const Points& points) { return takeOutline(document, points); });
  return follow(document, table, outlineOf,
                [](const core::Project& project) { return project.tank.shape == core::Shape::polygon; });
}

}  // namespace ui
