#include "core/exchange/weather_csv.h"
#include "ui/panels/water_panel.h"
#include "ui/widgets/message_bar.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>

namespace ui {

void MainWindow::askWeather() {
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Read a daily record"), Settings::folder(),
      tr("Tables with date, rain_mm, t_min_c, t_max_c (*.csv *.txt *.tsv);;All files (*)"));
  if (!path.isEmpty()) readWeather(path);
}

void MainWindow::readWeather(const QString& path) {
  const QString name = QFileInfo(path).fileName();
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    messages_->say(MessageBar::Kind::problem, tr("%1 cannot be read: %2").arg(name, file.errorString()));
    return;
  }
  const QByteArray bytes = file.read(qint64(core::exchange::kMostCsvBytes) + 1);
  auto read = core::exchange::parseWeatherCsv(std::string_view(bytes.constData(), std::size_t(bytes.size())));
  if (!read)
    return sayProblems(tr("%1 was not taken; nothing has changed.").arg(name), read.error(),
                       words::tableProblemText);
  const auto days = double(read->days.size());
  const core::Problems problems = document_.change(tr("Read a daily record"), [&](core::Project& project) {
    if (!project.water) project.water.emplace();
    project.water->climate.daily = core::DailyRecord(std::move(read->days));
    project.water->climate.kind = core::ClimateKind::daily;
  });
  if (!problems.empty()) return sayProblems(tr("%1 was not taken; nothing has changed.").arg(name), problems);
  const QString taken = tr("%1: %2 taken.").arg(name, format_.quantity(days, core::Unit::day, 0));
  if (read->notes.empty()) {
    messages_->say(MessageBar::Kind::done, taken);
  } else {
    sayNotes(taken, read->notes, words::tableProblemText);
  }
}

}  // namespace ui
