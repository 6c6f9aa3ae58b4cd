#include "ui/panels/cut_controls.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QSlider>

namespace ui {

namespace {

constexpr int kPositions = 100;  // to each side of the middle

}  // namespace

CutControls::CutControls(QWidget* parent)
    : QWidget(parent),
      open_(new QCheckBox(tr("&Cut open"), this)),
      direction_(new QComboBox(this)),
      position_(new QSlider(Qt::Horizontal, this)) {
  open_->setObjectName(QStringLiteral("cut.open"));
  open_->setChecked(true);
  direction_->setObjectName(QStringLiteral("cut.direction"));
  direction_->addItems({tr("along"), tr("across")});
  direction_->setToolTip(tr("Direction of the cut: along the length or across it"));
  direction_->setAccessibleName(tr("Direction of the cut"));
  position_->setObjectName(QStringLiteral("cut.position"));
  position_->setRange(-kPositions, kPositions);
  position_->setToolTip(tr("Place of the cut; the middle of the slider is the middle of the tank"));
  position_->setAccessibleName(tr("Place of the cut"));
  position_->setMinimumWidth(70);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(open_);
  layout->addWidget(direction_);
  layout->addWidget(position_, 1);
  connect(open_, &QCheckBox::toggled, direction_, &QWidget::setEnabled);
  connect(open_, &QCheckBox::toggled, position_, &QWidget::setEnabled);
  connect(open_, &QCheckBox::toggled, this, &CutControls::changed);
  connect(position_, &QSlider::valueChanged, this, &CutControls::changed);
  connect(direction_, &QComboBox::currentIndexChanged, this, &CutControls::changed);
  connect(direction_, &QComboBox::currentIndexChanged, this, &CutControls::turned);
}

CutControls::Direction CutControls::direction() const {
  return direction_->currentIndex() == 0 ? Direction::along : Direction::across;
}

void CutControls::setCut(bool open) {
  open_->setChecked(open);
}

bool CutControls::isCut() const {
  return open_->isChecked();
}

std::optional<core::geometry::CutPlane> CutControls::plane(const core::geometry::TankGeometry& tank) const {
  if (!isCut()) return std::nullopt;
  const Eigen::Vector2d normal =
      direction() == Direction::along ? Eigen::Vector2d(0, -1) : Eigen::Vector2d(1, 0);
  const Eigen::Vector2d half = tank.outline().size(tank.clearOffset(tank.depth())) / 2;
  const double reach = std::abs(normal.dot(half)) * position_->value() / kPositions;
  return core::geometry::CutPlane{normal * reach, normal};
}

}  // namespace ui
