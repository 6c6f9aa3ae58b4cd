// Runs the built program as a child process without a display.
#include "core/exchange/short_form.h"
#include "tests/support/program.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;
using support::bytesOf;
using support::Output;
using support::put;
using support::Ran;
using support::run;
using support::TemporaryFolder;
using Words = std::vector<std::string>;

const std::string kDemo = std::string(TANKWRIGHT_SOURCE_DIR) + "/resources/demo/terrace.tankwright";

json demo() {
  return json::parse(bytesOf(kDemo));
}

std::string written(const TemporaryFolder& folder, const json& project) {
  const auto file = folder.file("project.tankwright");
  put(file, project.dump());
  return file.string();
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

void checkHas(const json& object, const std::vector<std::string>& keys) {
  for (const std::string& key : keys) {
    INFO(key);
    CHECK(object.contains(key));
  }
}

}  // namespace

TEST_CASE("version and help are printed and nothing is wrong") {
  const Ran version = run({"--version"});
  CHECK(version.code == 0);
  CHECK(version.out.rfind("tankwright 0.", 0) == 0);
  for (const Words& words : {Words{"--help"}, Words{"plan", "--help"}}) {
    const Ran help = run(words);
    CHECK(help.code == 0);
    CHECK(contains(help.out, "PROJECT"));
    CHECK(help.err.empty());
  }
}

TEST_CASE("wrong use is told on the error stream, ends with 2 and writes nothing") {
  const TemporaryFolder folder;
  const auto target = [&](const char* name) { return folder.file(name).string(); };
  const std::vector<Words> wrong{
      {"frobnicate"},
      {"frobnicate", kDemo},
      {"check"},
      {"plan"},
      {"plan", "--json"},
      {"export"},
      {"export", kDemo},
      {"export", kDemo, "--to"},
      {"export", "--to", target("a.pdf")},
      {"batch", kDemo, "--template", kDemo},
      {"export", kDemo, "--to", target("a.doc")},
      {"export", kDemo, "--to", target("pdf")},
      {"export", kDemo, "--to", target("a.pdf"), "--colour"},
      {"check", kDemo, kDemo},
      {"check", kDemo, "plan", kDemo},
      {"plan", kDemo, "--units", "cubits"},
      {"plan", kDemo, "--language", "qqq"},
      {"--no-such-option"},
  };
  for (const Words& words : wrong) {
    std::string line;
    for (const std::string& word : words) line += word + ' ';
    INFO(line);
    const Ran ran = run(words);
    CHECK(ran.code == 2);
    CHECK(ran.out.empty());
    CHECK_FALSE(ran.err.empty());
  }
  CHECK(folder.count() == 0);
}

TEST_CASE("a design in short form is taken where a project file is, and refused when it was copied wrongly") {
  const support::TemporaryFolder folder;
  const std::string typed = folder.file("typed.txt").string();
  core::Project project;
  project.tank.length_m = 7.25;
  const std::string text = core::exchange::shortForm(project);
  put(typed, text + "\n");
  CHECK(run({"check", typed}).code == 0);
  const Ran planned = run({"plan", typed, "--json"});
  REQUIRE(planned.code == 0);
  CHECK(contains(planned.out, "7.25"));
  const std::string file = folder.file("a.ics").string();
  CHECK(run({"export", typed, "--to", file}).code == 0);
  CHECK(bytesOf(file).starts_with("BEGIN:VCALENDAR\r\n"));
  std::string wrong = text;
  wrong.replace(wrong.find("7.25"), 4, "7.52");
  put(typed, wrong);
  const Ran refused = run({"check", typed});
  CHECK(refused.code == 1);
  CHECK(contains(refused.err, "The design on one line was not copied as it stands"));
}

TEST_CASE("export writes a calendar file") {
  const support::TemporaryFolder folder;
  const std::string file = folder.file("a.ics").string();
  REQUIRE(run({"export", kDemo, "--to", file}).code == 0);
  const std::string text = support::bytesOf(file);
  CHECK(text.starts_with("BEGIN:VCALENDAR\r\n"));
  CHECK(contains(text, "SUMMARY:Place coat 1"));
}

