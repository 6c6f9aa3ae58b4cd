#pragma once

#include "core/geometry/scene.h"

#include <string>

namespace core::exchange {

/// Binary STL of every lining solid of the scene (stone bed, coats, cove, rim) in metres, z up. 84 + 50 n
/// bytes.
std::string stl(const geometry::Scene& scene);

/// Binary glTF 2.0 of every part with its own named node, mesh and material; y up, metres.
std::string glb(const geometry::Scene& scene);

}  // namespace core::exchange
