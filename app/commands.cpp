#include "app/commands.h"

#include "app/plan_summary.h"
#include "app/streams.h"
#include "core/compare/refine.h"
#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "core/exchange/sites_csv.h"
#include "core/plan.h"
#include "ui/text/languages.h"
#include "ui/text/words.h"
#include "ui/window/export.h"
#include "ui/window/start.h"

#include <QCoreApplication>
#include <QFile>
#include <QGuiApplication>
#include <QString>
#include <algorithm>
#include <atomic>
#include <clocale>
#include <csignal>
#include <filesystem>
#include <memory>
#include <system_error>
#include <thread>
#include <vector>

#include <langinfo.h>

namespace app {
namespace {

namespace fs = std::filesystem;

void print(const QString& kind, const QString& text) {
  printError((kind + QStringLiteral(": ") + text + u'\n').toUtf8().toStdString());
}

void printProblems(const core::Problems& problems, const ui::Formatter& format) {
  for (const core::Problem& problem : problems) {
    print(QCoreApplication::translate("app", "problem"), ui::words::problemText(problem, format));
  }
}

void printNotes(const core::Problems& notes, const ui::Formatter& format) {
  for (const core::Problem& note : notes) {
    print(QCoreApplication::translate("app", "note"), ui::words::problemText(note, format));
  }
}

/// Qt asks for a UTF-8 locale and warns on the standard error stream when there is none.
void takeUtf8() {
  std::setlocale(LC_ALL, "");
  if (std::string_view(nl_langinfo(CODESET)) == "UTF-8") return;
  qputenv(qEnvironmentVariableIsEmpty("LC_ALL") ? "LC_CTYPE" : "LC_ALL", "C.UTF-8");
}

/// The error stream is for the input's problems; Qt's remarks on the desktop's folders are none of them.
void passOn(QtMsgType type, const QMessageLogContext& context, const QString& text) {
  if (!text.startsWith(QStringLiteral("QStandardPaths:")))
    printError((qFormatLogMessage(type, context, text) + u'\n').toStdString());
}

/// Pages and pictures need fonts, which only the second of Qt's applications has.
bool drawsText(const Request& request) {
  if (request.command == Command::plan) return !request.folder.empty();
  return request.command == Command::write && ui::exportDrawsText(endingOf(request.target));
}

std::unique_ptr<QCoreApplication> makeApplication(const Request& request, int& argc, char** argv) {
  takeUtf8();
  qInstallMessageHandler(passOn);
  if (!drawsText(request)) return std::make_unique<QCoreApplication>(argc, argv);
  qputenv("QT_QPA_PLATFORM", "offscreen");
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY"}) qunsetenv(name);
  return std::make_unique<QGuiApplication>(argc, argv);
}

ui::Formatter makeFormatter(const Request& request) {
  const QLocale locale =
      request.language.empty() ? QLocale::system() : QLocale(QString::fromStdString(request.language));
  const bool is_translated = ui::useLanguage(locale);
  if (!is_translated && !request.language.empty()) {
    print(QCoreApplication::translate("app", "note"),
          QCoreApplication::translate("app", "There is no translation for %1 yet; texts are in English.")
              .arg(QString::fromStdString(request.language)));
  }
  return ui::Formatter(locale, request.units.value_or(ui::UnitSystem::metric));
}

ui::handouts::Options sheetsOf(const Request& request) {
  ui::handouts::Options sheets;
  sheets.page = request.on_letter ? QPageSize::Letter : QPageSize::A4;
  for (const std::string& code : request.pages) sheets.codes << QString::fromStdString(code).toUpper();
  return sheets;
}

/// A code that no sheet of this project has: there would be nothing to print.
QString faultOfPages(const Request& request, const core::Project& project, const core::Plan& plan,
                     const ui::Formatter& format) {
  const auto kinds = ui::handouts::sheetKinds({project, plan, format}, ui::language());
  for (const QString& code : sheetsOf(request).codes) {
    if (std::ranges::find(kinds, code, &ui::handouts::SheetKind::code) == kinds.end())
      return QCoreApplication::translate("app", "This project has no sheet %1.").arg(code);
  }
  return {};
}

/// Plan of a project that was read; a project that cannot be planned has been told.
std::optional<core::Plan> planOf(const core::Project& project, const ui::Formatter& format) {
  auto plan = core::plan(project);
  if (plan) {
    core::compare::refine(project, *plan);
    return std::move(*plan);
  }
  printProblems(plan.error(), format);
  return std::nullopt;
}

bool written(const QString& reason) {
  if (!reason.isEmpty()) print(QCoreApplication::translate("app", "problem"), reason);
  return reason.isEmpty();
}

bool makeFolder(const fs::path& folder, const ui::Formatter& format) {
  std::error_code error;
  fs::create_directories(folder, error);
  if (!error) return true;
  core::Problem problem;
  problem.code = "cannot_write";
  problem.path = folder.string();
  problem.value = error.message();
  printProblems({problem}, format);
  return false;
}

bool writeFolder(const Request& request, const core::Project& project, const core::Plan& plan,
                 const ui::Formatter& format) {
  const fs::path folder = request.folder;
  if (!makeFolder(folder, format)) return false;
  const core::Problems problems =
      core::exchange::writeWhole(folder / "plan.json", core::exchange::planText(plan));
  printProblems(problems, format);
  if (!problems.empty()) return false;
  for (const char* name : {"plan.csv", "sheets.pdf"}) {
    if (!written(ui::exportTo(project, plan, QFile::decodeName((folder / name).c_str()), format,
                              sheetsOf(request))))
      return false;
  }
  return true;
}

int check(const Request& request, const ui::Formatter&) {
  const QString text = QCoreApplication::translate("app", "%1: no problems found.")
                           .arg(QString::fromStdString(request.project));
  return printOut((text + u'\n').toStdString()) ? kDone : kInputHasProblems;
}

int plan(const Request& request, const core::Project& project, const ui::Formatter& format) {
  const auto plan = planOf(project, format);
  if (!plan) return kInputHasProblems;
  if (!written(faultOfPages(request, project, *plan, format))) return kInputHasProblems;
  if (!request.folder.empty() && !writeFolder(request, project, *plan, format)) return kInputHasProblems;
  const std::string text =
      request.json ? core::exchange::planText(*plan) : planSummary(project, *plan, format).toStdString();
  return printOut(text) ? kDone : kInputHasProblems;
}

int write(const Request& request, const core::Project& project, const ui::Formatter& format) {
  const auto plan = planOf(project, format);
  if (!plan) return kInputHasProblems;
  if (!written(faultOfPages(request, project, *plan, format))) return kInputHasProblems;
  const QString reason =
      ui::exportTo(project, *plan, QFile::decodeName(request.target.c_str()), format, sheetsOf(request));
  return written(reason) ? kDone : kInputHasProblems;
}

/// Plans the rows of a table side by side, each thread the next one that is left.
std::vector<core::exchange::SiteResult> planSites(const std::vector<core::exchange::SiteRow>& rows,
                                                  unsigned jobs) {
  std::vector<core::exchange::SiteResult> results(rows.size());
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t k = next++; k < rows.size(); k = next++)
      results[k] = core::exchange::siteResult(rows[k]);
  };
  {
    std::vector<std::jthread> others;
    for (unsigned t = 1; t < jobs; ++t) others.emplace_back(work);
    work();
  }
  return results;
}

