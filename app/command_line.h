#pragma once

#include "ui/text/formatter.h"

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace app {

/// What the program returns to the shell.
enum ExitCode { kDone = 0, kInputHasProblems = 1, kWrongUse = 2 };

enum class Command { window, check, plan, write, batch };

/// What was asked for on the command line.
struct Request {
  Command command = Command::window;
  std::string project;  ///< file; may be empty for the window
  std::string target;   ///< file to write
  std::string folder;   ///< folder for the plan's files, may be empty
  std::string sites;    ///< table of sites; `project` is then the template and `target` the results
  unsigned jobs = 0;    ///< sites planned side by side; 0: as many as the machine has cores
  bool json = false;
  std::optional<ui::UnitSystem> units;  ///< absent: as last set, or metric
  std::vector<std::string> pages;       ///< codes of the sheets wanted; empty: all
  bool on_letter = false;               ///< Letter paper in place of A4
  std::string language;                 ///< as "es" or "de_DE"; empty: as last set, or the system's
};

/// The request, or the exit code when there is nothing more to do: help or version were printed, or a mistake
/// in use was told on the standard error stream.
tl::expected<Request, int> readCommandLine(int argc, const char* const* argv);

/// Ending of a file's name in lower case, with its dot.
QString endingOf(const std::string& file);

}  // namespace app
