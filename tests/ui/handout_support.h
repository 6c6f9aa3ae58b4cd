#pragma once

#include "tests/support/recorder.h"
#include "ui/handouts/handout.h"

#include <QString>
#include <QStringList>
#include <string>
#include <utility>
#include <vector>

namespace support {

/// Projects whose sheets are hard to lay out, each with its name.
std::vector<std::pair<std::string, core::Project>> sheetProjects();

ui::handouts::Content contentOf(const core::Project& project, const ui::Formatter& format);
ui::Formatter english();

/// What a page paints.
struct PageRecord {
  explicit PageRecord(const ui::handouts::Handout& handout, int page);
  Recorder recorder;
};

/// Output of a helper program that must succeed; `ok` tells whether it did.
struct ToolRun {
  bool ok;
  QString out;
};
ToolRun tool(const QString& program, const QStringList& arguments);

/// Sizes of spaces do not matter when text is read back.
QString simplified(const QString& text);

}  // namespace support
