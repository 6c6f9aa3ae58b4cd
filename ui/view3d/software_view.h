#pragma once

#include "ui/view3d/pit_view_base.h"
#include "ui/view3d/shaded_part.h"
#include "ui/view3d/software_picture.h"

#include <QSize>
#include <QTimer>

class QPainter;

namespace ui {

/// Picture of a scene without a display and without OpenGL; needs a QGuiApplication for the labels' font.
/// Labels and lines grow with the picture from 600 pixels of height on.
/// @param text labels of the dimension lines; none are drawn when empty
QImage renderSoftware(const core::geometry::Scene& scene, const core::geometry::Camera& camera, QSize size,
                      bool dark, const DimensionText& text);

namespace view3d {

/// The pit drawn in software. While things change it draws coarser, so that it keeps up, and smooth when they
/// rest.
class SoftwareView : public PitViewBase {
  Q_OBJECT

public:
  explicit SoftwareView(QWidget* parent);
  void grabImage(std::function<void(QImage)> done) override;
  QString kind() const override { return QStringLiteral("software"); }

protected:
  void changed(Change change) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void refine();
  QSize pixelSize() const;
  Projection projection() const;
  QImage partsPicture(Quality quality) const;
  void paintOver(QPainter& painter) const;

  std::vector<ShadedPart> parts_;
  QImage drawn_;  // null when it must be drawn anew
  Quality quality_ = Quality::quick;
  QTimer refine_;
  bool was_painted_ = false;
};

}  // namespace view3d
}  // namespace ui
