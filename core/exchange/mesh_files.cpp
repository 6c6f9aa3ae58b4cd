#include "core/exchange/mesh_files.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <string_view>

#include <Eigen/Geometry>
#include <nlohmann/json.hpp>

namespace core::exchange {
namespace {

using geometry::Mesh;
using geometry::Part;
using geometry::Role;
using Json = nlohmann::ordered_json;
using Triangle = std::array<std::uint32_t, 3>;

constexpr std::size_t kStlHeaderBytes = 80;
constexpr std::string_view kStlHeader = "Tankwright lining, metres, z up";

// ISO/IEC 12113 (glTF 2.0), binary container and enumerations
constexpr std::uint32_t kGlbMagic = 0x46546C67, kGlbVersion = 2;
constexpr std::uint32_t kJsonChunk = 0x4E4F534A, kBinaryChunk = 0x004E4942;
constexpr std::size_t kGlbHeaderBytes = 12, kChunkHeaderBytes = 8;
constexpr int kFloat = 5126, kUnsignedInt = 5125;
constexpr int kArrayBuffer = 34962, kElementArrayBuffer = 34963;

void append(std::string& bytes, std::uint32_t value, int count) {
  for (int i = 0; i < count; ++i) bytes.push_back(static_cast<char>((value >> (8 * i)) & 0xFFU));
}

void append32(std::string& bytes, std::uint32_t value) {
  append(bytes, value, 4);
}

void append(std::string& bytes, const Eigen::Vector3f& value) {
  for (const float part : value) append32(bytes, std::bit_cast<std::uint32_t>(part));
}

// Normal of the facet as it is written, with its corners in single precision.
Eigen::Vector3d faceNormal(const Mesh& mesh, const Triangle& triangle) {
  const auto corner = [&](std::size_t k) -> Eigen::Vector3d {
    return mesh.points[triangle[k]].cast<float>().cast<double>();
  };
  const Eigen::Vector3d a = corner(0);
  const Eigen::Vector3d normal = (corner(1) - a).cross(corner(2) - a);
  const double length = normal.norm();
  return length > 0 ? Eigen::Vector3d(normal / length) : Eigen::Vector3d::UnitZ();
}

bool isLining(Role role) {
  return role == Role::stone_bed || role == Role::coat || role == Role::cove || role == Role::rim;
}

void appendStlFacet(std::string& bytes, const Mesh& mesh, const Triangle& triangle) {
  append(bytes, faceNormal(mesh, triangle).cast<float>());
  for (const std::uint32_t corner : triangle) append(bytes, mesh.points[corner].cast<float>());
  append(bytes, 0, 2);
}

// linear red, green, blue and alpha
using Colour = std::array<double, 4>;

Colour baseColour(const Part& part) {
  const bool pattern = part.id.ends_with("_pattern");
  const double coat_shade = std::pow(0.85, std::max(part.coat - 1, 0));
  switch (part.role) {
    case Role::ground:
      return {0.28, 0.19, 0.10, 1};
    case Role::cut:
      return pattern ? Colour{0.20, 0.07, 0.04, 1} : Colour{0.44, 0.18, 0.11, 1};
    case Role::fill:
      return pattern ? Colour{0.13, 0.17, 0.07, 1} : Colour{0.38, 0.42, 0.23, 1};
    case Role::heap:
      return {0.26, 0.16, 0.08, 1};
    case Role::arrow:
      return {0.04, 0.06, 0.09, 1};
    case Role::marker:
      return {0.60, 0.01, 0.13, 1};
    case Role::excavation:
      return {0.40, 0.28, 0.16, 1};
    case Role::stone_bed:
      return {0.22, 0.23, 0.25, 1};
    case Role::coat:
      return {0.62 * coat_shade, 0.47 * coat_shade, 0.31 * coat_shade, 1};
    case Role::cove:
      return {0.45, 0.42, 0.38, 1};
    case Role::rim:
      return {0.55, 0.53, 0.50, 1};
    case Role::water:
      return {0.05, 0.30, 0.55, 0.55};
    case Role::person:
      return {0.75, 0.20, 0.08, 1};
    case Role::peg:
      return {0.70, 0.55, 0.20, 1};
    case Role::sack:
      return {0.20, 0.24, 0.14, 1};
  }
  return {1, 1, 1, 1};
}

Json material(const Part& part) {
  Json result{{"name", part.id},
              {"pbrMetallicRoughness",
               {{"baseColorFactor", baseColour(part)}, {"metallicFactor", 0.0}, {"roughnessFactor", 0.9}}}};
  if (part.role == Role::water) result["alphaMode"] = "BLEND";
  return result;
}

// z up to y up: a quarter turn about x, so the winding stays
Eigen::Vector3f yUp(const Eigen::Vector3d& v) {
  return Eigen::Vector3d(v.x(), v.z(), -v.y()).cast<float>();
}

std::array<double, 3> numbers(const Eigen::Vector3f& v) {
  return {v.x(), v.y(), v.z()};
}

class GlbWriter {
public:
  GlbWriter() {
    root_["asset"] = {{"version", "2.0"}, {"generator", "Tankwright"}};
    root_["scene"] = 0;
    root_["scenes"] = Json::array({Json::object()});
  }

