#include "core/exchange/mesh_files.h"

#include "tests/support/random_tank.h"

#include <array>
#include <bit>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <memory>
#include <regex>
#include <string>
#include <vector>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <unistd.h>

namespace {

using namespace core::geometry;
using core::Shape;
using nlohmann::json;

constexpr std::size_t kStlHeader = 84, kStlFacet = 50;

std::uint32_t number(const std::string& bytes, std::size_t at) {
  std::uint32_t value = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    value |= std::uint32_t{static_cast<unsigned char>(bytes.at(at + i))} << (8 * i);
  }
  return value;
}

Eigen::Vector3d vector(const std::string& bytes, std::size_t at) {
  Eigen::Vector3d v;
  for (std::size_t i = 0; i < 3; ++i) {
    v[static_cast<Eigen::Index>(i)] = std::bit_cast<float>(number(bytes, at + 4 * i));
  }
  return v;
}

// A file that goes when the test is over.
class TemporaryFile {
public:
  TemporaryFile(const std::string& ending, const std::string& bytes) {
    static int count = 0;
    path_ = std::filesystem::temp_directory_path() /
            ("tankwright_mesh_" + std::to_string(getpid()) + "_" + std::to_string(count++) + ending);
    std::ofstream(path_, std::ios::binary) << bytes;
  }
  ~TemporaryFile() { std::filesystem::remove(path_); }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  std::string quoted() const { return "'" + path_.string() + "'"; }

private:
  std::filesystem::path path_;
};

struct Output {
  int status;
  std::string text;
};

Output run(const std::string& command) {
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string text;
  std::array<char, 4096> block;
  for (std::size_t n; (n = fread(block.data(), 1, block.size(), pipe)) > 0;) text.append(block.data(), n);
  const int status = pclose(pipe);
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, text};
}

// The numbers after a label of admesh's report: original and final, or one alone.
std::vector<double> reported(const std::string& report, const std::string& label) {
  std::smatch found;
  if (!std::regex_search(report, found, std::regex(label + R"(\s*:\s*(-?[0-9.]+)(?:[ \t]+(-?[0-9.]+))?)")))
    return {};
  std::vector<double> numbers{std::stod(found[1])};
  if (found[2].matched) numbers.push_back(std::stod(found[2]));
  return numbers;
}

bool isLining(const Part& part) {
  return part.role == Role::stone_bed || part.role == Role::coat || part.role == Role::cove ||
         part.role == Role::rim;
}

double liningVolume(const Scene& drawn) {
  double sum = 0;
  for (const Part& part : drawn.parts) sum += isLining(part) ? volume(part.mesh) : 0;
  return sum;
}

std::size_t liningFacets(const Scene& drawn) {
  std::size_t sum = 0;
  for (const Part& part : drawn.parts) sum += isLining(part) ? part.mesh.triangles.size() : 0;
  return sum;
}

struct Drawn {
  Scene scene;
  bool cut;
};

// Pictures of random tanks of every shape, whole and cut, dry and with water.
std::vector<Drawn> drawings(int of_each) {
  support::RandomTanks tanks(1989);
  std::vector<Drawn> all;
  for (const Shape shape : {Shape::rectangle, Shape::round, Shape::polygon}) {
    for (int i = 0; i < of_each; ++i) {
      const support::TankAndLining from = tanks.next(shape);
      const TankGeometry tank(from.tank, from.lining);
      SceneOptions options;
      options.facets_per_circle = 32;
      options.water_level_m = i % 3 == 0 ? 0 : tanks.dice().between(0.1, 1) * tank.depth();
      if (i % 2 == 1) options.cut = CutPlane{{0.05, 0.1}, {tanks.dice().between(-1, 1), 1}};
      all.push_back({scene(tank, options), i % 2 == 1});
    }
  }
  return all;
}

struct Glb {
  json root;
  std::string binary;
};

// ISO/IEC 12113:2022 (glTF 2.0), GLB file format: 12-byte header, then chunks of length, type and data.
Glb parseGlb(const std::string& bytes) {
  REQUIRE(bytes.size() % 4 == 0);
  REQUIRE(number(bytes, 0) == 0x46546C67);
  REQUIRE(number(bytes, 4) == 2);
  REQUIRE(number(bytes, 8) == bytes.size());
  const std::uint32_t json_length = number(bytes, 12);
  REQUIRE(json_length % 4 == 0);
  REQUIRE(number(bytes, 16) == 0x4E4F534A);
  Glb glb{json::parse(bytes.substr(20, json_length)), {}};
  const std::size_t next = 20 + json_length;
  if (next == bytes.size()) return glb;
  REQUIRE(number(bytes, next + 4) == 0x004E4942);
  REQUIRE(number(bytes, next) % 4 == 0);
  REQUIRE(next + 8 + number(bytes, next) == bytes.size());
  glb.binary = bytes.substr(next + 8);
  return glb;
}

struct Accessor {
  json header;
  std::size_t at;
  std::size_t count;
};

