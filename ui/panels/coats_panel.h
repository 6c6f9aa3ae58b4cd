#pragma once

#include "ui/text/formatter.h"

#include <QWidget>
#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui {

class Document;
class Explained;
class FieldRow;

/// The plaster coats from the earth inward, each with its fields; coats can be added and taken out.
class CoatsPanel : public QWidget {
  Q_OBJECT

public:
  explicit CoatsPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  const std::vector<FieldRow*>& rows() const { return rows_; }

private:
  Document& document_;
  Formatter format_;
  QVBoxLayout* coats_;
  QPushButton* add_;
  QLabel* problem_;
  Explained* explained_;
  std::vector<FieldRow*> rows_;
  std::vector<QWidget*> groups_;

  void refresh();
  void rebuild();
  QWidget* makeCoat(std::size_t coat);
  void addCoat();
  void removeCoat(std::size_t coat);
  void say(const QString& text);
};

}  // namespace ui
