#include "ui/window/file_drops.h"

#include "ui/widgets/waiting.h"

#include <QDropEvent>
#include <QMimeData>
#include <QUrl>
#include <QWindow>

namespace ui {

QString projectFileIn(const QMimeData* data) {
  const QList<QUrl> urls = data->urls();
  if (urls.size() != 1 || !urls.front().isLocalFile()) return {};
  const QString path = urls.front().toLocalFile();
  return path.endsWith(QLatin1String(".tankwright"), Qt::CaseInsensitive) ? path : QString();
}

bool FileDrops::eventFilter(QObject* watched, QEvent* event) {
  const bool drag = event->type() == QEvent::DragEnter || event->type() == QEvent::DragMove;
  if (!drag && event->type() != QEvent::Drop) return false;
  if (!watched->isWindowType() || watched->inherits("QWidgetWindow")) return false;
  auto* drop = static_cast<QDropEvent*>(event);
  const QString path = projectFileIn(drop->mimeData());
  if (path.isEmpty()) return false;
  if (isRunningBeside()) return true;
  drop->acceptProposedAction();
  if (!drag) emit dropped(path);
  return true;
}

}  // namespace ui
