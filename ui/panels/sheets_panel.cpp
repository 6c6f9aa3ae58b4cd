#include "ui/panels/sheets_panel.h"

#include "ui/document/document.h"
#include "ui/widgets/canvas.h"
#include "ui/widgets/icons.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {

namespace {

constexpr int kLeastZoom_percent = 30;
constexpr int kMostZoom_percent = 300;
constexpr int kEdge_px = 24;
constexpr double kHundred = 100;

}  // namespace

SheetsPanel::SheetsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      previous_(makeTurn(QStringLiteral("previous"), tr("Page before"), -1)),
      next_(makeTurn(QStringLiteral("next"), tr("Next page"), 1)),
      pages_(new QComboBox(this)),
      zoom_(new QSlider(Qt::Horizontal, this)),
      scroll_(new QScrollArea(this)),
      canvas_(new Canvas) {
  setObjectName(QStringLiteral("sheets_panel"));
  canvas_->setObjectName(QStringLiteral("sheet"));
  scroll_->setWidget(canvas_);
  scroll_->setAlignment(Qt::AlignCenter);
  scroll_->setBackgroundRole(QPalette::Mid);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addWidget(makeBar());
  layout->addWidget(scroll_, 1);
  rebuild_.setSingleShot(true);
  connect(&rebuild_, &QTimer::timeout, this, &SheetsPanel::rebuild);
  const auto again = [this] {
    handout_.reset();
    if (isVisible()) rebuild_.start();
  };
  connect(&document_, &Document::projectChanged, this, again);
  connect(&document_, &Document::planRefined, this, again);
  connect(pages_, &QComboBox::currentIndexChanged, this, &SheetsPanel::showPage);
  connect(zoom_, &QSlider::valueChanged, this, &SheetsPanel::showZoom);
}

QToolButton* SheetsPanel::makeTurn(const QString& id, const QString& name, int by) {
  auto* button = new QToolButton(this);
  button->setObjectName(QStringLiteral("sheet.") + id);
  button->setToolTip(name);
  button->setAccessibleName(name);
  connect(button, &QToolButton::clicked, this, [this, by] { showPage(page() + by); });
  return button;
}

QWidget* SheetsPanel::makeBar() {
  auto* bar = new QWidget(this);
  pages_->setObjectName(QStringLiteral("sheet.page"));
  pages_->setAccessibleName(tr("Page"));
  pages_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  pages_->setMinimumContentsLength(16);
  zoom_->setObjectName(QStringLiteral("sheet.zoom"));
  zoom_->setAccessibleName(tr("Size of the page on the screen"));
  zoom_->setToolTip(zoom_->accessibleName());
  zoom_->setRange(kLeastZoom_percent, kMostZoom_percent);
  zoom_->setMinimumWidth(80);
  auto* fit = new QPushButton(tr("Whole page"), bar);
  fit->setObjectName(QStringLiteral("sheet.fit"));
  auto* save = new QPushButton(tr("Export PDF…"), bar);
  save->setObjectName(QStringLiteral("sheet.export"));
  auto* print = new QPushButton(tr("Print…"), bar);
  print->setObjectName(QStringLiteral("sheet.print"));
  auto* layout = new QHBoxLayout(bar);
  layout->setContentsMargins(0, 0, 0, 0);
  for (QWidget* part : std::initializer_list<QWidget*>{previous_, pages_, next_, zoom_, fit, save, print})
    layout->addWidget(part, part == pages_ || part == zoom_ ? 1 : 0);
  connect(fit, &QPushButton::clicked, this, [this] { zoom_->setValue(fitting()); });
  connect(save, &QPushButton::clicked, this, &SheetsPanel::exportWanted);
  connect(print, &QPushButton::clicked, this, &SheetsPanel::printWanted);
  return bar;
}

void SheetsPanel::setFormatter(const Formatter& format) {
  format_ = format;
  handout_.reset();
  if (isVisible()) rebuild_.start();
}

void SheetsPanel::refreshIcons() {
  previous_->setIcon(icon(QStringLiteral("previous")));
  next_->setIcon(icon(QStringLiteral("next")));
}

int SheetsPanel::page() const {
  return std::max(0, pages_->currentIndex());
}
int SheetsPanel::pageCount() const {
  return handout_ ? handout_->pageCount() : 0;
}

void SheetsPanel::rebuild() {
  handout_.emplace(handouts::Content{document_.project(), document_.plan(), format_}, handouts::Options{});
  const int old = page();
  const QSignalBlocker quiet(pages_);
  pages_->clear();
  for (int k = 0; k < handout_->pageCount(); ++k)
    pages_->addItem(QStringLiteral("%1  %2").arg(format_.integer(k + 1), handout_->pageTitle(k)));
  showPage(old);
  if (zoom_->value() == zoom_->minimum()) zoom_->setValue(fitting());
  showZoom();
}

void SheetsPanel::showPage(int wanted) {
  if (!handout_) rebuild();
  const int shown = std::clamp(wanted, 0, std::max(0, pageCount() - 1));
  const QSignalBlocker quiet(pages_);
  pages_->setCurrentIndex(shown);
  previous_->setEnabled(shown > 0);
  next_->setEnabled(shown + 1 < pageCount());
  canvas_->setAccessibleName(pages_->currentText());
  canvas_->setPaint([this, shown](QPainter& painter, const QRectF&) {
    if (handout_ && shown < handout_->pageCount()) handout_->paint(painter, shown);
  });
  scroll_->verticalScrollBar()->setValue(0);
}

int SheetsPanel::fitting() const {
  const QSizeF page_mm = handout_ ? handout_->pageSize_mm() : QSizeF(210, 297);
  const double pixels_per_mm = logicalDpiY() / 25.4;
  const QSizeF room = scroll_->size() - QSize(kEdge_px, kEdge_px);
  const double fit =
      std::min(room.width() / page_mm.width(), room.height() / page_mm.height()) / pixels_per_mm;
  return int(fit * kHundred);
}

void SheetsPanel::showZoom() {
  if (handout_) canvas_->setPage(handout_->pageSize_mm(), zoom_->value() / kHundred);
}

void SheetsPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (!handout_) rebuild_.start();
}

}  // namespace ui
