#pragma once

#include "core/geometry/mesh.h"
#include "core/geometry/tank_geometry.h"

#include <QWidget>
#include <optional>

class QCheckBox;
class QComboBox;
class QSlider;

namespace ui {

/// Where the picture is cut open.
class CutControls : public QWidget {
  Q_OBJECT

public:
  explicit CutControls(QWidget* parent = nullptr);

  enum class Direction { along, across };
  Direction direction() const;
  /// The plane that cuts this tank; nothing when it is shown whole.
  std::optional<core::geometry::CutPlane> plane(const core::geometry::TankGeometry& tank) const;
  void setCut(bool open);
  bool isCut() const;

signals:
  void changed();
  void turned();  ///< the direction changed: the eye should follow

private:
  QCheckBox* open_;
  QComboBox* direction_;
  QSlider* position_;
};

}  // namespace ui
