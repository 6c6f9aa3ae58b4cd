#pragma once

#include <QIcon>
#include <QString>

namespace ui {

/// Icon of our own by file name without ending, its lines in the text colour of the program's present
/// palette.
QIcon icon(const QString& name);
/// The program's own icon, in its own colours.
QIcon programIcon();

}  // namespace ui
