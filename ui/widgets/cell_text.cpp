#include "ui/widgets/cell_text.h"

#include "ui/text/words.h"

#include <QCoreApplication>

namespace ui {

namespace {

bool isNumber(const core::Field& field) {
  return field.kind == core::FieldKind::number || field.kind == core::FieldKind::whole;
}

const auto kYes = QStringLiteral("true");
const auto kNo = QStringLiteral("false");

}  // namespace

CellChoices choicesOf(const core::Field& field) {
  if (field.kind == core::FieldKind::flag)
    return {{kYes, QCoreApplication::translate("ui::RowTable", "yes")},
            {kNo, QCoreApplication::translate("ui::RowTable", "no")}};
  CellChoices all;
  for (const std::string_view token : field.choices)
    all << qMakePair(QString::fromUtf8(token.data(), qsizetype(token.size())),
                     words::choiceLabel(field.id, token));
  return all;
}

QString cellText(const core::Field& field, const core::FieldValue& value, const CellChoices& choices,
                 const Formatter& format) {
  if (const double* number = std::get_if<double>(&value))
    return format.number(*number, field.unit, field.decimals);
  QString token;
  if (const bool* flag = std::get_if<bool>(&value)) token = *flag ? kYes : kNo;
  if (const std::string* text = std::get_if<std::string>(&value)) token = QString::fromStdString(*text);
  for (const auto& [id, name] : choices) {
    if (id == token) return name;
  }
  return token;
}

core::Problems cellValue(const core::Field& field, std::size_t row, const QString& text,
                         const CellChoices& choices, const Formatter& format, core::FieldValue& value) {
  const QString trimmed = text.trimmed();
  if (trimmed.isEmpty() && field.nullable) return value = std::monostate{}, core::Problems{};
  if (!isNumber(field)) {
    QString token = trimmed;
    for (const auto& [id, name] : choices) {
      if (name.compare(trimmed, Qt::CaseInsensitive) == 0) token = id;
    }
    value = token.toStdString();
    if (field.kind == core::FieldKind::flag && (token == kYes || token == kNo)) value = token == kYes;
    return core::checkValue(field, row, value);
  }
  const std::optional<double> number = format.parse(trimmed, field.unit);
  if (number) return value = *number, core::checkValue(field, row, value);
  return {{.code = trimmed.isEmpty() ? "missing" : "wrong_type",
           .path = core::pathOf(field, row),
           .value = trimmed.toStdString(),
           .least = field.least,
           .most = field.most,
           .unit = field.unit,
           .allowed = "number"}};
}

}  // namespace ui
