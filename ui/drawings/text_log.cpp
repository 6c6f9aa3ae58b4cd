#include "ui/drawings/text_log.h"

#include <QTransform>
#include <utility>

namespace ui::drawings {

void TextLog::note(const QPainter& painter, const QString& text) {
  if (auto* log = dynamic_cast<TextLog*>(painter.device()))
    log->texts_.push_back({text, painter.combinedTransform().map(QPointF())});
}

std::vector<LoggedText> TextLog::takeTexts() {
  return std::exchange(texts_, {});
}

}  // namespace ui::drawings
