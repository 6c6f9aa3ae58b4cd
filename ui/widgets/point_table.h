#pragma once

#include "core/base/problem.h"
#include "ui/text/formatter.h"

#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

class QLabel;
class QTableWidget;
class QToolButton;

namespace ui {

/// A list of points in metres, one a row, typed, added, taken out or pasted from a sheet.
/// A list that is not taken stays to be seen with a message; Escape brings the last good one back.
class PointTable : public QWidget {
  Q_OBJECT

public:
  using Point = std::vector<double>;  ///< [m], one number a column
  using Take =
      std::function<core::Problems(const std::vector<Point>&)>;  ///< tries a list; what is wrong with it

  PointTable(const QString& path, const QStringList& columns, QWidget* parent = nullptr);

  void setTake(Take take) { take_ = std::move(take); }
  void setFormatter(const Formatter& format);
  /// Shows points unless a list that was not taken stands.
  void showPoints(const std::vector<Point>& points);
  bool isWrong() const { return wrong_; }

public slots:
  void addPoint();
  void removePoint();
  void paste();
  void giveUp();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  QString path_;
  QTableWidget* table_;
  QLabel* problem_;
  Formatter format_;
  Take take_;
  std::vector<Point> good_;
  bool wrong_ = false;
  bool filling_ = false;
  bool taking_ = false;

  void fill(const std::vector<Point>& points);
  void tryTable();
  std::optional<std::vector<Point>> pointsTyped();  // says what cannot be read
  void tryPoints(const std::vector<Point>& points);
  void say(const core::Problems& problems);
  QToolButton* addButton(const QString& id, const QString& text, void (PointTable::*pressed)());
};

}  // namespace ui