int batch(const Request& request, const core::Project& project, const ui::Formatter& format) {
  QFile file(QFile::decodeName(request.sites.c_str()));
  if (!file.open(QIODevice::ReadOnly)) {
    print(QCoreApplication::translate("app", "problem"),
          QCoreApplication::translate("app", "%1 cannot be read: %2")
              .arg(QString::fromStdString(request.sites), file.errorString()));
    return kInputHasProblems;
  }
  const auto rows = core::exchange::readSites(file.readAll().toStdString(), project);
  if (!rows) return printProblems(rows.error(), format), kInputHasProblems;
  const unsigned jobs = request.jobs != 0 ? request.jobs : std::max(1U, std::thread::hardware_concurrency());
  const std::vector<core::exchange::SiteResult> results = planSites(*rows, jobs);
  const core::Problems unwritten =
      core::exchange::writeWhole(request.target, core::exchange::resultsCsv(results));
  printProblems(unwritten, format);
  const bool is_clean = std::ranges::all_of(results, [](const auto& r) { return r.problems.empty(); });
  return unwritten.empty() && is_clean ? kDone : kInputHasProblems;
}

}  // namespace

int openWindow(const Request& request, int& argc, char** argv) {
  if (!request.language.empty()) qputenv("TANKWRIGHT_LOCALE", request.language.c_str());
  if (request.units) {
    qputenv("TANKWRIGHT_UNITS", *request.units == ui::UnitSystem::metric ? "metric" : "feet_inches");
  }
  return ui::runWindow(argc, argv, QFile::decodeName(request.project.c_str()));
}

int runCommand(const Request& request, int& argc, char** argv) {
  std::signal(SIGPIPE, SIG_IGN);
  const auto application = makeApplication(request, argc, argv);
  const ui::Formatter format = makeFormatter(request);
  const auto read = core::exchange::readProject(request.project);
  if (!read) {
    printProblems(read.error(), format);
    return kInputHasProblems;
  }
  printNotes(read->notes, format);
  switch (request.command) {
    case Command::plan:
      return plan(request, read->project, format);
    case Command::write:
      return write(request, read->project, format);
    case Command::batch:
      return batch(request, read->project, format);
    default:
      return check(request, format);
  }
}

}  // namespace app
