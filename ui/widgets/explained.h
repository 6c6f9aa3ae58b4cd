#pragma once

#include "ui/text/formatter.h"

#include <QWidget>
#include <string>
#include <string_view>

class QLabel;
class QScrollArea;
class QToolButton;

namespace ui {

class Document;

/// A small button that unfolds below it how the numbers of a group were reckoned: name, value, formula,
/// inputs and source of each. Folded at first; the text is made only while it is unfolded and looked at.
class Explained : public QWidget {
  Q_OBJECT

public:
  /// Room of the unfolded text: as high as it is, or a part that scrolls by itself, where nothing around it
  /// does.
  enum class Room { whole, scrolled };

  /// @param group one of words::reckoningGroups()
  Explained(Document& document, std::string_view group, QWidget* parent = nullptr, Room room = Room::whole);

  void setFormatter(const Formatter& format);
  bool isUnfolded() const;

protected:
  void showEvent(QShowEvent* event) override;

private:
  Document& document_;
  std::string group_;
  Formatter format_;
  QToolButton* button_;
  QLabel* text_;
  QWidget* unfolded_;  // the text, or what it scrolls in
  bool is_stale_ = true;

  void fold(bool unfolded);
  void markStale();
  void refresh();
};

}  // namespace ui
