#include "ui/drawings/qr_code.h"

#include <QByteArray>
#include <QPainterPath>
#include <algorithm>
#include <memory>
#include <stdexcept>

#include <qrencode.h>

namespace ui::drawings {
namespace {

using Input = std::unique_ptr<QRinput, decltype(&QRinput_free)>;
using Code = std::unique_ptr<QRcode, decltype(&QRcode_free)>;

Code codeOf(const QString& text) {
  constexpr int kSmallestThatHolds = 0;
  const QByteArray bytes = text.toUtf8();
  const Input input(QRinput_new2(kSmallestThatHolds, QR_ECLEVEL_M), QRinput_free);
  const auto* const data = reinterpret_cast<const unsigned char*>(bytes.constData());
  if (!input || QRinput_append(input.get(), QR_MODE_AN, static_cast<int>(bytes.size()), data) != 0)
    throw std::logic_error("text has characters that a QR code does not hold as letters and digits");
  Code code(QRcode_encodeInput(input.get()), QRcode_free);
  if (!code) throw std::logic_error("text is too long for a QR code");
  return code;
}

bool isDark(const QRcode& code, int row, int column) {
  return (code.data[row * code.width + column] & 1) != 0;
}

/// Squares of one module each, those beside each other in a row as one.
QPainterPath squares(const QRcode& code) {
  QPainterPath path;
  for (int row = 0; row < code.width; ++row) {
    for (int column = 0; column < code.width; ++column) {
      const int first = column;
      while (column < code.width && isDark(code, row, column)) ++column;
      if (column > first) path.addRect(first, row, column - first, 1);
    }
  }
  return path;
}

int withQuietZone(const QRcode& code) {
  return code.width + 2 * kQrQuietZone;
}

}  // namespace

int qrModules(const QString& text) {
  return codeOf(text)->width;
}

double leastQrSide_mm(const QString& text) {
  return withQuietZone(*codeOf(text)) * kLeastQrModule_mm;
}

bool drawQr(QPainter& painter, const QRectF& box_mm, const QString& text) {
  constexpr double kRoundOff_mm = 1e-9;
  const Code code = codeOf(text);
  const double module_mm = std::min(box_mm.width(), box_mm.height()) / withQuietZone(*code);
  if (module_mm < kLeastQrModule_mm - kRoundOff_mm) return false;
  painter.save();
  painter.translate(box_mm.center());
  painter.scale(module_mm, module_mm);
  painter.translate(-code->width / 2.0, -code->width / 2.0);
  painter.fillPath(squares(*code), Qt::black);
  painter.restore();
  return true;
}

}  // namespace ui::drawings
