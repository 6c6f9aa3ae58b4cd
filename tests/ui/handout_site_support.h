#pragma once

#include "tests/ui/handout_support.h"
#include "ui/handouts/handout.h"

#include <QString>
#include <QStringList>
#include <string>
#include <utility>
#include <vector>

namespace support {

/// Projects on level and sloping ground, with and without pipes.
core::Project levelProject();
core::Project slopeProject();
core::Project balancedRoundProject();
core::Project edgeProject();
core::Project unknownSoilProject();
core::Project deliveryProject();
core::Project liningPipeProject();
/// Neither line flows, and the overflow is far too small.
core::Project dryLinesProject();
std::vector<std::pair<std::string, core::Project>> siteProjects();

std::vector<int> pagesWith(const ui::handouts::Handout& handout, const QString& code);

/// Text of all pages of a code, and checks of what should stand in it.
struct ReadPages {
  ReadPages(const ui::handouts::Content& content, const QString& code);
  void has(const QString& part) const;
  /// A row of a table: its cells after each other.
  void hasRow(const QStringList& cells) const;
  void hasAll(const QStringList& parts) const;
  QString metres(double value, int decimals = 2) const;
  ui::Formatter format;
  QString text;
};

}  // namespace support
