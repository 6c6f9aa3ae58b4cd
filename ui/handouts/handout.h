#pragma once

#include "core/plan.h"
#include "core/project/project.h"
#include "ui/text/formatter.h"
#include "ui/text/languages.h"

#include <QByteArray>
#include <QPageSize>
#include <QPainter>
#include <QString>
#include <QStringList>
#include <memory>
#include <vector>

namespace ui::handouts {

/// What the pages are made of.
struct Content {
  core::Project project;
  core::Plan plan;
  Formatter format;
};

struct Options {
  QPageSize::PageSizeId page = QPageSize::A4;
  QString language = ui::language();  ///< of the texts; numbers follow the content's formatter
  QStringList codes = {};             ///< kinds of pages wanted; empty: all
};

/// A kind of sheet that can be chosen.
struct SheetKind {
  QString code, title;
};
/// The kinds that there are for a content, with their titles in a language, in order.
std::vector<SheetKind> sheetKinds(const Content& content, const QString& language);

/// The printed material and curing schedule with plan, section, setting-out, mix cards and safety: all pages
/// in order. Pages are counted from 0.
class Handout {
public:
  Handout(Content content, Options options);
  ~Handout();
  Handout(Handout&&) noexcept;
  Handout& operator=(Handout&&) noexcept;

  int pageCount() const;
  QString pageTitle(int page) const;
  QString pageCode(int page) const;  ///< of its kind: "M3"
  QSizeF pageSize_mm() const;
  /// Paints one page; the painter's transform maps 1 unit to 1 mm, origin at the paper's corner. Vector
  /// drawing only.
  void paint(QPainter& painter, int page) const;

  /// All pages as one vector PDF, fonts embedded. The same handout gives the same bytes.
  QByteArray pdf() const;
  /// @return the system's reason when it could not be written, empty when it was; the old file is then
  /// untouched
  QString writePdf(const QString& file) const;

private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace ui::handouts
