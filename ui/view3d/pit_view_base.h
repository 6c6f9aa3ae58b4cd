#pragma once

#include "ui/view3d/orbit_controls.h"
#include "ui/view3d/pit_view.h"

#include <memory>

namespace ui::view3d {

/// View and projection of one picture.
struct Projection {
  Eigen::Matrix4d view, projection;
};

/// Matrices that show the camera's picture with every part and dimension line within the depth range.
Projection projectionFor(const core::geometry::Scene& scene, const core::geometry::Camera& camera,
                         double aspect);

/// What both views hold alike; the kinds say what to do when some of it changed.
class PitViewBase : public PitView {
  Q_OBJECT

public:
  explicit PitViewBase(QWidget* parent);

  void setScene(const core::geometry::Scene& scene) final;
  void setDimensionText(DimensionText text) final;
  void setDimensionsShown(bool shown) final;
  void setHiddenParts(const QStringList& ids) final;
  void setCamera(const core::geometry::Camera& camera) final;
  core::geometry::Camera camera() const final { return camera_; }
  void setDark(bool dark) final;
  QSize sizeHint() const override { return {640, 480}; }
  QSize minimumSizeHint() const override { return {240, 180}; }

protected:
  enum class Change { scene, dimensions, hidden, camera, colours };
  virtual void changed(Change change) = 0;
  /// Takes mouse and keys of a window or widget.
  void control(QObject* source);
  void resizeEvent(QResizeEvent* event) override;

  const core::geometry::Scene& scene() const { return scene_; }
  const DimensionText& dimensionText() const { return text_; }
  bool dimensionsShown() const { return dimensions_shown_; }
  bool isHidden(const std::string& id) const { return hidden_.contains(QString::fromStdString(id)); }
  bool isDark() const { return dark_; }
  OrbitControls* controls() const { return controls_; }
  double aspect() const { return double(std::max(width(), 1)) / std::max(height(), 1); }
  /// Dimensions as they are to be shown now, in pixels of this widget; none when hidden or when nobody gave
  /// texts.
  const std::vector<core::geometry::Dimension>& shownDimensions() const;

private:
  void showStandardView();
  void moveTo(const core::geometry::Camera& camera);

  core::geometry::Scene scene_{{}, {}, Eigen::Vector3d::Constant(-1), Eigen::Vector3d::Constant(1)};
  DimensionText text_;
  bool dimensions_shown_ = true;
  QStringList hidden_;
  core::geometry::Camera camera_;
  bool camera_given_ = false;
  bool dark_ = false;
  OrbitControls* controls_ = nullptr;
};

}  // namespace ui::view3d
