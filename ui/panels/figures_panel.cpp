#include "ui/panels/figures_panel.h"

#include "ui/document/document.h"
#include "ui/panels/bill_panel.h"
#include "ui/panels/figures.h"
#include "ui/panels/findings_list.h"
#include "ui/widgets/figure_tile.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int kAfterFirstPicture_ms = 200;
constexpr int kWidth = 300;

}  // namespace

FiguresPanel::FiguresPanel(Document& document, QWidget* parent) : QScrollArea(parent), document_(document) {
  setObjectName(QStringLiteral("figures_panel"));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFixedWidth(kWidth);
  auto* inside = new QWidget(this);
  auto* layout = new QVBoxLayout(inside);
  layout->setContentsMargins(6, 6, 8, 6);
  layout->setSpacing(5);
  for (const Figure& figure : figures(document.project(), document.plan(), format_)) {
    tiles_.push_back(new FigureTile(figure.id, figure.name, inside));
    layout->addWidget(tiles_.back());
  }
  addHeading(layout, tr("To look out for"));
  findings_ = new FindingsList(inside);
  layout->addWidget(findings_);
  addHeading(layout, tr("Customary bill"));
  bill_ = new BillPanel(document, inside);
  layout->addWidget(bill_);
  layout->addStretch();
  setWidget(inside);
  connect(&document_, &Document::projectChanged, this, &FiguresPanel::refresh);
  connect(findings_, &FindingsList::findingWanted, this, &FiguresPanel::findingWanted);
  connect(&document_, &Document::planRefined, this, [this] { findings_turn_.start(); });
  // once a turn; the first time only when the pit has had time to be drawn
  findings_turn_.setSingleShot(true);
  findings_turn_.setInterval(kAfterFirstPicture_ms);
  connect(&findings_turn_, &QTimer::timeout, this, &FiguresPanel::showFindings);
}

void FiguresPanel::addHeading(QVBoxLayout* layout, const QString& text) {
  auto* label = new QLabel(text);
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  label->setContentsMargins(0, 8, 0, 0);
  layout->addWidget(label);
}

void FiguresPanel::setFormatter(const Formatter& format) {
  format_ = format;
  bill_->setFormatter(format);
  refresh();
}

void FiguresPanel::refresh() {
  const std::vector<Figure> now = figures(document_.project(), document_.plan(), format_);
  for (std::size_t k = 0; k < tiles_.size(); ++k) {
    tiles_[k]->setValue(now[k].value, now[k].rest);
    tiles_[k]->setReckoning(now[k].reckoning);
  }
  findings_turn_.start();
}

void FiguresPanel::showFindings() {
  findings_turn_.setInterval(0);
  findings_->show(document_.plan().findings, format_);
}

}  // namespace ui
