#pragma once

#include "core/plan.h"
#include "core/project/fields.h"
#include "core/project/project.h"

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <functional>
#include <memory>
#include <optional>

namespace ui {

/// The one open project: the only place where it changes. Holds only projects that can be planned and whose
/// file can be read again. Every change is one undo step {before, after}; equal values make none; steps of
/// one drag merge.
class Document : public QObject {
  Q_OBJECT

public:
  explicit Document(QObject* parent = nullptr);

  const core::Project& project() const { return *project_; }
  const core::Plan& plan() const { return plan_; }
  QUndoStack* undoStack() { return &undo_; }

  /// Tries one field. @return what is wrong, nothing being changed; empty when it was taken.
  /// Edits with the same `drag` other than 0 merge into one undo step.
  core::Problems edit(const core::Field& field, std::size_t row, const core::FieldValue& value, int drag = 0);
  /// Tries any change of the project (a list row added, an outline replaced). `text` names it for undo.
  core::Problems change(const QString& text, const std::function<void(core::Project&)>& change);
  /// Puts another project in place and forgets the undo history.
  core::Problems load(const core::Project& project);

  /// What edit() would find wrong with a value; changes nothing.
  core::Problems problemsOf(const core::Field& field, std::size_t row, const core::FieldValue& value) const;
  /// A number for the edits of a new drag or burst of typing.
  int newDrag() { return ++last_drag_; }

signals:
  void projectChanged();  ///< at once, after each change; plan() is already the new one
  void loaded();          ///< another project was put in place

private:
  class Replace;
  using Snapshot = std::shared_ptr<const core::Project>;

  Snapshot project_;
  core::Plan plan_;
  std::optional<core::Plan> ready_plan_;  // of the change being pushed
  QUndoStack undo_;
  int last_drag_ = 0;

  core::Problems push(const QString& text, core::Project project, int drag);
  void put(const Snapshot& project);
};

}  // namespace ui
