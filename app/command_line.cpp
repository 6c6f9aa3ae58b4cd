#include "app/command_line.h"

#include "app/streams.h"
#include "ui/window/export.h"

#include <QLocale>
#include <filesystem>
#include <sstream>

#include <CLI/CLI.hpp>

namespace app {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kFeet = "feet";
constexpr std::string_view kLetter = "letter";
const auto kProjectEnding = QStringLiteral(".tankwright");

/// What is wrong with the ending of a file to export to; empty when nothing is.
std::string faultOfTarget(const std::string& file) {
  const QString ending = endingOf(file);
  if (ui::exportEndings().contains(ending)) return {};
  return "the ending says what to write: " + ui::exportEndings().join(QStringLiteral(", ")).toStdString();
}

std::string faultOfUnits(const std::string& name) {
  return name == kFeet || name == "metric" ? std::string() : "either metric or feet";
}

std::string faultOfPaper(const std::string& name) {
  return name == kLetter || name == "a4" ? std::string() : "either a4 or letter";
}

std::string faultOfLanguage(const std::string& name) {
  const bool is_known = QLocale(QString::fromStdString(name)).language() != QLocale::C || name == "C";
  return is_known ? std::string() : "not the name of a language, such as en, es or ne_NP";
}

/// A name that is no file and does not look like a project is a mistyped command.
std::string faultOfProject(const std::string& file) {
  std::error_code ignored;
  if (fs::exists(file, ignored) || endingOf(file) == kProjectEnding) return {};
  return "neither a command nor a project file: " + file;
}

/// The program's arguments: what they are called, what they mean, where they go.
class Arguments {
public:
  Arguments() {
    app_.set_help_flag("-h,--help", "Show this help");
    app_.set_version_flag("--version", "tankwright " TANKWRIGHT_VERSION);
    app_.require_subcommand(0, 1);
    app_.add_option("PROJECT", window_project_, "Project file to open in the window")->check(faultOfProject);
    addCommon(app_);
    addCheck();
    addPlan();
    addExport();
    addBatch();
    app_.footer(
        "Exit code: 0 done, 1 the input has problems (listed on the standard error stream), 2 wrong use.");
  }

  tl::expected<Request, int> read(int argc, const char* const* argv) {
    try {
      app_.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
      return tl::unexpected(told(error));
    }
    if (!units_.empty())
      request_.units = units_ == kFeet ? ui::UnitSystem::feet_inches : ui::UnitSystem::metric;
    request_.on_letter = paper_ == kLetter;
    if (request_.command == Command::window) request_.project = window_project_;
    return request_;
  }

private:
  void addCommon(CLI::App& command) {
    command.add_option("--units", units_, "metric or feet")->type_name("UNITS")->check(faultOfUnits);
    command.add_option("--language", request_.language, "Language and digits, such as en, es or ne_NP")
        ->type_name("NAME")
        ->check(faultOfLanguage);
  }

  void addSheets(CLI::App& command) {
    command
        .add_option("--pages", request_.pages,
                    "Codes of the sheets wanted in the PDF, such as F1,M1,M5; all unless said")
        ->type_name("CODES")
        ->delimiter(',');
    command.add_option("--paper", paper_, "a4 or letter")->type_name("PAPER")->check(faultOfPaper);
  }

  CLI::App* add(Command command, const char* name, const char* meaning) {
    CLI::App* sub = app_.add_subcommand(name, meaning);
    sub->add_option("PROJECT", request_.project, "Project file")->required();
    addCommon(*sub);
    sub->callback([this, command] { request_.command = command; });
    return sub;
  }

  void addCheck() { add(Command::check, "check", "List what is wrong with a project file"); }

  void addPlan() {
    CLI::App* sub = add(Command::plan, "plan", "Plan the tank and print the results");
    sub->add_flag("--json", request_.json, "Print one JSON object and nothing else");
    sub->add_option("--out", request_.folder,
                    "Also write plan.json, plan.csv and sheets.pdf into this folder")
        ->type_name("DIR");
    addSheets(*sub);
  }

  void addExport() {
    CLI::App* sub =
        add(Command::write, "export", "Write sheets, tables, meshes or a picture, by the file's ending");
    sub->add_option("--to", request_.target,
                    "File ending in " + ui::exportEndings().join(QStringLiteral(", ")).toStdString())
        ->type_name("FILE")
        ->required()
        ->check(faultOfTarget);
    addSheets(*sub);
  }

  void addBatch() {
    CLI::App* sub = app_.add_subcommand("batch", "Plan many sites from one table and write their results");
    sub->add_option("SITES", request_.sites,
                    "Table (CSV): a row a site, a column a field of the project file")
        ->required();
    sub->add_option("--template", request_.project, "Project that every row changes")
        ->type_name("PROJECT")
        ->required();
    sub->add_option("--out", request_.target, "Table of results to write (CSV)")
        ->type_name("FILE")
        ->required();
    constexpr unsigned kMostJobs = 64;
    sub->add_option("--jobs", request_.jobs,
                    "Sites planned side by side; as many as there are cores unless said")
        ->type_name("N")
        ->check(CLI::Range(1U, kMostJobs));
    addCommon(*sub);
    sub->callback([this] { request_.command = Command::batch; });
  }

  /// Prints help, version or the mistake. @return the exit code
  int told(const CLI::ParseError& error) {
    std::ostringstream out, err;
    const bool is_mistake = app_.exit(error, out, err) != 0;
    if (!is_mistake) return printOut(out.str()) ? kDone : kInputHasProblems;
    printError(err.str());
    return kWrongUse;
  }

  CLI::App app_{"Plans small hand-dug farm water tanks lined with soil-cement plaster.", "tankwright"};
  Request request_;
  std::string window_project_;
  std::string units_;
  std::string paper_;
};

}  // namespace

QString endingOf(const std::string& file) {
  return QString::fromStdString(fs::path(file).extension().string()).toLower();
}

tl::expected<Request, int> readCommandLine(int argc, const char* const* argv) {
  return Arguments().read(argc, argv);
}

}  // namespace app
