#include "ui/view3d/palette.h"

#include <array>

namespace ui::view3d {
namespace {

using core::geometry::Part;
using core::geometry::Role;

struct Tones {
  QColor face, section;
};

Tones coatTones(int coat) {
  static const std::array<Tones, 4> tones{
      Tones{{0xc8, 0x77, 0x4f}, {0xb1, 0x53, 0x2c}}, Tones{{0xee, 0xd9, 0xae}, {0xe6, 0xb9, 0x63}},
      Tones{{0xb0, 0x86, 0x8a}, {0x93, 0x5d, 0x66}}, Tones{{0xf2, 0xe9, 0xd8}, {0xd8, 0xcb, 0xae}}};
  return tones[static_cast<std::size_t>(std::max(coat, 1) - 1) % tones.size()];
}

Tones even(const QColor& tone) {
  return {tone, tone};
}

// cut is darker than untouched ground and fill lighter
Tones tones(const Part& part) {
  switch (part.role) {
    case Role::ground:
      return {{0xb0, 0x92, 0x66}, {0x93, 0x70, 0x45}};
    case Role::cut:
      return isPattern(part) ? even({0x7d, 0x46, 0x33}) : Tones{{0xb2, 0x76, 0x5c}, {0x96, 0x5a, 0x42}};
    case Role::fill:
      return isPattern(part) ? even({0x67, 0x72, 0x4a}) : Tones{{0xa6, 0xae, 0x84}, {0x86, 0x90, 0x63}};
    case Role::heap:
      return {{0x8c, 0x6e, 0x4e}, {0x72, 0x56, 0x39}};
    case Role::arrow:
      return even({0x3a, 0x46, 0x55});
    case Role::marker:
      return even({0xcc, 0x14, 0x64});
    case Role::excavation:
      return {{0xc7, 0xaa, 0x7c}, {0xa8, 0x86, 0x56}};
    case Role::stone_bed:
      return {{0x9a, 0x9d, 0xa1}, {0x78, 0x7d, 0x84}};
    case Role::coat:
      return coatTones(part.coat);
    case Role::cove:
      return {{0xdd, 0xa5, 0x8b}, {0xc2, 0x7f, 0x66}};
    case Role::rim:
      return {{0xdc, 0xd3, 0xc2}, {0xb8, 0xab, 0x93}};
    case Role::water:
      return {{0x3d, 0x97, 0xa6, 0x96}, {0x2b, 0x83, 0x96, 0x9c}};
    case Role::person:
      return even({0x60, 0x66, 0x70});
  }
  return {};
}

}  // namespace

bool isPattern(const Part& part) {
  return part.id == "cut_pattern" || part.id == "fill_pattern";
}

QColor faceColour(const Part& part) {
  return tones(part).face;
}

QColor sectionColour(const Part& part) {
  return tones(part).section;
}

QColor edgeColour(const QColor& face) {
  return QColor::fromRgbF(face.redF() * 0.58F, face.greenF() * 0.56F, face.blueF() * 0.55F);
}

Surroundings surroundings(bool dark) {
  if (dark)
    return {{0x23, 0x27, 0x2b}, {0xf3, 0xef, 0xe6}, {0x18, 0x1b, 0x1e, 0x90}, {0x2e, 0x33, 0x38, 0xe8}};
  return {{0xf5, 0xf2, 0xec}, {0x26, 0x2b, 0x33}, {0xff, 0xff, 0xff, 0x98}, {0xff, 0xfd, 0xf8, 0xe8}};
}

}  // namespace ui::view3d
