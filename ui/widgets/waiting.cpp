#include "ui/widgets/waiting.h"

#include <QCloseEvent>
#include <QCoreApplication>
#include <QDialog>
#include <QEventLoop>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QThreadPool>
#include <QTimer>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int kBeforeDialog_ms = 400;

int running = 0;  // pieces of work under way; only the GUI thread counts

QString text(const char* source) {
  return QCoreApplication::translate("ui::Waiting", source);
}

/// Says what goes on. Stays until the work is done: neither Escape nor the close box hides it.
class WaitingDialog : public QDialog {
public:
  WaitingDialog(QWidget* window, const QString& what, Patience patience, std::atomic<bool>& cancel)
      : QDialog(window), cancel_(cancel), label_(new QLabel(what, this)) {
    setObjectName(QStringLiteral("waiting"));
    setWindowModality(Qt::WindowModal);
    auto* bar = new QProgressBar(this);
    bar->setRange(0, 0);
    bar->setAccessibleName(what);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(label_);
    layout->addWidget(bar);
    if (patience == Patience::must_wait) return;
    button_ = new QPushButton(text(QT_TRANSLATE_NOOP("ui::Waiting", "Give up")), this);
    button_->setObjectName(QStringLiteral("waiting.give_up"));
    layout->addWidget(button_, 0, Qt::AlignRight);
    connect(button_, &QPushButton::clicked, this, [this] { giveUp(); });
  }

  bool isGivenUp() const { return given_up_; }
  void reject() override { giveUp(); }

protected:
  void closeEvent(QCloseEvent* event) override {
    giveUp();
    event->ignore();
  }

private:
  std::atomic<bool>& cancel_;
  QLabel* label_;
  QPushButton* button_ = nullptr;
  bool given_up_ = false;

  void giveUp() {
    if (button_ == nullptr || given_up_) return;
    given_up_ = true;
    cancel_ = true;
    button_->setEnabled(false);
    label_->setText(text(QT_TRANSLATE_NOOP("ui::Waiting", "Stopping…")));
  }
};

}  // namespace

bool isRunningBeside() {
  return running > 0;
}

bool runBeside(QWidget* window, const QString& what, Patience patience,
               const std::function<void(const std::atomic<bool>& cancel)>& work) {
  std::atomic<bool> cancel{false};
  bool done = false;
  QEventLoop loop;
  QThreadPool pool;
  WaitingDialog dialog(window, what, patience, cancel);
  QTimer before;
  before.setSingleShot(true);
  QObject::connect(&before, &QTimer::timeout, &dialog, [&] { dialog.show(); });
  before.start(kBeforeDialog_ms);
  ++running;
  pool.start([&] {
    work(cancel);
    QMetaObject::invokeMethod(&loop, [&] {
      done = true;
      loop.quit();
    });
  });
  // only the dialog's button may be pressed, and only once it is there
  while (!done)
    loop.processEvents(dialog.isVisible() && patience == Patience::may_give_up
                           ? QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents
                           : QEventLoop::ExcludeUserInputEvents | QEventLoop::WaitForMoreEvents);
  --running;
  before.stop();
  pool.waitForDone();
  return !dialog.isGivenUp();
}

}  // namespace ui
