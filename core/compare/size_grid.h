#pragma once

#include "core/compare/search.h"
#include "core/project/project.h"

#include <cstddef>

namespace core::compare {

/// The sizes that a project's search tries: every length with every width, and each of these with every
/// depth. Round tanks have no width of their own, polygons are scaled whole.
class SizeGrid {
public:
  explicit SizeGrid(const Project& project);

  std::size_t size() const { return lengths_ * widths_ * depths_; }
  /// Length, width and depth of one size; depth runs quickest. @pre index < size()
  Candidate at(std::size_t index) const;

private:
  SearchLimits limits_;
  Shape shape_;
  double width_per_length_ = 1;  ///< of a polygon
  std::size_t lengths_ = 0, widths_ = 1, depths_ = 0;
};

/// Puts a size into a tank.
/// @param entered the tank as the user entered it; a polygon's outline is scaled from there
void setSize(Tank& tank, const Tank& entered, const Candidate& size);

}  // namespace core::compare
