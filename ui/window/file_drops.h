#pragma once

#include <QObject>
#include <QString>

class QMimeData;

namespace ui {

/// Path of the one project file in what is being dragged; empty when it is something else.
QString projectFileIn(const QMimeData* data);

/// Takes project files dropped on windows that hold no widgets, as the three-dimensional view's.
class FileDrops : public QObject {
  Q_OBJECT

public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override;

signals:
  void dropped(const QString& path);
};

}  // namespace ui
