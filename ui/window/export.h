#pragma once

#include "core/plan.h"
#include "ui/handouts/handout.h"
#include "ui/text/formatter.h"

#include <QString>
#include <QStringList>

namespace ui {

/// Writes what a plan gives, by the file's ending: .pdf sheets, .csv tables, .stl and .glb solids, .svg plan
/// and section, .png picture of the pit cut open. Needs no display and no GPU, but a QGuiApplication for its
/// fonts (pdf, svg, png).
/// @param sheets which pages of the PDF, in what language, on what paper
/// @return the reason when it could not be written, empty when it was; an older file is then untouched
QString exportTo(const core::Project& project, const core::Plan& plan, const QString& file,
                 const Formatter& format, const handouts::Options& sheets = {});

/// Endings that exportTo knows, with their dots.
QStringList exportEndings();
/// Whether a file with this ending (with its dot) needs fonts and so a QGuiApplication.
bool exportDrawsText(const QString& ending);

}  // namespace ui
