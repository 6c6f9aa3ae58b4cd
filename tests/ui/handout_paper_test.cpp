#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
#include "ui/text/languages.h"

#include <catch2/catch.hpp>

using ui::handouts::Handout;
using ui::handouts::Options;

// House rules of paper: inside the margins, 12 point and 0.25 mm at least, black, nothing on anything. In the
// real words of each language, which are longer or higher than English ones.
TEST_CASE("every sheet is clean on paper in every language") {
  for (const QString& language : ui::languages()) {
    for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
      const Handout handout(support::demoContent(language), Options{paper, language, {}});
      const QRectF allowed = QRectF({}, handout.pageSize_mm()).adjusted(12, 12, -12, -12);
      QStringList faults;
      for (int page = 0; page < handout.pageCount(); ++page) {
        const support::PageRecord record(handout, page);
        for (const QString& fault : support::faultsOnPaper(record.recorder, allowed))
          faults << handout.pageTitle(page) + QStringLiteral(": ") + fault;
      }
      INFO(language.toStdString() << ": " << faults.join(u'\n').toStdString());
      CHECK(faults.isEmpty());
    }
  }
}
