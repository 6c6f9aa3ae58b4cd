#pragma once

#include <QPainterPath>
#include <QRectF>
#include <vector>

namespace ui::drawings {

/// Part of the lines outside the rooms.
QPainterPath outside(const QPainterPath& lines, const std::vector<QRectF>& rooms);

/// True when a line of the path goes through the room.
bool crosses(const QPainterPath& lines, const QRectF& room);

}  // namespace ui::drawings
