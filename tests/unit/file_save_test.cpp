#include "core/exchange/project_file.h"
#include "tests/support/random_project.h"
#include "tests/support/temporary_folder.h"

#include <chrono>
#include <csignal>
#include <filesystem>
#include <functional>
#include <string>

#include <catch2/catch.hpp>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using core::exchange::readProject;
using core::exchange::writeProject;
using core::exchange::writeWhole;

constexpr int kNobody = 65534;  // a user without rights, by common use

/// A project whose file is large enough that writing it takes a while.
core::Project largeProject(std::uint64_t seed, std::size_t points) {
  core::Project project = support::randomProject(seed, core::Shape::rectangle);
  project.site.ground.kind = core::GroundKind::spot_heights;
  support::Random random(seed);
  project.site.ground.points_m.clear();
  for (std::size_t k = 0; k < points; ++k) {
    project.site.ground.points_m.emplace_back(random.between(-20, 20), random.between(-20, 20),
                                              random.between(0, 5));
  }
  return project;
}

/// Runs `work` in a child process. @return its exit code
int inChild(const std::function<int()>& work) {
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) ::_exit(work());
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

[[noreturn]] void saveForEver(const fs::path& file, const std::string& one, const std::string& other) {
  for (;;) {
    writeWhole(file, one);
    writeWhole(file, other);
  }
}

/// 0 when the save is refused as it should be; run in a child process.
int refusedWith(const fs::path& file, const std::string& bytes) {
  const core::Problems problems = writeWhole(file, bytes);
  if (problems.size() != 1) return 1;
  const core::Problem& problem = problems.front();
  if (problem.code != "cannot_write" || problem.path != file.string() || problem.value.empty()) return 2;
  return 0;
}

mode_t permissionsOf(const fs::path& file) {
  struct stat status {};
  REQUIRE(::stat(file.c_str(), &status) == 0);
  return status.st_mode & 07777;
}

}  // namespace

TEST_CASE("what is written is read") {
  const support::TemporaryFolder folder;
  const fs::path file = folder.file("a.tankwright");
  for (std::uint64_t seed = 0; seed < 6; ++seed) {
    const core::Project project = support::randomProject(seed);
    REQUIRE(writeProject(file, project).empty());
    const auto read = readProject(file);
    REQUIRE(read.has_value());
    CHECK(read->project == project);
  }
  CHECK(folder.count() == 1);
}

TEST_CASE("a save that is killed 200 times leaves the old or the new file whole") {
  constexpr int kKills = 200;
  const support::TemporaryFolder folder;
  const fs::path file = folder.file("field.tankwright");
  const std::string one = core::exchange::projectText(largeProject(1, 4000));
  const std::string other = core::exchange::projectText(largeProject(2, 5000));
  // moments over some saves, however long one takes here
  const auto begin = std::chrono::steady_clock::now();
  REQUIRE(writeWhole(file, other).empty());
  REQUIRE(writeWhole(file, one).empty());
  const auto two_saves = std::chrono::steady_clock::now() - begin;
  const int most_wait_us =
      static_cast<int>(std::chrono::duration_cast<std::chrono::microseconds>(2 * two_saves).count());
  support::Random random(2027);
  int seen_one = 0;
  int seen_other = 0;
  for (int k = 0; k < kKills; ++k) {
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) saveForEver(file, one, other);
    ::usleep(static_cast<useconds_t>(random.whole(0, most_wait_us)));  // the moment of the kill
    REQUIRE(::kill(child, SIGKILL) == 0);
    REQUIRE(::waitpid(child, nullptr, 0) == child);
    const std::string found = support::bytesOf(file);
    REQUIRE((found == one || found == other));
    ++(found == one ? seen_one : seen_other);
  }
  CHECK(seen_one > 0);
  CHECK(seen_other > 0);
  CHECK(readProject(file).has_value());
}

TEST_CASE("a save into a folder that may not be written is refused and the old file stays") {
  const support::TemporaryFolder folder;
  const fs::path file = folder.file("old.tankwright");
  support::put(file, "old");
  ::chmod(folder.path().c_str(), 0555);
  const int refused = inChild([&] {
    if (::geteuid() == 0 && ::setuid(kNobody) != 0) return 9;  // permission bits do not bind the superuser
    ::chmod(file.c_str(), 0666);
    return refusedWith(file, "new") + 10 * refusedWith(folder.file("fresh.tankwright"), "new");
  });
  ::chmod(folder.path().c_str(), 0755);
  CHECK(refused == 0);
  CHECK(support::bytesOf(file) == "old");
  CHECK(folder.count() == 1);
}

