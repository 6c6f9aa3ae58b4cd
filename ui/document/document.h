#pragma once

#include "core/compare/refine.h"
#include "core/plan.h"
#include "core/project/fields.h"
#include "core/project/project.h"

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>
#include <QUndoStack>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace ui {

/// The one open project: the only place where it changes. Holds only projects that can be planned and whose
/// file can be read again. Every change is one undo step {before, after}; equal values make none; steps of
/// one drag merge.
class Document : public QObject {
  Q_OBJECT

public:
  explicit Document(QObject* parent = nullptr);
  ~Document() override;

  using Ground = std::shared_ptr<const core::site::SurveyedGround>;
  /// Makes the ground of a large survey ready beside the window. Null: someone gave up waiting, which only
  /// `may_give_up` allows.
  using GroundMaker = std::function<Ground(const core::Ground&, bool may_give_up)>;
  void setGroundMaker(GroundMaker maker) { ground_maker_ = std::move(maker); }

  const core::Project& project() const { return *project_; }
  const core::Plan& plan() const { return plan_; }
  QUndoStack* undoStack() { return &undo_; }

  /// Tries one field. @return what is wrong, nothing being changed; empty when it was taken.
  /// Edits with the same `drag` other than 0 merge into one undo step.
  core::Problems edit(const core::Field& field, std::size_t row, const core::FieldValue& value, int drag = 0);
  /// Tries any change of the project (a list row added, an outline replaced). `text` names it for undo; a
  /// `drag` other than 0 merges as with edit().
  core::Problems change(const QString& text, const std::function<void(core::Project&)>& change, int drag = 0);
  /// Puts another project in place and forgets the undo history.
  core::Problems load(const core::Project& project);

  /// What edit() would find wrong with a value; changes nothing.
  core::Problems problemsOf(const core::Field& field, std::size_t row, const core::FieldValue& value) const;
  /// A number for the edits of a new drag or burst of typing.
  int newDrag() { return ++last_drag_; }
  /// Waits until the present plan has been refined: slips, ranges, options.
  void finishPlan();
  /// Whether the present plan holds all that takes longer than a drag.
  bool isRefined() const { return is_refined_; }

signals:
  void projectChanged();  ///< at once, after each change; plan() is already the new one
  void
  planRefined();  ///< slips, ranges and options were reckoned beside the window; findings may have changed
  void loaded();  ///< another project was put in place

private:
  class Replace;
  using Snapshot = std::shared_ptr<const core::Project>;

  Snapshot project_;
  core::Plan plan_;
  std::optional<core::Plan> ready_plan_;  // of the change being pushed
  QUndoStack undo_;
  int last_drag_ = 0;
  GroundMaker ground_maker_;
  std::vector<Ground> grounds_;  // of late, the last at the end
  bool is_refined_ = false;
  QTimer settle_;  // plans in quick succession are not refined
  QThreadPool beside_;
  std::shared_ptr<std::atomic<bool>> cancel_refining_;

  tl::expected<Ground, core::Problems> groundFor(const core::Project& project, bool may_give_up);
  void keepGround(const Ground& ground);
  core::Problems problemsOfFile(const core::Project& project) const;
  void startRefining();
  void take(core::compare::Refinement refinement);
  core::Problems push(const QString& text, core::Project project, int drag);
  void put(const Snapshot& project);
};

}  // namespace ui
