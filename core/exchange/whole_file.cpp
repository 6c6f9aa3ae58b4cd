#include "core/exchange/project_file.h"

#include <cerrno>
#include <string>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::exchange {
namespace {

namespace fs = std::filesystem;

/// An open file, closed at the end of its life.
class Descriptor {
public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  int number() const { return number_; }
  bool isOpen() const { return number_ >= 0; }
  /// Closes now. @return false when the system could not keep the data (errno says why)
  bool close() { return ::close(std::exchange(number_, -1)) == 0; }

private:
  int number_;
};

/// Runs a step of writing; 0 or the system's reason.
using Reason = int;
constexpr Reason kDone = 0;

Reason writeAll(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t count = ::write(file, bytes.data(), bytes.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(count));
  }
  return kDone;
}

/// The file behind a chain of symbolic links, there or not.
fs::path targetOf(fs::path file) {
  constexpr int kMostLinks = 40;  // as many as the kernel follows
  std::error_code error;
  for (int k = 0; k < kMostLinks && fs::is_symlink(fs::symlink_status(file, error)); ++k) {
    const fs::path next = fs::read_symlink(file, error);
    if (error) break;
    file = next.is_absolute() ? next : file.parent_path() / next;
  }
  return file;
}

fs::path folderOf(const fs::path& file) {
  return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

void flushFolder(const fs::path& folder) {
  const Descriptor open(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (open.isOpen()) ::fsync(open.number());
}

/// A device or a pipe has no old content to guard.
Reason writeStraight(const fs::path& file, std::string_view bytes) {
  Descriptor open(::open(file.c_str(), O_WRONLY | O_CLOEXEC));
  if (!open.isOpen()) return errno;
  const Reason reason = writeAll(open.number(), bytes);
  return reason != kDone || open.close() ? reason : errno;
}

/// A new file in `folder`, readable as the user's mask allows; its name comes back in `name`.
int openTemporary(const fs::path& folder, fs::path& name) {
  constexpr int kMostTries = 1000;
  for (int k = 0; k < kMostTries; ++k) {
    name = folder / fmt::format(".tankwright-{}-{}.tmp", ::getpid(), k);
    const int file = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0644);
    if (file >= 0 || errno != EEXIST) return file;
  }
  return -1;
}

/// @param mode permission bits of the old file, or nothing
Reason fill(Descriptor& file, std::string_view bytes, const mode_t* mode) {
  if (mode && ::fchmod(file.number(), *mode) != 0) return errno;
  if (const Reason reason = writeAll(file.number(), bytes); reason != kDone) return reason;
  if (::fsync(file.number()) != 0) return errno;
  return file.close() ? kDone : errno;
}

Reason replace(const fs::path& file, std::string_view bytes, const mode_t* mode) {
  fs::path temporary;
  Descriptor open(openTemporary(folderOf(file), temporary));
  if (!open.isOpen()) return errno;
  Reason reason = fill(open, bytes, mode);
  if (reason == kDone && ::rename(temporary.c_str(), file.c_str()) != 0) reason = errno;
  if (reason != kDone) {
    ::unlink(temporary.c_str());
    return reason;
  }
  flushFolder(folderOf(file));
  return kDone;
}

Reason writeTo(const fs::path& file, std::string_view bytes) {
  struct stat old {};
  if (::stat(file.c_str(), &old) != 0) return errno == ENOENT ? replace(file, bytes, nullptr) : errno;
  if (S_ISDIR(old.st_mode)) return EISDIR;
  if (!S_ISREG(old.st_mode)) return writeStraight(file, bytes);
  if (::faccessat(AT_FDCWD, file.c_str(), W_OK, AT_EACCESS) != 0) return errno;
  const mode_t mode = old.st_mode & 07777;
  return replace(file, bytes, &mode);
}

}  // namespace

Problems writeWhole(const fs::path& file, std::string_view bytes) {
  const Reason reason = writeTo(targetOf(file), bytes);
  if (reason == kDone) return {};
  Problem problem;
  problem.code = "cannot_write";
  problem.path = file.string();
  problem.value = std::generic_category().message(reason);
  return {problem};
}

}  // namespace core::exchange
