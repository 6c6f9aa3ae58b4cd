// The code as drawn, read back by ZBar's zbarimg.
#include "ui/drawings/qr_code.h"

#include "core/exchange/short_form.h"
#include "tests/support/random_project.h"
#include "tests/support/temporary_folder.h"

#include <QImage>
#include <QProcess>
#include <QTransform>
#include <stdexcept>

#include <catch2/catch.hpp>

namespace {

using ui::drawings::drawQr;
using ui::drawings::kLeastQrModule_mm;
using ui::drawings::kQrQuietZone;
using ui::drawings::leastQrSide_mm;
using ui::drawings::qrModules;

constexpr double kDotsPerMm = 300 / 25.4;
constexpr double kMargin_mm = 3;

const QString kText =
    QStringLiteral("TW1 S:RE L7.2 W3.6 D1.4 B0.1 C0.06/3/3/1/3 C0.05/2.5/2/1/4 LA-27.35 *1A2B");

/// White paper at 300 dpi with the code on it, and a margin about its box.
QImage printed(const QString& text, double side_mm, QPainter::RenderHints hints = QPainter::Antialiasing) {
  const int dots = static_cast<int>((side_mm + 2 * kMargin_mm) * kDotsPerMm);
  QImage image(dots, dots, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(hints);
  painter.scale(kDotsPerMm, kDotsPerMm);
  REQUIRE(drawQr(painter, {kMargin_mm, kMargin_mm, side_mm, side_mm}, text));
  return image;
}

QImage inTwoTones(const QImage& image) {
  return image.convertToFormat(QImage::Format_Mono, Qt::MonoOnly | Qt::ThresholdDither);
}

QImage turned(const QImage& image, double angle_deg) {
  QImage out = image.transformed(QTransform().rotate(angle_deg), Qt::SmoothTransformation);
  QImage paper(out.size(), QImage::Format_RGB32);
  paper.fill(Qt::white);
  QPainter(&paper).drawImage(0, 0, out);
  return paper;
}

QString readBack(const QImage& image) {
  const support::TemporaryFolder folder;
  const QString file = QString::fromStdString(folder.file("code.png").string());
  REQUIRE(image.save(file));
  QProcess reader;
  reader.start(QStringLiteral("zbarimg"),
               {QStringLiteral("--quiet"), QStringLiteral("--raw"), QStringLiteral("--oneshot"),
                QStringLiteral("-Sdisable"), QStringLiteral("-Sqrcode.enable"), file});
  REQUIRE(reader.waitForStarted());
  REQUIRE(reader.waitForFinished());
  QString text = QString::fromUtf8(reader.readAllStandardOutput());
  if (text.endsWith(u'\n')) text.chop(1);
  return text;
}

bool isInked(const QImage& image, int x, int y) {
  return qGray(image.pixel(x, y)) < 250;
}

/// The box that holds all ink [dots].
QRect inkOf(const QImage& image) {
  QRect ink;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (isInked(image, x, y)) ink |= QRect(x, y, 1, 1);
    }
  }
  return ink;
}

}  // namespace

TEST_CASE("the code printed at 300 dpi reads back, also in two tones and turned by two degrees") {
  const QImage image = printed(kText, 30);
  CHECK(readBack(image) == kText);
  CHECK(readBack(inTwoTones(image)) == kText);
  CHECK(readBack(turned(image, 2)) == kText);
  CHECK(readBack(inTwoTones(turned(image, -2))) == kText);
  CHECK(readBack(printed(kText, 30, {})) == kText);
}

TEST_CASE("the code reads back at the smallest size that is drawn") {
  const QImage image = printed(kText, leastQrSide_mm(kText));
  CHECK(readBack(image) == kText);
  CHECK(readBack(inTwoTones(turned(image, 2))) == kText);
}

TEST_CASE("short forms of random projects read back from their codes and as projects") {
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const std::string text = core::exchange::shortForm(support::randomProject(seed));
    const QString code = QString::fromStdString(text);
    INFO(text);
    const QString read = readBack(printed(code, leastQrSide_mm(code)));
    CHECK(read == code);
    CHECK(core::exchange::fromShortForm(read.toStdString(), core::Project{}).has_value());
  }
}

