#pragma once

#include "core/project/notes.h"

#include <optional>
#include <span>
#include <string_view>

namespace core::site {

/// The twelve texture classes of soil.
enum class Texture {
  sand,
  loamy_sand,
  sandy_loam,
  loam,
  silt_loam,
  silt,
  sandy_clay_loam,
  clay_loam,
  silty_clay_loam,
  sandy_clay,
  silty_clay,
  clay,
};

/// Names of the classes in a plan's JSON, in their order: "sand", "loamy_sand", ...
std::span<const std::string_view> textureTokens();
std::string_view tokenOf(Texture texture);

/// Shares of the fine earth [%], together 100.
struct SoilShares {
  double sand_percent = 0, silt_percent = 0, clay_percent = 0;
};

/// Class in the texture triangle. Each point has one class: a point on a border belongs to the class with
/// more clay, else to the one with more silt, as the borders are published ("27 or more and less than 40").
/// @source usda_texture
Texture textureOf(const SoilShares& shares);

/// Class by ball, ribbon and grit; nothing when no ball was tried. No ball: sand; no ribbon: loamy sand; a
/// ribbon under 25 mm: loams, under 50 mm: clay loams, from 50 mm on: clays; gritty: the sandy one, smooth:
/// the silty one. @source thien_1979
std::optional<Texture> textureOf(const FeelTest& feel);

/// The soil of the program that a texture stands for: sands and sandy loam sandy, silt too since it runs when
/// wet; loam and silt loam firm loam. Nothing for clay loams and clays: how stiff they are is seen in a pit
/// and not in the hand. @source texture_soil
std::optional<Soil> soilOf(Texture texture);

/// Place in the order from the weakest soil (0) to the strongest: loose fill, soft and wet, sandy, firm loam,
/// stiff clay, rock. @source texture_soil
int strengthOrder(Soil soil);

}  // namespace core::site
