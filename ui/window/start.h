#pragma once

#include <QString>

namespace ui {

/// Opens the window and runs it until it is closed. @param file project to open; empty opens the example
/// @return the program's exit code
int runWindow(int& argc, char** argv, const QString& file);

}  // namespace ui