TEST_CASE("a code that is not there is not read") {
  QImage white(300, 300, QImage::Format_RGB32);
  white.fill(Qt::white);
  CHECK(readBack(white).isEmpty());
}

TEST_CASE("the quiet zone of four modules stays white, and the code lies in the middle of its box") {
  constexpr double kSide_mm = 40;
  const QImage image = printed(kText, kSide_mm);
  const double module_mm = kSide_mm / (qrModules(kText) + 2 * kQrQuietZone);
  const QRect ink = inkOf(image);
  const double first = (kMargin_mm + kQrQuietZone * module_mm) * kDotsPerMm;
  const double last = (kMargin_mm + kSide_mm - kQrQuietZone * module_mm) * kDotsPerMm;
  CHECK(ink.left() == Approx(first).margin(1));
  CHECK(ink.top() == Approx(first).margin(1));
  CHECK(ink.right() == Approx(last).margin(1));
  CHECK(ink.bottom() == Approx(last).margin(1));
}

TEST_CASE("the code lies in the middle of a box that is not square") {
  QImage image(800, 400, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(10, 10);
  REQUIRE(drawQr(painter, {0, 0, 80, 40}, kText));
  const QRect ink = inkOf(image);
  CHECK(ink.center().x() == Approx(400).margin(1));
  CHECK(ink.center().y() == Approx(200).margin(1));
  CHECK(ink.width() == Approx(ink.height()).margin(1));
}

TEST_CASE("squares that touch leave no light line between them") {
  const QImage image = printed(kText, 41.7);  // modules that are no whole number of dots
  const double module = 41.7 / (qrModules(kText) + 2 * kQrQuietZone) * kDotsPerMm;
  const double corner = kMargin_mm * kDotsPerMm + kQrQuietZone * module;
  // the left side of the mark in the corner is a column of seven dark modules
  const int x = static_cast<int>(corner + module / 2);
  const int end = static_cast<int>(corner + 7 * module) - 1;
  for (int y = static_cast<int>(corner) + 2; y < end; ++y) CHECK(qGray(image.pixel(x, y)) == 0);
}

// ISO/IEC 18004, data capacity of QR Code symbols: alphanumeric, error correction M (numbers as printed in
// vendors' copies of the table)
TEST_CASE("modules grow with the text as the standard's table of capacities has it") {
  struct Row {
    int version, most;
  };
  for (const Row row : {Row{1, 20}, Row{2, 38}, Row{3, 61}, Row{4, 90}, Row{5, 122}, Row{6, 154},
                        Row{10, 311}, Row{40, 3391}}) {
    INFO(row.version);
    CHECK(qrModules(QString(row.most, u'A')) == 17 + 4 * row.version);
    if (row.version < 40) CHECK(qrModules(QString(row.most + 1, u'A')) > 17 + 4 * row.version);
  }
}

TEST_CASE("modules under half a millimetre are not drawn") {
  const double least_mm = leastQrSide_mm(kText);
  CHECK(least_mm == Approx((qrModules(kText) + 2 * kQrQuietZone) * kLeastQrModule_mm));
  QImage image(600, 600, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(kDotsPerMm, kDotsPerMm);
  CHECK_FALSE(drawQr(painter, {0, 0, least_mm - 0.01, 50}, kText));
  CHECK_FALSE(drawQr(painter, {0, 0, 50, least_mm - 0.01}, kText));
  CHECK(inkOf(image).isEmpty());
  CHECK(drawQr(painter, {0, 0, least_mm, least_mm}, kText));
  CHECK_FALSE(inkOf(image).isEmpty());
}

TEST_CASE("a text that no code holds as letters and digits is an error of the program") {
  for (const QString& text : {QString(), QStringLiteral("tw1"), QStringLiteral("A,B"),
                              QStringLiteral("\u0967"), QString(3392, u'A')}) {
    INFO(text.left(20).toStdString());
    CHECK_THROWS_AS(qrModules(text), std::logic_error);
  }
}