Accessor accessor(const Glb& glb, const json& index, const char* type, int component, std::size_t stride) {
  const json& header = glb.root["accessors"][index.get<std::size_t>()];
  const json& view = glb.root["bufferViews"][header["bufferView"].get<std::size_t>()];
  REQUIRE(header["type"] == type);
  REQUIRE(header["componentType"] == component);
  REQUIRE(view["buffer"] == 0);
  const std::size_t at = view["byteOffset"], length = view["byteLength"], count = header["count"];
  REQUIRE(at % 4 == 0);
  REQUIRE(length == count * stride);
  REQUIRE(at + length <= glb.binary.size());
  return {header, at, count};
}

std::vector<Eigen::Vector3d> vectors(const Glb& glb, const Accessor& from) {
  std::vector<Eigen::Vector3d> all;
  for (std::size_t k = 0; k < from.count; ++k) all.push_back(vector(glb.binary, from.at + 12 * k));
  return all;
}

Eigen::Vector3d threeOf(const json& list) {
  const auto numbers = list.get<std::array<double, 3>>();
  return {numbers[0], numbers[1], numbers[2]};
}

// A mesh read back: three own vertices for each facet, z up again.
Mesh readBack(const Glb& glb, const json& primitive) {
  const Accessor positions = accessor(glb, primitive["attributes"]["POSITION"], "VEC3", 5126, 12);
  const Accessor normals = accessor(glb, primitive["attributes"]["NORMAL"], "VEC3", 5126, 12);
  const Accessor indices = accessor(glb, primitive["indices"], "SCALAR", 5125, 4);
  REQUIRE(normals.count == positions.count);
  const std::vector<Eigen::Vector3d> at = vectors(glb, positions), square = vectors(glb, normals);
  Eigen::Vector3d least = at.front(), most = at.front();
  for (const Eigen::Vector3d& p : at) {
    least = least.cwiseMin(p);
    most = most.cwiseMax(p);
  }
  REQUIRE(threeOf(positions.header["min"]) == least);
  REQUIRE(threeOf(positions.header["max"]) == most);

  Mesh mesh;
  for (const Eigen::Vector3d& p : at) mesh.points.emplace_back(p.x(), -p.z(), p.y());
  for (std::size_t k = 0; k < indices.count; k += 3) {
    std::array<std::uint32_t, 3> t;
    for (std::size_t i = 0; i < 3; ++i) t[i] = number(glb.binary, indices.at + 4 * (k + i));
    const Eigen::Vector3d twice = (at.at(t[1]) - at.at(t[0])).cross(at.at(t[2]) - at.at(t[0]));
    for (const auto v : t) {
      REQUIRE(square[v].norm() == Approx(1).epsilon(1e-5));
      // flat: each corner has its facet's own normal, unless the facet is a sliver in single precision
      if (twice.norm() > 1e-4) REQUIRE(square[v].dot(twice.normalized()) > 0.999);
    }
    mesh.triangles.push_back(t);
  }
  return mesh;
}

const char* const kValidator = "node '" TANKWRIGHT_SOURCE_DIR "/tests/support/validate_glb.mjs' ";
constexpr int kNoValidator = 3, kNoNode = 127;

}  // namespace

// Binary STL (3D Systems 1989): 80-byte header, uint32 count, then 50 bytes for each facet.
TEST_CASE("an STL file has a header that is not text, a count and 50 bytes for each facet") {
  for (const Drawn& drawn : drawings(8)) {
    const std::string bytes = core::exchange::stl(drawn.scene);
    const std::size_t facets = liningFacets(drawn.scene);
    REQUIRE(facets > 0);
    REQUIRE(bytes.size() == kStlHeader + kStlFacet * facets);
    REQUIRE(bytes.substr(0, 5) != "solid");
    REQUIRE(number(bytes, 80) == facets);
  }
}

TEST_CASE("facets of an STL file run anticlockwise about a unit normal and carry no attribute") {
  for (const Drawn& drawn : drawings(4)) {
    const std::string bytes = core::exchange::stl(drawn.scene);
    for (std::size_t at = kStlHeader; at < bytes.size(); at += kStlFacet) {
      const Eigen::Vector3d normal = vector(bytes, at), a = vector(bytes, at + 12);
      const Eigen::Vector3d twice = (vector(bytes, at + 24) - a).cross(vector(bytes, at + 36) - a);
      REQUIRE(normal.norm() == Approx(1).epsilon(1e-6));
      if (twice.norm() > 1e-4) REQUIRE(normal.dot(twice.normalized()) > 0.999);
      REQUIRE((bytes[at + 48] == 0 && bytes[at + 49] == 0));
    }
  }
}

