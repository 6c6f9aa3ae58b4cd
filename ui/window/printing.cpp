#include "ui/window/printing.h"

#include "ui/handouts/handout.h"

#include <QPainter>
#include <QPrinter>
#include <algorithm>

namespace ui {

namespace {

constexpr double kInch_mm = 25.4;

}  // namespace

void printPages(const handouts::Handout& handout, QPrinter& printer) {
  printer.setFullPage(true);
  const int first = printer.fromPage() > 0 ? printer.fromPage() - 1 : 0;
  const int last =
      printer.toPage() > 0 ? std::min(printer.toPage(), handout.pageCount()) : handout.pageCount();
  QPainter painter(&printer);
  for (int page = first; page < last; ++page) {
    if (page > first) printer.newPage();
    painter.save();
    painter.scale(printer.logicalDpiX() / kInch_mm, printer.logicalDpiY() / kInch_mm);
    handout.paint(painter, page);
    painter.restore();
  }
}

}  // namespace ui
