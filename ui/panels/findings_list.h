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
  void fieldWanted(const QString& field);  ///< someone wants to see the field behind a finding

private:
  QVBoxLayout* layout_;
  std::vector<QWidget*> shown_;
  QStringList sentences_;

  QWidget* makeFinding(const core::Finding& finding, const QString& text);
};

}  // namespace ui