TEST_CASE("batch plans a row a site, and says which rows cannot be planned") {
  const support::TemporaryFolder folder;
  const std::string sites = folder.file("sites.csv").string();
  const std::string results = folder.file("results.csv").string();
  support::put(sites, "id,tank.length_m,tank.dead_depth_m\nnorth,6,0.2\nthin,6,1.9\nsouth,5,\n");
  const Ran ran = run({"batch", sites, "--template", kDemo, "--out", results, "--jobs", "2"});
  CHECK(ran.code == 1);  // one of them has problems
  const std::string text = support::bytesOf(results);
  CHECK(contains(text, "\r\nnorth,,"));
  CHECK(contains(text, "\r\nthin,"));
  CHECK_FALSE(contains(text, "\r\nthin,,"));
  CHECK(contains(text, "\r\nsouth,,"));
  support::put(sites, "id,tank.longness_m\nnorth,6\n");
  const Ran refused = run({"batch", sites, "--template", kDemo, "--out", results});
  CHECK(refused.code == 1);
  CHECK(contains(refused.err, "tank.longness_m"));
  CHECK(run({"batch", sites, "--out", results}).code == 2);
  CHECK(support::bytesOf(results) == text);
}

TEST_CASE("every example project has no problems") {
  int count = 0;
  for (const auto& entry :
       std::filesystem::directory_iterator(std::string(TANKWRIGHT_SOURCE_DIR) + "/resources/demo")) {
    INFO(entry.path().string());
    const Ran ran = run({"check", entry.path().string()});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK(contains(ran.out, "no problems found"));
    ++count;
  }
  CHECK(count >= 1);
}

TEST_CASE("each problem of a project is listed with path, value and allowed range") {
  const TemporaryFolder folder;
  json project = demo();
  project["tank"]["depth_m"] = 9;
  project["tank"]["shape"] = "star";
  project["lining"]["coats"][1]["cement"] = -2;
  project["lining"]["waste_percent"] = "much";
  const std::string file = written(folder, project);
  for (const Words& words : {Words{"check", file}, Words{"plan", file}, Words{"plan", file, "--json"},
                             Words{"export", file, "--to", folder.file("a.csv").string()}}) {
    const Ran ran = run(words);
    INFO(words[0] << "\n" << ran.err);
    CHECK(ran.code == 1);
    CHECK(ran.out.empty());
    CHECK(contains(
        ran.err,
        "(tank.depth_m) is outside the allowed range: found 9; allowed 0.30\u00a0m to 4.00\u00a0m."));
    CHECK(contains(
        ran.err,
        "(tank.shape) is not one of the choices: found \"star\"; allowed rectangle, round or polygon."));
    CHECK(contains(ran.err, "(lining.coats[1].cement) is outside the allowed range: found -2"));
    CHECK(contains(ran.err, "(lining.waste_percent) is of the wrong kind: found \"much\"; allowed a number"));
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 4);
  }
  CHECK(folder.count() == 1);
}

TEST_CASE("a file that is not there, a folder and a file that is no project are problems of the input") {
  const TemporaryFolder folder;
  put(folder.file("empty.tankwright"), "");
  put(folder.file("binary.tankwright"), std::string("\xff\xfe\0\x01", 4));
  put(folder.file("other.tankwright"), R"({"format":"something-else","version":1})");
  put(folder.file("later.tankwright"), R"({"format":"tankwright-project","version":7})");
  for (const char* name : {"nowhere.tankwright", "", "empty.tankwright", "binary.tankwright",
                           "other.tankwright", "later.tankwright"}) {
    INFO(name);
    const Ran ran = run({"check", folder.file(name).string()});
    CHECK(ran.code == 1);
    CHECK(ran.out.empty());
    CHECK(ran.err.rfind("problem: ", 0) == 0);
  }
}

TEST_CASE("an unknown key is noted and does no harm") {
  const TemporaryFolder folder;
  json project = demo();
  project["tank"]["colour"] = "green";
  const Ran ran = run({"check", written(folder, project)});
  CHECK(ran.code == 0);
  CHECK(ran.err.rfind("note: ", 0) == 0);
  CHECK(contains(ran.err, "tank.colour"));
}

