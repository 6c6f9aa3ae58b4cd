#pragma once

#include "ui/drawings/figure.h"
#include "ui/drawings/isometric_picture.h"

#include <QRectF>

namespace ui::drawings {

// Parts of the isometric drawing, to be added in this order: each hides what lies behind it.

/// The pit from what lies behind to what lies before: the far sides from the edge down to the floor, then the
/// near ones from the floor up.
void addPit(Figure& figure, const Picture& picture);
/// The level ground about the pit, with the pit's edge.
void addGround(Figure& figure, const Picture& picture);
/// The two sides of the block that face the viewer.
void addBlockSides(Figure& figure, const Picture& picture);
/// Pegs with the strings between them.
void addPegs(Figure& figure, const Picture& picture);

/// Room of the block with its pegs [mm].
QRectF roomOf(const Block& block, const IsometricView& view);

}  // namespace ui::drawings
