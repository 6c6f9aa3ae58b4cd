#pragma once

#include <atomic>
#include <cstdint>
#include <vector>

namespace core::site {

enum class DelaunayResult { done, cancelled, failed };

/// Faces of a Delaunay diagram: corner numbers one after another, `size` of each face. Four and more points
/// on one circle make one face with as many corners, in no order.
struct DelaunayFaces {
  std::vector<std::uint32_t> corners;
  std::vector<std::uint32_t> size;
};

/// Delaunay diagram of points by Qhull (Barber, Dobkin, Huhdanpaa 1996).
/// @param xy x and y of each point in turn, at least three points
/// @param options Qhull's, for example "qhull d Qbb Qz Q12 Q5"
DelaunayResult delaunay(std::vector<double>& xy, const char* options, const std::atomic<bool>* cancel,
                        DelaunayFaces& out);

}  // namespace core::site
