#pragma once

#include <QPainter>
#include <QPointF>
#include <QString>
#include <vector>

namespace ui::drawings {

/// A text as it reached a paint device.
struct LoggedText {
  QString text;
  QPointF start;  ///< of its baseline [dots of the device, from its top left corner]
};

/// Part of a paint device that wants to know the texts that drawText() paints on it.
class TextLog {
public:
  virtual ~TextLog() = default;

  /// Tells the painter's device of a text at the painter's origin, when the device wants to know.
  static void note(const QPainter& painter, const QString& text);
  /// The texts since they were last taken, in the order drawn.
  std::vector<LoggedText> takeTexts();

private:
  std::vector<LoggedText> texts_;
};

}  // namespace ui::drawings
