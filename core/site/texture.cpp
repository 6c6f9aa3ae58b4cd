#include "core/site/texture.h"

#include <array>
#include <cstddef>

namespace core::site {
namespace {

constexpr std::array<std::string_view, 12> kTokens{
    "sand",      "loamy_sand",      "sandy_loam", "loam",       "silt_loam", "silt", "sandy_clay_loam",
    "clay_loam", "silty_clay_loam", "sandy_clay", "silty_clay", "clay"};

// usda_texture: borders of the classes [%]
constexpr double kSandLine = 15;       // silt + 1.5 clay under it: sand
constexpr double kLoamySandLine = 30;  // silt + 2 clay under it: loamy sand
constexpr double kClay = 40, kSandyClay = 35, kClayLoam = 27, kSandyClayLoam = 20, kLeastOfLoam = 7;
constexpr double kMostSandOfClay = 45, kMostSandOfSiltyClayLoam = 20, kMostSandOfLoam = 52;
constexpr double kSiltOfSiltyClay = 40, kSiltOfLoam = 28, kSiltLoam = 50, kSilt = 80, kMostClayOfSilt = 12;

// thien_1979: lengths of ribbon
constexpr double kMediumRibbon_mm = 25, kStrongRibbon_mm = 50;

Texture clayey(const SoilShares& s) {
  if (s.sand_percent > kMostSandOfClay) return Texture::sandy_clay;
  return s.silt_percent >= kSiltOfSiltyClay ? Texture::silty_clay : Texture::clay;
}

Texture clayLoam(const SoilShares& s) {
  if (s.sand_percent <= kMostSandOfSiltyClayLoam) return Texture::silty_clay_loam;
  return s.sand_percent <= kMostSandOfClay ? Texture::clay_loam : Texture::sandy_clay_loam;
}

Texture silty(const SoilShares& s) {
  return s.silt_percent >= kSilt && s.clay_percent < kMostClayOfSilt ? Texture::silt : Texture::silt_loam;
}

/// Under 27 % clay.
Texture loamOrSand(const SoilShares& s) {
  if (s.silt_percent + 1.5 * s.clay_percent < kSandLine) return Texture::sand;
  if (s.silt_percent + 2 * s.clay_percent < kLoamySandLine) return Texture::loamy_sand;
  if (s.silt_percent >= kSiltLoam) return silty(s);
  if (s.clay_percent >= kSandyClayLoam && s.silt_percent < kSiltOfLoam && s.sand_percent > kMostSandOfClay)
    return Texture::sandy_clay_loam;
  const bool is_loam = s.clay_percent >= kLeastOfLoam && s.sand_percent <= kMostSandOfLoam;
  return is_loam ? Texture::loam : Texture::sandy_loam;
}

/// One of three by how it feels.
Texture byGrit(Grit grit, Texture gritty, Texture even, Texture smooth) {
  if (grit == Grit::even) return even;
  return grit == Grit::gritty ? gritty : smooth;
}

}  // namespace

std::span<const std::string_view> textureTokens() {
  return kTokens;
}

std::string_view tokenOf(Texture texture) {
  return kTokens.at(static_cast<std::size_t>(texture));
}

Texture textureOf(const SoilShares& s) {
  if (s.clay_percent >= kClay) return clayey(s);
  if (s.clay_percent >= kSandyClay && s.sand_percent > kMostSandOfClay) return Texture::sandy_clay;
  return s.clay_percent >= kClayLoam ? clayLoam(s) : loamOrSand(s);
}

std::optional<Texture> textureOf(const FeelTest& feel) {
  if (!feel.ball) return std::nullopt;
  if (*feel.ball == BallTest::falls_apart) return Texture::sand;
  if (feel.ribbon_mm <= 0) return Texture::loamy_sand;
  if (feel.ribbon_mm < kMediumRibbon_mm)
    return byGrit(feel.grit, Texture::sandy_loam, Texture::loam, Texture::silt_loam);
  if (feel.ribbon_mm < kStrongRibbon_mm)
    return byGrit(feel.grit, Texture::sandy_clay_loam, Texture::clay_loam, Texture::silty_clay_loam);
  return byGrit(feel.grit, Texture::sandy_clay, Texture::clay, Texture::silty_clay);
}

std::optional<Soil> soilOf(Texture texture) {
  switch (texture) {
    case Texture::sand:
    case Texture::loamy_sand:
    case Texture::sandy_loam:
    case Texture::silt:
      return Soil::sandy;
    case Texture::loam:
    case Texture::silt_loam:
      return Soil::firm_loam;
    default:
      return std::nullopt;
  }
}

int strengthOrder(Soil soil) {
  // by the order of Soil: stiff clay, firm loam, sandy, loose fill, soft and wet, rock
  constexpr std::array order{4, 3, 2, 0, 1, 5};
  return order.at(static_cast<std::size_t>(soil));
}

}  // namespace core::site
