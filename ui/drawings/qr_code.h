#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>

namespace ui::drawings {

inline constexpr int kQrQuietZone = 4;            ///< modules left white on each side; ISO/IEC 18004
inline constexpr double kLeastQrModule_mm = 0.5;  ///< smaller squares run together in a copy of a copy

/// Modules along a side of the code of a text, 21 to 177, without the quiet zone. Alphanumeric mode, error
/// correction M: 15 % of the code may be dirty.
/// @param text 1 to 3391 of the digits, capitals, blank and $ % * + - . / :
/// @throw std::logic_error for any other text
int qrModules(const QString& text);

/// Side of the smallest square box that drawQr takes [mm]. @throw std::logic_error as qrModules
double leastQrSide_mm(const QString& text);

/// Draws the code of a text in black, quiet zone included, as large as the box lets it and in its middle; the
/// paper must be white there.
/// @return false, with nothing drawn, when modules would be under kLeastQrModule_mm
/// @throw std::logic_error as qrModules
[[nodiscard]] bool drawQr(QPainter& painter, const QRectF& box_mm, const QString& text);

}  // namespace ui::drawings
