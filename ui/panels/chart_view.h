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
  /// Room it asks for; nothing: as much as there is.
  std::function<double()> height_mm = {};
  /// A place was clicked, or Enter pressed on it.
  std::function<void(int place)> picked = {};
  /// A place is dragged sideways; `is_done` when it is let go.
  std::function<void(int place, double along_mm, bool is_done)> dragged = {};
  /// A key of one's own, before those that walk. @return whether it was one
  std::function<bool(std::optional<int> place, int key)> pressed = {};
};

/// A chart that reads out the place under the pointer, or the one that the arrow keys walk to, on the line
/// below it.
class ChartView : public QWidget {
  Q_OBJECT

public:
  ChartView(const QString& id, Chart chart, QWidget* parent = nullptr);

  /// What a drawing of the chart has for its room [mm].
  QRectF box() const;
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
  struct Grip {
    int place;
    double x_mm;
    bool moved = false;
  };
  std::optional<Grip> grip_;

  double pixelsPerMm() const;
  bool walk(int key);
  void pointerMoved(QPointF at_mm);
  void grip(QPointF at_mm);
  void letGo(QPointF at_mm);
};

}  // namespace ui
