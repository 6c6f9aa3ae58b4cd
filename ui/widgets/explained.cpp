#include "ui/widgets/explained.h"

#include "ui/document/document.h"
#include "ui/text/reckonings.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/widgets/theme.h"

#include <QLabel>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

namespace ui {

namespace {

using words::Reckoning;

constexpr int kScrolled_px = 260;

QScrollArea* scrolling(QLabel* text, QWidget* parent) {
  auto* scroll = new QScrollArea(parent);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFixedHeight(kScrolled_px);
  scroll->setWidget(text);
  return scroll;
}

QString paragraph(const Reckoning& reckoning) {
  const QString name =
      QStringLiteral("<b>%1: %2</b>").arg(reckoning.name.toHtmlEscaped(), reckoning.value.toHtmlEscaped());
  const QString from = Explained::tr("From: %1").arg(reckoning.inputs).toHtmlEscaped();
  const QString source = Explained::tr("Source: %1").arg(words::sourceText(reckoning.source)).toHtmlEscaped();
  return QStringLiteral("<p>%1<br>%2<br>%3<br>%4</p>")
      .arg(name, reckoning.formula.toHtmlEscaped(), from, source);
}

}  // namespace

Explained::Explained(Document& document, std::string_view group, QWidget* parent, Room room)
    : QWidget(parent),
      document_(document),
      group_(group),
      button_(new QToolButton(this)),
      text_(new QLabel(this)) {
  const QString id = QStringLiteral("explained.") + words::fromCore(group);
  setObjectName(id);
  button_->setObjectName(id + QStringLiteral(".button"));
  button_->setText(tr("How is this reckoned?"));
  button_->setAccessibleName(tr("How is this reckoned? %1").arg(words::reckoningGroupName(group)));
  button_->setCheckable(true);
  button_->setAutoRaise(true);
  button_->setFocusPolicy(Qt::StrongFocus);
  button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  text_->setObjectName(id + QStringLiteral(".text"));
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::RichText);
  text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  setTone(text_, Tone::quiet);
  unfolded_ = text_;
  if (room == Room::scrolled) unfolded_ = scrolling(text_, this);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(button_, 0, Qt::AlignLeft);
  layout->addWidget(unfolded_);
  connect(button_, &QToolButton::toggled, this, &Explained::fold);
  connect(&document_, &Document::projectChanged, this, &Explained::markStale);
  connect(&document_, &Document::planRefined, this, &Explained::markStale);
  fold(false);
}

void Explained::setFormatter(const Formatter& format) {
  format_ = format;
  markStale();
}

bool Explained::isUnfolded() const {
  return button_->isChecked();
}

void Explained::fold(bool unfolded) {
  button_->setArrowType(unfolded ? Qt::DownArrow : Qt::RightArrow);
  button_->setAccessibleDescription(unfolded ? tr("Unfolded; press to fold") : tr("Folded; press to unfold"));
  unfolded_->setVisible(unfolded);
  if (unfolded && is_stale_) refresh();
}

void Explained::markStale() {
  is_stale_ = true;
  if (isUnfolded() && isVisible()) refresh();
}

void Explained::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (isUnfolded() && is_stale_) refresh();
}

void Explained::refresh() {
  is_stale_ = false;
  QString html;
  for (const Reckoning& reckoning :
       words::reckoningsOf(group_, document_.project(), document_.plan(), format_))
    html += paragraph(reckoning);
  text_->setText(html.isEmpty() ? tr("There is no number to reckon yet.") : html);
}

}  // namespace ui
