#pragma once

#include "core/build_timeline.h"
#include "ui/group/big_slider.h"
#include "ui/text/formatter.h"

#include <QTimer>
#include <QWidget>
#include <array>
#include <functional>
#include <vector>

class QLabel;
class QPushButton;
class QSlider;
class QStackedWidget;

namespace ui {
class Document;
class PitView;
}  // namespace ui

namespace ui::group {

class BigNumber;
class OptionsStrip;

/// The whole screen for a meeting: the pit, a few big numbers, three big sliders, the options, building day
/// by day, a year of water. Dark on light, no text under 24 point, no dialogs. Keys, also those of a remote
/// clicker: Page Down and Page Up go on and back, 1 to 4 choose, arrows move the slider or the day, Space
/// plays, B or . blanks the screen, Escape leaves.
class GroupView : public QWidget {
  Q_OBJECT

public:
  enum class Mode { size, options, building, year };

  GroupView(Document& document, const Formatter& format, QWidget* parent = nullptr);

  Mode mode() const { return mode_; }
  void setMode(Mode mode);
  bool has(Mode mode) const;
  /// One step on: the next stage or month, and after the last one the next part.
  void goOn();
  void goBack();
  void togglePlay();
  bool isPlaying() const { return play_.isActive(); }
  void toggleBlank();

protected:
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

private:
  Document& document_;
  Formatter format_;
  Mode mode_ = Mode::size;
  QStackedWidget* screen_;  // all of it, or a blank
  std::vector<BigNumber*> numbers_;
  PitView* view_;
  QWidget* sliders_box_;
  std::vector<BigSlider*> sliders_;
  std::size_t slider_ = 0;  // that the arrow keys move
  OptionsStrip* options_;
  QLabel *told_, *message_;
  QWidget* time_box_;
  QSlider* time_;
  QPushButton* play_button_;
  std::array<QPushButton*, 4> modes_{};
  std::vector<core::works::BuildDay> days_;
  QTimer draw_, play_;
  bool looked_ = false;

  void arrange();
  QWidget* makeNumbers();
  QWidget* makeSliders();
  QWidget* makeTime();
  QWidget* makeModes();
  void addKeys();
  void addKey(const QKeySequence& key, const std::function<void()>& run);
  void refresh();
  void showNumbers();
  void showTime();
  void tellTime();
  void draw();
  void look();
  void advance();
  void choose(int by);
  void move(int steps);
  int stepFrom(int at, int by) const;
};

}  // namespace ui::group
