#pragma once

#include <string_view>

namespace app {

/// Fills descriptors 0 to 2 that the shell left closed, so that no file of ours takes their numbers; writing
/// to them fails still.
void guardStandardStreams();

/// Writes to the standard output stream. @return false when it is closed or full; that is told on the
/// standard error stream
bool printOut(std::string_view text);

/// Writes to the standard error stream, as far as it goes.
void printError(std::string_view text);

}  // namespace app
