#pragma once

#include "core/project/fields.h"

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace core::exchange {

enum class Written { always, when_changed };

/// One field of a design in short form.
struct ShortField {
  /// One or two capitals, the second none of I, L, O, which may stand for digits. kSamePart: the value stands
  /// after a '/' in the part of the field before it.
  std::string_view token;
  std::string_view id;  ///< of the field table: number, whole number, choice or date; not null as made
  Written written = Written::when_changed;
};

inline constexpr std::string_view kSamePart = "/";
inline constexpr std::string_view kVersionToken = "TW";
inline constexpr std::string_view kShortVersion = "TW1";
inline constexpr std::string_view kCornerToken =
    "P";  ///< of "tank.outline_m", which is no field of the table

/// All fields, in the order in which they are written. A token once given keeps its meaning.
inline constexpr std::array kShortFields{
    ShortField{"S", "tank.shape", Written::always},
    ShortField{"M", "tank.measured_at"},
    ShortField{"L", "tank.length_m", Written::always},
    ShortField{"W", "tank.width_m", Written::always},
    ShortField{"DM", "tank.diameter_m", Written::always},
    ShortField{"D", "tank.depth_m", Written::always},
    ShortField{"B", "tank.batter", Written::always},
    ShortField{"CR", "tank.corner_radius_m"},
    ShortField{"F", "tank.freeboard_m"},
    ShortField{"DD", "tank.dead_depth_m"},
    ShortField{"SB", "lining.stone_bed_m"},
    ShortField{"DW", "lining.dry_to_wet"},
    ShortField{"WA", "lining.waste_percent"},
    ShortField{"UN", "lining.unevenness_percent"},
    ShortField{"BG", "lining.cement_bag_kg"},
    ShortField{"CD", "lining.cement_loose_kg_m3"},
    ShortField{"C", "lining.coats[].thickness_m"},
    ShortField{kSamePart, "lining.coats[].soil"},
    ShortField{kSamePart, "lining.coats[].sand"},
    ShortField{kSamePart, "lining.coats[].cement"},
    ShortField{kSamePart, "lining.coats[].cure_days"},
    ShortField{"CV", "lining.cove_radius_m"},
    ShortField{"RW", "lining.rim_width_m"},
    ShortField{"RT", "lining.rim_thickness_m"},
    ShortField{"SV", "lining.sieving_loss_percent"},
    ShortField{"BK", "lining.sand_bulking_percent"},
    ShortField{"SF", "lining.stone_loose_factor"},
    ShortField{"MW", "lining.mixing_water_l_per_m3"},
    ShortField{"CW", "lining.curing_water_l_per_m2_day"},
    ShortField{"SC", "lining.sack_covers_m2"},
    ShortField{"SS", "lining.sack_spare_percent"},
    ShortField{"GB", "lining.gauge_box_l"},
    ShortField{"PN", "lining.pan_l"},
    ShortField{"BU", "lining.bucket_l"},
    ShortField{"LA", "site.latitude_deg"},
    ShortField{"E", "site.elevation_m"},
    ShortField{"G", "site.ground.kind"},
    ShortField{"FA", "site.ground.fall_percent"},
    ShortField{"AZ", "site.ground.downhill_azimuth_deg"},
    ShortField{"TU", "site.position.turn_deg"},
    ShortField{"PB", "site.platform.level_by"},
    ShortField{"PH", "site.platform.level_m"},
    ShortField{"WK", "site.platform.walkway_m"},
    ShortField{"CB", "site.platform.cut_batter"},
    ShortField{"FB", "site.platform.fill_batter"},
    ShortField{"TS", "site.platform.topsoil_m"},
    ShortField{"KF", "site.platform.compacted_per_bank"},
    ShortField{"GS", "site.soil"},
    ShortField{"CY", "site.clay_percent"},
    ShortField{"DA", "works.start_date"},
};

/// Fields of the parts that begin with `token`, the first one's first; empty when there are none.
std::span<const ShortField> shortFieldsOf(std::string_view token);

/// A value as it stands after its token: "7.2", ":RE", "2027-02-15". @pre it is there and the field takes it
std::string shortValue(const Field& field, const FieldValue& value);

/// The value that a text stands for; the text itself where it stands for none, which checkValue refuses.
FieldValue valueOfShort(const Field& field, std::string_view text);

/// A number in plain decimals with the fewest digits that read back the same.
std::string shortNumber(double value);

/// The number that a text is from its first to its last character; the text itself when it is none.
FieldValue numberOfShort(std::string_view text);

}  // namespace core::exchange