TEST_CASE("plan --json prints one object with the agreed keys and nothing else") {
  const Ran ran = run({"plan", kDemo, "--json"});
  REQUIRE(ran.code == 0);
  CHECK(ran.err.empty());
  const json plan = json::parse(ran.out);
  CHECK(plan["format"] == "tankwright-plan");
  CHECK(plan["version"] == 1);
  checkHas(plan, {"format", "version", "tank", "earthwork", "layers", "materials", "batches", "labour",
                  "schedule", "findings", "site", "water", "delivery", "cost", "ranges", "options"});
  checkHas(plan["tank"], {"brim_volume_m3", "full_volume_m3", "usable_volume_m3", "full_surface_m2",
                          "floor_m2", "wall_m2", "rim_length_m", "brim_area_m2"});
  checkHas(plan["earthwork"], {"pit_volume_m3", "pit_top_length_m", "pit_top_width_m", "pit_depth_m",
                               "bench_cut_m3", "bench_fill_m3", "spoil_loose_m3"});
  for (const json& layer : plan["layers"]) checkHas(layer, {"id", "volume_m3", "area_m2"});
  for (const json& material : plan["materials"]) checkHas(material, {"id", "net", "order", "unit"});
  for (const json& batch : plan["batches"]) {
    checkHas(batch, {"coat", "soil_m3", "sand_m3", "cement_kg", "yield_m3", "covers_m2", "count"});
  }
  for (const json& labour : plan["labour"]) checkHas(labour, {"task", "days", "skill"});
  for (const json& task : plan["schedule"]) checkHas(task, {"id", "start", "finish", "days", "crew"});
  for (const json& finding : plan["findings"]) checkHas(finding, {"code", "severity", "values"});
}

TEST_CASE("the same project gives the same bytes whatever language and units people read") {
  const std::string once = run({"plan", kDemo, "--json"}).out;
  CHECK(run({"plan", kDemo, "--json"}).out == once);
  CHECK(run({"plan", "--json", kDemo, "--units", "feet", "--language", "ne_NP"}).out == once);
}

// A tank 5 x 3 x 1.5 m with upright walls holds 22,500 L: common practice, no source, and 5 * 3 * 1.5 = 22.5
// m3.
TEST_CASE("the summary says what an upright tank of 5 by 3 by 1.5 m holds") {
  const TemporaryFolder folder;
  json project = demo();
  project["tank"]["length_m"] = 5;
  project["tank"]["width_m"] = 3;
  project["tank"]["depth_m"] = 1.5;
  project["tank"]["batter"] = 0;
  project["lining"]["cove_radius_m"] = 0;
  const std::string file = written(folder, project);
  const Ran metric = run({"plan", file});
  REQUIRE(metric.code == 0);
  CHECK(contains(metric.out, "22,500\u00a0L"));
  CHECK(contains(metric.out, "5.00\u00a0m x 3.00\u00a0m"));
  CHECK(contains(metric.out, "clear depth, floor to rim"));
  CHECK(contains(metric.out, "pit depth below the ground"));
  const Ran feet = run({"plan", file, "--units", "feet"});
  CHECK(contains(feet.out, "22,500\u00a0L"));
  CHECK(contains(feet.out, "16'\u00a04\u00a03/4\" x 9'\u00a010\u00a01/8\"") ==
        false);                                                       // quarters only above a foot
  CHECK(contains(feet.out, "16'\u00a04\u00a03/4\" x 9'\u00a010\""));  // 196.85 in, 118.11 in
}

TEST_CASE("digits of the language asked for stand in the summary") {
  CHECK(contains(run({"plan", kDemo, "--language", "ne_NP"}).out, "१.४५"));
}

TEST_CASE("plan --out writes the plan's files into a new folder") {
  const TemporaryFolder folder;
  const auto out = folder.file("new/inner");
  const Ran ran = run({"plan", kDemo, "--json", "--out", out.string()});
  REQUIRE(ran.code == 0);
  CHECK(bytesOf(out / "plan.json") == ran.out);
  CHECK(bytesOf(out / "plan.csv").rfind("section,item,value,unit", 0) == 0);
  CHECK(bytesOf(out / "sheets.pdf").rfind("%PDF-1.", 0) == 0);
  CHECK(std::distance(std::filesystem::directory_iterator(out), {}) == 3);
}

