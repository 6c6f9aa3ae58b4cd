#pragma once

#include "ui/text/formatter.h"

#include <QWidget>

namespace ui {

class Document;
class PointTable;

/// Corners of a polygon tank; hidden for the other shapes.
PointTable* makeOutlineTable(Document& document, QWidget* parent);

/// Heights of the ground; hidden unless the ground is given by them. Entering them says that it is.
PointTable* makeSpotHeightTable(Document& document, QWidget* parent);

}  // namespace ui
