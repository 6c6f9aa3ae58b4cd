#pragma once

#include <QByteArray>
#include <QString>

namespace ui::handouts {

/// Writes bytes whole or not at all.
/// @return the system's reason when they could not be written, empty when they were
QString writeBytes(const QString& file, const QByteArray& bytes);

}  // namespace ui::handouts
