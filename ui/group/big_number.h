#pragma once

#include <QWidget>

class QLabel;
class QSlider;

namespace ui::group {

constexpr double kLeast_pt = 24;  ///< smallest text of the group view
constexpr double kValue_pt = 34;

/// A short name over a value that is read from the back of a room.
class BigNumber : public QWidget {
  Q_OBJECT

public:
  BigNumber(const QString& id, const QString& name, QWidget* parent);
  void setValue(const QString& value);

private:
  QString name_text_;
  QLabel *name_, *value_;
};

/// A label whose letters are so high.
QLabel* bigLabel(const QString& id, double points, QWidget* parent);
/// Gives a slider a handle that can be caught and seen from afar.
void makeBig(QSlider* slider);

}  // namespace ui::group
