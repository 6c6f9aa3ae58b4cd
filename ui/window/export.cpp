#include "ui/window/export.h"

#include "core/exchange/calendar_file.h"
#include "core/exchange/mesh_files.h"
#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "core/geometry/camera.h"
#include "core/geometry/scene.h"
#include "ui/drawings/drawings.h"
#include "ui/text/languages.h"
#include "ui/text/words.h"
#include "ui/view3d/software_view.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>
#include <array>
#include <functional>
#include <string>

namespace ui {

namespace {

struct Content {
  const core::Project& project;
  const core::Plan& plan;
  const Formatter& format;
  const handouts::Options& sheets;
};

constexpr int kFacets = 96;
constexpr QSize kPicture(1600, 1200);
constexpr double kInch_mm = 25.4;
constexpr double kSvg_dpi = 96;
constexpr double kPage_mm[] = {297, 210};
constexpr double kMargin_mm = 12;

core::geometry::Scene wholeScene(const core::Plan& plan) {
  core::geometry::SceneOptions options;
  options.facets_per_circle = kFacets;
  options.water_level_m = plan.tank.full_level_m;
  return core::geometry::scene(plan.geometry, options);
}

core::geometry::Scene openScene(const core::Plan& plan) {
  core::geometry::SceneOptions options;
  options.facets_per_circle = kFacets;
  options.water_level_m = plan.tank.full_level_m;
  options.cut = core::geometry::CutPlane{Eigen::Vector2d::Zero(), -Eigen::Vector2d::UnitY()};
  return core::geometry::scene(plan.geometry, options);
}

std::string csv(const Content& c) {
  return core::exchange::planCsv(c.plan);
}
std::string ics(const Content& c) {
  core::exchange::CalendarWords calendar;
  calendar.summary = [](std::string_view task) {
    const QString name = words::hasTaskName(task)
                             ? words::taskName(task)
                             : QCoreApplication::translate("ui::Export", "Keep the bare walls wet");
    return name.toStdString();
  };
  calendar.description = [&](std::string_view task) {
    const core::works::Task* found = c.plan.works ? core::works::findTask(*c.plan.works, task) : nullptr;
    if (found == nullptr || found->crew == 0) return std::string();
    return c.format.quantity(found->crew, core::Unit::person, 0).toStdString();
  };
  const QDateTime now = QDateTime::currentDateTimeUtc();
  calendar.stamp = now.toString(QStringLiteral("yyyyMMdd'T'HHmmss'Z'")).toStdString();
  constexpr qint64 kFirst_s = 1577836800, kMinute_s = 60;  // 2020-01-01; minutes since then
  calendar.sequence = int((now.toSecsSinceEpoch() - kFirst_s) / kMinute_s);
  return core::exchange::calendarText(c.project, c.plan, calendar);
}
std::string stl(const Content& c) {
  return core::exchange::stl(wholeScene(c.plan));
}
std::string glb(const Content& c) {
  return core::exchange::glb(wholeScene(c.plan));
}

std::string svg(const Content& c) {
  QBuffer buffer;
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(int(kSvg_dpi));
  const double dots_per_mm = kSvg_dpi / kInch_mm;
  generator.setSize((QSizeF(kPage_mm[0], kPage_mm[1]) * dots_per_mm).toSize());
  generator.setViewBox(QRectF(QPointF(), QSizeF(kPage_mm[0], kPage_mm[1]) * dots_per_mm));
  generator.setTitle(QString::fromStdString(c.project.title));
  QPainter painter(&generator);
  painter.scale(dots_per_mm, dots_per_mm);
  const double half_mm = kPage_mm[0] / 2;
  const double height_mm = kPage_mm[1] - 2 * kMargin_mm;
  drawings::drawPlan(painter, QRectF(kMargin_mm, kMargin_mm, half_mm - 1.5 * kMargin_mm, height_mm), c.plan,
                     c.format, {});
  drawings::drawSection(painter,
                        QRectF(half_mm + kMargin_mm / 2, kMargin_mm, half_mm - 1.5 * kMargin_mm, height_mm),
                        c.plan, c.format, {});
  painter.end();
  return buffer.data().toStdString();
}

std::string png(const Content& c) {
  const core::geometry::Scene scene = openScene(c.plan);
  const double aspect = double(kPicture.width()) / kPicture.height();
  const auto camera = core::geometry::presetFor(core::geometry::ViewPreset::oblique,
                                                core::geometry::framePoints(scene), aspect);
  const QImage image =
      renderSoftware(scene, camera, kPicture, false, [&](const core::geometry::Dimension& d) {
        return QStringLiteral("%1 %2").arg(words::dimensionName(d.id),
                                           c.format.quantity(d.length_m, core::Unit::metre, 2));
      });
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return buffer.data().toStdString();
}

std::string pdf(const Content& c) {
  const Formatter format =
      c.sheets.language == language() ? c.format : Formatter(localeOf(c.sheets.language), c.format.system());
  return handouts::Handout({c.project, c.plan, format}, c.sheets).pdf().toStdString();
}

struct Kind {
  const char* ending;
  std::string (*make)(const Content&);
  enum class Text { none, drawn } text;
};

constexpr std::array kKinds{
    Kind{".pdf", pdf, Kind::Text::drawn}, Kind{".csv", csv, Kind::Text::none},
    Kind{".stl", stl, Kind::Text::none},  Kind{".glb", glb, Kind::Text::none},
    Kind{".svg", svg, Kind::Text::drawn}, Kind{".png", png, Kind::Text::drawn},
    Kind{".ics", ics, Kind::Text::none},
};

QString writeFile(const QString& file, const std::string& bytes, const Formatter& format) {
  const core::Problems problems =
      core::exchange::writeWhole(std::filesystem::path(QFile::encodeName(file).toStdString()), bytes);
  return problems.empty() ? QString() : words::problemText(problems.front(), format);
}

}  // namespace

QString exportTo(const core::Project& project, const core::Plan& plan, const QString& file,
                 const Formatter& format, const handouts::Options& sheets) {
  for (const Kind& kind : kKinds) {
    if (!file.endsWith(QLatin1String(kind.ending), Qt::CaseInsensitive)) continue;
    return writeFile(file, kind.make({project, plan, format, sheets}), format);
  }
  return QCoreApplication::translate("ui::Export", "The ending of “%1” is not one of %2.")
      .arg(QFileInfo(file).fileName(), exportEndings().join(QStringLiteral(", ")));
}

QStringList exportEndings() {
  QStringList endings;
  for (const Kind& kind : kKinds) endings << QLatin1String(kind.ending);
  return endings;
}

bool exportDrawsText(const QString& ending) {
  for (const Kind& kind : kKinds) {
    if (ending.compare(QLatin1String(kind.ending), Qt::CaseInsensitive) == 0)
      return kind.text == Kind::Text::drawn;
  }
  return false;
}

}  // namespace ui
