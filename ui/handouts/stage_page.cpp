#include "ui/handouts/page_table.h"
#include "ui/handouts/stage_pictures.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr int kInARow = 2;
constexpr int kRowsOnAPage = 4;

QStringList caption(const core::works::BuildDay& stage, int number, const Formatter& format) {
  QStringList lines{QStringLiteral("%1  %2").arg(format.integer(number), words::stageName(stage.stage))};
  if (stage.date) lines << Text::tr("first on %1").arg(format.date(*stage.date));
  return lines;
}

}  // namespace

void buildStages(Sheet& sheet, const Content& content) {
  sheet.paragraph(
      content.plan.works
          ? Text::tr("How the tank grows, cut upright at A-A, with the first day on which it stands so.")
          : Text::tr("How the tank grows, cut upright at A-A."));
  const double high = (sheet.height() - sheet.used()) / kRowsOnAPage;
  std::vector<StagePicture> row;
  int number = 0;
  for (const core::works::BuildDay& stage : datedStages(content)) {
    row.push_back({stage.built, caption(stage, ++number, content.format)});
    if (row.size() < kInARow) continue;
    addStagePictures(sheet, content.plan, row, kInARow, high);
    row.clear();
  }
  if (!row.empty()) addStagePictures(sheet, content.plan, row, kInARow, high);
}

}  // namespace ui::handouts
