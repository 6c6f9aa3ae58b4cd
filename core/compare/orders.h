#pragma once

#include "core/lining/quantities.h"

#include <stdexcept>
#include <string>
#include <string_view>

namespace core::compare {

/// What is to be bought of one material, in its unit. @throws std::logic_error when there is none of that id
inline double orderOf(const lining::Quantities& quantities, std::string_view id) {
  for (const lining::Material& material : quantities.materials) {
    if (material.id == id) return material.order;
  }
  throw std::logic_error("no material " + std::string(id));
}

}  // namespace core::compare
