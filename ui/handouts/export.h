#pragma once

#include "ui/handouts/handout.h"

#include <QByteArray>
#include <QString>

namespace ui::handouts {

/// Plan and section on one A3 sheet as SVG.
QByteArray svg(const Content& content);

/// Writes the SVG whole or not at all.
/// @return the system's reason when it could not be written, empty when it was
QString exportSvg(const QString& file, const Content& content);

}  // namespace ui::handouts
