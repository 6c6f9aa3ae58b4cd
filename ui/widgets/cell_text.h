#pragma once

#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QList>
#include <QPair>
#include <QString>

namespace ui {

/// Token and name of what a cell can choose from.
using CellChoices = QList<QPair<QString, QString>>;

/// The choices of a field's own; empty for what is typed freely. A flag has two.
CellChoices choicesOf(const core::Field& field);

/// A field's value as a cell of a table shows it: numbers without their unit, choices by name, dates by
/// ISO 8601.
QString cellText(const core::Field& field, const core::FieldValue& value, const CellChoices& choices,
                 const Formatter& format);

/// The value that a typed text stands for. @return what is wrong with it; `value` then is not to be used
core::Problems cellValue(const core::Field& field, std::size_t row, const QString& text,
                         const CellChoices& choices, const Formatter& format, core::FieldValue& value);

}  // namespace ui
