#include "ui/panels/pit_panel.h"

#include "core/site/relief.h"
#include "ui/document/document.h"
#include "ui/panels/cut_controls.h"
#include "ui/text/words.h"
#include "ui/view3d/pit_view.h"
#include "ui/widgets/icons.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QSignalBlocker>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <cmath>

namespace ui {

namespace {

using core::geometry::Camera;
using core::geometry::Scene;
using core::geometry::ViewPreset;

constexpr int kMillimetres = 1000;
constexpr int kWaterStep_mm = 10;
constexpr int kWaterPage_mm = 100;
constexpr double kQuarterTurn_deg = 90;
constexpr int kPage_days = 30;

enum WaterBy { by_hand, middle_year, dry_year };

}  // namespace

PitPanel::PitPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(makePitView(this)),
      cut_(new CutControls(this)),
      layers_(new QMenu(this)),
      dimensions_(new QCheckBox(tr("&Dimensions"), this)) {
  setObjectName(QStringLiteral("pit_panel"));
  view_->setObjectName(QStringLiteral("pit_view"));
  view_->setMinimumSize(320, 240);
  view_->setAccessibleName(tr("The pit in three dimensions"));
  dimensions_->setObjectName(QStringLiteral("dimensions"));
  dimensions_->setChecked(true);
  auto* bar = new QHBoxLayout;
  bar->setSpacing(6);
  addPresets(bar);
  bar->addWidget(cut_, 1);
  addLayers(bar);
  bar->addWidget(dimensions_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->setSpacing(4);
  layout->addWidget(view_, 1);
  layout->addLayout(bar);
  layout->addWidget(makeWaterBar());
  connectAll();
  showWater();
  showLayers();
}

void PitPanel::addPresets(QHBoxLayout* bar) {
  struct Preset {
    ViewPreset preset;
    QString id, name;
  };
  for (const Preset& p : {Preset{ViewPreset::oblique, QStringLiteral("oblique"), tr("Oblique")},
                          Preset{ViewPreset::plan, QStringLiteral("plan"), tr("Plan")},
                          Preset{ViewPreset::section, QStringLiteral("section"), tr("Section")}}) {
    auto* button = new QToolButton(this);
    button->setObjectName(QStringLiteral("view.") + p.id);
    button->setToolTip(tr("View: %1").arg(p.name));
    button->setAccessibleName(button->toolTip());
    button->setText(p.name);
    button->setProperty("icon_name", p.id);
    connect(button, &QToolButton::clicked, this, [this, preset = p.preset] { look(preset); });
    bar->addWidget(button);
    preset_buttons_.push_back(button);
  }
}

void PitPanel::addLayers(QHBoxLayout* bar) {
  layers_button_ = new QToolButton(this);
  layers_button_->setObjectName(QStringLiteral("layers"));
  layers_button_->setText(tr("Layers"));
  layers_button_->setToolTip(tr("Show and hide the ground, each layer, the water and the person"));
  layers_button_->setPopupMode(QToolButton::InstantPopup);
  layers_button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  layers_button_->setMenu(layers_);
  bar->addWidget(layers_button_);
}

QWidget* PitPanel::makeWaterBar() {
  water_bar_ = new QWidget(this);
  auto* name = new QLabel(tr("&Water"), this);
  water_by_ = new QComboBox(this);
  water_by_->setObjectName(QStringLiteral("water.by"));
  water_by_->setAccessibleName(tr("What the water level follows"));
  water_by_->addItems({tr("level set by hand"), tr("day of a middle year"), tr("day of a dry year")});
  water_by_->setToolTip(
      tr("In a dry year the tank holds less than in nine of ten years on each day; the tab Water has the "
         "weather"));
  connect(water_by_, &QComboBox::currentIndexChanged, this, [this] {
    showWater();
    redraw_.start();
  });
  water_ = new QSlider(Qt::Horizontal, this);
  water_->setObjectName(QStringLiteral("water.level"));
  water_->setAccessibleName(tr("Water level above the finished floor"));
  water_->setSingleStep(kWaterStep_mm);
  water_->setPageStep(kWaterPage_mm);
  name->setBuddy(water_);
  water_text_ = new QLabel(this);
  water_text_->setObjectName(QStringLiteral("water.text"));
  auto* overflow = new QToolButton(this);
  overflow->setObjectName(QStringLiteral("water.overflow"));
  overflow->setText(tr("To the overflow"));
  connect(overflow, &QToolButton::clicked, this, [this] {
    water_by_->setCurrentIndex(by_hand);
    water_follows_overflow_ = true;
    showWater();
    redraw_.start();
  });
  auto* bar = new QHBoxLayout(water_bar_);
  bar->setContentsMargins(0, 0, 0, 0);
  bar->addWidget(name);
  bar->addWidget(water_by_);
  bar->addWidget(water_, 1);
  bar->addWidget(water_text_);
  bar->addWidget(overflow);
  return water_bar_;
}

void PitPanel::connectAll() {
  redraw_.setSingleShot(true);
  connect(&redraw_, &QTimer::timeout, this, &PitPanel::draw);
  const auto later = [this] { redraw_.start(); };
  connect(&document_, &Document::projectChanged, this, [this] {
    mark_.reset();
    showWater();
    redraw_.start();
  });
  connect(&document_, &Document::loaded, this, [this] { looked_ = false; });
  connect(cut_, &CutControls::changed, this, later);
  connect(cut_, &CutControls::turned, this, [this] { look(preset_); });
  connect(dimensions_, &QCheckBox::toggled, this, [this](bool shown) { view_->setDimensionsShown(shown); });
  connect(water_, &QSlider::valueChanged, this, [this](int value) {
    if (followsDay()) {
      day_ = value;
    } else {
      water_follows_overflow_ = false;
      hand_level_m_ = double(value) / kMillimetres;
    }
    showWater();
    redraw_.start();
  });
  redraw_.start();
}

void PitPanel::setFormatter(const Formatter& format) {
  format_ = format;
  view_->setDimensionText([format](const core::geometry::Dimension& dimension) {
    return QStringLiteral("%1 %2").arg(words::dimensionName(dimension.id),
                                       format.quantity(dimension.length_m, core::Unit::metre, 2));
  });
  showWater();
}

void PitPanel::setDark(bool dark) {
  view_->setDark(dark);
  for (QToolButton* button : preset_buttons_) button->setIcon(icon(button->property("icon_name").toString()));
  layers_button_->setIcon(icon(QStringLiteral("layers")));
}

bool PitPanel::followsDay() const {
  return water_by_->currentIndex() != by_hand && document_.plan().water.has_value();
}

double PitPanel::waterLevel() const {
  if (built_) return built_->built.water_level_m;
  if (followsDay()) {
    const core::water::BandDay& day = document_.plan().water->band.at(std::size_t(day_));
    const double held = water_by_->currentIndex() == dry_year ? day.p10 : day.p50;
    return document_.plan().geometry.levelForVolume(held);
  }
  if (water_follows_overflow_) return document_.plan().tank.full_level_m;
  return std::min(hand_level_m_, document_.plan().tank.depth_m);
}

void PitPanel::showWater() {
  const QSignalBlocker quiet(water_);
  water_by_->setVisible(document_.plan().water.has_value());
  if (followsDay()) {
    showDayOfYear();
  } else {
    showLevel();
  }
}

void PitPanel::showLevel() {
  const double level_m = waterLevel();
  water_->setSingleStep(kWaterStep_mm);
  water_->setPageStep(kWaterPage_mm);
  water_->setRange(0, int(std::lround(document_.plan().tank.depth_m * kMillimetres)));
  water_->setValue(int(std::lround(level_m * kMillimetres)));
  water_text_->setText(tr("%1 deep: %2")
                           .arg(format_.quantity(level_m, core::Unit::metre, 2),
                                format_.litres(document_.plan().geometry.volumeToLevel(level_m))));
}

void PitPanel::showDayOfYear() {
  const auto& band = document_.plan().water->band;
  day_ = std::clamp(day_, 0, int(band.size()) - 1);
  water_->setSingleStep(1);
  water_->setPageStep(kPage_days);
  water_->setRange(0, int(band.size()) - 1);
  water_->setValue(day_);
  const core::water::BandDay& day = band[std::size_t(day_)];
  const double level_m = waterLevel();
  water_text_->setText(tr("%1: %2 deep, %3")
                           .arg(format_.dayOfYear(day.month + 1, day.day),
                                format_.quantity(level_m, core::Unit::metre, 2),
                                format_.litres(document_.plan().geometry.volumeToLevel(level_m))));
}

core::geometry::SceneOptions PitPanel::sceneOptions(double water_level_m) const {
  const core::Plan& plan = document_.plan();
  const core::Project& project = document_.project();
  core::geometry::SceneOptions options;
  options.cut = cut_->plane(plan.geometry);
  options.water_level_m = water_level_m;
  options.relief =
      core::site::reliefOf(plan.site, plan.geometry, project.lining, project.site.platform.walkway_m);
  options.marker = mark_;
  if (built_) options.built = built_->built;
  return options;
}

void PitPanel::showDay(const std::optional<core::works::BuildDay>& day) {
  built_ = day;
  water_bar_->setEnabled(!day);
  redraw_.start();
}

void PitPanel::pointAt(const std::optional<Eigen::Vector3d>& place) {
  mark_ = place;
  redraw_.start();
}

void PitPanel::draw() {
  const auto& tank = document_.plan().geometry;
  view_->setScene(core::geometry::scene(tank, sceneOptions(waterLevel())));
  showLayers();
  if (!looked_) look(preset_);
}

Camera PitPanel::cameraFor(ViewPreset preset) const {
  const auto& tank = document_.plan().geometry;
  core::geometry::SceneOptions finished = sceneOptions(0);
  finished.built = {};
  const Scene seen = core::geometry::scene(tank, finished);
  const double aspect = double(std::max(1, view_->width())) / std::max(1, view_->height());
  const bool along = cut_->direction() == CutControls::Direction::along || preset == ViewPreset::plan;
  return presetFor(preset, core::geometry::framePoints(seen), aspect, along ? 0 : kQuarterTurn_deg);
}

void PitPanel::look(ViewPreset preset) {
  looked_ = true;
  preset_ = preset;
  if (preset == ViewPreset::plan && cut_->isCut()) {
    cut_->setCut(false);
    uncut_for_plan_ = true;
  } else if (preset != ViewPreset::plan && (uncut_for_plan_ || preset == ViewPreset::section)) {
    cut_->setCut(true);
    uncut_for_plan_ = false;
  }
  view_->setCamera(cameraFor(preset));
}

void PitPanel::showLayers() {
  QStringList ids{QStringLiteral("ground")};
  const core::site::SitePlan& site = document_.plan().site;
  if (site.bench) ids << QStringLiteral("cut") << QStringLiteral("fill");
  if (site.heap_place) ids << QStringLiteral("heap");
  ids << QStringLiteral("excavation");
  for (const core::geometry::Layer& layer : document_.plan().layers) ids << QString::fromStdString(layer.id);
  ids << QStringLiteral("water") << QStringLiteral("person") << QStringLiteral("pegs")
      << QStringLiteral("sacks");
  if (ids == layers_->property("ids").toStringList()) return;
  layers_->setProperty("ids", ids);
  layers_->clear();
  for (const QString& id : ids) {
    QAction* action = layers_->addAction(words::layerName(id.toStdString()));
    action->setObjectName(QStringLiteral("layer.") + id);
    action->setCheckable(true);
    action->setChecked(!hidden_.contains(id));
    connect(action, &QAction::toggled, this, [this, id](bool shown) {
      const QString pattern = id + QStringLiteral("_pattern");  // of cut and fill
      for (const QString& part : {id, pattern}) {
        hidden_.removeAll(part);
        if (!shown) hidden_ << part;
      }
      view_->setHiddenParts(hidden_);
    });
  }
}

}  // namespace ui
