#include "core/compare/size_grid.h"

#include <cmath>

namespace core::compare {
namespace {

using Eigen::Vector2d;

constexpr double kPerMetre =
    1e6;  // sizes are whole micrometres, so that 2 m and three steps of 0.1 m are 2.3 m

std::size_t stepsOf(double least_m, double most_m, double step_m) {
  if (most_m < least_m) return 0;
  return static_cast<std::size_t>(std::floor((most_m - least_m) / step_m + 1e-9)) + 1;
}

double stepAt(double least_m, double step_m, std::size_t k) {
  return std::round((least_m + step_m * static_cast<double>(k)) * kPerMetre) / kPerMetre;
}

struct Box {
  Vector2d least, most;
  Vector2d extent() const { return most - least; }
  Vector2d middle() const { return (least + most) / 2; }
};

Box boxOf(const std::vector<Vector2d>& outline) {
  Box box{outline.front(), outline.front()};
  for (const Vector2d& p : outline) box = {box.least.cwiseMin(p), box.most.cwiseMax(p)};
  return box;
}

}  // namespace

SizeGrid::SizeGrid(const Project& project) : limits_(project.search), shape_(project.tank.shape) {
  lengths_ = stepsOf(limits_.least_length_m, limits_.most_length_m, limits_.step_m);
  depths_ = stepsOf(limits_.least_depth_m, limits_.most_depth_m, limits_.step_m);
  if (shape_ == Shape::rectangle)
    widths_ = stepsOf(limits_.least_width_m, limits_.most_width_m, limits_.step_m);
  if (shape_ != Shape::polygon) return;
  const Vector2d extent = boxOf(project.tank.outline_m).extent();
  width_per_length_ = extent.y() / extent.x();
}

Candidate SizeGrid::at(std::size_t index) const {
  Candidate size;
  size.depth_m = stepAt(limits_.least_depth_m, limits_.step_m, index % depths_);
  const std::size_t plan = index / depths_;
  size.length_m = stepAt(limits_.least_length_m, limits_.step_m, plan / widths_);
  size.width_m = shape_ == Shape::rectangle ? stepAt(limits_.least_width_m, limits_.step_m, plan % widths_)
                                            : size.length_m * width_per_length_;
  return size;
}

void setSize(Tank& tank, const Tank& entered, const Candidate& size) {
  tank.depth_m = size.depth_m;
  switch (entered.shape) {
    case Shape::rectangle:
      tank.length_m = size.length_m;
      tank.width_m = size.width_m;
      return;
    case Shape::round:
      tank.diameter_m = size.length_m;
      return;
    case Shape::polygon:
      break;
  }
  const Box box = boxOf(entered.outline_m);
  const double factor = size.length_m / box.extent().x();
  tank.outline_m = entered.outline_m;
  for (Vector2d& corner : tank.outline_m) corner = box.middle() + factor * (corner - box.middle());
}

}  // namespace core::compare
