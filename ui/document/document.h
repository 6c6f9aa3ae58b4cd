#pragma once

#include <functional>

#include <QObject>
#include <QString>
#include <QUndoStack>

#include "core/plan.h"
#include "core/project/fields.h"
#include "core/project/project.h"

namespace ui {

/// The one open project: the only place where it changes. Holds only projects that can be planned.
/// Every change is one undo step {before, after}; equal values make none; steps of one drag merge.
class Document : public QObject {
  Q_OBJECT

public:
  explicit Document(QObject* parent = nullptr);

  const core::Project& project() const { return project_; }
  const core::Plan& plan() const { return plan_; }
  QUndoStack* undoStack() { return &undo_; }

  /// Tries one field. @return what is wrong, nothing being changed; empty when it was taken.
  /// Edits with the same `drag` other than 0 merge into one undo step.
  core::Problems edit(const core::Field& field, std::size_t row, const core::FieldValue& value, int drag = 0);
  /// Tries any change of the project (a list row added, an outline replaced). `text` names it for undo.
  core::Problems change(const QString& text, const std::function<void(core::Project&)>& change);
  /// Puts another project in place and forgets the undo history.
  core::Problems load(const core::Project& project);

signals:
  void projectChanged();  ///< at once, after each change; plan() is already the new one
  void loaded();          ///< another project was put in place

private:
  core::Project project_;
  core::Plan plan_;
  QUndoStack undo_;
};

}  // namespace ui
