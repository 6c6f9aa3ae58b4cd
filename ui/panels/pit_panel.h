#pragma once

#include "core/geometry/camera.h"
#include "core/geometry/scene.h"
#include "core/works/build_days.h"
#include "ui/text/formatter.h"

#include <QStringList>
#include <QTimer>
#include <QWidget>
#include <optional>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QMenu;
class QSlider;
class QToolButton;

namespace ui {

class CutControls;
class Document;
class PitView;

/// The pit in the middle of the window, with what shows it from all sides below it.
class PitPanel : public QWidget {
  Q_OBJECT

public:
  explicit PitPanel(Document& document, QWidget* parent = nullptr);

  PitView* view() const { return view_; }
  void setFormatter(const Formatter& format);
  void setDark(bool dark);
  void look(core::geometry::ViewPreset preset);
  /// Shows the tank as it stands on a day of the works; nothing: finished, with the water as set here.
  void showDay(const std::optional<core::works::BuildDay>& day);
  /// Stands a mark at a place of the tank's frame until the project changes; nothing takes it away.
  void pointAt(const std::optional<Eigen::Vector3d>& place);

private:
  Document& document_;
  Formatter format_;
  PitView* view_;
  CutControls* cut_;
  QMenu* layers_;
  QCheckBox* dimensions_;
  QComboBox* water_by_;
  QSlider* water_;
  QLabel* water_text_;
  QWidget* water_bar_;
  QTimer redraw_;
  QStringList hidden_;
  QToolButton* layers_button_;
  std::vector<QToolButton*> preset_buttons_;
  core::geometry::ViewPreset preset_ = core::geometry::ViewPreset::oblique;
  bool water_follows_overflow_ = true;
  double hand_level_m_ = 0;
  int day_ = 0;  // of the weather year, when the level follows a day
  std::optional<Eigen::Vector3d> mark_;
  std::optional<core::works::BuildDay> built_;
  bool looked_ = false;
  bool uncut_for_plan_ = false;  // shown whole because it is looked at from above

  void addPresets(QHBoxLayout* bar);
  void addLayers(QHBoxLayout* bar);
  QWidget* makeWaterBar();
  void connectAll();
  void draw();
  void showLayers();
  void showWater();
  void showLevel();
  void showDayOfYear();
  bool followsDay() const;
  double waterLevel() const;
  core::geometry::SceneOptions sceneOptions(double water_level_m) const;
  core::geometry::Camera cameraFor(core::geometry::ViewPreset preset) const;
};

}  // namespace ui