TEST_CASE("every kind of file is written without a display") {
  const TemporaryFolder folder;
  const auto exported = [&](const char* name) {
    const Ran ran = run({"export", kDemo, "--to", folder.file(name).string()});
    INFO(name << " " << ran.err);
    CHECK(ran.code == 0);
    CHECK(ran.out.empty());
    CHECK(ran.err.empty());
    return bytesOf(folder.file(name));
  };
  const std::string pdf = exported("a.PDF");
  CHECK(pdf.rfind("%PDF-1.", 0) == 0);  // ISO 32000-1, 7.5.2
  CHECK(contains(pdf, "%%EOF"));
  CHECK(exported("a.png").rfind("\x89PNG\r\n\x1a\n", 0) == 0);  // ISO/IEC 15948, 5.2
  CHECK(exported("a.glb").rfind("glTF", 0) == 0);               // glTF 2.0, 4.4.2
  CHECK(contains(exported("a.svg").substr(0, 400), "<svg"));
  CHECK(exported("a.csv").rfind("section,item,value,unit\r\n", 0) == 0);  // RFC 4180, 2.1
  const std::string stl = exported("a.stl");
  REQUIRE(stl.size() > 84);
  std::uint32_t triangles = 0;
  std::memcpy(&triangles, stl.data() + 80, sizeof triangles);
  CHECK(triangles > 0);
  CHECK(stl.size() == 84 + 50 * std::size_t(triangles));
  CHECK(folder.count() == 6);
}

TEST_CASE("an output stream that is full or closed is told and ends with 1") {
  for (const Output output : {Output::full, Output::closed}) {
    for (const Words& words :
         {Words{"check", kDemo}, Words{"plan", kDemo}, Words{"plan", kDemo, "--json"}, Words{"--version"}}) {
      const Ran ran = run(words, output);
      CHECK(ran.code == 1);
      CHECK(contains(ran.err, "standard output cannot be written"));
    }
  }
}

TEST_CASE("a closed output stream spoils no file that is written") {
  const TemporaryFolder folder;
  const std::string target = folder.file("a.csv").string();
  CHECK(run({"export", kDemo, "--to", target}, Output::closed).code == 0);
  CHECK(bytesOf(target).rfind("section,", 0) == 0);
}

TEST_CASE("a target that cannot be written is told with the reason and nothing is left behind") {
  const TemporaryFolder folder;
  put(folder.file("file"), "in the way");
  for (const char* ending : {"pdf", "csv", "stl", "glb", "svg", "png"}) {
    for (const std::string& place : {std::string("file/a."), std::string("no/such/folder/a.")}) {
      const Ran ran = run({"export", kDemo, "--to", folder.file(place + ending).string()});
      INFO(place << ending << " " << ran.err);
      CHECK(ran.code == 1);
      CHECK(ran.out.empty());
      CHECK(ran.err.rfind("problem: " + folder.file(place + ending).string(), 0) == 0);
      CHECK((contains(ran.err, "No such file") || contains(ran.err, "Not a directory")));
    }
  }
  CHECK(run({"plan", kDemo, "--out", folder.file("file").string()}).code == 1);
  CHECK(bytesOf(folder.file("file")) == "in the way");
  CHECK(folder.count() == 1);
}

TEST_CASE("a full device is told for each kind of file") {
  const TemporaryFolder folder;
  for (const char* ending : {"csv", "glb", "pdf", "png"}) {
    const auto link = folder.file(std::string("full.") + ending);
    std::filesystem::create_symlink("/dev/full", link);
    const Ran ran = run({"export", kDemo, "--to", link.string()});
    INFO(ending << " " << ran.err);
    CHECK(ran.code == 1);
    CHECK(contains(ran.err, "No space left on device"));
  }
}

TEST_CASE("an older file stays whole when the project cannot be planned") {
  const TemporaryFolder folder;
  json project = demo();
  project["tank"]["freeboard_m"] = 1;
  project["tank"]["depth_m"] = 0.9;
  put(folder.file("a.pdf"), "older");
  const Ran ran = run({"export", written(folder, project), "--to", folder.file("a.pdf").string()});
  CHECK(ran.code == 1);
  CHECK(contains(ran.err, "tank.freeboard_m"));
  CHECK(bytesOf(folder.file("a.pdf")) == "older");
}

TEST_CASE("a language without a translation is said, and the texts are in English") {
  const Ran ran = run({"plan", kDemo, "--language", "is_IS"});
  CHECK(ran.code == 0);
  CHECK(contains(ran.err, "no translation for is_IS"));
  CHECK(contains(ran.out, "Holds"));
}
