#include "ui/document/recovery.h"

#include "core/exchange/project_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>

namespace ui {

namespace {

constexpr QLatin1String kEnding(".recovery");
constexpr QLatin1String kLockEnding(".lock");

QByteArray recoveryText(const core::Project& project, const QString& original_path) {
  const QJsonObject object{
      {QStringLiteral("format"), QStringLiteral("tankwright-recovery")},
      {QStringLiteral("path"), original_path},
      {QStringLiteral("project"), QString::fromStdString(core::exchange::projectText(project))},
  };
  return QJsonDocument(object).toJson();
}

std::optional<LeftBehind> readLeftBehind(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  const QJsonObject object = QJsonDocument::fromJson(file.readAll()).object();
  const auto read =
      core::exchange::parseProject(object.value(QStringLiteral("project")).toString().toStdString());
  if (!read) return std::nullopt;
  return LeftBehind{path, object.value(QStringLiteral("path")).toString(), QFileInfo(path).lastModified(),
                    read->project};
}

std::unique_ptr<QLockFile> makeLock(const QString& base) {
  auto lock = std::make_unique<QLockFile>(base + kLockEnding);
  lock->setStaleLockTime(0);
  return lock;
}

}  // namespace

Recovery::Recovery(const QString& folder, QObject* parent)
    : QObject(parent),
      folder_(folder),
      base_(QDir(folder).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces))),
      lock_(makeLock(base_)) {
  QDir().mkpath(folder_);
  lock_->tryLock();
  writer_.setMaxThreadCount(1);
  delay_.setSingleShot(true);
  delay_.setInterval(kDelay_ms);
  connect(&delay_, &QTimer::timeout, this, &Recovery::write);
}

Recovery::~Recovery() {
  flush();
}

void Recovery::keep(const core::Project& project, const QString& original_path) {
  project_ = project;
  original_path_ = original_path;
  if (!delay_.isActive()) delay_.start();
}

void Recovery::forget() {
  delay_.stop();
  writer_.start([file = base_ + kEnding] { QFile::remove(file); });
}

void Recovery::flush() {
  if (delay_.isActive()) {
    delay_.stop();
    write();
  }
  writer_.waitForDone();
}

void Recovery::write() {
  writer_.start([file = base_ + kEnding, project = project_, original = original_path_] {
    const QByteArray text = recoveryText(project, original);
    core::exchange::writeWhole(QFile::encodeName(file).toStdString(),
                               {text.constData(), static_cast<std::size_t>(text.size())});
  });
}

std::vector<LeftBehind> Recovery::leftBehind() {
  std::vector<LeftBehind> found;
  const QFileInfoList files =
      QDir(folder_).entryInfoList({QLatin1Char('*') + kEnding}, QDir::Files, QDir::Time);
  for (const QFileInfo& file : files) {
    auto lock = makeLock(QDir(folder_).filePath(file.completeBaseName()));
    if (!lock->tryLock()) continue;
    if (auto work = readLeftBehind(file.filePath())) {
      found.push_back(std::move(*work));
      held_.push_back(std::move(lock));
    }
  }
  return found;
}

void Recovery::discard(const LeftBehind& work) {
  QFile::remove(work.file);
}

}  // namespace ui
