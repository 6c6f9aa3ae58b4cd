#include "ui/drawings/wall_cut.h"

#include "ui/drawings/paper.h"

#include <QPolygonF>

namespace ui::drawings {
namespace {

using core::geometry::Profile;

constexpr double kFar_m = 100;  // beyond any window

}  // namespace

QPainterPath WallCut::face(const std::string& id) const {
  const Profile profile = tank_.layerProfile(id, 16);
  QPolygonF polygon;
  if (profile.ends == Profile::Ends::capped) polygon << at(-kFar_m, profile.points.front().z_m);
  for (const auto& p : profile.points) polygon << at(p.offset_m, p.z_m);
  if (profile.ends == Profile::Ends::capped) polygon << at(-kFar_m, profile.points.back().z_m);
  return polygonPath(polygon);
}

QPainterPath WallCut::dug() const {
  return polygonPath({at(-kFar_m, bottom_m()), at(tank_.pitOffset(bottom_m()), bottom_m()),
                      at(tank_.pitOffset(tank_.depth()), tank_.depth()), at(-kFar_m, tank_.depth())});
}

}  // namespace ui::drawings
