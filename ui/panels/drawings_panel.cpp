#include "ui/panels/drawings_panel.h"

#include "ui/document/document.h"
#include "ui/drawings/drawings.h"
#include "ui/widgets/canvas.h"

#include <QTabBar>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr double kMargin_mm = 4;
constexpr double kScreenText_mm = 2.6;

}  // namespace

DrawingsPanel::DrawingsPanel(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), sheets_(new QTabBar(this)), canvas_(new Canvas(this)) {
  setObjectName(QStringLiteral("drawings_panel"));
  canvas_->setObjectName(QStringLiteral("drawing"));
  canvas_->setAccessibleName(tr("Drawing of the tank"));
  sheets_->setObjectName(QStringLiteral("drawing.kind"));
  sheets_->setDrawBase(false);
  for (const QString& name :
       {tr("Plan and section"), tr("Sections A-A and B-B"), tr("Setting-out"), tr("Foot of the wall")})
    sheets_->addTab(name);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addWidget(sheets_);
  layout->addWidget(canvas_, 1);
  canvas_->setPaint([this](QPainter& painter, const QRectF& box_mm) { paint(painter, box_mm); });
  const auto again = [this] { canvas_->update(); };
  connect(sheets_, &QTabBar::currentChanged, canvas_, again);
  connect(&document_, &Document::projectChanged, canvas_, again);
}

void DrawingsPanel::setFormatter(const Formatter& format) {
  format_ = format;
  canvas_->update();
}

void DrawingsPanel::setDark(bool dark) {
  dark_ = dark;
  canvas_->update();
}

void DrawingsPanel::showDay(const std::optional<core::works::BuildDay>& day) {
  built_ = day;
  canvas_->update();
}

void DrawingsPanel::paintSection(QPainter& painter, const QRectF& box_mm, const drawings::Style& style,
                                 drawings::SectionCut cut) const {
  if (built_) {
    drawings::drawSectionPicture(painter, box_mm, document_.plan(), style, cut, built_->built);
  } else {
    drawings::drawSection(painter, box_mm, document_.plan(), format_, style, cut);
  }
}

void DrawingsPanel::paint(QPainter& painter, const QRectF& box_mm) const {
  drawings::Style style;
  style.dark = dark_;
  style.text_mm = kScreenText_mm;
  style.fixed_scale = false;
  const core::Plan& plan = document_.plan();
  const QRectF box = box_mm.adjusted(kMargin_mm, kMargin_mm, -kMargin_mm, -kMargin_mm);
  QRectF upper = box, lower = box;
  upper.setHeight(box.height() / 2 - kMargin_mm / 2);
  lower.setTop(upper.bottom() + kMargin_mm);
  switch (sheets_->currentIndex()) {
    case both_sections:
      paintSection(painter, upper, style, drawings::SectionCut::across);
      paintSection(painter, lower, style, drawings::SectionCut::along);
      break;
    case setting_out:
      drawings::drawSettingOut(painter, box, plan, format_, style);
      break;
    case corner:
      drawings::drawCornerDetail(painter, box, plan, format_, style);
      break;
    default:
      drawings::drawPlan(painter, upper, plan, format_, style);
      paintSection(painter, lower, style, drawings::SectionCut::across);
  }
}

}  // namespace ui
