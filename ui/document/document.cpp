#include "ui/document/document.h"

#include "core/exchange/project_file.h"
#include "core/findings.h"
#include "ui/text/words.h"

#include <QUndoCommand>
#include <utility>

namespace ui {

namespace {

constexpr int kMostUndoSteps = 600;

constexpr std::size_t kManyPoints = 3000;  // from here on a survey is made ready beside the window
constexpr std::size_t kGroundsKept = 4;
constexpr int kSettle_ms = 150;

core::Problem givenUp() {
  core::Problem problem;
  problem.code = "given_up";
  problem.path = "site.ground.points_m";
  return problem;
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
  beside_.setMaxThreadCount(1);
  settle_.setSingleShot(true);
  settle_.setInterval(kSettle_ms);
  connect(&settle_, &QTimer::timeout, this, &Document::startRefining);
}

Document::~Document() {
  if (cancel_refining_) *cancel_refining_ = true;
  beside_.waitForDone();
}

/// What would keep the project's own file from being read again. A survey of the open project has been read
/// before and is left out.
core::Problems Document::problemsOfFile(const core::Project& project) const {
  core::Project light = project;
  if (project.site.ground.points_m.isSharedWith(project_->site.ground.points_m) &&
      project.site.ground.points_m.size() > kManyPoints)
    light.site.ground.points_m = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}};
  const auto read = core::exchange::parseProject(core::exchange::projectText(light));
  return read ? core::Problems{} : read.error();
}

/// The ground of a project from those at hand, or made ready when the project can be planned.
tl::expected<Document::Ground, core::Problems> Document::groundFor(const core::Project& project,
                                                                   bool may_give_up) {
  const core::Ground& wanted = project.site.ground;
  if (plan_.site.ground->from == wanted) return plan_.site.ground;
  for (const Ground& ground : grounds_) {
    if (ground->from == wanted) return ground;
  }
  if (core::Problems problems = core::check(project); !problems.empty())
    return tl::unexpected(std::move(problems));
  const bool is_large = wanted.kind == core::GroundKind::spot_heights && wanted.points_m.size() > kManyPoints;
  if (!is_large || !ground_maker_) return core::site::surveyedGround(wanted);
  Ground ground = ground_maker_(wanted, may_give_up);
  if (!ground) return tl::unexpected(core::Problems{givenUp()});
  keepGround(ground);
  return ground;
}

void Document::keepGround(const Ground& ground) {
  grounds_.push_back(ground);
  if (grounds_.size() > kGroundsKept) grounds_.erase(grounds_.begin());
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

core::Problems Document::change(const QString& text, const std::function<void(core::Project&)>& change,
                                int drag) {
  core::Project after = *project_;
  change(after);
  if (core::Problems problems = problemsOfFile(after); !problems.empty()) return problems;
  return push(text, std::move(after), drag);
}

core::Problems Document::load(const core::Project& project) {
  auto ground = groundFor(project, true);
  if (!ground) return ground.error();
  tl::expected<core::Plan, core::Problems> plan = core::plan(project, nullptr, std::move(*ground));
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
  auto ground = groundFor(project, true);
  if (!ground) return ground.error();
  tl::expected<core::Plan, core::Problems> plan = core::plan(project, &plan_, std::move(*ground));
  if (!plan) return plan.error();
  ready_plan_ = std::move(*plan);
  undo_.push(new Replace(*this, text, std::make_shared<core::Project>(std::move(project)), drag));
  return {};
}

void Document::put(const Snapshot& project) {
  settle_.stop();
  core::Plan plan = ready_plan_ ? *std::exchange(ready_plan_, std::nullopt)
                                : core::plan(*project, &plan_, groundFor(*project, false).value()).value();
  if (cancel_refining_) *cancel_refining_ = true;
  plan_ = std::move(plan);
  is_refined_ = false;
  project_ = project;
  emit projectChanged();
  settle_.start();
}

void Document::startRefining() {
  if (is_refined_) return;
  if (cancel_refining_) *cancel_refining_ = true;
  cancel_refining_ = std::make_shared<std::atomic<bool>>(false);
  beside_.start([this, cancel = cancel_refining_, project = project_,
                 plan = std::make_shared<const core::Plan>(plan_)] {
    auto refinement = core::compare::refinement(*project, *plan, cancel.get());
    if (*cancel) return;
    QMetaObject::invokeMethod(this, [this, cancel, refinement = std::move(refinement)] {
      if (!*cancel) take(refinement);
    });
  });
}

void Document::take(core::compare::Refinement refinement) {
  core::compare::put(*project_, plan_, std::move(refinement));
  is_refined_ = true;
  emit planRefined();
}

void Document::finishPlan() {
  if (is_refined_) return;
  settle_.stop();
  if (cancel_refining_) *cancel_refining_ = true;
  take(core::compare::refinement(*project_, plan_));
}

}  // namespace ui
