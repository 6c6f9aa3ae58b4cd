#pragma once

#include "core/base/problem.h"
#include "core/project/spot_heights.h"
#include "ui/text/formatter.h"

#include <QAbstractTableModel>
#include <map>

namespace ui {

class Document;

/// Spot heights as rows of east, north and height. Reads them from the project; edits go through the
/// document.
class SurveyModel : public QAbstractTableModel {
  Q_OBJECT

public:
  explicit SurveyModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  void setFormatter(const Formatter& format);
  /// The project's points or their notes are others.
  void refresh();
  /// Rows that are doubtful, with what is noted of them.
  const std::map<int, core::Problem>& noted() const { return noted_; }

signals:
  void refused(const core::Problems& problems);  ///< what was typed was not taken
  void taken();

private:
  Document& document_;
  Formatter format_;
  core::SpotHeights shown_;
  std::map<int, core::Problem> noted_;
};

}  // namespace ui