TEST_CASE("a save over a file that is write-protected is refused") {
  const support::TemporaryFolder folder;
  const fs::path file = folder.file("old.tankwright");
  support::put(file, "old");
  ::chmod(folder.path().c_str(), 0777);
  ::chmod(file.c_str(), 0444);
  const int refused = inChild([&] {
    if (::geteuid() == 0 && ::setuid(kNobody) != 0) return 9;
    return refusedWith(file, "new");
  });
  CHECK(refused == 0);
  CHECK(support::bytesOf(file) == "old");
  CHECK(folder.count() == 1);
}

TEST_CASE("a save where there is no folder, through a file or onto a folder is refused") {
  const support::TemporaryFolder folder;
  support::put(folder.file("plain"), "old");
  fs::create_directory(folder.file("folder"));
  CHECK(refusedWith(folder.file("absent/x.tankwright"), "new") == 0);
  CHECK(refusedWith(folder.file("plain/x.tankwright"), "new") == 0);
  CHECK(refusedWith(folder.file("folder"), "new") == 0);
  CHECK(refusedWith(folder.file(std::string(300, 'x')), "new") == 0);
  CHECK(support::bytesOf(folder.file("plain")) == "old");
  CHECK(folder.count() == 2);
}

TEST_CASE("a save beyond the largest file allowed is refused and the old file stays") {
  const support::TemporaryFolder folder;
  const fs::path file = folder.file("old.tankwright");
  support::put(file, "old");
  const int refused = inChild([&] {
    ::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{4096, 4096};
    if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return 9;
    return refusedWith(file, std::string(100000, 'x'));
  });
  CHECK(refused == 0);
  CHECK(support::bytesOf(file) == "old");
  CHECK(folder.count() == 1);
}

TEST_CASE("a save onto a full disk is refused and the old file stays") {
  const support::TemporaryFolder folder;
  if (::mount("tmpfs", folder.path().c_str(), "tmpfs", 0, "size=64k") != 0) {
    WARN("no right to mount a small disk; the limit on file size stands for it");
    return;
  }
  const fs::path file = folder.file("old.tankwright");
  support::put(file, "old");
  const core::Problems problems = writeWhole(file, std::string(200000, 'x'));
  const std::string kept = support::bytesOf(file);
  const std::size_t files = folder.count();
  const bool fits = writeWhole(file, "new").empty();
  const std::string after = support::bytesOf(file);
  REQUIRE(::umount(folder.path().c_str()) == 0);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].code == "cannot_write");
  CHECK(problems[0].value == std::generic_category().message(ENOSPC));
  CHECK(kept == "old");
  CHECK(files == 1);
  CHECK(fits);
  CHECK(after == "new");
}

TEST_CASE("a save keeps the permissions of the old file and gives a new one those of the user's mask") {
  const support::TemporaryFolder folder;
  const fs::path file = folder.file("old.tankwright");
  support::put(file, "old");
  ::chmod(file.c_str(), 0640);
  REQUIRE(writeWhole(file, "new").empty());
  CHECK(permissionsOf(file) == 0640);
  const mode_t mask = ::umask(027);
  REQUIRE(writeWhole(folder.file("fresh"), "new").empty());
  ::umask(mask);
  CHECK(permissionsOf(folder.file("fresh")) == (0644 & ~027U));
}

TEST_CASE("a save through a link replaces the file it leads to, not the link") {
  const support::TemporaryFolder folder;
  fs::create_directory(folder.file("below"));
  support::put(folder.file("below/real"), "old");
  fs::create_symlink("below/real", folder.file("one"));
  fs::create_symlink(folder.file("one"), folder.file("two"));
  fs::create_symlink("below/fresh", folder.file("dangling"));
  REQUIRE(writeWhole(folder.file("two"), "new").empty());
  REQUIRE(writeWhole(folder.file("dangling"), "new").empty());
  CHECK(fs::is_symlink(folder.file("two")));
  CHECK(fs::is_symlink(folder.file("one")));
  CHECK(fs::is_symlink(folder.file("dangling")));
  CHECK(support::bytesOf(folder.file("below/real")) == "new");
  CHECK(support::bytesOf(folder.file("below/fresh")) == "new");
  fs::create_symlink("ring_b", folder.file("ring_a"));
  fs::create_symlink("ring_a", folder.file("ring_b"));
  CHECK(refusedWith(folder.file("ring_a"), "new") == 0);
}

TEST_CASE("a device is written to, not replaced") {
  REQUIRE(writeWhole("/dev/null", "new").empty());
  CHECK(fs::is_character_file("/dev/null"));
}

TEST_CASE("a file in the working folder is written by its bare name") {
  const support::TemporaryFolder folder;
  const fs::path before = fs::current_path();
  fs::current_path(folder.path());
  const core::Problems problems = writeWhole("bare.tankwright", "new");
  fs::current_path(before);
  CHECK(problems.empty());
  CHECK(support::bytesOf(folder.file("bare.tankwright")) == "new");
}
