#pragma once

#include "tests/support/temporary_folder.h"
#include "ui/handouts/handout.h"

#include <QImage>
#include <QString>
#include <QStringList>

namespace support {

/// A project of the demonstration, by the name of its file.
core::Project readDemo(const std::string& name);
/// The project that the program shows first, and its plan with the ranges.
const core::Project& demo();
const core::Plan& demoPlan();
/// Both, with the numbers of a language.
ui::handouts::Content demoContent(const ui::Formatter& format);
ui::handouts::Content demoContent(const QString& language);

/// A handout written as a PDF to a file of its own.
/// @throws std::runtime_error when it cannot be written
struct WrittenHandout {
  explicit WrittenHandout(ui::handouts::Content of, const ui::handouts::Options& options = {});
  TemporaryFolder folder;
  ui::handouts::Content content;
  ui::handouts::Handout handout;
  QString file;
};

/// The texts of a page, whole and in the order drawn.
QStringList drawnTexts(const ui::handouts::Handout& handout, int page);

enum class Order { reading, layout };  ///< of the texts of a page: as they are read, or side by side as set

// What poppler makes of a page of a PDF, counted from 0; all throw std::runtime_error when it cannot read it.

QString pageText(const QString& file, int page, Order order = Order::reading);
/// Of all pages.
QStringList pageTexts(const QString& file);
/// In grey, smoothed.
QImage pagePicture(const WrittenHandout& written, int page, int dpi);
/// In pure black and white, as a shop's copier sees it.
QImage pageCopy(const WrittenHandout& written, int page, int dpi);

bool isInk(const QImage& grey, int x, int y);
/// Longest unbroken stretch of ink in a row [dots].
int longestRun(const QImage& grey, int y);
/// Dots of ink in the part of an area that lies on the picture.
int inkIn(const QImage& grey, const QRect& area);

}  // namespace support
