#include "ui/panels/findings_list.h"

#include "ui/text/words.h"
#include "ui/widgets/theme.h"

#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int kStripe = 4;

QString sentence(const core::Finding& finding, const Formatter& format, const QPalette& palette) {
  const QString text = QStringLiteral("<b style=\"color:%1\">%2</b> %3")
                           .arg(severityColour(finding.severity, palette).name(),
                                words::severityName(finding.severity).toHtmlEscaped(),
                                words::findingText(finding, format).toHtmlEscaped());
  if (finding.field.empty() && !finding.at_m) return text;
  return text + QStringLiteral(" <a href=\"%1\">%2</a>")
                    .arg(QString::fromStdString(finding.code), FindingsList::tr("show").toHtmlEscaped());
}

}  // namespace

FindingsList::FindingsList(QWidget* parent) : QWidget(parent), layout_(new QVBoxLayout(this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(5);
}

void FindingsList::show(const std::vector<core::Finding>& findings, const Formatter& format) {
  findings_ = findings;
  QStringList sentences;
  for (const core::Finding& finding : findings) sentences << sentence(finding, format, palette());
  if (sentences == sentences_) return;
  sentences_ = sentences;
  for (QWidget* old : shown_) {
    old->hide();
    old->deleteLater();
  }
  shown_.clear();
  for (std::size_t k = 0; k < findings.size(); ++k) {
    shown_.push_back(makeFinding(k, sentences[qsizetype(k)]));
    layout_->addWidget(shown_.back());
  }
}

QWidget* FindingsList::makeFinding(std::size_t number, const QString& text) {
  const core::Finding& finding = findings_[number];
  auto* box = new QFrame(this);
  box->setObjectName(QStringLiteral("finding.") + QString::fromStdString(finding.code));
  auto* stripe = new QFrame(box);
  stripe->setFixedWidth(kStripe);
  stripe->setAutoFillBackground(true);
  QPalette colour = stripe->palette();
  colour.setColor(QPalette::Window, severityColour(finding.severity, palette()));
  stripe->setPalette(colour);
  auto* label = new QLabel(text, box);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  if (!finding.source.empty()) label->setToolTip(words::sourceText(finding.source));
  connect(label, &QLabel::linkActivated, this, [this, number] { emit findingWanted(findings_.at(number)); });
  auto* layout = new QHBoxLayout(box);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(7);
  layout->addWidget(stripe);
  layout->addWidget(label, 1);
  return box;
}

}  // namespace ui
