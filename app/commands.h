#pragma once

#include "app/command_line.h"

namespace app {

/// Carries out every command but `window`; needs no display. @return exit code
int runCommand(const Request& request, int& argc, char** argv);

/// Opens the window and runs it until it is closed. @return exit code
int openWindow(const Request& request, int& argc, char** argv);

}  // namespace app
