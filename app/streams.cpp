#include "app/streams.h"

#include <cerrno>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace app {
namespace {

constexpr int kLastStandardStream = STDERR_FILENO;

/// 0, or the system's reason.
int writeAll(int file, std::string_view text) {
  while (!text.empty()) {
    const ssize_t count = ::write(file, text.data(), text.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(count));
  }
  return 0;
}

}  // namespace

void guardStandardStreams() {
  int file = ::open("/dev/null", O_RDONLY);
  while (file >= 0 && file < kLastStandardStream) file = ::open("/dev/null", O_RDONLY);
  if (file > kLastStandardStream) ::close(file);
}

bool printOut(std::string_view text) {
  const int reason = writeAll(STDOUT_FILENO, text);
  if (reason == 0) return true;
  printError("problem: standard output cannot be written: " + std::generic_category().message(reason) + "\n");
  return false;
}

void printError(std::string_view text) {
  writeAll(STDERR_FILENO, text);
}

}  // namespace app
