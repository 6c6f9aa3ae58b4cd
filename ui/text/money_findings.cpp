#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString pricesMissing(const Values& v) {
  const QString item = priceItemName(v.token("item"));
  if (v.number("count") == 1)
    return say(QT_TRANSLATE_NOOP("ui::words", "The bill comes out too low, for a price is missing: %1."))
        .arg(item);
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The bill comes out too low, for prices are missing: %1. The first of them: %2."))
      .arg(v.whole("count"), item);
}

QString bagSplit(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "A bag of cement weighs %1, more than the %2 of one load (%3). Split each bag "
                               "into dry, closed sacks of the same weight."))
      .arg(v.text("bag_kg"), v.text("load_kg"), choiceLabel("prices.items[].carried_by", v.token("carrier")));
}

QString notBuildable(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Option %1 cannot be built as entered, so nothing is reckoned for it. The table "
                 "of options says why."))
      .arg(fromCore(v.token("option")));
}

constexpr std::array kMoneySentences{
    SentenceOf{"cost_prices_missing", pricesMissing},
    SentenceOf{"cost_bag_split", bagSplit},
    SentenceOf{"option_not_buildable", notBuildable},
};

}  // namespace

std::span<const SentenceOf> moneySentences() {
  return kMoneySentences;
}

}  // namespace ui::words
