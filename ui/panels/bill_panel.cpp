#include "ui/panels/bill_panel.h"

#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/widgets/explained.h"
#include "ui/widgets/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int kColumns = 4;

using core::Unit;
using core::lining::BillAnswers;
using core::lining::BillLine;

QLabel* wrapped(const QString& name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setWordWrap(true);
  return label;
}

QString thicknesses(const std::vector<double>& thickness_m, const Formatter& format) {
  QStringList texts;
  for (const double thickness : thickness_m) texts << format.quantity(thickness, Unit::metre, 3);
  return texts.join(QStringLiteral(" + "));
}

QString mixes(const std::vector<core::Coat>& coats, const Formatter& format) {
  QStringList texts;
  for (const core::Coat& coat : coats) {
    texts << QStringLiteral("%1:%2:%3")
                 .arg(format.number(coat.soil, Unit::part, 1), format.number(coat.sand, Unit::part, 1),
                      format.number(coat.cement, Unit::part, 1));
  }
  return texts.join(BillPanel::tr(" then "));
}

void addCell(QGridLayout* grid, int row, int column, const QString& text, Tone tone) {
  auto* label = new QLabel(text);
  setTone(label, tone);
  grid->addWidget(label, row, column, column == 0 ? Qt::AlignLeft : Qt::AlignRight);
}

}  // namespace

BillPanel::BillPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      none_(wrapped(QStringLiteral("bill.none"), this)),
      lines_(new QWidget(this)),
      trust_both_(wrapped(QStringLiteral("bill.trust_thickness_and_mix"), this)),
      trust_mix_(wrapped(QStringLiteral("bill.trust_cement_and_mix"), this)),
      trust_thickness_(wrapped(QStringLiteral("bill.trust_cement_and_thickness"), this)),
      problem_(wrapped(QStringLiteral("bill.problem"), this)),
      use_thickness_(new QPushButton(tr("Use this thickness"), this)),
      use_mix_(new QPushButton(tr("Use this mix"), this)) {
  none_->setText(tr("Enter the bill people reckon with today (at the left) to see it beside this one."));
  setTone(none_, Tone::quiet);
  setTone(problem_, Tone::problem);
  use_thickness_->setObjectName(QStringLiteral("bill.use_thickness"));
  use_mix_->setObjectName(QStringLiteral("bill.use_mix"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  for (QWidget* part : std::initializer_list<QWidget*>{none_, lines_, trust_both_, trust_mix_})
    layout->addWidget(part);
  layout->addWidget(use_thickness_, 0, Qt::AlignLeft);
  layout->addWidget(trust_thickness_);
  layout->addWidget(use_mix_, 0, Qt::AlignLeft);
  layout->addWidget(problem_);
  explained_ = new Explained(document_, "customary", this);
  layout->addWidget(explained_);
  connect(use_thickness_, &QPushButton::clicked, this, &BillPanel::useThickness);
  connect(use_mix_, &QPushButton::clicked, this, &BillPanel::useMix);
  connect(&document_, &Document::projectChanged, this, &BillPanel::refresh);
}

void BillPanel::setFormatter(const Formatter& format) {
  format_ = format;
  explained_->setFormatter(format);
  refresh();
}

void BillPanel::refresh() {
  say({});
  none_->setVisible(!document_.plan().quantities.customary);
  lines_->setVisible(document_.plan().quantities.customary.has_value());
  showLines();
  showAnswers();
}

QStringList BillPanel::cells() const {
  const auto& comparison = document_.plan().quantities.customary;
  if (!comparison) return {};
  QStringList cells{QString(), tr("bill"), tr("computed"), tr("ratio")};
  const auto times = [this](double ratio) {
    return QStringLiteral("× ") + format_.number(ratio, Unit::factor, 2);
  };
  for (const BillLine& line : comparison->lines) {
    cells << words::materialName(line.id) << words::amount(line.customary, line.unit, format_)
          << words::amount(line.shell, line.unit, format_) << times(line.shell_ratio);
    cells << tr("  area × thickness") << QString() << words::amount(line.by_area, line.unit, format_)
          << times(line.by_area_ratio);
  }
  return cells;
}

void BillPanel::showLines() {
  const QStringList now = cells();
  if (now == cells_) return;
  cells_ = now;
  qDeleteAll(lines_->findChildren<QLabel*>());
  delete lines_->layout();
  auto* grid = new QGridLayout(lines_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(1);
  for (int k = 0; k < now.size(); ++k) {
    const int row = k / kColumns;
    const bool quiet = row == 0 || row % 2 == 0;
    addCell(grid, row, k % kColumns, now[k], quiet ? Tone::quiet : Tone::plain);
  }
}

void BillPanel::showAnswers() {
  const auto& comparison = document_.plan().quantities.customary;
  const BillAnswers* answers = comparison && comparison->cement ? &*comparison->cement : nullptr;
  const bool thickness = answers != nullptr && answers->thickness_factor.has_value();
  const bool mix = answers != nullptr && answers->filler_factor.has_value();
  for (QLabel* label : {trust_both_, trust_mix_, trust_thickness_}) label->setVisible(answers != nullptr);
  use_thickness_->setVisible(thickness);
  use_mix_->setVisible(mix);
  if (answers == nullptr) return;
  trust_both_->setText(tr("Trust thickness and mix: cement %1 (area × thickness: %2).")
                           .arg(format_.quantity(answers->cement_kg, Unit::kilogram, 0),
                                format_.quantity(answers->cement_by_area_kg, Unit::kilogram, 0)));
  trust_mix_->setText(thickness
                          ? tr("Trust the bill's cement and the mix: coats of %1 (area × thickness: %2).")
                                .arg(thicknesses(answers->thickness_m, format_),
                                     thicknesses(answers->thickness_by_area_m, format_))
                          : tr("Trust the bill's cement and the mix: no thickness answers to them."));
  trust_thickness_->setText(
      mix ? tr("Trust the bill's cement and the thickness: mix %1, soil : sand : cement "
               "(area × thickness: %2).")
                .arg(mixes(answers->mix, format_), mixes(answers->mix_by_area, format_))
          : tr("Trust the bill's cement and the thickness: no mix answers to them."));
}

void BillPanel::useThickness() {
  const std::vector<double> thickness_m = document_.plan().quantities.customary->cement->thickness_m;
  say(document_.change(use_thickness_->text(), [&](core::Project& project) {
    for (std::size_t k = 0; k < thickness_m.size(); ++k) project.lining.coats[k].thickness_m = thickness_m[k];
  }));
}

void BillPanel::useMix() {
  const std::vector<core::Coat> mix = document_.plan().quantities.customary->cement->mix;
  say(document_.change(use_mix_->text(), [&](core::Project& project) { project.lining.coats = mix; }));
}

void BillPanel::say(const core::Problems& problems) {
  problem_->setVisible(!problems.empty());
  problem_->setText(problems.empty() ? QString() : words::problemText(problems.front(), format_));
}

}  // namespace ui
