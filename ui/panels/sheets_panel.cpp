#include "ui/panels/sheets_panel.h"

#include "ui/document/document.h"
#include "ui/text/languages.h"
#include "ui/widgets/canvas.h"
#include "ui/widgets/icons.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QListWidget>
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
constexpr int kChoice_px = 236;
constexpr double kHundred = 100;

}  // namespace

SheetsPanel::SheetsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      previous_(makeTurn(QStringLiteral("previous"), tr("Page before"), -1)),
      next_(makeTurn(QStringLiteral("next"), tr("Next page"), 1)),
      pages_(new QComboBox(this)),
      language_(new QComboBox(this)),
      paper_(new QComboBox(this)),
      kinds_(new QListWidget(this)),
      zoom_(new QSlider(Qt::Horizontal, this)),
      scroll_(new QScrollArea(this)),
      canvas_(new Canvas) {
  setObjectName(QStringLiteral("sheets_panel"));
  canvas_->setObjectName(QStringLiteral("sheet"));
  scroll_->setWidget(canvas_);
  scroll_->setAlignment(Qt::AlignCenter);
  scroll_->setBackgroundRole(QPalette::Mid);
  auto* below = new QHBoxLayout;
  below->addWidget(makeChoice());
  below->addWidget(scroll_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addWidget(makeBar());
  layout->addLayout(below, 1);
  rebuild_.setSingleShot(true);
  connect(&rebuild_, &QTimer::timeout, this, &SheetsPanel::rebuild);
  connect(&document_, &Document::projectChanged, this, &SheetsPanel::again);
  connect(&document_, &Document::planRefined, this, &SheetsPanel::again);
  connect(language_, &QComboBox::currentIndexChanged, this, &SheetsPanel::again);
  connect(paper_, &QComboBox::currentIndexChanged, this, &SheetsPanel::again);
  connect(kinds_, &QListWidget::itemChanged, this, &SheetsPanel::takeKinds);
  connect(kinds_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    for (int k = 0; item != nullptr && k < pageCount(); ++k) {
      if (handout_->pageCode(k) == item->data(Qt::UserRole).toString()) return showPage(k);
    }
  });
  connect(pages_, &QComboBox::currentIndexChanged, this, &SheetsPanel::showPage);
  connect(zoom_, &QSlider::valueChanged, this, &SheetsPanel::showZoom);
}

void SheetsPanel::again() {
  handout_.reset();
  if (isVisible()) rebuild_.start();
}

QWidget* SheetsPanel::makeChoice() {
  kinds_->setObjectName(QStringLiteral("sheet.kinds"));
  kinds_->setAccessibleName(tr("Sheets to print"));
  kinds_->setToolTip(tr("Tick what is to be printed"));
  kinds_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  kinds_->setTextElideMode(Qt::ElideRight);
  language_->setObjectName(QStringLiteral("sheet.language"));
  language_->setAccessibleName(tr("Language of the sheets"));
  language_->setToolTip(language_->accessibleName());
  for (const QString& name : languages()) language_->addItem(languageName(name), name);
  language_->setCurrentIndex(std::max(0, language_->findData(language())));
  paper_->setObjectName(QStringLiteral("sheet.paper"));
  paper_->setAccessibleName(tr("Paper"));
  paper_->addItem(tr("A4"), int(QPageSize::A4));
  paper_->addItem(tr("Letter"), int(QPageSize::Letter));
  auto* sets = new QHBoxLayout;
  const std::initializer_list<std::pair<QString, QString>> groups{
      {QString(), tr("All")}, {QStringLiteral("F"), tr("Farmers")}, {QStringLiteral("M"), tr("Masons")}};
  for (const auto& [letter, name] : groups) {
    auto* button = new QPushButton(name, this);
    button->setObjectName(QStringLiteral("sheet.choose_") +
                          (letter.isEmpty() ? QStringLiteral("all") : letter));
    connect(button, &QPushButton::clicked, this, [this, letter = letter] { choose(letter); });
    sets->addWidget(button);
  }
  auto* column = new QWidget(this);
  column->setFixedWidth(kChoice_px);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(language_);
  layout->addWidget(paper_);
  layout->addLayout(sets);
  layout->addWidget(kinds_, 1);
  return column;
}

handouts::Options SheetsPanel::options() const {
  handouts::Options options;
  options.page = QPageSize::PageSizeId(paper_->currentData().toInt());
  options.language = language_->currentData().toString();
  if (left_out_.isEmpty()) return options;
  for (const handouts::SheetKind& kind : handouts::sheetKinds(content(), options.language)) {
    if (!left_out_.contains(kind.code)) options.codes << kind.code;
  }
  if (options.codes.isEmpty()) options.codes << QString();  // none at all
  return options;
}

handouts::Content SheetsPanel::content() const {
  const QString chosen = language_->currentData().toString();
  const Formatter format = chosen == language() ? format_ : Formatter(localeOf(chosen), format_.system());
  return {document_.project(), document_.plan(), format};
}

void SheetsPanel::choose(const QString& letter) {
  left_out_.clear();
  for (const handouts::SheetKind& kind : handouts::sheetKinds(content(), language())) {
    if (!kind.code.startsWith(letter)) left_out_ << kind.code;
  }
  again();
}

void SheetsPanel::takeKinds() {
  left_out_.clear();
  for (int k = 0; k < kinds_->count(); ++k) {
    const QListWidgetItem* item = kinds_->item(k);
    if (item->checkState() != Qt::Checked) left_out_ << item->data(Qt::UserRole).toString();
  }
  again();
}

void SheetsPanel::showKinds() {
  const QSignalBlocker quiet(kinds_);
  const int row = kinds_->currentRow();
  kinds_->clear();
  for (const handouts::SheetKind& kind :
       handouts::sheetKinds(content(), language_->currentData().toString())) {
    auto* item = new QListWidgetItem(QStringLiteral("%1  %2").arg(kind.code, kind.title), kinds_);
    item->setData(Qt::UserRole, kind.code);
    item->setToolTip(kind.title);
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(left_out_.contains(kind.code) ? Qt::Unchecked : Qt::Checked);
  }
  kinds_->setCurrentRow(row);
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
  export_ = new QPushButton(tr("Export PDF…"), bar);
  export_->setObjectName(QStringLiteral("sheet.export"));
  print_ = new QPushButton(tr("Print…"), bar);
  print_->setObjectName(QStringLiteral("sheet.print"));
  auto* layout = new QHBoxLayout(bar);
  layout->setContentsMargins(0, 0, 0, 0);
  for (QWidget* part : std::initializer_list<QWidget*>{previous_, pages_, next_, zoom_, fit, export_, print_})
    layout->addWidget(part, part == pages_ || part == zoom_ ? 1 : 0);
  connect(fit, &QPushButton::clicked, this, [this] { zoom_->setValue(fitting()); });
  connect(export_, &QPushButton::clicked, this, &SheetsPanel::exportWanted);
  connect(print_, &QPushButton::clicked, this, &SheetsPanel::printWanted);
  return bar;
}

void SheetsPanel::setFormatter(const Formatter& format) {
  format_ = format;
  again();
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
  handout_.emplace(content(), options());
  showKinds();
  const int old = page();
  const QSignalBlocker quiet(pages_);
  pages_->clear();
  for (int k = 0; k < handout_->pageCount(); ++k)
    pages_->addItem(QStringLiteral("%1  %2").arg(format_.integer(k + 1), handout_->pageTitle(k)));
  showPage(old);
  export_->setEnabled(pageCount() > 0);
  print_->setEnabled(pageCount() > 0);
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
