#pragma once

#include "core/project/project.h"
#include "ui/text/formatter.h"

#include <QWidget>

class QLabel;
class QSlider;
class QTabBar;
class QStackedWidget;
class QRadioButton;

namespace ui {

class Canvas;
class Document;
class Explained;
class SurveyTable;

/// The ground and the platform: what it takes in words, the ground from above, the level to drag, and the
/// spot heights.
class GroundPanel : public QWidget {
  Q_OBJECT

public:
  explicit GroundPanel(Document& document, QWidget* parent = nullptr);

  SurveyTable* survey() const { return survey_; }
  void setFormatter(const Formatter& format);
  void setDark(bool dark);
  /// Shows the row of a spot height. @return false for fields that are not of the survey
  bool goTo(const QString& path);
  void showSurvey();

private:
  Document& document_;
  Formatter format_;
  bool dark_ = false;
  QLabel *answers_, *level_text_;
  QSlider* level_;
  QWidget* level_bar_;
  std::vector<QRadioButton*> choices_;
  QTabBar* pages_;
  QStackedWidget* stack_;
  Canvas* drawing_;
  SurveyTable* survey_;
  Explained *explained_, *stability_;
  int drag_ = 0;

  QWidget* makeLevelBar();
  void refresh();
  void showLevel();
  void dragTo(int value);
  void choose(core::PlatformLevel level_by);
};

}  // namespace ui
