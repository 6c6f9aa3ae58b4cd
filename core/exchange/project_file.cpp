#include "core/exchange/project_file.h"

#include "core/exchange/json_reader.h"

#include <array>
#include <cerrno>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace core::exchange {
namespace {

/// Appends the rest of an open file, at most one byte beyond the largest project. 0 or the system's reason.
int readRest(int file, std::string& text) {
  std::array<char, 65536> block;
  while (text.size() <= kMostBytes) {
    const ssize_t count = ::read(file, block.data(), block.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return errno;
    if (count == 0) return 0;
    text.append(block.data(), static_cast<std::size_t>(count));
  }
  return 0;
}

tl::expected<std::string, int> textOf(const std::filesystem::path& file) {
  const int open = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (open < 0) return tl::unexpected(errno);
  std::string text;
  const int reason = readRest(open, text);
  ::close(open);
  if (reason != 0) return tl::unexpected(reason);
  return text;
}

}  // namespace

tl::expected<ReadProject, Problems> readProject(const std::filesystem::path& file) {
  const auto text = textOf(file);
  if (text) return parseProject(*text);
  Problem problem;
  problem.code = "cannot_read";
  problem.path = file.string();
  problem.value = std::generic_category().message(text.error());
  return tl::unexpected(Problems{problem});
}

Problems writeProject(const std::filesystem::path& file, const Project& project) {
  return writeWhole(file, projectText(project));
}

}  // namespace core::exchange
