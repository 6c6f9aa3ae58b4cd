#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>
#include <algorithm>
#include <array>
#include <stdexcept>
#include <string_view>

namespace ui::handouts {

/// Usual side of a pictogram [mm]; its thinnest line is then over 0.5 mm.
inline constexpr double kPictogram_mm = 14;

/// All pictograms, by name.
inline constexpr std::array<std::string_view, 57> kPictograms{"bag_of_cement", "ball_test",
                                                              "boots",         "bucket",
                                                              "calendar",      "carry_stone",
                                                              "cave_in",       "clean",
                                                              "climb_out",     "crack",
                                                              "dig",           "drowning",
                                                              "fall_empty",    "fence",
                                                              "fill",          "float",
                                                              "full_tank",     "gauge_box",
                                                              "gloves",        "goggles",
                                                              "half_bag",      "jar",
                                                              "ladder",        "leak",
                                                              "lift_two",      "mask",
                                                              "mix_dry",       "mix_wet",
                                                              "no_drinking",   "no_frost",
                                                              "no_rain",       "overflow",
                                                              "pan",           "peg_and_string",
                                                              "pipe_over",     "pipe_through",
                                                              "plaster_floor", "plaster_wall",
                                                              "ram",           "ribbon",
                                                              "sand",          "sieve",
                                                              "soil",          "soil_ball",
                                                              "spoil_back",    "sprinkle",
                                                              "square_corner", "stone",
                                                              "stopwatch",     "sun_shade",
                                                              "tally",         "test_pit",
                                                              "two_people",    "wash",
                                                              "water",         "water_level",
                                                              "wet_sacks"};

/// Name of a pictogram; one that there is not does not compile.
class Pictogram {
public:
  consteval Pictogram(const char* name) : name_(name) {  // NOLINT(google-explicit-constructor)
    if (std::ranges::find(kPictograms, name_) == kPictograms.end()) throw std::logic_error(name);
  }
  QString name() const { return QString::fromLatin1(name_.data(), static_cast<qsizetype>(name_.size())); }

private:
  std::string_view name_;
};

/// Draws a pictogram as lines and solids, as large as the box allows, never mirrored. Safe on any thread.
/// @throws std::logic_error when there is none of that name
void drawPictogram(QPainter& painter, const QRectF& box_mm, const QString& name);

}  // namespace ui::handouts
