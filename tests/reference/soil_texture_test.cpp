// Texture classes of soil: the published borders of the triangle, and the steps of the test by feel.
#include "core/site/texture.h"

#include <array>
#include <functional>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::BallTest;
using core::FeelTest;
using core::Grit;
using core::site::SoilShares;
using core::site::Texture;
using core::site::textureOf;

/// A class of the triangle as it is published, in words of its own and in no order.
struct Definition {
  Texture texture;
  std::function<bool(double sand, double silt, double clay)> holds;
};

/// USDA, Soil Survey Manual, Agriculture Handbook 18, texture classes. The manual itself was not at hand:
/// sand, loamy sand, loam, clay loam and clay as quoted in a glossary of soil science terms; sandy loam, silt
/// loam, silt, sandy clay loam, silty clay loam, sandy clay and silty clay as quoted in copies of the texture
/// calculator of USDA NRCS. Points on a border go to the finer class (Benham, Ahrens, Nettleton:
/// Clarification of soil texture class boundaries, USDA NRCS, 2009).
const std::vector<Definition>& definitions() {
  static const std::vector<Definition> all{
      {Texture::sand, [](double, double si, double c) { return si + 1.5 * c < 15; }},
      {Texture::loamy_sand,
       [](double, double si, double c) { return si + 1.5 * c >= 15 && si + 2 * c < 30; }},
      {Texture::sandy_loam,
       [](double s, double si, double c) {
         return (c >= 7 && c < 20 && s > 52 && si + 2 * c >= 30) || (c < 7 && si < 50 && si + 2 * c >= 30);
       }},
      {Texture::loam,
       [](double s, double si, double c) { return c >= 7 && c < 27 && si >= 28 && si < 50 && s <= 52; }},
      {Texture::silt_loam,
       [](double, double si, double c) {
         return (si >= 50 && c >= 12 && c < 27) || (si >= 50 && si < 80 && c < 12);
       }},
      {Texture::silt, [](double, double si, double c) { return si >= 80 && c < 12; }},
      {Texture::sandy_clay_loam,
       [](double s, double si, double c) { return c >= 20 && c < 35 && si < 28 && s > 45; }},
      {Texture::clay_loam, [](double s, double, double c) { return c >= 27 && c < 40 && s > 20 && s <= 45; }},
      {Texture::silty_clay_loam, [](double s, double, double c) { return c >= 27 && c < 40 && s <= 20; }},
      {Texture::sandy_clay, [](double s, double, double c) { return c >= 35 && s > 45; }},
      {Texture::silty_clay, [](double, double si, double c) { return c >= 40 && si >= 40; }},
      {Texture::clay, [](double s, double si, double c) { return c >= 40 && s <= 45 && si < 40; }},
  };
  return all;
}

FeelTest felt(BallTest ball, double ribbon_mm, Grit grit) {
  return {"", ball, ribbon_mm, grit};
}

}  // namespace

TEST_CASE("texture triangle: every point of a half-per-cent grid lies in the one class that is published") {
  std::array<int, 12> points{};
  for (int sand = 0; sand <= 200; ++sand) {
    for (int clay = 0; clay + sand <= 200; ++clay) {
      const double s = sand / 2.0, c = clay / 2.0, si = 100 - s - c;
      INFO(s << " sand " << si << " silt " << c << " clay");
      const Texture found = textureOf(SoilShares{s, si, c});
      int classes = 0;
      for (const Definition& d : definitions()) {
        if (!d.holds(s, si, c)) continue;
        ++classes;
        CHECK(found == d.texture);
      }
      CHECK(classes == 1);
      ++points[static_cast<std::size_t>(found)];
    }
  }
  for (const int count : points) CHECK(count > 0);
}