  void add(const Part& part) {
    const int index = parts_++;
    const auto attributes = addVertices(part.mesh);
    const int indices = addIndices(part.mesh.triangles.size() * 3);
    root_["scenes"][0]["nodes"].push_back(index);
    root_["nodes"].push_back({{"name", part.id}, {"mesh", index}});
    root_["meshes"].push_back(
        {{"name", part.id},
         {"primitives", {{{"attributes", attributes}, {"indices", indices}, {"material", index}}}}});
    root_["materials"].push_back(material(part));
  }

  std::string file() {
    if (!binary_.empty()) root_["buffers"] = Json::array({{{"byteLength", binary_.size()}}});
    std::string json = root_.dump();
    json.resize((json.size() + 3) / 4 * 4, ' ');
    std::string chunks;
    appendChunk(chunks, kJsonChunk, json);
    if (!binary_.empty()) appendChunk(chunks, kBinaryChunk, binary_);
    std::string result;
    append32(result, kGlbMagic);
    append32(result, kGlbVersion);
    append32(result, static_cast<std::uint32_t>(kGlbHeaderBytes + chunks.size()));
    return result + chunks;
  }

private:
  Json root_;
  std::string binary_;
  int parts_ = 0;

  static void appendChunk(std::string& bytes, std::uint32_t type, const std::string& data) {
    bytes.reserve(bytes.size() + kChunkHeaderBytes + data.size());
    append32(bytes, static_cast<std::uint32_t>(data.size()));
    append32(bytes, type);
    bytes += data;
  }

  // Every facet has its own three vertices, so that facets are shaded flat.
  Json addVertices(const Mesh& mesh) {
    Eigen::Vector3f least = yUp(mesh.points[mesh.triangles[0][0]]), most = least;
    std::string positions, normals;
    for (const Triangle& triangle : mesh.triangles) {
      const Eigen::Vector3f normal = yUp(faceNormal(mesh, triangle));
      for (const std::uint32_t corner : triangle) {
        const Eigen::Vector3f position = yUp(mesh.points[corner]);
        least = least.cwiseMin(position);
        most = most.cwiseMax(position);
        append(positions, position);
        append(normals, normal);
      }
    }
    const std::size_t count = mesh.triangles.size() * 3;
    const int at = addAccessor(positions, kArrayBuffer, kFloat, "VEC3", count);
    root_["accessors"].back()["min"] = numbers(least);
    root_["accessors"].back()["max"] = numbers(most);
    const int square = addAccessor(normals, kArrayBuffer, kFloat, "VEC3", count);
    return {{"POSITION", at}, {"NORMAL", square}};
  }

  int addIndices(std::size_t count) {
    std::string indices;
    for (std::uint32_t i = 0; i < count; ++i) append32(indices, i);
    return addAccessor(indices, kElementArrayBuffer, kUnsignedInt, "SCALAR", count);
  }

  int addAccessor(const std::string& data, int target, int component, const char* type, std::size_t count) {
    root_["bufferViews"].push_back(
        {{"buffer", 0}, {"byteOffset", binary_.size()}, {"byteLength", data.size()}, {"target", target}});
    root_["accessors"].push_back({{"bufferView", root_["bufferViews"].size() - 1},
                                  {"componentType", component},
                                  {"count", count},
                                  {"type", type}});
    binary_ += data;  // all data is whole 4-byte words, so every view stays aligned
    return static_cast<int>(root_["accessors"].size()) - 1;
  }
};

}  // namespace

std::string stl(const geometry::Scene& scene) {
  std::string facets;
  std::uint32_t count = 0;
  for (const Part& part : scene.parts) {
    if (!isLining(part.role)) continue;
    for (const Triangle& triangle : part.mesh.triangles) appendStlFacet(facets, part.mesh, triangle);
    count += static_cast<std::uint32_t>(part.mesh.triangles.size());
  }
  std::string result(kStlHeader);
  result.resize(kStlHeaderBytes, ' ');
  append32(result, count);
  return result + facets;
}

std::string glb(const geometry::Scene& scene) {
  GlbWriter writer;
  for (const Part& part : scene.parts) {
    if (!part.mesh.empty()) writer.add(part);
  }
  return writer.file();
}

}  // namespace core::exchange
