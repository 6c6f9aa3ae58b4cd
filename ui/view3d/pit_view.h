#pragma once

#include "core/geometry/camera.h"
#include "core/geometry/scene.h"

#include <QImage>
#include <QStringList>
#include <QWidget>
#include <functional>

namespace ui {

/// Text for a dimension line, made by the caller so that the view knows nothing of units or languages.
using DimensionText = std::function<QString(const core::geometry::Dimension&)>;

/// The pit in three dimensions. Two kinds: drawn by Qt 3D, or in software where OpenGL 3.3 is missing. Both
/// show the same meshes, take the same mouse and keys (drag: orbit, right or middle drag: move, wheel:
/// nearer, arrows, + and -) and draw only when something changed.
class PitView : public QWidget {
  Q_OBJECT

public:
  using QWidget::QWidget;

  virtual void setScene(const core::geometry::Scene& scene) = 0;
  virtual void setDimensionText(DimensionText text) = 0;
  virtual void setDimensionsShown(bool shown) = 0;
  /// Hides the parts whose ids are listed; all others show.
  virtual void setHiddenParts(const QStringList& ids) = 0;
  virtual void setCamera(const core::geometry::Camera& camera) = 0;
  virtual core::geometry::Camera camera() const = 0;
  virtual void setDark(bool dark) = 0;
  /// Hands over a picture of the view when it is ready; a null picture when none could be had.
  virtual void grabImage(std::function<void(QImage)> done) = 0;
  /// "qt3d" or "software".
  virtual QString kind() const = 0;

signals:
  void cameraChanged();
  /// The first picture is on the screen. Told once, and only when connected before the view is shown.
  void firstFrameDrawn();
};

/// Whether an OpenGL 3.3 core context can be had here. Asked once; set TANKWRIGHT_SOFTWARE_VIEW=1 to say no.
bool openGlIsUsable();

/// The view that suits this machine.
PitView* makePitView(QWidget* parent);

}  // namespace ui