TEST_CASE("texture triangle: worked points and corners") {
  // worked reading of the USDA triangle on an extension page (second-hand): 30 % sand, 30 % clay, 40 % silt
  // is clay loam
  CHECK(textureOf(SoilShares{30, 40, 30}) == Texture::clay_loam);
  // corners of the triangle (from memory)
  CHECK(textureOf(SoilShares{100, 0, 0}) == Texture::sand);
  CHECK(textureOf(SoilShares{0, 100, 0}) == Texture::silt);
  CHECK(textureOf(SoilShares{0, 0, 100}) == Texture::clay);
  // the middles of the classes as teaching sheets show them (from memory)
  CHECK(textureOf(SoilShares{40, 40, 20}) == Texture::loam);
  CHECK(textureOf(SoilShares{65, 25, 10}) == Texture::sandy_loam);
  CHECK(textureOf(SoilShares{82, 12, 6}) == Texture::loamy_sand);
  CHECK(textureOf(SoilShares{20, 65, 15}) == Texture::silt_loam);
  CHECK(textureOf(SoilShares{60, 13, 27}) == Texture::sandy_clay_loam);
  CHECK(textureOf(SoilShares{10, 56, 34}) == Texture::silty_clay_loam);
  CHECK(textureOf(SoilShares{52, 6, 42}) == Texture::sandy_clay);
  CHECK(textureOf(SoilShares{6, 47, 47}) == Texture::silty_clay);
  CHECK(textureOf(SoilShares{20, 20, 60}) == Texture::clay);
}

TEST_CASE("texture triangle: the published borders, to either side") {
  // borders as in definitions(); the value on the border belongs to the class named second
  CHECK(textureOf(SoilShares{33.1, 40, 26.9}) == Texture::loam);
  CHECK(textureOf(SoilShares{33, 40, 27}) == Texture::clay_loam);
  CHECK(textureOf(SoilShares{30.1, 30, 39.9}) == Texture::clay_loam);
  CHECK(textureOf(SoilShares{30, 30, 40}) == Texture::clay);
  CHECK(textureOf(SoilShares{35.1, 49.9, 15}) == Texture::loam);
  CHECK(textureOf(SoilShares{35, 50, 15}) == Texture::silt_loam);
  CHECK(textureOf(SoilShares{52.1, 32.9, 15}) == Texture::sandy_loam);
  CHECK(textureOf(SoilShares{52, 33, 15}) == Texture::loam);
  CHECK(textureOf(SoilShares{45.1, 19.9, 35}) == Texture::sandy_clay);
  CHECK(textureOf(SoilShares{45, 20, 35}) == Texture::clay_loam);
  CHECK(textureOf(SoilShares{20.1, 44.9, 35}) == Texture::clay_loam);
  CHECK(textureOf(SoilShares{20, 45, 35}) == Texture::silty_clay_loam);
}

TEST_CASE("texture by feel: Thien's steps") {
  // S.J. Thien: A flow diagram for teaching texture-by-feel analysis, Journal of Agronomic Education 8, 1979,
  // 54-55, as the diagram is redrawn in USDA NRCS's guide; the lengths 2.5 and 5 cm (1 and 2 in) as an
  // extension service quotes them, the paper itself was not at hand
  CHECK(textureOf(felt(BallTest::falls_apart, 0, Grit::even)) == Texture::sand);
  CHECK(textureOf(felt(BallTest::holds, 0, Grit::gritty)) == Texture::loamy_sand);
  CHECK(textureOf(felt(BallTest::holds, 15, Grit::gritty)) == Texture::sandy_loam);
  CHECK(textureOf(felt(BallTest::holds, 15, Grit::even)) == Texture::loam);
  CHECK(textureOf(felt(BallTest::holds, 15, Grit::smooth)) == Texture::silt_loam);
  CHECK(textureOf(felt(BallTest::holds, 35, Grit::gritty)) == Texture::sandy_clay_loam);
  CHECK(textureOf(felt(BallTest::holds, 35, Grit::even)) == Texture::clay_loam);
  CHECK(textureOf(felt(BallTest::holds, 35, Grit::smooth)) == Texture::silty_clay_loam);
  CHECK(textureOf(felt(BallTest::holds, 70, Grit::gritty)) == Texture::sandy_clay);
  CHECK(textureOf(felt(BallTest::holds, 70, Grit::even)) == Texture::clay);
  CHECK(textureOf(felt(BallTest::holds, 70, Grit::smooth)) == Texture::silty_clay);
  // "less than 2.5 cm", "5 cm or longer"
  CHECK(textureOf(felt(BallTest::holds, 24.9, Grit::even)) == Texture::loam);
  CHECK(textureOf(felt(BallTest::holds, 25, Grit::even)) == Texture::clay_loam);
  CHECK(textureOf(felt(BallTest::holds, 49.9, Grit::even)) == Texture::clay_loam);
  CHECK(textureOf(felt(BallTest::holds, 50, Grit::even)) == Texture::clay);
  CHECK_FALSE(textureOf(FeelTest{}).has_value());
}
