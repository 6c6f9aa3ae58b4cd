#include "tests/support/program.h"

#include "tests/support/temporary_folder.h"

#include <array>
#include <stdexcept>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace support {
namespace {

/// In the child: puts a file in place of a standard stream.
void redirect(const std::string& file, int stream) {
  const int opened = ::open(file.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (opened < 0 || ::dup2(opened, stream) < 0) ::_exit(127);
  ::close(opened);
}

[[noreturn]] void become(const std::vector<std::string>& arguments, const std::string& home) {
  std::vector<std::string> words{TANKWRIGHT_PROGRAM};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  std::array<std::string, 5> variables{"LC_ALL=C", "HOME=" + home, "QT_QPA_PLATFORM=xcb", "DISPLAY=:59999",
                                       "PATH=/usr/bin:/bin"};
  std::vector<char*> environment;
  for (std::string& variable : variables) environment.push_back(variable.data());
  environment.push_back(nullptr);
  ::execve(pointers[0], pointers.data(), environment.data());
  ::_exit(127);
}

int codeOf(int status) {
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

}  // namespace

Ran run(const std::vector<std::string>& arguments, Output output) {
  const TemporaryFolder home;
  const std::string out = output == Output::full ? "/dev/full" : home.file("out").string();
  const pid_t child = ::fork();
  if (child < 0) throw std::runtime_error("cannot fork");
  if (child == 0) {
    redirect(out, STDOUT_FILENO);
    redirect(home.file("err").string(), STDERR_FILENO);
    if (output == Output::closed) ::close(STDOUT_FILENO);
    become(arguments, home.path().string());
  }
  int status = 0;
  if (::waitpid(child, &status, 0) != child) throw std::runtime_error("cannot wait");
  return {codeOf(status), output == Output::kept ? bytesOf(out) : std::string(), bytesOf(home.file("err"))};
}

}  // namespace support
