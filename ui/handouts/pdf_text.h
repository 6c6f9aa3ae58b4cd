#pragma once

#include "ui/drawings/text_log.h"

#include <QByteArray>
#include <QString>
#include <vector>

namespace ui::handouts {

using PageTexts = std::vector<drawings::LoggedText>;

/// Whether letters of a text are joined or change places when they are written, as in Devanagari. Texts from
/// the right are not counted: readers of PDF turn them about once more.
bool hasJoinedLetters(const QString& text);

/// The content of a page with the letters of each text that has joined ones beside its glyphs. A text is
/// found by the place where it starts; what is not found stays as it is.
QByteArray contentWithTexts(const QByteArray& content, const PageTexts& texts);

/// A PDF whose texts with joined letters can be searched, copied and read aloud: QPdfWriter names the letter
/// of a glyph only where the glyph stands for one letter, so that joined ones are lost. Such a text gets its
/// letters beside its glyphs (ActualText, ISO 32000-1, 14.9.4). What is seen does not change.
/// @param pages the texts of each page; a PDF with another number of pages, or in a form that QPdfWriter does
/// not write, comes back as it is
QByteArray pdfWithTexts(const QByteArray& pdf, const std::vector<PageTexts>& pages);

}  // namespace ui::handouts
