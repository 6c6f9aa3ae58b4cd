#pragma once

#include <string>
#include <vector>

namespace support {

/// What a run of the program left behind.
struct Ran {
  int code = -1;  ///< exit code; 128 plus the signal when a signal ended it
  std::string out, err;
};

enum class Output { kept, full, closed };  ///< where the standard output stream goes; full is /dev/full

/// Runs the tankwright program with a fixed small environment that names no usable display, and waits for it.
Ran run(const std::vector<std::string>& arguments, Output output = Output::kept);

}  // namespace support
