#include "core/site/bishop.h"

#include "core/site/slip_slices.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace core::site {
namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kLeastM = 0.2;  // Whitman, Bailey 1967

/// Piece of ground that slides, with its water-filled crack.
struct Piece {
  double from, to;
  double crack_moment_kn = 0;  ///< driving moment of the crack's water over the radius
};

/// Moves the upper end of a piece in to where the slip is as deep as the crack.
tl::expected<Piece, SlipFault> cracked(const SlopeSection& section, const SlipCircle& circle, Piece piece) {
  if (!section.crack || section.crack->depth_m <= 0) return piece;
  const double depth = section.crack->depth_m;
  const auto deep = [&](double x) { return heightAt(section.ground_m, x) - slipLevel(circle, x); };
  const bool is_left = heightAt(section.ground_m, piece.from) > heightAt(section.ground_m, piece.to);
  const double upper = is_left ? piece.from : piece.to;
  const double lower = is_left ? piece.to : piece.from;
  // first place down the slip that is deep enough, then halving back to where it just is
  constexpr int kSteps = 200;
  int step = 1;
  while (step < kSteps && deep(upper + (lower - upper) * step / kSteps) < depth) ++step;
  if (step == kSteps) return tl::unexpected(SlipFault::within_crack);
  double out = upper + (lower - upper) * (step - 1) / kSteps;
  double in = upper + (lower - upper) * step / kSteps;
  for (int i = 0; i < 60; ++i) ((deep((out + in) / 2) < depth) ? out : in) = (out + in) / 2;
  (is_left ? piece.from : piece.to) = in;
  const double water = depth * section.crack->water_share;
  const double thrust = section.water_kn_m3 * water * water / 2;
  const double level = slipLevel(circle, in) + water / 3;
  piece.crack_moment_kn = thrust * (circle.centre_m.y() - level) / circle.radius_m;
  return piece;
}

double tangent(const SlipSlice& s) {
  return std::tan(s.friction_deg * kDegree);
}

double mOf(const SlipSlice& s, double factor) {
  const double a = s.base_deg * kDegree;
  return std::cos(a) + std::sin(a) * tangent(s) / factor;
}

double resisting(const SlipSlice& s) {
  return s.cohesion_kpa * s.width_m + (s.weight_kn - s.pore_kpa * s.width_m) * tangent(s);
}

/// Rounds of F = sum(resisting / m(F)) / driving until it stands still; nothing when it does not.
std::optional<double> settled(Slip& slip, double driving, const BishopOptions& options) {
  double factor = 1;
  for (slip.rounds = 1; slip.rounds <= options.most_rounds; ++slip.rounds) {
    double sum = 0;
    for (const SlipSlice& s : slip.slices) sum += resisting(s) / mOf(s, factor);
    const double next = sum / driving;
    if (!(next > 0) || !std::isfinite(next)) return std::nullopt;
    if (std::abs(next - factor) <= options.accuracy) return next;
    factor = next;
  }
  return std::nullopt;
}

void setNormals(Slip& slip) {
  for (SlipSlice& s : slip.slices) {
    const double a = s.base_deg * kDegree;
    // vertical equilibrium of a slice: N m = W - u b - c b tan(a) / F
    const double force =
        (s.weight_kn - s.pore_kpa * s.width_m - s.cohesion_kpa * s.width_m * std::tan(a) / slip.factor) /
        mOf(s, slip.factor);
    s.normal_kpa = force * std::cos(a) / s.width_m;
    slip.pulling += s.normal_kpa < 0;
  }
}

}  // namespace

tl::expected<Slip, SlipFault> bishop(const SlopeSection& section, const SlipCircle& circle,
                                     const BishopOptions& options) {
  if (!isSound(section) || !(circle.radius_m > 0)) return tl::unexpected(SlipFault::bad_section);
  const auto ends = slipEnds(section, circle);
  if (!ends) return tl::unexpected(ends.error());
  const double lowest = slipLevel(circle, std::clamp(circle.centre_m.x(), ends->first, ends->second));
  if (section.firm_level_m && lowest < *section.firm_level_m - 1e-6 * circle.radius_m)
    return tl::unexpected(SlipFault::below_firm_level);
  const auto piece = cracked(section, circle, {ends->first, ends->second});
  if (!piece) return tl::unexpected(piece.error());
  auto slices = slipSlices(section, circle, piece->from, piece->to, options.slices);
  if (!slices) return tl::unexpected(slices.error());

  Slip slip{0, circle, piece->from, piece->to, 0, 0, std::move(*slices)};
  double driving = 0;
  double size = 0;
  for (const SlipSlice& s : slip.slices) {
    driving += s.weight_kn * std::sin(s.base_deg * kDegree);
    size += s.weight_kn;
  }
  if (driving < 0) {  // slides to the right: bases drive where they fall to the right
    driving = -driving;
    for (SlipSlice& s : slip.slices) s.base_deg = -s.base_deg;
  }
  driving += piece->crack_moment_kn;
  if (!(driving > 1e-9 * size)) return tl::unexpected(SlipFault::nothing_drives);
  const std::optional<double> factor = settled(slip, driving, options);
  if (!factor) return tl::unexpected(SlipFault::not_converged);
  slip.factor = *factor;
  const bool is_steep = std::any_of(slip.slices.begin(), slip.slices.end(),
                                    [&](const SlipSlice& s) { return mOf(s, slip.factor) < kLeastM; });
  if (is_steep) return tl::unexpected(SlipFault::steep_toe);
  setNormals(slip);
  return slip;
}

}  // namespace core::site
