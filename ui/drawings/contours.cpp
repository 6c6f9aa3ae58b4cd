#include "ui/drawings/contours.h"

#include <algorithm>
#include <array>
#include <limits>

namespace ui::drawings {
namespace {

constexpr double kOutside = -std::numeric_limits<double>::infinity();
constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();

/// Follows the outlines with the reached values on one side. The grid is framed by nodes that lie on its edge
/// and reach nothing, so that every outline closes.
class Tracer {
public:
  Tracer(const ValueGrid& grid, double level)
      : grid_(grid), level_(level), columns_(grid.x_mm.size() + 2), rows_(grid.y_mm.size() + 2) {
    next_.assign(2 * columns_ * rows_, {kNone, false});
    for (std::size_t row = 0; row + 1 < rows_; ++row) {
      for (std::size_t column = 0; column + 1 < columns_; ++column) linkCell(column, row);
    }
  }

  Contours trace() {
    Contours contours;
    for (std::size_t edge = 0; edge < next_.size(); ++edge) {
      if (next_[edge].to != kNone) follow(edge, contours);
    }
    return contours;
  }

private:
  struct Node {
    std::size_t column, row;
  };
  struct Link {
    std::size_t to;
    bool on_border;
  };
  const ValueGrid& grid_;
  double level_;
  std::size_t columns_, rows_;
  std::vector<Link>
      next_;  // from the place where an outline crosses one grid line to where it crosses the next

  bool isFrame(Node n) const {
    return n.column == 0 || n.row == 0 || n.column == columns_ - 1 || n.row == rows_ - 1;
  }
  double value(Node n) const {
    if (isFrame(n)) return kOutside;
    return static_cast<double>(grid_.values[(n.row - 1) * grid_.x_mm.size() + n.column - 1]);
  }
  bool reaches(Node n) const { return value(n) >= level_; }
  QPointF place(Node n) const {
    return {grid_.x_mm[std::clamp<std::size_t>(n.column, 1, columns_ - 2) - 1],
            grid_.y_mm[std::clamp<std::size_t>(n.row, 1, rows_ - 2) - 1]};
  }
  /// Number of the grid line between neighbours: even along a row, odd along a column.
  std::size_t edge(Node a, Node b) const {
    const Node first{std::min(a.column, b.column), std::min(a.row, b.row)};
    return 2 * (first.row * columns_ + first.column) + (a.column == b.column ? 1 : 0);
  }

  void linkCell(std::size_t column, std::size_t row) {
    const std::array<Node, 4> corners{Node{column, row}, Node{column + 1, row}, Node{column + 1, row + 1},
                                      Node{column, row + 1}};
    const bool border = column == 0 || row == 0 || column + 2 == columns_ || row + 2 == rows_;
    for (std::size_t k = 0; k < 4; ++k) {
      if (!reaches(corners[k]) || reaches(corners[(k + 1) % 4])) continue;
      std::size_t back = k;  // first of the corners that reach the level, going back from k
      while (reaches(corners[(back + 3) % 4])) back = (back + 3) % 4;
      next_[edge(corners[k], corners[(k + 1) % 4])] = {edge(corners[(back + 3) % 4], corners[back]), border};
    }
  }

  QPointF crossing(std::size_t edge) const {
    const Node a{edge / 2 % columns_, edge / 2 / columns_};
    const Node b = edge % 2 == 1 ? Node{a.column, a.row + 1} : Node{a.column + 1, a.row};
    if (isFrame(a) || isFrame(b)) return place(isFrame(a) ? b : a);
    const double t = (level_ - value(a)) / (value(b) - value(a));
    return place(a) + t * (place(b) - place(a));
  }

  void follow(std::size_t edge, Contours& contours) {
    const std::size_t start = edge;
    contours.region.moveTo(crossing(edge));
    bool drawing = false;
    do {
      const Link link = next_[edge];
      const QPointF from = crossing(edge), to = crossing(link.to);
      next_[edge].to = kNone;
      contours.region.lineTo(to);
      if (!link.on_border) {
        if (!drawing) contours.lines.moveTo(from);
        contours.lines.lineTo(to);
      }
      drawing = !link.on_border;
      edge = link.to;
    } while (edge != start);
    contours.region.closeSubpath();
  }
};

}  // namespace

Contours contoursAt(const ValueGrid& grid, double level) {
  return Tracer(grid, level).trace();
}

}  // namespace ui::drawings
