#pragma once

#include "core/project/works.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

enum class BallTest { falls_apart, holds };
enum class Grit { gritty, even, smooth };

/// Soil shaken up with water in a jar and left to settle: heights of its layers, read with a ruler. All of
/// them 0: not read yet.
struct JarTest {
  std::string place;
  double sand_mm = 0, silt_mm = 0, clay_mm = 0;
  bool operator==(const JarTest&) const = default;
};

/// Moist soil squeezed to a ball, then to a ribbon until it breaks.
struct FeelTest {
  std::string place;
  std::optional<BallTest> ball;  ///< absent: not tried yet
  double ribbon_mm = 0;          ///< 0: no ribbon forms
  Grit grit = Grit::even;        ///< of a pinch rubbed very wet
  bool operator==(const FeelTest&) const = default;
};

/// One layer of a test pit, measured down from the ground.
struct PitLayer {
  std::string pit;
  double from_m = 0;
  double to_m = 0.5;
  std::optional<Soil> soil;
  bool has_water = false;  ///< water came in here
  bool operator==(const PitLayer&) const = default;
};

/// One setting of a hose water level along the fall.
struct SlopeSetting {
  double run_m = 0;   ///< level distance; 0: not measured yet
  double drop_m = 0;  ///< under 0 where the ground rises
  bool operator==(const SlopeSetting&) const = default;
};

/// Paper forms filled in on site, as they were typed in.
struct FieldNotes {
  std::vector<JarTest> jars;
  std::vector<FeelTest> feel;
  std::vector<PitLayer> pit_layers;
  std::vector<SlopeSetting> slope;
  bool operator==(const FieldNotes&) const = default;
};

}  // namespace core
