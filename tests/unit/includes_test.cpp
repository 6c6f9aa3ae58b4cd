// Walks every #include of core, ui and app and fails on an arrow that points the wrong way.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

namespace fs = std::filesystem;
using Rooms = std::map<std::string, std::set<std::string>>;

/// For each folder, the folders it may include besides itself. "core" and "app" are the files right there.
const Rooms kMayInclude{
    {"core/base", {}},
    {"core/project", {"core/base"}},
    {"core/geometry", {"core/base", "core/project"}},
    {"core/lining", {"core/base", "core/project", "core/geometry"}},
    {"core/water", {"core/base", "core/project", "core/geometry"}},
    {"core/works", {"core/base", "core/project", "core/geometry", "core/lining", "core/water"}},
    {"core/hydraulics", {"core/base", "core/project", "core/geometry", "core/water"}},
    {"core/site", {"core/base", "core/project", "core/geometry", "core/works"}},
    {"core/cost", {"core/base", "core/project", "core/geometry", "core/lining", "core/works", "core/water"}},
    {"core",
     {"core/base", "core/project", "core/geometry", "core/lining", "core/works", "core/water",
      "core/hydraulics", "core/site", "core/cost"}},
    {"core/compare",
     {"core/base", "core/project", "core/geometry", "core/lining", "core/works", "core/water",
      "core/hydraulics", "core/site", "core/cost", "core"}},
    {"core/exchange",
     {"core/base", "core/project", "core/geometry", "core/lining", "core/works", "core/water",
      "core/hydraulics", "core/site", "core/cost", "core/compare", "core"}},
    {"ui/text", {"core/*"}},
    {"ui/document", {"core/*", "ui/text"}},
    {"ui/drawings", {"core/*", "ui/text"}},
    {"ui/view3d", {"core/*", "ui/text"}},
    {"ui/handouts", {"core/*", "ui/text", "ui/drawings"}},
    {"ui/widgets", {"core/*", "ui/text", "ui/document"}},
    {"ui/panels",
     {"core/*", "ui/text", "ui/document", "ui/drawings", "ui/handouts", "ui/view3d", "ui/widgets"}},
    {"ui/group", {"core/*", "ui/text", "ui/document", "ui/view3d", "ui/widgets", "ui/panels"}},
    {"ui/window",
     {"core/*", "ui/text", "ui/document", "ui/drawings", "ui/handouts", "ui/view3d", "ui/widgets",
      "ui/panels", "ui/group"}},
    {"app", {"core/*", "ui/*"}},
};

/// Room of a path below the root: "core/base", or "core" for files that lie in core itself.
std::string roomOf(const fs::path& relative) {
  return relative.parent_path().generic_string();
}

bool allowed(const std::string& from, const std::string& to) {
  if (from == to) return true;
  const std::set<std::string>& may = kMayInclude.at(from);
  const std::string top = to.substr(0, to.find('/'));
  return may.count(to) > 0 || may.count(top + "/*") > 0;
}

std::vector<std::string> includesOf(const fs::path& file) {
  static const std::regex include(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
  std::vector<std::string> found;
  std::ifstream in(file);
  std::string line;
  std::smatch match;
  while (std::getline(in, line)) {
    if (std::regex_search(line, match, include)) found.push_back(match[1]);
  }
  return found;
}

/// What is wrong with one include of a file in `room`; empty when it is right.
std::string fault(const std::string& room, const std::string& include) {
  static const std::regex qt(R"(^(Q[A-Z]|Qt).*)");
  static const std::regex qt3d(R"(^(Qt3D.*|Q.*Qt3D.*))");
  static const std::set<std::string> clocks_and_locales{"locale", "ctime", "time.h", "iostream"};
  const bool in_core = room.rfind("core", 0) == 0;
  static const std::regex ours("^(core|ui|app|tests)/.*");
  if (std::regex_match(include, ours)) {
    const std::string to = roomOf(include);
    if (kMayInclude.count(to) == 0) return "includes unknown room " + to;
    return allowed(room, to) ? "" : "may not include " + to;
  }
  if (in_core && std::regex_match(include, qt)) return "core may not include Qt";
  if (in_core && clocks_and_locales.count(include) > 0) return "core has no clock, locale or console";
  if (room != "ui/view3d" && std::regex_match(include, qt3d)) return "Qt 3D belongs in ui/view3d";
  return "";
}

std::vector<std::string> faults(const fs::path& root) {
  std::vector<std::string> found;
  for (const char* top : {"core", "ui", "app"}) {
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
      const std::string ending = entry.path().extension().string();
      if (ending != ".h" && ending != ".cpp") continue;
      const fs::path relative = fs::relative(entry.path(), root);
      if (relative == "ui/pch.h") continue;
      const std::string room = roomOf(relative);
      if (kMayInclude.count(room) == 0) {
        found.push_back(relative.string() + ": unknown room " + room);
        continue;
      }
      for (const std::string& include : includesOf(entry.path())) {
        const std::string wrong = fault(room, include);
        if (!wrong.empty()) found.push_back(relative.string() + ": " + wrong + " (" + include + ")");
      }
    }
  }
  return found;
}

}  // namespace

TEST_CASE("every include points the way the rooms allow") {
  for (const std::string& wrong : faults(TANKWRIGHT_SOURCE_DIR)) FAIL_CHECK(wrong);
  SUCCEED();
}

TEST_CASE("a wrong arrow is seen") {
  CHECK_FALSE(fault("core/base", "core/project/project.h").empty());
  CHECK_FALSE(fault("core/geometry", "core/exchange/project_file.h").empty());
  CHECK_FALSE(fault("core/works", "QString").empty());
  CHECK_FALSE(fault("core/works", "QtCore/QString").empty());
  CHECK_FALSE(fault("core", "locale").empty());
  CHECK_FALSE(fault("ui/text", "ui/window/export.h").empty());
  CHECK_FALSE(fault("ui/panels", "Qt3DRender/QCamera").empty());
  CHECK(fault("ui/view3d", "Qt3DRender/QCamera").empty());
  CHECK(fault("core/lining", "core/geometry/mesh.h").empty());
}
