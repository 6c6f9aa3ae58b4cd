#pragma once

#include <QPainter>
#include <QWidget>
#include <functional>

namespace ui {

/// A widget that shows what a function paints in millimetres.
class Canvas : public QWidget {
  Q_OBJECT

public:
  /// Paints into a box whose unit is the millimetre.
  using Paint = std::function<void(QPainter& painter, const QRectF& box_mm)>;

  explicit Canvas(QWidget* parent = nullptr);

  void setPaint(Paint paint);
  /// Millimetres of the drawing to a millimetre of screen stay as they are when `size_mm` is empty; otherwise
  /// the page of that size is shown at `zoom` times its real size.
  void setPage(const QSizeF& size_mm, double zoom);
  double pixelsPerMm() const;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  Paint paint_;
  QSizeF page_mm_;
  double zoom_ = 1;
};

}  // namespace ui
