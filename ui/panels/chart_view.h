#pragma once

#include <QLabel>
#include <QPainter>
#include <QWidget>
#include <functional>
#include <optional>

namespace ui {

/// What a chart view shows: places that can be pointed at, walked to by keys and read out.
struct Chart {
  QString name;  ///< for screen readers
  std::function<void(QPainter&, const QRectF& box_mm, std::optional<int> marked)> draw;
  std::function<std::optional<int>(const QRectF& box_mm, QPointF at_mm)> at;
  std::function<QString(int place)> reading;
  std::function<int()> places;
  std::function<int()> columns = [] { return 0; };  ///< places in a row; 0: all places are one row
};

/// A chart that reads out the place under the pointer, or the one that the arrow keys walk to, on the line
/// below it.
class ChartView : public QWidget {
  Q_OBJECT

public:
  ChartView(const QString& id, Chart chart, QWidget* parent = nullptr);

  std::optional<int> marked() const { return marked_; }
  void mark(std::optional<int> place);
  /// The data behind the chart is another.
  void changed();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  Chart chart_;
  QWidget* area_;
  QLabel* reading_;
  std::optional<int> marked_;

  void paintArea();
  QRectF box() const;
  double pixelsPerMm() const;
  bool walk(int key);
};

}  // namespace ui
