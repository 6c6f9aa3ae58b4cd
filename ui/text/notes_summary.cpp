#include "core/site/field_tests.h"
#include "ui/text/notes_words.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <array>
#include <string>
#include <string_view>
#include <variant>

namespace ui::words {
namespace {

using core::FieldValue;

/// What adopted() may set.
constexpr std::array<std::string_view, 5> kAdopted{"site.clay_percent", "site.soil",
                                                   "site.water_table_depth_m", "site.ground.kind",
                                                   "site.ground.fall_percent"};

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString valueText(const core::Field& field, const FieldValue& value, const Formatter& format) {
  if (const double* number = std::get_if<double>(&value))
    return format.quantity(*number, field.unit, field.decimals);
  if (const std::string* token = std::get_if<std::string>(&value)) return choiceLabel(field.id, *token);
  return say(QT_TRANSLATE_NOOP("ui::words", "not entered"));
}

/// A line for each entry that would change.
QStringList changes(const core::Project& project, const Formatter& format) {
  const core::Project adopted = core::site::adopted(project);
  QStringList lines;
  for (const std::string_view id : kAdopted) {
    const core::Field& field = core::field(id);
    const FieldValue before = field.get(project, 0);
    const FieldValue after = field.get(adopted, 0);
    if (before == after || !field.applies(adopted)) continue;
    lines << say(QT_TRANSLATE_NOOP("ui::words", "%1: %2 in place of %3."))
                 .arg(fieldLabel(id), valueText(field, after, format), valueText(field, before, format));
  }
  return lines;
}

/// The first sentence of each part that was noted.
QStringList inShort(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const core::site::FieldTests& tests = plan.field_tests;
  QStringList answers;
  if (!tests.jars.empty()) answers << jarAnswers(plan, format).first();
  if (!tests.feel.empty()) answers << feelAnswers(plan, format);
  if (tests.pits) answers << pitAnswers(plan, format);
  if (tests.fall_percent) answers << slopeAnswers(project, plan, format).first();
  return answers;
}

}  // namespace

QStringList notesAnswers(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  QStringList answers = inShort(project, plan, format);
  if (answers.isEmpty())
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "Nothing noted yet. Type in what stands on the paper forms, page by page; "
                                  "what follows from it is shown at once and changes nothing until you put "
                                  "it in place."))};
  const QStringList lines = changes(project, format);
  answers << (lines.isEmpty()
                  ? say(QT_TRANSLATE_NOOP("ui::words",
                                          "The notes change nothing of what is entered for the site."))
                  : say(QT_TRANSLATE_NOOP("ui::words", "Putting the notes in place would change:")));
  return answers << lines;
}

}  // namespace ui::words
