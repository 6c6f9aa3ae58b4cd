#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
#include "ui/text/languages.h"

#include <QCoreApplication>
#include <string>

#include <catch2/catch.hpp>

using support::PageRecord;
using ui::handouts::Content;
using ui::handouts::Handout;
using ui::handouts::Options;

namespace {

/// n of the "Scale 1 : n" a page says in the language in use; 0 when it says none. A line of a right-to-left
/// script reaches paper in pieces, from the left to the right.
int scaleSaid(const PageRecord& page, const QLocale& locale) {
  const QString sentence = QCoreApplication::translate("Drawings", "Scale 1 : %1");
  const QString word = sentence.section(u' ', 0, 0);
  const bool leftward = locale.textDirection() == Qt::RightToLeft;
  QString before;
  for (const auto& text : page.recorder.texts) {
    if (text.text.startsWith(word)) {
      const QString ratio = leftward ? before.section(u':', -2, -2) : text.text.section(u':', 1);
      return locale.toInt(ratio.simplified().section(u' ', leftward ? -1 : 0, leftward ? -1 : 0));
    }
    before += text.text + u' ';
  }
  return 0;
}

/// Scales of the plan and the sections A-A and B-B, as their sheets say them.
std::vector<int> scales(Content content, const QString& language, QPageSize::PageSizeId paper) {
  const ui::InLanguage in(language);
  const QLocale locale = ui::localeOf(language);
  content.format = ui::Formatter(locale);
  const Handout handout(content, Options{paper, language, {"M2", "M3", "M15"}});
  std::vector<int> said;
  for (int page = 0; page < handout.pageCount(); ++page)
    said.push_back(scaleSaid(PageRecord(handout, page), locale));
  return said;
}

}  // namespace

// ISO 5455, 4: the scale must be large enough to permit easy and clear interpretation of what is shown (from
// memory). Our measure of it: the pit takes at least a fifth of the room's width in every language, and no
// language has it at less than half the size it has in English.
TEST_CASE("The pit is drawn large on the sheets of every language") {
  constexpr double kRoomWidth_mm = 180;
  const std::string name = GENERATE("terrace", "round", "five_sided");
  const auto paper = GENERATE(QPageSize::A4, QPageSize::Letter);
  const Content made = support::contentOf(support::readDemo(name), support::english());
  const auto& tank = made.plan.geometry;
  const Eigen::Vector2d pit = tank.outline().size(tank.pitOffset(tank.depth()));
  const double shown_m[] = {pit.x(), pit.y(), pit.x()};
  const std::vector<int> english = scales(made, "en", paper);
  for (const QString& language : ui::languages()) {
    const std::vector<int> said = scales(made, language, paper);
    REQUIRE(said.size() == 3);
    for (std::size_t k = 0; k < 3; ++k) {
      INFO(name << ", sheet " << k << ", " << language.toStdString() << ": 1 : " << said[k]);
      REQUIRE(said[k] > 0);
      CHECK(1000 * shown_m[k] / said[k] >= kRoomWidth_mm / 5);
      CHECK(said[k] <= 2 * english[k]);
    }
  }
}
