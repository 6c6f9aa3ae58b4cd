#pragma once

#include "ui/text/formatter.h"

#include <QWidget>

namespace ui {

class Document;
class PointTable;

/// Corners of a polygon tank; hidden for the other shapes.
PointTable* makeOutlineTable(Document& document, QWidget* parent);

}  // namespace ui
