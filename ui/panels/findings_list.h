#pragma once

#include "core/plan.h"
#include "ui/text/formatter.h"

#include <QStringList>
#include <QWidget>
#include <vector>

class QVBoxLayout;

namespace ui {

/// Findings as sentences, the gravest first as they come, each with its severity in words.
class FindingsList : public QWidget {
  Q_OBJECT

public:
  explicit FindingsList(QWidget* parent = nullptr);

  void show(const std::vector<core::Finding>& findings, const Formatter& format);

signals:
  void findingWanted(const core::Finding& finding);  ///< someone wants to see the field or place behind it

private:
  QVBoxLayout* layout_;
  std::vector<QWidget*> shown_;
  QStringList sentences_;
  std::vector<core::Finding> findings_;

  QWidget* makeFinding(std::size_t number, const QString& text);
};

}  // namespace ui