// ADMesh 0.98, an independent program that checks STL files.
TEST_CASE("the mesh checker finds nothing to mend in an STL file and the same volume") {
  for (const Drawn& drawn : drawings(12)) {
    const TemporaryFile file(".stl", core::exchange::stl(drawn.scene));
    const Output report = run("admesh " + file.quoted());
    INFO(report.text);
    REQUIRE(report.status == 0);
    const double facets = static_cast<double>(liningFacets(drawn.scene));
    REQUIRE(reported(report.text, "Number of facets") == std::vector<double>{facets, facets});
    REQUIRE(reported(report.text, "Total disconnected facets") == std::vector<double>{0, 0});
    for (const char* label : {"Degenerate facets", "Edges fixed", "Facets removed", "Facets added",
                              "Facets reversed", "Backwards edges"}) {
      CAPTURE(label);
      REQUIRE(reported(report.text, label) == std::vector<double>{0});
    }
    // a section face has slivers between points in line, whose normal is lost in the checker's single
    // precision
    if (!drawn.cut) REQUIRE(reported(report.text, "Normals fixed") == std::vector<double>{0});
    // the checker reckons in single precision
    REQUIRE(reported(report.text, "Volume").at(0) == Approx(liningVolume(drawn.scene)).epsilon(1e-4));
  }
}

TEST_CASE("a GLB file holds every part under its name, y up, with its own material") {
  for (const Drawn& drawn : drawings(8)) {
    const Glb glb = parseGlb(core::exchange::glb(drawn.scene));
    REQUIRE(glb.root["asset"]["version"] == "2.0");
    REQUIRE(glb.root["asset"]["generator"] == "Tankwright");
    REQUIRE(glb.root["buffers"].size() == 1);
    REQUIRE(glb.root["buffers"][0]["byteLength"] == glb.binary.size());
    std::size_t node_index = 0;
    for (const Part& part : drawn.scene.parts) {
      if (part.mesh.empty()) continue;
      CAPTURE(part.id, drawn.cut);
      REQUIRE(glb.root["scenes"][0]["nodes"][node_index] == node_index);
      const json& node = glb.root["nodes"][node_index++];
      const json& mesh = glb.root["meshes"][node["mesh"].get<std::size_t>()];
      const json& primitive = mesh["primitives"][0];
      const json& material = glb.root["materials"][primitive["material"].get<std::size_t>()];
      REQUIRE(node["name"] == part.id);
      REQUIRE(mesh["name"] == part.id);
      REQUIRE(material["name"] == part.id);
      REQUIRE((material.value("alphaMode", "OPAQUE") == "BLEND") == (part.role == Role::water));
      const Mesh back = readBack(glb, primitive);
      REQUIRE(back.triangles.size() == part.mesh.triangles.size());
      REQUIRE(area(back) == Approx(area(part.mesh)).epsilon(1e-4));
      if (part.role != Role::ground && part.role != Role::excavation) {
        REQUIRE(volume(back) == Approx(volume(part.mesh)).epsilon(1e-4).margin(1e-6));
      }
    }
    REQUIRE(glb.root["nodes"].size() == node_index);
  }
}

TEST_CASE("a picture without parts is still a whole file") {
  const Scene nothing{};
  CHECK(core::exchange::stl(nothing).size() == kStlHeader);
  const Glb glb = parseGlb(core::exchange::glb(nothing));
  CHECK_FALSE(glb.root.contains("nodes"));
  CHECK_FALSE(glb.root.contains("buffers"));
}

TEST_CASE("parts that a section takes away whole are left out of the files") {
  support::RandomTanks tanks(3);
  const support::TankAndLining from = tanks.next(Shape::rectangle);
  SceneOptions options;
  options.water_level_m = 0.2;
  options.cut = CutPlane{{-100, 0}, {1, 0}};
  const Scene drawn = scene(TankGeometry(from.tank, from.lining), options);
  REQUIRE(drawn.parts.size() > 3);
  CHECK(core::exchange::stl(drawn).size() == kStlHeader);
  const Glb glb = parseGlb(core::exchange::glb(drawn));
  REQUIRE(glb.root["nodes"].size() == 1);
  CHECK(glb.root["nodes"][0]["name"] == "person");
}

TEST_CASE("the same picture gives the same bytes") {
  const std::vector<Drawn> once = drawings(2), again = drawings(2);
  for (std::size_t i = 0; i < once.size(); ++i) {
    CHECK(core::exchange::stl(once[i].scene) == core::exchange::stl(again[i].scene));
    CHECK(core::exchange::glb(once[i].scene) == core::exchange::glb(again[i].scene));
  }
}

TEST_CASE("the publisher's validator finds no error and no warning in a GLB file") {
  std::vector<std::unique_ptr<TemporaryFile>> files;
  std::string command = kValidator;
  for (const Drawn& drawn : drawings(6)) {
    files.push_back(std::make_unique<TemporaryFile>(".glb", core::exchange::glb(drawn.scene)));
    command += files.back()->quoted() + " ";
  }
  files.push_back(std::make_unique<TemporaryFile>(".glb", core::exchange::glb(Scene{})));
  const Output report = run(command + files.back()->quoted());
  if (report.status == kNoValidator || report.status == kNoNode) {
    std::cout
        << "skipped: no validator (set TANKWRIGHT_NODE_MODULES to a folder that holds gltf-validator)\n";
    return;
  }
  INFO(report.text);
  CHECK(report.status == 0);
  CHECK(report.text.find("0 errors, 0 warnings") != std::string::npos);
}
