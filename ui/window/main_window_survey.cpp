#include "core/exchange/survey_csv.h"
#include "ui/panels/ground_panel.h"
#include "ui/widgets/message_bar.h"
#include "ui/widgets/survey_table.h"
#include "ui/widgets/waiting.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>

namespace ui {

namespace {

constexpr qint64 kMostBytes = 32 << 20;

}  // namespace

void MainWindow::askSurvey() {
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Read spot heights"), Settings::folder(),
      tr("Tables with east, north, height in metres (*.csv *.txt *.tsv);;All files (*)"));
  if (!path.isEmpty()) readSurvey(path);
}

void MainWindow::readSurvey(const QString& path) {
  const QString name = QFileInfo(path).fileName();
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    messages_->say(MessageBar::Kind::problem, tr("%1 cannot be read: %2").arg(name, file.errorString()));
    return;
  }
  tabs_->setCurrentWidget(ground_);
  ground_->showSurvey();
  ground_->survey()->take(tr("Read spot heights"), file.read(kMostBytes + 1));
}

std::shared_ptr<const core::site::SurveyedGround> MainWindow::makeGround(const core::Ground& ground,
                                                                         bool may_give_up) {
  const QString what =
      tr("Joining %1 spot heights to triangles").arg(format_.integer(int(ground.points_m.size())));
  auto made = resultBeside(
      this, what, may_give_up ? Patience::may_give_up : Patience::must_wait,
      [&](const std::atomic<bool>& cancel) { return core::site::surveyedGround(ground, &cancel); });
  return made.value_or(nullptr);
}

}  // namespace ui
