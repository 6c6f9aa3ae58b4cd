#pragma once

#include "ui/view3d/pit_view_base.h"

#include <QPointer>
#include <unordered_map>

namespace Qt3DRender {
class QMaterial;
}

namespace ui::view3d {

class DimensionEntity;
class LineMaterial;
class PartEntity;
class Qt3DWindow;

/// The pit drawn by Qt 3D. The window is a native child of this widget.
class Qt3DView : public PitViewBase {
  Q_OBJECT

public:
  explicit Qt3DView(QWidget* parent);
  void grabImage(std::function<void(QImage)> done) override;
  QString kind() const override { return QStringLiteral("qt3d"); }

protected:
  void changed(Change change) override;
  bool event(QEvent* event) override;

private:
  QImage softwareImage() const;
  void showParts();
  void showMatrices();
  void showDimensions();
  void hideParts();
  void leaveFocus(bool forward);
  void tellFirstFrame();

  QPointer<Qt3DWindow> window_;
  QWidget* container_;
  Qt3DRender::QMaterial* face_material_;
  LineMaterial* line_material_;
  std::unordered_map<std::string, PartEntity*> parts_;  // owned by the window's content
  DimensionEntity* dimensions_;
  bool first_frame_awaited_ = false;
};

}  // namespace ui::view3d
