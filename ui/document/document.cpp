#include "ui/document/document.h"

#include "core/exchange/project_file.h"
#include "ui/text/words.h"

#include <QUndoCommand>
#include <utility>

namespace ui {

namespace {

constexpr int kMostUndoSteps = 300;

/// What would keep the project's own file from being read again.
core::Problems problemsOfFile(const core::Project& project) {
  const auto read = core::exchange::parseProject(core::exchange::projectText(project));
  return read ? core::Problems{} : read.error();
}

}  // namespace

class Document::Replace : public QUndoCommand {
public:
  Replace(Document& document, const QString& text, Snapshot after, int drag)
      : QUndoCommand(text),
        document_(document),
        before_(document.project_),
        after_(std::move(after)),
        drag_(drag) {}

  int id() const override { return drag_ == 0 ? -1 : drag_; }
  void undo() override { document_.put(before_); }
  void redo() override { document_.put(after_); }

  bool mergeWith(const QUndoCommand* next) override {
    after_ = static_cast<const Replace*>(next)->after_;
    setObsolete(*before_ == *after_);
    return true;
  }

private:
  Document& document_;
  Snapshot before_, after_;
  int drag_;
};

Document::Document(QObject* parent)
    : QObject(parent), project_(std::make_shared<core::Project>()), plan_(core::plan(*project_).value()) {
  undo_.setUndoLimit(kMostUndoSteps);
}

core::Problems Document::edit(const core::Field& field, std::size_t row, const core::FieldValue& value,
                              int drag) {
  if (core::Problems problems = core::checkValue(field, row, value); !problems.empty()) return problems;
  core::Project after = *project_;
  field.set(after, row, value);
  if (field.kind == core::FieldKind::choice) {
    if (core::Problems problems = problemsOfFile(after); !problems.empty()) return problems;
  }
  return push(words::fieldLabel(field.id), std::move(after), drag);
}

core::Problems Document::change(const QString& text, const std::function<void(core::Project&)>& change) {
  core::Project after = *project_;
  change(after);
  if (core::Problems problems = problemsOfFile(after); !problems.empty()) return problems;
  return push(text, std::move(after), 0);
}

core::Problems Document::load(const core::Project& project) {
  tl::expected<core::Plan, core::Problems> plan = core::plan(project);
  if (!plan) return plan.error();
  undo_.clear();
  ready_plan_ = std::move(*plan);
  put(std::make_shared<core::Project>(project));
  emit loaded();
  return {};
}

core::Problems Document::problemsOf(const core::Field& field, std::size_t row,
                                    const core::FieldValue& value) const {
  if (core::Problems problems = core::checkValue(field, row, value); !problems.empty()) return problems;
  core::Project after = *project_;
  field.set(after, row, value);
  return core::check(after);
}

core::Problems Document::push(const QString& text, core::Project project, int drag) {
  if (project == *project_) return {};
  tl::expected<core::Plan, core::Problems> plan = core::plan(project, &plan_);
  if (!plan) return plan.error();
  ready_plan_ = std::move(*plan);
  undo_.push(new Replace(*this, text, std::make_shared<core::Project>(std::move(project)), drag));
  return {};
}

void Document::put(const Snapshot& project) {
  plan_ = ready_plan_ ? *std::exchange(ready_plan_, std::nullopt) : core::plan(*project, &plan_).value();
  project_ = project;
  emit projectChanged();
}

}  // namespace ui
